import { logRulerMarks } from './log-ruler.ts';

const TOP = 6;
const WIDTH = 42;
const EDGE = 14;

/**
 * A ruler of ratios as an SVG to true scale: one unit of the drawing is one millimetre. It stands upright, so that it
 * fits the height of A4 and of Letter.
 */
export function rulerSvg(from: number, to: number, lengthMm: number): string {
  const height = lengthMm + 2 * TOP;
  const marks = logRulerMarks(from, to, lengthMm)
    .map(({ value, atMm, label }) => {
      const y = (TOP + lengthMm - atMm).toFixed(3);
      const whole = /^1?0*[.]?0*[1-9]?$/.test(String(value)) && label !== '';
      const long = whole ? 9 : label ? 6.5 : 4;
      return (
        `<path class="kit-line" d="M${EDGE} ${y}h${long}"></path>` +
        (label ? `<text class="kit-number" x="${EDGE + 10}" y="${y}" dy="0.35em">${label}</text>` : '')
      );
    })
    .join('');
  return (
    `<svg class="kit-mm" width="${WIDTH}mm" height="${height}mm" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="Ruler of ratios from ${from} to ${to}, ${lengthMm} mm long">` +
    `<path class="kit-line" d="M${EDGE} ${TOP}v${lengthMm}"></path>` +
    `${marks}</svg>`
  );
}

/** A length to check the print by. */
export const checkBarSvg = (lengthMm: number): string =>
  `<svg class="kit-mm kit-check" width="${lengthMm + 4}mm" height="12mm" viewBox="0 0 ${lengthMm + 4} 12" role="img" aria-label="A line ${lengthMm} mm long">` +
  `<path class="kit-line" d="M2 2v4M${lengthMm + 2} 2v4M2 4H${lengthMm + 2}"></path>` +
  `<text class="kit-number" x="${lengthMm / 2 + 2}" y="10" text-anchor="middle">${lengthMm} mm</text></svg>`;
