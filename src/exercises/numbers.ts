import type { GritScale } from '../model/index.ts';

/** The two ends of what a cause is worth, as ratios to an ordinary one. */
export interface Ends {
  low: number;
  high: number;
}

/** A finish as the trade names it. */
export interface Grit {
  scale: GritScale;
  grit: number;
}

/** Two set-ups side by side: the index of the state of each variable. */
export interface Pair {
  first: readonly number[];
  second: readonly number[];
}

interface Percents {
  percents: readonly number[];
}

/** The numbers each kind of problem is made of; the kinds from the easier to the harder. */
export interface NumbersOf {
  /** A number of times, and at level 3 that of a third one. */
  'times-or-more': { times: number; other?: number };
  'multiply-or-add': Percents;
  'fair-pair': { wanted: number; pairs: readonly Pair[] };
  'forward-chain': Percents;
  'equivalent-change': Percents;
  /** The percentages of the known causes, and that of all together. */
  'missing-factor': { known: readonly number[]; total: number };
  'reverse-base': { base: number; percents: readonly number[] };
  undo: Percents;
  /** Which of the context's amounts hinders the baseline, and by what percentage the subject's differs. */
  'inverse-proportion': { amountIndex: number; percent: number };
  /** The number of times in all, and what the causes that are set equal are worth. */
  'even-up': { total: number; evened: readonly number[] };
  'grit-by-scale': { own: Grit; other: Grit };
  'two-routes': { angleDeg: number; baselineAngleDeg: number; friction: number };
  /** Two amounts, each rounded to the nearest ten. */
  'rounding-bands': { own: number; other: number };
  'mean-growth': Percents;
  /** The share of the factor at `asked`; logarithms to `base`. */
  'share-of-factor': { factors: readonly number[]; asked: number; base: number };
  'range-product': { geometry: readonly Ends[]; steel: readonly Ends[] };
}

export type Kind = keyof NumbersOf;
