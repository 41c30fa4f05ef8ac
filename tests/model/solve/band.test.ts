import { describe, expect, it } from 'vitest';
import { noMemory } from '../../../src/model/chain/memory.ts';
import { runOf } from '../../../src/model/uncertainty/sampled-run.ts';
import { attributeValue, withAttribute } from '../../../src/model/solve/attributes.ts';
import { whatItTakesBand } from '../../../src/model/solve/band.ts';
import { whatItTakes, type Question } from '../../../src/model/solve/what-it-takes.ts';
import type { Knife, Comparison } from '../../../src/model/types.ts';
import { at } from '../../../src/model/chain/values.ts';
import { structures } from '../../../src/model/chain/structures.ts';
import { drawnComparison } from '../drawn-comparison.ts';
import { exact } from '../knives.ts';

// Invented knives, alike but for what a test names, so that the answers are known without the model.
const plover: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { um: 30 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 60,
  carbideVolPercent: { CrC: 4 },
};
const against = (change: Partial<Knife>): Comparison => ({
  knives: [plover, { ...plover, id: 'curlew', ...change }],
  baseline: 'plover',
});
const ask = { knife: 'plover', against: 'curlew' } as const;

describe('a band for what it would take', () => {
  it('is the other knife’s own range where all else is alike', () => {
    const comparison = against({ angleDeg: { value: 15, plusMinus: 1 } });
    const band = whatItTakesBand(comparison, { ...ask, attribute: 'angleDeg' }, { samples: 2000 });
    // The 5, 50 and 95% points of a uniform distribution over 14–16, within three standard errors of 2000 draws.
    expect(Math.abs((band.low ?? 0) - 14.1)).toBeLessThan(0.03);
    expect(Math.abs((band.median ?? 0) - 15)).toBeLessThan(0.07);
    expect(Math.abs((band.high ?? 0) - 15.9)).toBeLessThan(0.03);
    expect(band).toMatchObject({ inReach: 1, belowFloor: 0 });
  });

  it('is the other knife’s height of the grind, and does not draw its own', () => {
    const grind = { form: 'flat', spineMm: 3, heightMm: { value: 20, plusMinus: 2 } } as const;
    const own = { ...plover, grind: { ...grind, heightMm: { unknown: true, low: 15, high: 40 } } } as const;
    const comparison = { knives: [own, { ...plover, id: 'curlew', grind }], baseline: 'plover' };
    const band = whatItTakesBand(comparison, { ...ask, attribute: 'grindHeightMm' }, { samples: 2000 });
    // Points of a uniform distribution over 18–22, within three standard errors of 2000 draws.
    expect(Math.abs((band.low ?? 0) - 18.2)).toBeLessThan(0.06);
    expect(Math.abs((band.median ?? 0) - 20)).toBeLessThan(0.14);
    expect(Math.abs((band.high ?? 0) - 21.8)).toBeLessThan(0.06);
  });

  it('does not draw what is solved for', () => {
    const comparison = against({ angleDeg: 15 });
    const unsure = { ...plover, angleDeg: { unknown: true, low: 12, high: 28 } } as const;
    const knives = [unsure, ...comparison.knives.slice(1)];
    const { low, high } = whatItTakesBand({ ...comparison, knives }, { ...ask, attribute: 'angleDeg' });
    expect(low).toBeCloseTo(15, 9);
    expect(high).toBeCloseTo(15, 9);
  });

  it('tells the share of samples in which it can be had', () => {
    // (d/d_b)^½ = 2 needs d = 4 d_b, and there is nothing coarser than 2000 µm: d_b up to 500 of 100–1100.
    const comparison: Comparison = {
      ...against({ finish: { um: { unknown: true, low: 100, high: 1100 } } }),
      assumptions: { finishExponent: 0.5 },
    };
    const band = whatItTakesBand(comparison, { ...ask, attribute: 'finish', target: 2 }, { samples: 2000 });
    expect(Math.abs(band.inReach - 0.4)).toBeLessThan(3 * Math.sqrt((0.4 * 0.6) / 2000));
    expect(Math.abs((band.median ?? 0) - 1200)).toBeLessThan(90);
    expect(band.high).toBeLessThanOrEqual(2000);
  });

  it('tells the share in which the edge would break away', () => {
    // At 60 HRC the floor is 5° whatever its power (common practice, no source): half of 4–6°.
    const comparison = against({ angleDeg: { unknown: true, low: 4, high: 6 } });
    const { belowFloor, inReach } = whatItTakesBand(comparison, { ...ask, attribute: 'angleDeg' });
    expect(inReach).toBe(1);
    expect(Math.abs(belowFloor - 0.5)).toBeLessThan(3 * Math.sqrt(0.25 / 300));
  });

  it('takes in a gauge’s bias and the regression’s residual', () => {
    const comparison = against({ hrc: 62, angleDeg: 15 });
    const plain = { ...comparison, ...exact };
    const width = (of: Comparison): number => {
      const { low, high } = whatItTakesBand(of, { ...ask, attribute: 'angleDeg' });
      return (high ?? NaN) - (low ?? NaN);
    };
    expect(width(plain)).toBeLessThan(1e-9);
    expect(width({ ...plain, gaugeBias: { hrc: 2 } })).toBeGreaterThan(1e-3);
    expect(width({ ...plain, assumptions: { ...plain.assumptions, residualCv: 0.1 } })).toBeGreaterThan(1);
    const { value } = whatItTakes(plain, { ...ask, attribute: 'angleDeg' });
    expect(whatItTakesBand(plain, { ...ask, attribute: 'angleDeg' }).median).toBeCloseTo(value ?? NaN, 9);
  });

  const unsure: Knife = {
    ...plover,
    angleDeg: { value: 20, plusMinus: 2 },
    edgeMm: { value: 0.5, plusMinus: 0.1 },
    finish: { um: { value: 30, plusMinus: 10 } },
    hrc: { value: 60, plusMinus: 1 },
    carbideVolPercent: { CrC: { value: 4, plusMinus: 2 }, MC: 1 },
  };
  const bevelled: Knife = {
    ...unsure,
    microbevelAngleDeg: { value: 24, plusMinus: 1 },
    grind: { form: 'hollow', spineMm: 3, heightMm: 25, radiusMm: { value: 150, plusMinus: 10 } },
  };
  const curlew: Knife = { ...bevelled, id: 'curlew', finish: { scale: 'JIS', grit: 400 }, hrc: 61 };
  const soft: Knife = { ...unsure, hrc: { value: 46, plusMinus: 1 } };
  const slim: Knife = { ...unsure, id: 'curlew', angleDeg: { unknown: true, low: 4, high: 6 } };
  it.each<[string, Knife, Knife, Omit<Question, 'knife' | 'against'>]>([
    ['of an edge', bevelled, curlew, { attribute: 'edgeMm', target: 1.1 }],
    [
      'of steels softer than the published line covers',
      soft,
      { ...soft, id: 'curlew', hrc: 48 },
      { attribute: 'finish' },
    ],
    ['of an edge to a limit', bevelled, curlew, { attribute: 'edgeMm', structure: 'toLimit' }],
    ['of an angle, the forces added', unsure, curlew, { attribute: 'angleDeg', structure: 'added' }],
    ['of an angle near the floor', unsure, slim, { attribute: 'angleDeg' }],
    ['of what is never in reach', unsure, curlew, { attribute: 'edgeMm', target: 1e9 }],
  ])('%s is that of the answers on each sample, everything else as it was drawn', (_what, a, b, asked) => {
    const comparison: Comparison = {
      knives: [{ ...plover, id: 'tern' }, a, b],
      baseline: 'tern',
      gaugeBias: { angleDeg: 0.5, edgeMm: 0.05, hrc: 1 },
      slicePush: 2,
      contactDepthMm: 12,
    };
    const question = { ...ask, ...asked };
    const samples = 100;
    const band = whatItTakesBand(comparison, question, { samples, seed: 4 });
    const present = withAttribute(comparison, 'plover', asked.attribute, attributeValue(a, asked.attribute));
    const run = runOf(present, samples, 4, noMemory);
    const answers = Array.from({ length: samples }, (_, i) => {
      const residual = (k: number): number => at(run.lives.residuals[k] ?? NaN, i);
      const target = (asked.target ?? 1) * Math.exp(residual(2) - residual(1));
      const structure = question.structure ?? structures[at(run.lives.structure, i)] ?? 'multiplied';
      return whatItTakes(drawnComparison(comparison, run, i), { ...question, target, structure });
    });
    const values = answers
      .flatMap(({ value }) => (value === null ? [] : [value]))
      .toSorted((one, other) => one - other);
    // Straight between neighbours, place p·(n − 1).
    const point = (p: number): number | null => {
      if (values.length === 0) return null;
      const place = p * (values.length - 1);
      const below = values[Math.floor(place)] ?? NaN;
      return expect.closeTo(below + (place % 1) * ((values[Math.ceil(place)] ?? NaN) - below), 10) as number;
    };
    expect(band).toEqual({
      low: point(0.05),
      median: point(0.5),
      high: point(0.95),
      inReach: values.length / samples,
      belowFloor: answers.filter(({ note }) => note === 'below the floor').length / samples,
    });
  });

  it('is empty where nothing does it', () => {
    expect(whatItTakesBand(against({}), { ...ask, attribute: 'hrc', target: 50 })).toEqual({
      low: null,
      median: null,
      high: null,
      inReach: 0,
      belowFloor: 0,
    });
  });

  it.each([99, 10_001, 100.5, NaN])('refuses %f samples', (samples) => {
    const asked = () => whatItTakesBand(against({}), { ...ask, attribute: 'hrc' }, { samples });
    expect(asked).toThrow(new RangeError(`samples ${samples} is not a whole number from 100 to 10000`));
  });

  it('refuses what compare refuses', () => {
    const comparison = { ...against({}), friction: 3 };
    expect(() => whatItTakesBand(comparison, { ...ask, attribute: 'hrc' })).toThrow(
      'friction coefficient 3 is not between 0 and 2',
    );
  });
});
