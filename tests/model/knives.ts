import type { Knife, Comparison } from '../../src/model/index.ts';

/** An invented knife, to change in tests. */
export const plover: Knife = {
  id: 'plover',
  name: 'Plover',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 15 },
  hrc: 58,
  carbideVolPercent: { CrC: 6 },
};

/** Work of which everything is known, and one structure held, so that no band comes from it. */
export const exact = {
  friction: 0.25,
  assumptions: {
    angleExponent: 1.3,
    thicknessExponent: 0.5,
    finishExponent: 0.3,
    hardnessExponent: 1.2,
    lifeExponent: 1.5,
    wedgingShare: 0.35,
    limitPower: 1.5,
    residualCv: 0,
    structureWeights: [1, 0, 0],
  },
} satisfies Partial<Comparison>;
