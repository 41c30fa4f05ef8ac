import type { Control } from '../base/controls.ts';
import { found } from '../../comparison/found.ts';
import { whole } from '../../scene/show.ts';
import { evenShares } from './push.ts';

/** How much of the baseline's push is wedge; thickness and grind keep their proportion to each other. */
export const wedgeShare: Control = {
  label: ({ knives, baseline }) => `Wedge, in the push of ${found(knives, baseline, 'baseline').name}`,
  min: 5,
  max: 90,
  step: 1,
  unit: ' % of it',
  read: ({ assumptions: { rivalShares = evenShares } }) => {
    const { wedge, thickness, grind } = rivalShares;
    return whole((100 * wedge) / (wedge + thickness + grind));
  },
  write: (entry, value) => {
    const { rivalShares: { thickness, grind } = evenShares, ...others } = entry.assumptions;
    const rest = thickness + grind;
    // All of it was wedge: then what is left again is halved.
    const part = rest > 0 ? thickness / rest : 0.5;
    // A third of it, the rest halved, is what is assumed where nothing is given.
    if (value === 33 && part === 0.5) return { ...entry, assumptions: others };
    const left = 1 - value / 100;
    return {
      ...entry,
      assumptions: {
        ...others,
        rivalShares: { wedge: value / 100, thickness: left * part, grind: left * (1 - part) },
      },
    };
  },
};
