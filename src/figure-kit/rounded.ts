import { thinned } from './thinned.ts';

const placing = [
  'd',
  'transform',
  'points',
  'x',
  'y',
  'x1',
  'x2',
  'y1',
  'y2',
  'cx',
  'cy',
  'r',
  'width',
  'height',
];

/**
 * A drawing for a page, its lines with no more points than they need and its coordinates cut to tenths of a pixel:
 * seventeen digits of each are a tenth of a page's bytes, and no screen shows them.
 */
export function rounded(svg: SVGSVGElement): SVGSVGElement {
  for (const element of svg.querySelectorAll('*')) {
    // What Plot calls a mark serves nobody who reads it, and its lines meet in round corners or not at all.
    for (const name of ['data-mark', 'stroke-miterlimit']) element.removeAttribute(name);
    const path = element.getAttribute('d');
    if (path) element.setAttribute('d', thinned(path));
    for (const name of placing) {
      const value = element.getAttribute(name);
      if (value?.includes('.') && !/scale|matrix/.test(value))
        element.setAttribute(
          name,
          value.replaceAll(/-?\d+\.\d{2,}(?:e-?\d+)?/g, (digits) =>
            String(Math.round(Number(digits) * 10) / 10),
          ),
        );
    }
  }
  return svg;
}
