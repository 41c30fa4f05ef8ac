import { modeOf } from '../../exercises/index.ts';
import type { Problem } from '../../exercises/index.ts';
import { asAsked } from '../set/as-asked.ts';
import { inFigures } from '../../scene/show.ts';

const MARGIN = 14;
const RADIUS = 5;
/** Room for a number and the sign of the answer below the line. */
const FOOT = 40;

/**
 * The guesses as dots over a line, each where its number lies and stacked where several lie together; the computed
 * answer is marked. A guess beyond the line stands at its end. Nothing where a letter was asked for.
 *
 * @param values guesses as `tallyOf` reads them
 * @param width of the drawing in px
 */
export function tallyDots(problem: Problem, values: readonly number[], width: number): string {
  if (modeOf(problem.unit) === 'letter' || values.length === 0) return '';
  const asked = (value: number): number => asAsked(problem, value).value;
  const key = asked(problem.answer);
  const known = [key, ...problem.missteps.map(({ answer }) => asked(answer))];
  const low = Math.min(0, ...known);
  const high = Math.max(...known, low + 1) * 1.1;
  const x = (value: number): number =>
    MARGIN + ((Math.min(Math.max(value, low), high) - low) / (high - low)) * (width - 2 * MARGIN);

  const stacks = new Map<number, number>();
  const places = values
    .map((value) => Math.round(x(asked(value)) / (2 * RADIUS)))
    .sort((a, b) => a - b)
    .map((column) => {
      const height = stacks.get(column) ?? 0;
      stacks.set(column, height + 1);
      return { column, height };
    });
  const tallest = Math.max(...stacks.values());
  const step = Math.min(2 * RADIUS, 300 / tallest);
  const ground = 18 + tallest * step;
  const dots = places.map(
    ({ column, height }) =>
      `<circle class="kit-dot" cx="${column * 2 * RADIUS}" cy="${(ground - step / 2 - height * step).toFixed(1)}" r="${Math.min(RADIUS - 0.5, step / 2).toFixed(1)}"></circle>`,
  );
  const ticks = ticksBetween(low, high).map(
    (value) =>
      `<path class="kf-thin" d="M${x(value).toFixed(1)} ${ground}v5"></path><text x="${x(value).toFixed(1)}" y="${ground + 18}" text-anchor="middle">${String(value).replace('-', '−')}</text>`,
  );
  const at = x(key).toFixed(1);
  const anchor = x(key) > width - 60 ? 'end' : x(key) < 60 ? 'start' : 'middle';
  return (
    `<svg class="kf-plot kit-dots" viewBox="0 0 ${width} ${ground + FOOT}" role="img" aria-label="${values.length} guesses as dots; the table below counts them">` +
    `<path class="kf-thin" d="M${MARGIN} ${ground}H${width - MARGIN}"></path>${ticks.join('')}` +
    `<path class="kf-dimension" d="M${at} 14V${ground}"></path>${dots.join('')}` +
    `<text class="kf-value" x="${at}" y="${ground + 34}" text-anchor="${anchor}">▲ answer</text></svg>`
  );
}

/** Four to eight round numbers. */
function ticksBetween(low: number, high: number): number[] {
  const rough = (high - low) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * power).find((size) => size >= rough) ?? rough;
  const first = Math.ceil(low / step);
  const last = Math.floor(high / step);
  return Array.from({ length: last - first + 1 }, (_, index) => inFigures((first + index) * step, 6));
}
