import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import type { Knife, Comparison } from '../../src/model/index.ts';
import { fisherTail, normalQuantile, studentCdf } from '../../src/model/statistics/distributions.ts';
import { lognormalFit } from '../../src/model/runs/lognormal.ts';
import { quantiles } from '../../src/model/statistics/quantiles.ts';
import { checkQuantity } from '../../src/model/quantities.ts';

/** Invented, as every knife of these tests. */
const plover: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 58,
  carbideVolPercent: { CrC: 6 },
};
const loft: Comparison = { knives: [plover, { ...plover, id: 'dunlin', angleDeg: 15 }], baseline: 'plover' };
const section = { form: 'hollow', spineMm: 3, heightMm: 25, edgeMm: 0.5 } as const;

/** What cannot be computed, and the whole of what is said of it: parameter, value, and what would be taken. */
const refusals: [what: string, ask: () => unknown, says: string][] = [
  [
    'an element without an atomic weight',
    () => model.carbonWeightPercent('UC'),
    'formula UC: element U is not one of C, Fe, Cr, V, Nb, Mo, W, N',
  ],
  ...['', 'Fe3C-', '3', '(Fe3C', 'fe3c'].map((formula): [string, () => unknown, string] => [
    `the formula “${formula}”`,
    () => model.carbonWeightPercent(formula),
    `formula ${formula} is not a chemical formula such as Cr7C3`,
  ]),
  [
    'a rich phase below the poor one',
    () => model.leverRule({ whole: 0.4, poor: 6.7, rich: 0.022 }),
    'rich phase 0.022 is not above the poor phase 6.7',
  ],
  [
    'a carbide the regression does not know',
    () => model.compare({ ...loft, knives: [{ ...plover, carbideVolPercent: { WC: 3 } as object }] }),
    'plover: carbide kind WC is not one of Fe3C, CrC, CrVC, MC, M6C, MN, CrN',
  ],
  [
    'an id that stands twice',
    () => model.compare({ ...loft, knives: [...loft.knives, { ...plover, id: 'dunlin' }] }),
    'knife id dunlin stands twice in the comparison: every id is used once',
  ],
  [
    'a baseline that is no knife',
    () => model.compare({ ...loft, baseline: 'heron' }),
    'baseline heron is not among the knives: plover, dunlin',
  ],
  [
    'weights of the structures that are all 0',
    () => model.compare({ ...loft, assumptions: { structureWeights: [0, 0, 0] } }),
    'structure weights 0, 0, 0 add up to 0, not to a number above 0',
  ],
  [
    'a weight below 0',
    () => model.compare({ ...loft, assumptions: { structureWeights: [1, -1, 1] } }),
    'weight of added -1 is not between 0 and 1000000',
  ],
  [
    'a weight that is no number',
    () => model.compare({ ...loft, assumptions: { structureWeights: [1, 1, NaN] } }),
    'weight of toLimit NaN is not between 0 and 1000000',
  ],
  [
    'an outcome there is none of',
    () => model.compare({ ...loft, outcome: 'so far' as 'end-point' }),
    'outcome so far is not one of end-point, fixed-strokes',
  ],
  [
    'a wedge that cannot be driven',
    () =>
      model.compare({
        ...loft,
        knives: [{ ...plover, angleDeg: 44 }, ...loft.knives.slice(1)],
        friction: 1.2,
      }),
    'plover: edge angle 44° and friction 1.2 make a wedge that cannot be driven: angle and friction angle together must stay below 90°',
  ],
  [
    'a reading there is none of',
    () => model.compare(loft, { reading: 'far' as 'careful' }),
    'reading far is not one of quick, careful',
  ],
  [
    'a knife to even up that is not there',
    () => model.makeEqual(loft, 'heron', []),
    'knife heron is not among the knives: plover, dunlin',
  ],
  [
    'an attribute to even up that is none',
    () => model.makeEqual(loft, 'dunlin', ['colour' as 'hrc']),
    'attribute colour is not one of angleDeg, edgeMm, grind, finish, hrc, carbideVolPercent, geometry, finish, steel',
  ],
  [
    'a curve of no knife',
    () => model.ratioCurve(loft, { knife: 'heron', against: 'dunlin', attribute: 'hrc', values: [60] }),
    'knife heron is not among the knives: plover, dunlin',
  ],
  [
    'a curve of what cannot be compared',
    () =>
      model.ratioCurve(
        { ...loft, friction: 3 },
        { knife: 'plover', against: 'dunlin', attribute: 'hrc', values: [] },
      ),
    'friction coefficient 3 is not between 0 and 2',
  ],
  ['a grit scale', () => model.gritTable('ANSI' as 'JIS'), 'grit scale ANSI is not one of '],
  [
    'a band of no knife',
    () => model.firstOrderBand(loft, 'heron'),
    'knife heron is not among the knives: plover, dunlin',
  ],
  [
    'a bevel as thick as both its flanks',
    () => model.edgeAngleDeg({ thicknessMm: 2, slantWidthMm: 1 }),
    'bevel thickness 2 mm is not below twice the bevel width 1 mm',
  ],
  [
    'a short bevel as thick as both its flanks',
    () => model.edgeAngleDeg({ thicknessMm: 1, slantWidthMm: 0.5 }),
    'bevel thickness 1 mm is not below twice the bevel width 0.5 mm',
  ],
  [
    'a form of grind',
    () => model.checkSection({ ...section, form: 'wavy' as 'flat' }),
    'grind form wavy is not one of flat, hollow, convex',
  ],
  [
    'a hollow without a radius',
    () => model.checkSection(section),
    'grind radius is not given: a hollow grind needs one of at least half its height, 12.5 mm',
  ],
  [
    'the sag of a face without a radius',
    () => model.flankSagMm(section, 5),
    'grind radius is not given: a hollow grind needs one of at least half its height, 12.5 mm',
  ],
  [
    'a radius that does not reach over the grind',
    () => model.checkSection({ ...section, radiusMm: 12 }),
    'grind radius 12 mm is not at least half the grind height, 12.5 mm',
  ],
  [
    'a hollow ground through',
    () => model.checkSection({ ...section, radiusMm: 30 }),
    'grind radius 30 mm with height 25 mm grinds the blade through: at ',
  ],
  [
    'an edge thicker than the spine',
    () => model.checkSection({ ...section, edgeMm: 3.1 }),
    'thickness behind the edge 3.1 mm is not at most the spine thickness 3 mm',
  ],
  [
    'a regrind to a steeper bevel',
    () => model.steelRemovedMm2({ edgeMm: 0.5, fromAngleDeg: 15, toAngleDeg: 16 }),
    'angle after 16° is not at most the angle before, 15°: a steeper bevel is a microbevel, not a regrind',
  ],
  ['a correlation', () => model.firstOrder([{ u: 1 }], 1.1), 'correlation 1.1 is not between -1 and 1'],
  [
    'an uncertainty below 0',
    () => model.firstOrder([{ u: 1 }, { u: -1 }]),
    'u of input 2 -1 is not a finite number of 0 or above',
  ],
  [
    'a sensitivity without end',
    () => model.firstOrder([{ u: 1, sensitivity: Infinity }]),
    'sensitivity of input 1 Infinity is not a finite number',
  ],
  [
    'three inputs that all go against each other',
    () => model.firstOrder([{ u: 1 }, { u: 1 }, { u: 1 }], -0.6),
    'correlation -0.6 is too far below 0 for 3 inputs',
  ],
  [
    'quantiles of nothing',
    () => quantiles(new Float64Array(), [0.5]),
    'values are none, at least 1 is needed',
  ],
  ['a share above 1', () => quantiles(Float64Array.of(1, 2), [1.5]), 'share 1.5 is not between 0 and 1'],
  [
    'a quantity that is none',
    () => checkQuantity('hardness', null as unknown as number, { low: 20, high: 68, unit: ' HRC' }),
    'hardness null is not a number between 20 HRC and 68 HRC',
  ],
  [
    'a text for a quantity of any size',
    () => checkQuantity('hardness', '58' as unknown as number),
    'hardness 58 is not a number',
  ],
  [
    'a range that runs backwards',
    () => checkQuantity('hardness', { unknown: true, low: 60, high: 50 }),
    'hardness range 60–50 is not from a lower to a higher number',
  ],
  [
    'a range without end',
    () => checkQuantity('hardness', { unknown: true, low: 60, high: Infinity }, { unit: ' HRC' }),
    'hardness range 60–Infinity HRC is not from a lower to a higher number',
  ],
  [
    'a range that begins nowhere',
    () => checkQuantity('hardness', { unknown: true, low: -Infinity, high: 60 }),
    'hardness range -Infinity–60 is not from a lower to a higher number',
  ],
  [
    'a ± below 0',
    () => checkQuantity('hardness', { value: 58, plusMinus: -1 }, { unit: ' HRC' }),
    'hardness ± -1 HRC is not a number of 0 or more',
  ],
  [
    'a ± without end',
    () => checkQuantity('hardness', { value: 58, plusMinus: Infinity }),
    'hardness ± Infinity is not a number of 0 or more',
  ],
  [
    'a shape there is none of',
    () => checkQuantity('hardness', { value: 58, plusMinus: 1, shape: 'round' as 'normal' }),
    'hardness shape round is not one of uniform, triangular, normal',
  ],
  ['a value that is no number', () => checkQuantity('hardness', NaN), 'hardness NaN is not a finite number'],
  [
    'a middle outside the range',
    () => checkQuantity('hardness', { value: 70, plusMinus: 9 }, { low: 20, high: 68, unit: ' HRC' }),
    'hardness 70 HRC is not between 20 HRC and 68 HRC',
  ],
  [
    'a ± that leaves the range by more than a quarter of it',
    () => checkQuantity('CrC volume', { value: 22, plusMinus: 40 }, { low: 0, high: 60, unit: '%' }),
    'CrC volume -18 to 62% leaves 0% to 60% by more than a quarter of that range',
  ],
  [
    'a ± that leaves the range above by more than a quarter of it',
    () => checkQuantity('hardness', { value: 60, plusMinus: 21 }, { low: 20, high: 68, unit: ' HRC' }),
    'hardness 39 to 81 HRC leaves 20 HRC to 68 HRC by more than a quarter of that range',
  ],
  [
    'an unknown whose range leaves what is taken by more than a quarter of it',
    () => checkQuantity('hardness', { unknown: true, low: 0, high: 68 }, { low: 20, high: 68, unit: ' HRC' }),
    'hardness 0 to 68 HRC leaves 20 HRC to 68 HRC by more than a quarter of that range',
  ],
  [
    'a structure there is none of',
    () =>
      model.whatItTakes(loft, {
        knife: 'plover',
        against: 'dunlin',
        attribute: 'hrc',
        structure: 'divided' as 'added',
      }),
    'structure divided is not one of multiplied, added, toLimit',
  ],
  [
    'a dispute there is none of',
    () => model.ratioUnder(loft, 'dunlin', { stone: 'wet' } as object),
    'position stone: wet is not one of ',
  ],
  [
    'a solution against no knife',
    () => model.whatItTakes(loft, { knife: 'plover', against: 'heron', attribute: 'hrc' }),
    "against heron is not one of the comparison's knives",
  ],
  ['a probability of 0', () => normalQuantile(0), 'probability 0 is not between 0 and 1, both excluded'],
  ['a probability of 1', () => normalQuantile(1), 'probability 1 is not between 0 and 1, both excluded'],
  ['no degrees of freedom', () => studentCdf(1, 0), 'degrees of freedom 0 is not a number above 0'],
  [
    'freedom without end',
    () => studentCdf(1, Infinity),
    'degrees of freedom Infinity is not a number above 0',
  ],
  ['an F below 0', () => fisherTail(-1, 2, 2), 'f -1 is not a number of 0 or above'],
  [
    'a scatter without freedom',
    () => model.equivalencePower(1, 1, 0.5, 0.05),
    'df 0.5 is not a number of 1 or above',
  ],
  ['no scatter at all', () => model.equivalenceRunsNeeded({ cv: 0 }), 'cv 0 is not above 0 and up to 5'],
  [
    'bounds on one side of 1',
    () => model.equivalenceRunsNeeded({ cv: 0.2, alikeWithin: { low: 1.1, high: 1.2 } }),
    'alikeWithin 1.1 to 1.2 does not lie around 1',
  ],
  [
    'a truth that is not alike',
    () => model.equivalenceRunsNeeded({ cv: 0.2, ratio: 1.25 }),
    'ratio 1.25 is not between 0.8 and 1.25, both excluded',
  ],
  [
    'a certain proof',
    () => model.equivalenceRunsNeeded({ cv: 0.2, power: 1 }),
    'power 1 is not between 0 and 1, both excluded',
  ],
  [
    'a level above a half',
    () => model.equivalenceRunsNeeded({ cv: 0.2, alpha: 0.6 }),
    'alpha 0.6 is not between 0.000001 and 0.5',
  ],
  ['a scatter below 0', () => model.logSd(-0.1), 'cv -0.1 is not a number of 0 or above'],
  ['an effect below 0', () => model.twoSamplePower(-1, 5), 'effect -1 is not a number of 0 or above'],
  [
    'an effect without end',
    () => model.twoSamplePower(Infinity, 5),
    'effect Infinity is not a number of 0 or above',
  ],
  ['half a run', () => model.twoSamplePower(1, 2.5), 'runs a knife 2.5 is not a whole number of 2 or above'],
  ['a level of 0', () => model.twoSamplePower(1, 2, 0), 'alpha 0 is not between 0.000001 and 0.5'],
  ['a scatter without end', () => model.logSd(Infinity), 'cv Infinity is not a number of 0 or above'],
  ['a paired effect below 0', () => model.pairedPower(-1, 5, 0), 'effect -1 is not a number of 0 or above'],
  [
    'a paired effect without end',
    () => model.pairedPower(Infinity, 5, 0),
    'effect Infinity is not a number of 0 or above',
  ],
  ['one pair', () => model.pairedPower(1, 1, 0), 'pairs 1 is not a whole number of 2 or above'],
  ['half a pair', () => model.pairedPower(1, 2.5, 0), 'pairs 2.5 is not a whole number of 2 or above'],
  ['pairs that are one', () => model.pairedPower(1, 5, 1), 'correlation 1 is not from -1 to below 1'],
  [
    'a correlation below −1',
    () => model.pairedPower(1, 5, -1.1),
    'correlation -1.1 is not from -1 to below 1',
  ],
  ['a level of pairs of 0', () => model.pairedPower(1, 5, 0, 0), 'alpha 0 is not between 0.000001 and 0.5'],
  ['a scatter past 5', () => model.runsNeeded({ cv: 5.1, ratio: 2 }), 'cv 5.1 is not above 0 and up to 5'],
  [
    'a ratio without end',
    () => model.runsNeeded({ cv: 0.2, ratio: Infinity }),
    'ratio Infinity is not a number above 0 other than 1',
  ],
  [
    'a ratio of 0',
    () => model.runsNeeded({ cv: 0.2, ratio: 0 }),
    'ratio 0 is not a number above 0 other than 1',
  ],
  [
    'a power no better than chance',
    () => model.runsNeeded({ cv: 0.2, ratio: 1.2, power: 0.05 }),
    'power 0.05 is not between alpha 0.05 and 1',
  ],
  [
    'more runs than anyone cuts',
    () => model.runsNeeded({ cv: 1, ratio: 1.0001 }),
    'ratio 1.0001 is too close to 1 for this scatter: more than 1000000 runs a knife',
  ],
  [
    'more pairs than anyone cuts',
    () => model.pairsNeeded({ cv: 1, ratio: 1.0001, correlation: 0 }),
    'ratio 1.0001 is too close to 1 for this scatter: more than 1000000 runs a knife',
  ],
  ['one run a knife', () => model.twoSamplePower(1, 1), 'runs a knife 1 is not a whole number of 2 or above'],
  [
    'means of runs that do not scatter',
    () => model.ratioOfMeans([2, 2], [3, 3]),
    'the scatter of x and y is 0, at least one series must scatter for an interval',
  ],
  [
    'a life that ends before it begins',
    () => lognormalFit([{ low: 5, high: 1 }], [[1]]),
    'life 0 from 5 to 1 is not in order from 0 upwards',
  ],
  [
    'as many groups as runs that ended',
    () =>
      lognormalFit(
        [1, 2].map((life) => ({ low: life, high: life })),
        [
          [1, 0],
          [0, 1],
        ],
      ),
    '2 of 2 runs ended, at least 3 must reach their stop',
  ],
  [
    'groups that are the same',
    () =>
      lognormalFit(
        [1, 2, 4].map((life) => ({ low: life, high: life })),
        [
          [1, 1],
          [1, 1],
          [1, 1],
        ],
      ),
    'the groups of the lives cannot be told apart from each other',
  ],
  [
    'a reading that is no number',
    () => model.fitPower([1, 2, 3], [1, NaN, 3]),
    'y[1] NaN is not a finite number',
  ],
  [
    'more rows than a sheet has codes for',
    () =>
      model.runSheet({ knives: ['a', 'b', 'c', 'd', 'e', 'f'], runs: 1000, batches: ['coil 1'], seed: 1 }),
    'runs 1000 of 6 knives are 6000 rows, at most 5000',
  ],
];

describe('what cannot be computed is refused by name, value and range', () => {
  test.each(refusals)('%s', (_, ask, says) => {
    expect(ask).toThrow(RangeError);
    // Said whole: nothing before it, and nothing missing of what the reader needs.
    expect(ask).toThrow(new RegExp(`^${says.replaceAll(/[\\^$.*+?()[\]{}|]/g, '\\$&')}`));
  });
});
