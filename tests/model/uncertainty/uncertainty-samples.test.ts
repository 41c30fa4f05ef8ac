import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/model/chain/compare.ts';
import { createMemory, noMemory } from '../../../src/model/chain/memory.ts';
import { structures } from '../../../src/model/chain/structures.ts';
import { createPredictor } from '../../../src/model/uncertainty/predictor.ts';
import { runOf, type Run } from '../../../src/model/uncertainty/sampled-run.ts';
import type { Knife, Comparison } from '../../../src/model/types.ts';
import { predict } from '../../../src/model/uncertainty/predict.ts';
import { at } from '../../../src/model/chain/values.ts';
import { quantiles } from '../../../src/model/statistics/quantiles.ts';
import { drawnComparison } from '../drawn-comparison.ts';

// Invented knives of an invented harbour rigging loft.
const within = (value: number, plusMinus: number) => ({ value, plusMinus });
const plover: Knife = {
  id: 'plover',
  angleDeg: within(20, 2),
  edgeMm: within(0.5, 0.05),
  finish: { um: within(15, 3) },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: { value: 58, plusMinus: 1, shape: 'normal' },
  carbideVolPercent: { CrC: within(4, 1) },
};
const curlew: Knife = {
  ...plover,
  id: 'curlew',
  angleDeg: { unknown: true, low: 9, high: 16 },
  microbevelAngleDeg: within(16, 2),
  finish: { scale: 'JIS', grit: 1000 },
  grind: { form: 'hollow', spineMm: 3, heightMm: 20, radiusMm: 160 },
  hrc: within(61, 2),
  carbideVolPercent: { CrC: within(8, 2), MC: 3 },
};
const avocet: Knife = {
  ...plover,
  id: 'avocet',
  grind: { form: 'convex', spineMm: 4, heightMm: 25, radiusMm: 90 },
  edgeMm: { value: 0.4, plusMinus: 0.1, shape: 'triangular' },
};
const loft: Comparison = { knives: [plover, curlew, avocet], baseline: 'plover' };
const awkward: Record<string, Comparison> = {
  'flat, hollow and convex, with a microbevel': loft,
  'sliced, deep, under gauges that read high or low': {
    ...loft,
    slicePush: 3,
    contactDepthMm: 30,
    friction: within(0.4, 0.2),
    gaugeBias: { angleDeg: 1.5, edgeMm: 0.05, hrc: 1 },
  },
  'beyond the published line, soft and hard': {
    ...loft,
    knives: [{ ...plover, hrc: within(44, 3) }, { ...curlew, hrc: within(67, 1) }, avocet],
    gaugeBias: { hrc: 1 },
  },
  'where the published line bends': {
    ...loft,
    knives: [{ ...plover, hrc: within(50.5, 2), carbideVolPercent: { Fe3C: within(1, 1) } }, curlew],
  },
  'a fixed number of strokes, one structure more likely than the others': {
    ...loft,
    outcome: 'fixed-strokes',
    assumptions: { structureWeights: [1, 1, 4], wedgingShare: within(0.6, 0.3), limitPower: 2 },
  },
  'hardness known and beyond the line, what holds there not': {
    ...loft,
    knives: [
      { ...plover, hrc: 45, carbideVolPercent: {} },
      { ...curlew, hrc: 68, carbideVolPercent: { MC: 3 } },
    ],
    assumptions: { residualCv: 0 },
  },
  'nearly as much carbide as there is room for': {
    ...loft,
    knives: [plover, { ...avocet, carbideVolPercent: { CrC: within(30, 5), MC: within(27, 5) } }],
  },
  'an edge nearly as thick as its spine': {
    ...loft,
    knives: [plover, { ...curlew, edgeMm: within(2.6, 0.8) }],
  },
};
awkward['grinds measured roughly, or not at all, and nobody knows how deep the cut is'] = {
  ...loft,
  contactDepthMm: { unknown: true, low: 2, high: 30 },
  knives: [
    {
      ...plover,
      grind: { form: 'flat', spineMm: within(3, 0.4), heightMm: { unknown: true, low: 8, high: 40 } },
    },
    {
      ...curlew,
      grind: { form: 'hollow', spineMm: within(3, 0.2), heightMm: within(20, 2), radiusMm: within(160, 90) },
    },
    {
      ...avocet,
      grind: {
        form: 'convex',
        spineMm: 4,
        heightMm: within(25, 3),
        radiusMm: { unknown: true, low: 40, high: 400 },
      },
    },
  ],
};
const samples = 400;
const logRatio = ({ lives }: Run, k: number, i: number): number =>
  at(lives.knives[k] ?? 0, i) - at(lives.knives[0] ?? 0, i);

