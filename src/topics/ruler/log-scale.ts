import { textWidthPx } from '../../figure-kit/text-width.ts';
import { brief, inFigures } from '../../scene/show.ts';

/** The ruler's own scale: ratios as places along the drawing. */
export interface LogScale {
  low: number;
  high: number;
  /** Where the scale begins and ends, px. */
  fromPx: number;
  toPx: number;
  /** The place of a ratio, px. */
  px(ratio: number): number;
  /** The ratio at a place, px. */
  ratio(px: number): number;
}

/** Something that stands at a ratio and needs room on both sides of it, px. */
export interface Claim {
  at: number;
  leftPx: number;
  rightPx: number;
}

/** Where a ruler may begin and end, in every power of ten: numbers that have a tick of their own. */
const ends = [1, 1.5, 2, 3, 5, 7];
/** The least stretch of a ruler: of equal knives too it shows what twice as long would be. */
const least = 4;

const powers = (ratio: number): number[] => {
  const power = Math.floor(Math.log10(ratio));
  return [power - 1, power, power + 1];
};
const endsNear = (ratio: number): number[] =>
  powers(ratio).flatMap((power) => ends.map((end) => inFigures(end * 10 ** power)));
const nextAbove = (ratio: number): number =>
  Math.min(...endsNear(ratio).filter((end) => end > ratio * 1.0001));
const nextBelow = (ratio: number): number =>
  Math.max(...endsNear(ratio).filter((end) => end < ratio / 1.0001));

export function logScale(low: number, high: number, fromPx: number, toPx: number): LogScale {
  const perPx = Math.log(high / low) / (toPx - fromPx);
  return {
    low,
    high,
    fromPx,
    toPx,
    px: (ratio) => fromPx + Math.log(ratio / low) / perPx,
    ratio: (px) => low * Math.exp((px - fromPx) * perPx),
  };
}

/**
 * The shortest ruler between two places on which 1 and all that is to stand there have room.
 *
 * @param room what stands at the ruler's ends may reach these places, px
 */
export function scaleFor(
  wanted: readonly Claim[],
  [fromPx, toPx]: readonly [number, number],
  [firstPx, lastPx]: readonly [number, number],
): LogScale {
  // A ratio that is none has no place.
  const claims = wanted.filter(({ at }) => at > 0 && Number.isFinite(at));
  const all = claims.map(({ at }) => at);
  const [first, last] = [Math.min(1, ...all), Math.max(1, ...all)];
  let low = first < 1 ? nextBelow(first * 1.02) : 1;
  let high = nextAbove(last * 0.98);
  while (high / low < least) high = nextAbove(high);
  // Each step makes room; what needs more than half of the ruler on each side is not asked for.
  for (let step = 0; step < 60; step += 1) {
    const scale = logScale(low, high, fromPx, toPx);
    const overLeft = claims.some(({ at, leftPx }) => scale.px(at) - leftPx < firstPx);
    const overRight = claims.some(({ at, rightPx }) => scale.px(at) + rightPx > lastPx);
    if (overLeft) low = nextBelow(low);
    if (overRight) high = nextAbove(high);
    if (!overLeft && !overRight) return scale;
  }
  return logScale(low, high, fromPx, toPx);
}

/** Labelled ticks, from sparse to dense: the steps within a power of ten, or so many powers of ten apart. */
const tiers: readonly { steps: readonly number[]; every: number }[] = [
  ...[4, 3, 2].map((every) => ({ steps: [1], every })),
  ...[[1], [1, 3], [1, 2, 5], [1, 2, 3, 5], [1, 1.5, 2, 3, 5], [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8]].map(
    (steps) => ({ steps, every: 1 }),
  ),
];

/** What stands between two labels at least, px. */
const gapPx = 11;

/** The ratios of the ruler at the given steps within every power of ten. */
function stepsOn({ low, high }: LogScale, steps: readonly number[], every = 1): number[] {
  const [first, last] = [Math.floor(Math.log10(low) - 1e-9), Math.ceil(Math.log10(high) + 1e-9)];
  const on: number[] = [];
  for (let power = first; power <= last; power += 1)
    if (power % every === 0)
      for (const step of steps) {
        const ratio = inFigures(step * 10 ** power, 6);
        if (ratio >= low * 0.9999 && ratio <= high * 1.0001) on.push(ratio);
      }
  return on;
}

/** The ticks that have a label: the densest steps whose labels stand clear of each other. 1 is always among them. */
export function labelledTicks(scale: LogScale, sizePx: number): number[] {
  const half = (ratio: number): number => textWidthPx(brief(ratio), sizePx) / 2;
  const isClear = (ticks: readonly number[]): boolean =>
    ticks.every((tick, index) => {
      const before = ticks[index - 1];
      return before === undefined || scale.px(tick) - half(tick) - scale.px(before) - half(before) >= gapPx;
    });
  return tiers.map(({ steps, every }) => stepsOn(scale, steps, every)).findLast(isClear) ?? [1];
}

const tenths = [
  ...Array.from({ length: 10 }, (_, index) => 1 + index / 10),
  ...Array.from({ length: 15 }, (_, index) => 2 + index / 5),
  ...Array.from({ length: 10 }, (_, index) => 5 + index / 2),
];
/** Ticks without a label, from dense to sparse, and how long they are drawn, px. */
const unlabelled: readonly { steps: readonly number[]; lengthPx: number }[] = [
  { steps: tenths, lengthPx: 4 },
  { steps: [1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9], lengthPx: 7 },
  { steps: [1, 2, 5], lengthPx: 7 },
  { steps: [1], lengthPx: 7 },
];
/** Nearer than this, ticks would run together, px. */
const clearPx = 2.4;

/** All ticks without a label, with their lengths. */
export function smallTicks(scale: LogScale, labelled: readonly number[]): { at: number; lengthPx: number }[] {
  const taken = new Set(labelled);
  return unlabelled.flatMap(({ steps, lengthPx }) => {
    const at = stepsOn(scale, steps);
    const clear = at.every((tick, i) => i === 0 || scale.px(tick) - scale.px(at[i - 1] ?? tick) >= clearPx);
    if (!clear) return [];
    const own = at.filter((tick) => !taken.has(tick));
    for (const tick of own) taken.add(tick);
    return own.map((tick) => ({ at: tick, lengthPx }));
  });
}
