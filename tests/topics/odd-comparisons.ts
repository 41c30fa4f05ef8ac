import type { KnifeEntry, ComparisonEntry } from '../../src/comparison/entry.ts';

/**
 * Comparisons that make sentences and drawings stumble. All are invented, as is every knife in them. What the site says
 * and draws of each is kept in the folder `odd-comparisons`, to be read by a person.
 */

/** The knife every comparison varies. */
const plain = {
  id: 'plover',
  name: 'Plover',
  state: 'not recorded',
  angle: { deg: 20 },
  edgeMm: 0.4,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 16 },
  hrc: 59,
  carbide: { volPercent: { CrC: 6 } },
} satisfies KnifeEntry;

type Change = Partial<Omit<KnifeEntry, 'id'>>;

const dunlin = (change: Change = {}): KnifeEntry => ({ ...plain, id: 'dunlin', name: 'Dunlin', ...change });

/** Dunlin, changed, against Plover, changed, in rope by the careful estimate unless something else is set. */
export const pair = (
  subject: Change,
  baseline: Change = {},
  rest: Partial<Omit<ComparisonEntry, 'knives' | 'baseline' | 'subject'>> = {},
): ComparisonEntry => ({
  title: 'Two knives of the loft',
  invented: true,
  knives: [{ ...plain, ...baseline }, dunlin(subject)],
  baseline: 'plover',
  subject: 'dunlin',
  reading: 'careful',
  work: 'rope',
  slicePush: 3,
  contactDepthMm: 8,
  friction: 0.25,
  assumptions: {},
  lengthUnit: 'mm',
  madeEqual: [],
  faceValues: null,
  ...rest,
});

const better: Change = {
  angle: { deg: 14 },
  edgeMm: 0.25,
  finish: { scale: 'FEPA-P', grit: 220 },
  hrc: 61,
  carbide: { designation: 'AISI D2' },
};
const worse: Change = {
  angle: { deg: 26 },
  edgeMm: 0.7,
  finish: { scale: 'FEPA-P', grit: 1200 },
  grind: { form: 'convex', spineMm: 4, heightMm: 14, radiusMm: 60 },
  hrc: 56,
  carbide: { volPercent: { Fe3C: 1 } },
};
const unknown = (low: number, high: number) => ({ unknown: true as const, low, high });
const nothingKnown: Change = {
  angle: { deg: unknown(10, 25) },
  edgeMm: unknown(0.2, 0.8),
  finish: { um: unknown(10, 80) },
  hrc: unknown(54, 64),
  carbide: { volPercent: { CrC: unknown(0, 16) } },
  toughness: unknown(5, 30),
};

const flock = ['Curlew', 'Avocet', 'Knot', 'Ruff', 'Whimbrel', 'Sanderling'].map(
  (name, index): KnifeEntry => ({
    ...plain,
    id: name.toLowerCase(),
    name,
    angle: { deg: 12 + 3 * index },
    hrc: 57 + index,
  }),
);

