/** No I, L, O or U: nothing that is misread from a screen or a note. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Bytes as so many base32 characters, the first bits first. */
export function toBase32(bytes: Uint8Array, characters: number): string {
  if (characters * 5 > bytes.length * 8)
    throw new RangeError(
      `${characters} characters of base32 need ${characters * 5} bits; there are ${bytes.length * 8}`,
    );
  const bit = (at: number): number => ((bytes[at >> 3] ?? 0) >> (7 - (at & 7))) & 1;
  return Array.from({ length: characters }, (_, place) => {
    const value = [0, 1, 2, 3, 4].reduce((sum, step) => sum * 2 + bit(place * 5 + step), 0);
    return alphabet.charAt(value);
  }).join('');
}

/** The characters of a text that was read aloud or typed off: case, spaces and hyphens aside, O for 0, I and L for 1. */
export const tidyBase32 = (text: string): string =>
  text.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1');
