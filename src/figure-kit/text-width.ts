// cspell:ignore czsvy agkeo
/** How wide signs of the site's face are, as shares of the size of its type: each class a little wider than its widest. */
const classes: readonly (readonly [signs: string, em: number])[] = [
  [" '’.,:;ijl()", 0.34],
  ['ftrI/-', 0.41],
  ['czsvyLxJ', 0.53],
  ['agkeoF', 0.57],
  ['ABCDGHKNOQRUVXP', 0.72],
  ['wMmW%', 0.94],
  ['→←', 1],
];
const emOf = new Map(classes.flatMap(([signs, em]) => [...signs].map((sign) => [sign, em] as const)));

/**
 * How wide a text is in a drawing, px: an estimate a little above what the site's face needs, so that labels kept clear by
 * it stand clear on the page. Figures are all 0.6 of the size of the type, and so is any sign not listed.
 *
 * @example textWidthPx('10', 20) // → 24
 */
export function textWidthPx(text: string, sizePx: number, bold = false): number {
  let em = 0;
  for (const sign of text) em += emOf.get(sign) ?? 0.6;
  return em * sizePx * (bold ? 1.05 : 1);
}
