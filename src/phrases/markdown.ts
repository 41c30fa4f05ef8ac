/** A text as Markdown shows it: what it would take for its own is escaped. */
export const escapeMarkdown = (text: string): string =>
  text.replace(/[\\`*_[\]<>#|~]/g, '\\$&').replaceAll('\n', ' ');
