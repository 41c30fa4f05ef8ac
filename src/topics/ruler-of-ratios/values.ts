import { logShares, signedShares } from '../../model/index.ts';
import type { Row } from '../../model/index.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { effectsIn, productOf } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { roundedPercent, times } from '../../scene/show.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';

/** A factor with the name readers know it by. */
export interface Named {
  name: string;
  factor: number;
}

/** One effect of a chain, and what part of the whole is called its own, by the ruler and by what it added. */
export interface Effect extends Named {
  /** A, B, C … in the order of the chain. */
  letter: string;
  /** Where it begins and ends, times the start. */
  from: number;
  to: number;
  /** How many steps of a tenth more make it; below 0, steps back. */
  steps: number;
  /** Its part of the length on the ruler; where the effects cancel, of all the lengths laid out, with its sign. */
  share: number;
  /** What it added in this order, as a part of all that was added; nothing where the effects cancel. */
  gain: number | null;
  /** The least and the most that part can be in any order. */
  least: number | null;
  most: number | null;
}

/** Effects laid end to end. */
export interface Ruler {
  effects: Effect[];
  product: number;
  steps: number;
  /** The effects nearly undo each other: the ruler's shares are signed parts of all the lengths, and there is no gain. */
  cancel: boolean;
}

/** How many steps of a tenth more make a factor. */
export const stepsOf = (factor: number): number => Math.log(factor) / Math.log(1.1);

const sharesOf = (factors: readonly number[]): { shares: number[]; cancel: boolean } =>
  orRefusal(
    () => ({ shares: logShares(factors), cancel: false }),
    () => ({ shares: signedShares(factors), cancel: true }),
  );

/** Several factors in the order given; those that read as one have next to no length and are left out. */
export function layOut(named: readonly Named[]): Ruler {
  const effects = effectsIn(named);
  const product = productOf(effects);
  const { shares, cancel } = sharesOf(effects.map(({ factor }) => factor));
  // Added last, after all that raise and none that lower, an effect adds most; the other way round, least.
  const raised = productOf(effects.filter(({ factor }) => factor > 1));
  const lowered = productOf(effects.filter(({ factor }) => factor < 1));
  let reached = 1;
  return {
    effects: effects.map(({ name, factor }, index) => {
      const from = reached;
      reached *= factor;
      const part = (before: number) => (cancel ? null : (before * (factor - 1)) / (product - 1));
      const ends = [factor > 1 ? raised / factor : raised, factor < 1 ? lowered / factor : lowered]
        .map(part)
        .filter((end) => end !== null);
      return {
        name,
        factor,
        letter: String.fromCharCode(65 + index),
        from,
        to: reached,
        steps: stepsOf(factor),
        share: shares[index] ?? 0,
        gain: part(from),
        least: ends.length > 0 ? Math.min(...ends) : null,
        most: ends.length > 0 ? Math.max(...ends) : null,
      };
    }),
    product,
    steps: stepsOf(product),
    cancel,
  };
}

/** The terms of the careful estimate, laid out. */
export const rulerOfTerms = (row: Row): Ruler =>
  layOut(row.terms.map(({ id, factor }) => ({ name: id, factor })));

/** The percentages typed, laid out; where none is typed, the terms of the careful estimate. */
export const rulerOf = (scene: Scene): Ruler =>
  scene.entry.faceValues === null
    ? rulerOfTerms(scene.row.careful)
    : layOut(
        percentagesOf(scene).map((percent) => ({
          name: roundedPercent(percent),
          factor: 1 + percent / 100,
        })),
      );

/** The effect that reaches furthest on the ruler, either way; the first of equals. */
export const largest = ({ effects }: Ruler): Effect | undefined =>
  effects.reduce<Effect | undefined>(
    (best, effect) => (best && Math.abs(best.steps) >= Math.abs(effect.steps) ? best : effect),
    undefined,
  );

/** The effect with the least length on the ruler; the last of equals. */
export const smallest = ({ effects }: Ruler): Effect | undefined =>
  effects.reduce<Effect | undefined>(
    (best, effect) => (best && Math.abs(best.steps) < Math.abs(effect.steps) ? best : effect),
    undefined,
  );

/** An effect's name with its factor, where the name does not say it. */
export const fullName = ({ name, factor }: Named): string =>
  name.endsWith('%') ? name : `${name} ${times(factor)}`;