describe('every sample', () => {
  it.each(Object.entries(awkward))('is a total of compare on what was drawn: %s', (_what, comparison) => {
    const run = runOf(comparison, samples, 3, noMemory);
    const taken = new Set<string>();
    for (let i = 0; i < samples; i += 1) {
      const structure = structures[at(run.lives.structure, i)] ?? 'multiplied';
      taken.add(structure);
      compare(drawnComparison(comparison, run, i)).rows.forEach((row, k) => {
        const residual = at(run.lives.residuals[k] ?? 0, i) - at(run.lives.residuals[0] ?? 0, i);
        expect(Math.abs(logRatio(run, k, i) - residual - Math.log(row[structure]))).toBeLessThan(1e-12);
      });
    }
    expect(taken).toEqual(new Set(structures));
  });

  it('differs from sample to sample in every input that varies', () => {
    const { inputs, drawn } = runOf(loft, samples, 3, noMemory);
    const known = inputs.filter(({ spread }) => spread.low === spread.high);
    // As `loft` states them: without a ±.
    expect(new Set(known.map(({ name }) => name))).toEqual(
      new Set([
        'spineMm',
        'heightMm',
        'radiusMm',
        'carbideVolPercent.MC',
        'contactDepthMm',
        // Nobody leaves the published line, and the residual’s size is one.
        'hardnessExponent',
        'residualCv',
      ]),
    );
    inputs.forEach(({ spread }, j) => {
      const { values = 0 } = drawn[j] ?? {};
      if (spread.low < spread.high) expect(new Set(values as Float64Array).size).toBeGreaterThan(samples - 5);
    });
  });
});

describe('what the model refuses', () => {
  it.each([
    ['above the published line', within(65.5, 1.5)],
    ['below the published line', within(50.5, 1.5)],
  ])('hardness %s is not refused, and its residual is drawn as any other', (_what, hrc) => {
    const comparison: Comparison = { knives: [plover, { ...avocet, hrc }], baseline: 'plover' };
    const run = runOf(comparison, samples, 5, noMemory);
    expect(run.redrawn).toBe(0);
    const beyond = Array.from({ length: samples }, (_, i) => drawnComparison(comparison, run, i)).filter(
      ({ knives }) => Number(knives[1]?.hrc) < 50 || Number(knives[1]?.hrc) > 66,
    );
    expect(beyond.length).toBeGreaterThan(samples / 8);
    expect(run.lives.residuals.every((values) => typeof values !== 'number')).toBe(true);
  });

  it('hardness beyond what the scale has is drawn again', () => {
    const comparison: Comparison = {
      knives: [plover, { ...avocet, hrc: within(67.5, 1.5) }],
      baseline: 'plover',
    };
    const run = runOf(comparison, samples, 5, noMemory);
    expect(run.redrawn).toBeGreaterThan(samples / 8);
    for (let i = 0; i < samples; i += 1)
      expect(drawnComparison(comparison, run, i).knives[1]?.hrc).toBeLessThanOrEqual(68);
  });

  it('more carbide than 60 per cent in all is drawn again, as a whole', () => {
    const comparison = awkward['nearly as much carbide as there is room for'] ?? loft;
    const run = runOf(comparison, 4000, 5, noMemory);
    // 57 ± 5 ± 5, the sum of two even ones: more than 60 in (7/10)²/2 of them.
    expect(Math.abs(run.refused.length / 4000 - 0.245)).toBeLessThan(3 * Math.sqrt((0.245 * 0.755) / 4000));
    for (const i of run.refused) {
      const { CrC, MC } = drawnComparison(comparison, run, i).knives[1]?.carbideVolPercent ?? {};
      expect(Number(CrC) + Number(MC)).toBeLessThanOrEqual(60);
    }
  });
});