export const oddComparisons: Record<string, ComparisonEntry> = {
  equal: pair({}),
  'equal-quick': pair({}, {}, { reading: 'quick' }),
  microbevel: pair({ angle: { deg: 12 }, microbevelDeg: 20 }),
  'microbevel-on-both': pair({ angle: { deg: 12 }, microbevelDeg: 16 }, { microbevelDeg: 24 }),
  convex: pair({ grind: { form: 'convex', spineMm: 3, heightMm: 16, radiusMm: 80 } }),
  'hollow-with-waist': pair({
    grind: { form: 'hollow', spineMm: 3, heightMm: 22, radiusMm: 80 },
    edgeMm: 0.8,
  }),
  'steel-not-known': pair({
    ...better,
    hrc: unknown(54, 64),
    carbide: { volPercent: { CrC: unknown(0, 16) } },
  }),
  'nothing-known': pair(nothingKnown),
  'nothing-known-of-either': pair(nothingKnown, nothingKnown),
  'loses-everywhere': pair(worse),
  'wins-everywhere': pair(better, worse),
  cancelling: pair({ angle: { deg: 15 }, finish: { scale: 'FEPA-P', grit: 1500 } }),
  'estimates-disagree': pair({ angle: { deg: 14 }, finish: { scale: 'FEPA-P', grit: 2000 } }),
  'too-soft-for-the-regression': pair({ ...better, hrc: 46 }),
  'too-hard-for-the-regression': pair({ ...better, hrc: 68 }),
  'refused-carbide-quick': pair({ ...better, hrc: 46 }, {}, { reading: 'quick' }),
  'at-the-floor': pair({ angle: { deg: 5 } }),
  'looks-included': pair({ angle: { deg: 40, perSide: true } }),
  'measured-with-a-caliper': pair({
    angle: { bevelMm: 0.5, slantWidthMm: 1.2, plusMinus: 0.02 },
    edgeMm: 0.5,
  }),
  'section-not-known': pair(
    {
      angle: { bevelMm: unknown(0.15, 0.9), slantWidthMm: 1.2 },
      grind: {
        form: 'hollow',
        spineMm: unknown(1.5, 5),
        heightMm: unknown(8, 20),
        radiusMm: unknown(100, 400),
      },
    },
    { grind: { form: 'flat', spineMm: { value: 3, plusMinus: 0.2 }, heightMm: { value: 16, plusMinus: 2 } } },
    { contactDepthMm: unknown(2, 30) },
  ),
  'along-the-edge': pair({
    angle: { deg: { heel: 18, middle: 15, tip: 13 } },
    edgeMm: { heel: 0.5, middle: 0.4, tip: 0.3 },
  }),
  'two-grit-scales': pair(
    { finish: { scale: 'JIS', grit: 8000 } },
    { finish: { scale: 'FEPA-P', grit: 80 } },
  ),
  'thick-against-thin': pair({ edgeMm: 2 }, { edgeMm: 0.05 }),
  'eight-knives': {
    ...pair({ angle: { deg: 15 } }),
    title: 'Eight knives',
    knives: [plain, dunlin({ angle: { deg: 15 } }), ...flock],
  },
  'long-names': pair(
    {
      ...better,
      name: 'The second-best knife of the bench by the window, reground twice and then once again'.slice(
        0,
        80,
      ),
    },
    { name: 'Supercalibratedsplicingandseizingtwinecutterwithoutasinglespaceinsideitslongname'.slice(0, 80) },
  ),
  'right-to-left': pair({ ...better, name: 'סכין החבל' }, { name: 'سكين الحبال' }),
  'toughness-known': pair({ ...better, toughness: 12 }, { toughness: 24 }, { work: 'boards' }),
  'toughness-of-one': pair({ ...better, toughness: 12 }, {}, { work: 'boards' }),
  'prying-thou': pair(better, {}, { work: 'prying', lengthUnit: 'thou' }),
  'waist-quick': pair(
    { ...better, grind: { form: 'hollow', spineMm: 2.6, heightMm: 18, radiusMm: 90 } },
    {},
    { reading: 'quick' },
  ),
  'geometry-made-equal': pair(better, {}, { madeEqual: ['angleDeg', 'edgeMm', 'grind'] }),
  'all-made-equal': pair(
    better,
    {},
    { madeEqual: ['angleDeg', 'edgeMm', 'finish', 'grind', 'hrc', 'carbideVolPercent'] },
  ),
  'face-values': pair(better, {}, { faceValues: [40, 40, -30] }),
  'much-slicing': pair(
    { angle: { deg: 10 } },
    {},
    { slicePush: 10, assumptions: { structureWeights: [8, 1, 1] } },
  ),
  'friction-not-known': pair(better, {}, { slicePush: 0, friction: unknown(0.05, 0.6) }),
  'below-the-contact-depth': pair(
    { grind: { form: 'flat', spineMm: 3, heightMm: 5 } },
    {},
    { contactDepthMm: 12 },
  ),
};
