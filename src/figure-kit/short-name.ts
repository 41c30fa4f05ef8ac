/** What closes a name that is kept from turning its sentence round. */
const closing = '\u2069';

/** A name cut to what a sheet has room for. */
export const shortName = (name: string, most: number): string =>
  name.length > most ? `${name.slice(0, most - 1)}…${name.endsWith(closing) ? closing : ''}` : name;

/** About how wide a line of bold text is, px: capitals are wider than small letters. */
export const textPx = (text: string, fontPx = 13): number =>
  fontPx * (0.56 * text.length + 0.4 * (text.match(/\p{Lu}/gu)?.length ?? 0));

/** As much of a name as has room, px. */
export function nameWithin(name: string, roomPx: number, fontPx = 13): string {
  let most = Math.min(name.length, Math.ceil(roomPx / (0.5 * fontPx)));
  while (most > 3 && textPx(shortName(name, most), fontPx) > roomPx) most -= 1;
  return shortName(name, most);
}
