import type { KnifeEntry, ComparisonEntry } from './entry.ts';

const same = (id: string): KnifeEntry => ({
  id,
  name: id,
  state: 'not recorded',
  angle: { deg: 20 },
  edgeMm: 0.4,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 15 },
  hrc: 60,
  carbide: { volPercent: {} },
});

/**
 * A comparison for pages that cover percentages alone: two knives alike in everything, which no such page shows, and
 * the chain of percentages it does show.
 */
export const plainEntry = (faceValues: readonly number[]): ComparisonEntry => ({
  title: 'percentages alone',
  invented: true,
  knives: [same('one'), same('other')],
  subject: 'one',
  baseline: 'other',
  reading: 'careful',
  work: 'rope',
  slicePush: 3,
  contactDepthMm: 8,
  friction: 0.3,
  assumptions: {},
  lengthUnit: 'mm',
  madeEqual: [],
  faceValues: [...faceValues],
});
