import { brief, inFigures } from '../scene/show.ts';

/** Ticks a reader knows by heart, from sparse to dense. */
const tiers: readonly (readonly number[])[] = [
  [1, 10],
  [1, 3, 10],
  [1, 2, 5, 10],
  [1, 1.5, 2, 3, 5, 7, 10],
  [1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10],
];

/**
 * Ticks of a logarithmic axis of ratios: the densest tier whose labels stand clear of each other.
 *
 * @param narrow the labels need twice the share of a narrow sheet's axis
 */
export function tickValues(low: number, high: number, narrow: boolean): number[] {
  const clear = Math.log(high / low) * (narrow ? 0.13 : 0.065);
  const first = Math.floor(Math.log10(low));
  const decades = Array.from(
    { length: Math.ceil(Math.log10(high)) - first + 1 },
    (_, index) => 10 ** (first + index),
  );
  const inside = (tier: readonly number[]): number[] =>
    [...new Set(decades.flatMap((decade) => tier.map((step) => inFigures(step * decade))))].filter(
      (tick) => tick >= low && tick <= high,
    );
  const standsClear = (ticks: readonly number[]): boolean =>
    ticks.every((tick, index) => index === 0 || Math.log(tick / (ticks[index - 1] ?? tick)) >= clear);
  const sorted = tiers.map((tier) => inside(tier).sort((a, b) => a - b));
  return sorted.findLast(standsClear) ?? [1];
}

/** A logarithmic axis of ratios between two ends, for Plot: its ticks, their labels and its own label. */
export const ratioAxis = (low: number, high: number, narrow: boolean, label: string) => ({
  type: 'log' as const,
  domain: [low, high],
  label,
  labelArrow: 'none' as const,
  ticks: tickValues(low, high, narrow),
  tickFormat: brief,
});

/** The same along the foot of a drawing, its label in the middle. */
export const ratioAxisX = (low: number, high: number, narrow: boolean, label: string) => ({
  ...ratioAxis(low, high, narrow, label),
  labelAnchor: 'center' as const,
});
