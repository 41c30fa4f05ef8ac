import { parseHTML } from 'linkedom';
import { draw } from '../../../src/figure-kit/draw.ts';
import { sizes } from '../../../src/figure-kit/figure.ts';
import type { Figure } from '../../../src/figure-kit/figure.ts';
import type { Scene } from '../../../src/scene/scene.ts';

type SizeName = keyof typeof sizes;

/** A drawing of a figure, as a page has it. */
export function drawingOf(figure: Figure, scene: Scene, size: SizeName): SVGSVGElement {
  const { document } = parseHTML('<html><body></body></html>');
  return draw(figure, scene, sizes[size], document as unknown as Document, 'x');
}

/** A text of a drawing with the box it takes, px. */
export interface DrawnLabel {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
  sizePx: number;
}

/** The nearest value of an attribute, on the element or on what it lies in. */
function inherited(element: Element, name: string): string | null {
  return element.getAttribute(name) ?? (element.parentElement && inherited(element.parentElement, name));
}

const place = (element: Element): [number, number] => {
  const [, x = 0, y = 0] = /translate\(([^,]+),([^)]+)\)/.exec(element.getAttribute('transform') ?? '') ?? [];
  const above = element.parentElement && element.localName !== 'svg' ? place(element.parentElement) : [0, 0];
  return [Number(x) + (above[0] ?? 0), Number(y) + (above[1] ?? 0)];
};

/**
 * The texts of a drawing with their boxes. Widths are of IBM Plex Sans as measured in a browser, in hundredths of the
 * size of the type; heavier letters take up to 8% more.
 */
export function labelsOf(svg: SVGSVGElement): DrawnLabel[] {
  return [...svg.querySelectorAll('text')].map((element) => {
    const text = element.textContent ?? '';
    const sizePx = Number(inherited(element, 'font-size'));
    const bold = /kf-value/.test(inherited(element, 'class') ?? '');
    const em = [...text].reduce((sum, sign) => sum + (advances.get(sign) ?? 60), 0) / 100;
    const width = em * sizePx * (bold ? 1.04 : 1);
    const [x, y] = place(element);
    const anchor = inherited(element, 'text-anchor') ?? 'start';
    const left = x - { start: 0, middle: width / 2, end: width }[anchor as 'start'];
    return { text, left, right: left + width, top: y - sizePx * 0.4, bottom: y + sizePx * 0.4, sizePx };
  });
}

const advances = new Map(
  Object.entries({
    24: " '",
    25: 'ij',
    27: 'l.,’',
    29: ':;',
    32: 'f',
    33: '()',
    35: 't',
    37: 'r',
    38: '/',
    40: 'I-',
    46: 'z',
    49: 'sv',
    50: 'cyL',
    51: 'xJ',
    53: 'agk',
    55: 'e',
    56: 'oF',
    57: 'hnuT',
    58: 'bdpqESZ',
    61: 'PVX',
    62: 'C',
    63: 'K',
    64: 'AR',
    65: 'B',
    67: 'D',
    68: 'U',
    69: 'G',
    71: 'HNOQ',
    77: 'w',
    81: 'M',
    87: 'm',
    89: 'W',
    100: '→←',
  }).flatMap(([width, signs]) => [...signs].map((sign) => [sign, Number(width)] as const)),
);

/** Pairs of labels that run into each other. */
export function overlapping(labels: readonly DrawnLabel[]): string[] {
  return labels.flatMap((a, index) =>
    labels
      .slice(0, index)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} | ${b.text}`),
  );
}