describe('a predictor', () => {
  const moved = (angleDeg: number, more: Partial<Comparison> = {}): Comparison => ({
    ...loft,
    knives: [plover, { ...curlew, angleDeg: within(angleDeg, 2) }, avocet],
    ...more,
  });
  const options = { samples: 500, seed: 9 };

  it('answers after any number of moves as one asked for the first time', () => {
    const predictor = createPredictor(options);
    const path: Comparison[] = [
      moved(12),
      moved(13),
      moved(15.5),
      moved(15.5, { friction: 0.3 }),
      moved(12),
      moved(12, { gaugeBias: { angleDeg: 1 } }),
      moved(12, { baseline: 'avocet' }),
      { ...moved(12), knives: [plover, avocet] },
      moved(12, { assumptions: { residualCv: 0 } }),
      moved(12, { assumptions: { structureWeights: [0, 1, 1] } }),
      moved(12, { outcome: 'fixed-strokes' }),
      ...Object.values(awkward),
      moved(12),
    ];
    for (const comparison of path) {
      expect(predictor.predict(comparison)).toEqual(predict(comparison, options));
      const last = comparison.knives.at(-1)?.id ?? '';
      expect(predictor.logRatios(comparison, last)).toEqual(
        createPredictor(options).logRatios(comparison, last),
      );
    }
  });

  it('is none the worse for a comparison it refused', () => {
    const predictor = createPredictor(options);
    const before = predictor.predict(moved(12));
    expect(() => predictor.predict(moved(95))).toThrow(RangeError);
    expect(() => predictor.predict(moved(12, { gaugeBias: { hrc: -1 } }))).toThrow(
      'gauge bias of hardness ± -1 HRC is not between 0 and 68 HRC',
    );
    expect(predictor.predict(moved(12))).toEqual(before);
  });

  it('gives its ratios sorted, the band within them', () => {
    const predictor = createPredictor(options);
    const comparison = moved(12);
    const logs = predictor.logRatios(comparison, 'curlew');
    expect(logs).toHaveLength(500);
    expect(logs).toEqual(logs.toSorted());
    const ratios = logs.map(Math.exp);
    const [, curlewNow] = predictor.predict(comparison);
    // 0.05·499 = 24.95: between the 25th and the 26th of the sorted ratios.
    expect(curlewNow?.low).toBeGreaterThanOrEqual(ratios[24] ?? 0);
    expect(curlewNow?.low).toBeLessThanOrEqual(ratios[25] ?? 0);
    expect(predictor.logRatios(comparison, 'plover')).toEqual(new Float64Array(500));
    // Those of each structure are the samples that took it: all of them together are all samples.
    const apart = structures.map((structure) => predictor.logRatios(comparison, 'curlew', structure));
    for (const some of apart) expect(some.length).toBeGreaterThan(100);
    expect(Float64Array.from(apart.flatMap((some) => [...some])).toSorted()).toEqual(logs);
    for (const [i, some] of apart.entries()) {
      const band = curlewNow?.byStructure[structures[i] ?? 'multiplied'];
      expect(Math.log(band?.median ?? NaN)).toBeCloseTo(quantiles(some, [0.5])[0] ?? NaN, 12);
    }
    expect(() => predictor.logRatios(comparison, 'dunlin')).toThrow(
      'knife dunlin is not among the knives: plover, curlew, avocet',
    );
  });

  it('draws the other inputs the same where a knife is added or one is moved', () => {
    const memory = createMemory();
    const seen = (comparison: Comparison) => {
      const { inputs, drawn } = runOf(comparison, 100, 4, memory);
      const j = inputs.findIndex(({ knife, name }) => knife === 'plover' && name === 'edgeMm');
      return (drawn[j]?.values as Float64Array).slice();
    };
    const alone = seen({ knives: [plover], baseline: 'plover' });
    expect(seen({ knives: [{ ...plover, angleDeg: within(11, 1) }, avocet], baseline: 'avocet' })).toEqual(
      alone,
    );
  });
});
