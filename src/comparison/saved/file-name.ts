/** A file's name from a title: letters and digits of any script, the rest as hyphens. */
export const fileName = (title: string, ending: string): string =>
  `${
    title
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'comparison'
  }.${ending}`;
