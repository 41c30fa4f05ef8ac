import type { Comparison, Knife } from '../../src/model/index.ts';

/** The invented rigging loft, as content/comparisons/loft.yaml has it: all checks of whole comparisons are made on it. */
const ploverLoft: Knife = {
  id: 'plover',
  name: 'Plover',
  angleDeg: { value: 24, plusMinus: 1 },
  edgeMm: { value: 0.6, plusMinus: 0.03 },
  finish: { scale: 'FEPA-P', grit: 1200 },
  grind: { form: 'flat', spineMm: 3, heightMm: 14 },
  hrc: { value: 57, plusMinus: 1 },
  carbideVolPercent: { CrC: 4 },
};
const dunlinLoft: Knife = {
  id: 'dunlin',
  name: 'Dunlin',
  angleDeg: { value: 14, plusMinus: 1 },
  edgeMm: { value: 0.25, plusMinus: 0.02 },
  finish: { scale: 'FEPA-P', grit: 220 },
  grind: { form: 'hollow', spineMm: 2.6, heightMm: 18, radiusMm: 150 },
  hrc: { value: 61, plusMinus: 1 },
  // D2, 11–15% (memory), ±30%.
  carbideVolPercent: { CrC: { value: 13, plusMinus: 3.9 } },
};

/** Dunlin against Plover, rope in a slice. */
export const loft: Comparison = {
  knives: [ploverLoft, dunlinLoft],
  baseline: 'plover',
  contactDepthMm: 8,
  slicePush: 3,
  friction: { value: 0.25, plusMinus: 0.15 },
};
