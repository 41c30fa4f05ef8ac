/** Signs of the face that are clearly narrower or wider than its figures. */
const narrow = new Set("ijl.,:;'’|!()[] Itfr/");
const wide = new Set('mwMW→');

/**
 * How wide a text is in a drawing, px: a careful estimate, a little more than the site's face needs, so that labels kept
 * clear by it stand clear on the page. Figures are all 0.6 of the type's size.
 *
 * @example textWidthPx('10', 20) // → 24
 */
export function textWidthPx(text: string, sizePx: number, bold = false): number {
  let em = 0;
  for (const sign of text) em += narrow.has(sign) ? 0.4 : wide.has(sign) ? 0.95 : 0.6;
  return em * sizePx * (bold ? 1.04 : 1);
}
