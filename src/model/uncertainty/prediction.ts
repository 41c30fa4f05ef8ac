import type { Structure } from '../types.ts';

/** The 5%, 50% and 95% points of a ratio: the central 90% of the samples and their middle. */
export interface Band {
  low: number;
  median: number;
  high: number;
}

/** One knife's ratio to the baseline over all samples: no unit, above 1 is as long and longer. */
export interface Prediction extends Band {
  knife: string;
  /** Share of the samples in which the knife cuts longer than the baseline, 0 to 1. */
  beatsBaseline: number;
  /** The same points for each way to combine the factors, from the samples that took it. */
  byStructure: Record<Structure, Band>;
  /**
   * First-order share of the variance of ln ratio by input: `angleDeg` is the knife's own, `baseline.angleDeg` the
   * baseline's; `friction`, the exponents and `gauge.angleDeg` and the like are shared; `residual` is how far both steels
   * lie off the published line; `structure` is how the factors combine; `together` is what only several inputs at once
   * explain. Sums to 1; empty where the ratio does not vary.
   */
  variance: Record<string, number>;
  /** Draws of the whole run that were repeated because they lay outside what the model accepts. */
  redrawn: number;
}
