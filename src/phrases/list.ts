/**
 * Words in a row.
 *
 * @example list(['a', 'b', 'c']) // → 'a, b and c'
 */
export function list(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** A sentence with its first letter as a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
