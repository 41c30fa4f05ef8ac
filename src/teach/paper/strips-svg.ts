import { stripMm } from './strip-length.ts';

/** The strips of one sheet: ratios that come in lessons, the common ones twice. Shrinking ones are hatched. */
export const STRIPS: readonly number[] = [
  4, 2.5, 3, 3, 2, 2, 2, 1.8, 1.6, 1.5, 1.5, 1.4, 1.4, 1.25, 1.25, 1.2, 1.2, 1.1, 0.5, 0.6, 0.7, 0.8, 0.9,
];

const WIDTH = 13;
const GAP = 1.5;

/** Strips to cut out, as an SVG to true scale on which `decadeMm` stand for a factor of ten. */
export function stripsSvg(factors: readonly number[], decadeMm: number, tallestMm: number): string {
  const columns: number[][] = [];
  let left = 0;
  for (const factor of factors) {
    const need = stripMm(factor, decadeMm) + GAP;
    if (columns.length === 0 || need > left) {
      columns.push([]);
      left = tallestMm;
    }
    columns.at(-1)?.push(factor);
    left -= need;
  }
  const strips = columns.flatMap((column, index) => {
    let y = 1;
    return column.map((factor) => {
      const tall = stripMm(factor, decadeMm);
      const [x, top] = [1 + index * (WIDTH + GAP), y];
      y += tall + GAP;
      return strip(factor, x, top, tall);
    });
  });
  const width = columns.length * (WIDTH + GAP) + 2;
  return (
    `<svg class="kit-mm" width="${width}mm" height="${tallestMm + 2}mm" viewBox="0 0 ${width} ${tallestMm + 2}" role="img" aria-label="${factors.length} strips, each as long as its ratio is on the ruler">` +
    `${strips.join('')}</svg>`
  );
}

const strip = (factor: number, x: number, y: number, tall: number): string =>
  `<g><rect class="kit-strip${factor < 1 ? ' kit-shrinks' : ''}" x="${x}" y="${y.toFixed(3)}" width="${WIDTH}" height="${tall.toFixed(3)}"></rect>` +
  `<text class="kit-number" x="${x + WIDTH / 2}" y="${(y + tall / 2).toFixed(3)}" dy="0.35em" text-anchor="middle">× ${factor}</text></g>`;
