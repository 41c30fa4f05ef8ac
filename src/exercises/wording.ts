/** "a, b and c" */
export const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${String(parts.at(-1))}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "A" for the first of the options. */
export const letter = (index: number): string => String.fromCharCode('A'.charCodeAt(0) + index);
