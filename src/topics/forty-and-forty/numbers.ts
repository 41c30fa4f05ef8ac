import { additiveGuess, compound } from '../../model/index.ts';
import type { NumberOf } from '../base/numbers.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { fixed, roundedPercent, signedPercent, times } from '../../scene/show.ts';

/** The numbers of a chain of percentages: product, sum and the gap between them. */
export const percentagesNumbers: Record<string, NumberOf> = {
  'percentages.list': (scene) => percentagesOf(scene).map(roundedPercent).join(', '),
  'percentages.count': (scene) => String(percentagesOf(scene).length),
  'percentages.first': (scene) => roundedPercent(percentagesOf(scene)[0] ?? 0),
  'percentages.product': (scene) => times(compound(percentagesOf(scene))),
  'percentages.sum': (scene) => times(additiveGuess(percentagesOf(scene))),
  'percentages.product.more': (scene) => signedPercent(compound(percentagesOf(scene)) - 1),
  'percentages.sum.more': (scene) => signedPercent(additiveGuess(percentagesOf(scene)) - 1),
  'percentages.gap': (scene) =>
    `${fixed((compound(percentagesOf(scene)) - additiveGuess(percentagesOf(scene))) * 100, 0)} percentage points`,
};
