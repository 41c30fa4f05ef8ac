/** A drawing as it stands on a page. */
export interface Drawing {
  /** One SVG element as XML, with its `viewBox`. */
  svg: string;
  width: number;
  height: number;
}

/**
 * A drawing laid into a box of a larger one, as large as fits and in its middle.
 *
 * @throws RangeError where it is no SVG element
 */
export function placed(
  { svg, width, height }: Drawing,
  box: { x: number; y: number; width: number; height: number },
): string {
  const [, attributes] = /^<svg\b([^>]*)>/.exec(svg) ?? [];
  if (attributes === undefined)
    throw new RangeError(`a drawing must be an SVG element, not “${svg.slice(0, 40)}”`);
  const scale = Math.min(box.width / width, box.height / height);
  const [w, h] = [width * scale, height * scale];
  const kept = attributes.replaceAll(/\s(?:width|height|x|y|role|aria-label|xmlns)="[^"]*"/g, '');
  const at = `x="${round(box.x + (box.width - w) / 2)}" y="${round(box.y + (box.height - h) / 2)}" width="${round(w)}" height="${round(h)}"`;
  return `<svg ${at}${kept}>${svg.slice(svg.indexOf('>') + 1)}`;
}

const round = (value: number): number => Number(value.toFixed(2));

/** The same without its words: what is left to see where they would be too small to read. */
export const withoutWords = (drawing: Drawing): Drawing => ({
  ...drawing,
  svg: drawing.svg.replaceAll(/<text\b[^>]*>[^]*?<\/text>/g, ''),
});
