import { describe, expect, test } from 'vitest';
import { drawName, drawnFrom, MOST_ATTEMPTS, redraw } from '../../../src/model/uncertainty/drawn.ts';
import type { Input } from '../../../src/model/uncertainty/inputs.ts';
import { createMemory, noMemory } from '../../../src/model/chain/memory.ts';
import { drawUniform, namedPlaces, uniformStream, xoshiro128 } from '../../../src/model/statistics/random.ts';
import { readerOf, runOf } from '../../../src/model/uncertainty/sampled-run.ts';
import { spreadOf, valueAt, valuesAt } from '../../../src/model/uncertainty/sampling.ts';
import type { Knife, Comparison } from '../../../src/model/types.ts';
import { exact, plover } from '../knives.ts';

const input = (value: number, plusMinus: number, low: number, high: number): Input => ({
  knife: 'plover',
  name: 'angleDeg',
  spread: spreadOf({ value, plusMinus }, { low, high }),
});
const even = drawUniform(4, 'a name', new Float64Array(500));

describe('an input drawn', () => {
  test('goes by its knife and its name, what all share by its name alone', () => {
    expect(drawName({ knife: 'plover', name: 'hrc' })).toBe('plover/hrc');
    expect(drawName({ knife: null, name: 'friction' })).toBe('/friction');
  });

  test('within what is allowed is what its even draws stand for', () => {
    const of = input(15, 2, 13, 17);
    const drawn = drawnFrom(even, 4, of);
    expect(drawn).toEqual({ even, values: valuesAt(of.spread, even, new Float64Array(500)), repeated: 0 });
    expect(drawn.even).toBe(even);
  });

  test('outside is drawn again there, and only there', () => {
    const before = even.slice();
    const of = input(15, 2, 14, 16.5);
    const drawn = drawnFrom(even, 4, of);
    expect(even).toEqual(before);
    let again = 0;
    even.forEach((u, i) => {
      const value = (drawn.values as Float64Array)[i] ?? NaN;
      // The value is always that of the even draw kept beside it.
      expect(value).toBe(valueAt(of.spread, drawn.even?.[i] ?? NaN));
      expect(value).toBeGreaterThanOrEqual(14);
      expect(value).toBeLessThanOrEqual(16.5);
      const first = valueAt(of.spread, u);
      if (first >= 14 && first <= 16.5) expect(drawn.even?.[i]).toBe(u);
      else again += 1;
    });
    // A quarter below and an eighth above; each try is good with 5/8, so takes 8/5 on average.
    expect(Math.abs(again / 500 - 3 / 8)).toBeLessThan(3 * Math.sqrt((3 / 8) * (5 / 8) * (1 / 500)));
    expect(Math.abs(drawn.repeated / again - 8 / 5)).toBeLessThan(3 * Math.sqrt(0.96 / again));
  });

  test('again, counts its tries, and takes the ends of what is allowed', () => {
    const of = input(15, 2, 14, 16);
    const tried: number[] = [];
    const evenAt = (draws: number[]) => (attempt: number) => {
      tried.push(attempt);
      return draws[attempt - 1] ?? 0.5;
    };
    // Even draws of 13…17: 0.1 is 13.4 and 0.9 is 16.6, both outside; 0.25 and 0.75 are the ends.
    expect(redraw(of.spread, evenAt([0.1, 0.9, 0.25]), of)).toEqual({ even: 0.25, value: 14, attempts: 3 });
    expect(tried).toEqual([1, 2, 3]);
    expect(redraw(of.spread, evenAt([0.75]), of)).toEqual({ even: 0.75, value: 16, attempts: 1 });
  });

  test('is given up after as many tries as there are, and not before', () => {
    const of = input(15, 2, 14, 16);
    let tries = 0;
    const late = (at: number) => (attempt: number) => {
      tries += 1;
      return attempt === at ? 0.5 : 0.01;
    };
    expect(redraw(of.spread, late(MOST_ATTEMPTS), of).attempts).toBe(MOST_ATTEMPTS);
    tries = 0;
    expect(() => redraw(of.spread, late(MOST_ATTEMPTS + 1), of)).toThrow(
      new RangeError('angleDeg 13 to 17 hardly ever gives a value between 14 and 16'),
    );
    expect(tries).toBe(MOST_ATTEMPTS);
  });
});

const within = (value: number, plusMinus: number) => ({ value, plusMinus });
/** Two of these draws in ten have an edge thicker than the spine: two measures that do not fit each other. */
const thick: Knife = {
  ...plover,
  id: 'tern',
  edgeMm: within(2.5, 0.5),
  grind: { ...plover.grind, spineMm: 2.8 },
};
const misfit: Comparison = {
  knives: [
    { ...plover, angleDeg: within(20, 2) },
    { ...thick, angleDeg: within(15, 2) },
  ],
  baseline: 'plover',
  ...exact,
  friction: within(0.25, 0.05),
};

describe('a run', () => {
  test('draws a sample that does not fit again as a whole, and leaves the others', () => {
    const samples = 1000;
    const run = runOf(misfit, samples, 6, noMemory);
    const share = run.refused.length / samples;
    expect(Math.abs(share - 0.2)).toBeLessThan(3 * Math.sqrt((0.2 * 0.8) / samples));
    // Each try fits with 8/10, so that it takes 10/8 on average.
    expect(Math.abs(run.redrawn / run.refused.length - 1.25)).toBeLessThan(
      3 * Math.sqrt(0.3125 / run.refused.length),
    );
    const again = new Set(run.refused);
    run.inputs.forEach((of, j) => {
      const { even: kept, values } = run.drawn[j] ?? { even: null, values: 0 };
      if (of.spread.low === of.spread.high) {
        expect(kept).toBeNull();
        const all = typeof values === 'number' ? [values] : [...new Set(values)];
        expect(all).toEqual([of.spread.middle]);
        return;
      }
      const first = drawUniform(6, drawName(of), new Float64Array(samples));
      let moved = 0;
      first.forEach((u, i) => {
        expect((values as Float64Array)[i]).toBe(valueAt(of.spread, kept?.[i] ?? NaN));
        if (!again.has(i)) expect(kept?.[i]).toBe(u);
        else if (kept?.[i] !== u) moved += 1;
      });
      expect(moved).toBe(again.size);
    });
    const edge = run.drawn[run.inputs.findIndex(({ knife, name }) => knife === 'tern' && name === 'edgeMm')];
    expect(Math.max(...(edge?.values as Float64Array))).toBeLessThanOrEqual(2.8);
    for (const life of run.lives.knives)
      for (const ln of life as Float64Array) expect(ln).toBeTypeOf('number');
    expect(run.lives.knives.every((life) => [...(life as Float64Array)].every(Number.isFinite))).toBe(true);
  });

  test('of measures that cannot fit is refused, and says how often it was tried', () => {
    // One gauge read high for both would leave what the model takes above, read low below.
    const never: Comparison = {
      knives: [
        { ...plover, hrc: 68 },
        { ...plover, id: 'dunlin', hrc: 20 },
      ],
      baseline: 'plover',
      gaugeBias: { hrc: 5 },
      ...exact,
    };
    // Given up once more than 20 000 samples were refused without one that fits.
    expect(() => runOf(never, 200, 1, noMemory)).toThrow(
      new RangeError(
        'the stated ranges hardly ever fit each other: 200 of 200 samples were refused 101 times',
      ),
    );
  });

  test('counts what was drawn again by itself and what was drawn again as a whole', () => {
    // A third of 3–6° is below what the model takes, so that a draw that is good takes 3/2 tries: 1/2 more than one.
    const slim = { ...thick, angleDeg: within(4.5, 1.5) };
    const samples = 2000;
    const { refused, redrawn } = runOf({ ...misfit, knives: [plover, slim] }, samples, 3, noMemory);
    // A sample that does not fit takes 10/8 tries as a whole, each with that half.
    const expected = samples / 2 + 1.25 * 1.5 * refused.length;
    // Four standard deviations: 3/4 a sample, and about 3 for each that did not fit.
    expect(Math.abs(redrawn - expected)).toBeLessThan(4 * Math.sqrt(0.75 * samples + 3 * refused.length));
  });

  test('is read by knife and name, 0 where nothing is drawn', () => {
    const { inputs, drawn } = runOf(misfit, 100, 1, noMemory);
    const read = readerOf(inputs, drawn);
    expect(read('plover', 'hrc')).toEqual(drawn[inputs.findIndex(({ name }) => name === 'hrc')]?.values);
    expect(read(null, 'finishExponent')).toEqual(
      drawn[inputs.findIndex(({ name }) => name === 'finishExponent')]?.values,
    );
    expect(read(null, 'hrc')).toBe(0);
    expect(read('plover', 'residual')).toBe(0);
  });
});

describe('a run with a memory', () => {
  const base: Comparison = {
    knives: [
      { ...plover, angleDeg: within(20, 2), edgeMm: within(0.5, 0.1), hrc: within(58, 1) },
      {
        ...thick,
        angleDeg: within(15, 2),
        microbevelAngleDeg: within(20, 1),
        finish: { um: within(20, 5) },
        hrc: within(61, 1),
        carbideVolPercent: { CrC: within(6, 2), MC: within(2, 1) },
      },
    ],
    baseline: 'plover',
    gaugeBias: { angleDeg: 0.5, edgeMm: 0.05, hrc: 0.5 },
  };
  const tern = (change: Partial<Knife>): Comparison => ({
    ...base,
    knives: base.knives.map((knife) => (knife.id === 'tern' ? { ...knife, ...change } : knife)),
  });
  const path: Comparison[] = [
    tern({ angleDeg: within(14, 2) }),
    tern({ microbevelAngleDeg: within(21, 1) }),
    tern({ edgeMm: within(2.4, 0.5) }),
    tern({ edgeMm: within(0.4, 0.1) }),
    tern({ finish: { um: within(30, 5) } }),
    tern({ finish: { scale: 'FEPA-P', grit: 400 } }),
    tern({ hrc: within(62, 1) }),
    tern({ carbideVolPercent: { CrC: within(6, 2), MC: within(3, 1) } }),
    tern({ carbideVolPercent: { CrC: within(6, 2), CrN: within(2, 1) } }),
    tern({ grind: { ...thick.grind, heightMm: 20 } }),
    tern({ grind: { ...thick.grind, form: 'convex', radiusMm: 100 } }),
    tern({ grind: { ...thick.grind, form: 'convex', radiusMm: 120 } }),
    tern({ grind: { ...thick.grind, spineMm: 3.4 } }),
    { ...base, contactDepthMm: 12 },
    { ...base, slicePush: 2 },
    { ...base, friction: within(0.3, 0.05) },
    { ...base, gaugeBias: { angleDeg: 0.4, edgeMm: 0.05, hrc: 0.5 } },
    { ...base, gaugeBias: { angleDeg: 0.4, edgeMm: 0.04, hrc: 0.6 } },
    { ...base, gaugeBias: {} },
    ...[
      'thicknessExponent',
      'finishExponent',
      'lifeExponent',
      'wedgingShare',
      'limitPower',
      'residualCv',
    ].map((name): Comparison => ({ ...base, assumptions: { [name]: within(0.2, 0.1) } })),
    { ...base, assumptions: { angleExponent: within(1.2, 0.1) } },
    { ...base, assumptions: { structureWeights: [1, 2, 1] } },
    { ...base, assumptions: { structureWeights: [0, 1, 0] } },
    { ...base, outcome: 'fixed-strokes' },
    tern({ hrc: within(46, 1) }),
    tern({ hrc: within(45, 1) }),
    { ...tern({ hrc: within(45, 1) }), assumptions: { hardnessExponent: within(1, 0.2) } },
    tern({ hrc: within(50.2, 1), carbideVolPercent: { Fe3C: within(1, 1) } }),
    tern({ hrc: within(50.2, 1), carbideVolPercent: { Fe3C: within(2, 1) } }),
  ];

  test.each(path.map((comparison, i): [number, Comparison] => [i + 1, comparison]))(
    'is the run without one, there and back: change %i',
    (_i, comparison) => {
      const memory = createMemory();
      for (const next of [base, comparison, base])
        expect(runOf(next, 60, 2, memory)).toEqual(runOf(next, 60, 2, noMemory));
    },
  );

  test('is drawn anew for another seed, and another number of samples', () => {
    const memory = createMemory();
    for (const [samples, seed] of [
      [60, 2],
      [60, 3],
      [61, 3],
    ] as const)
      expect(runOf(base, samples, seed, memory)).toEqual(runOf(base, samples, seed, noMemory));
  });

  test('is right from change to change, however many', () => {
    const memory = createMemory();
    for (const comparison of path)
      expect(runOf(comparison, 60, 2, memory)).toEqual(runOf(comparison, 60, 2, noMemory));
  });
});

describe('random numbers', () => {
  test.each([-1, 0.5, 4294967296, NaN])('of the seed %f are refused', (seed) => {
    const says = `seed ${seed} is not a whole number from 0 to 4294967295`;
    expect(() => uniformStream(seed)).toThrow(new RangeError(says));
    expect(() => drawUniform(seed, 'a', new Float64Array(1))).toThrow(new RangeError(says));
    expect(() => namedPlaces(seed, 'a')).toThrow(new RangeError(says));
  });

  test('are xoshiro128** from four words of splitmix32', () => {
    // Blackman & Vigna 2021; the steps of splitmix32 are the golden ratio's 32 bits, mixed by MurmurHash3's fmix32
    // (Appleby), done here with whole numbers of any size.
    const word = (n: bigint): bigint => BigInt.asUintN(32, n);
    const fmix32 = (n: bigint): bigint => {
      const a = word((n ^ (n >> 16n)) * 0x85ebca6bn);
      const b = word((a ^ (a >> 13n)) * 0xc2b2ae35n);
      return b ^ (b >> 16n);
    };
    for (const seed of [0, 7, 4294967295]) {
      const words = [1n, 2n, 3n, 4n].map((k) => Number(fmix32(word(BigInt(seed) + k * 0x9e3779b9n))));
      const [a = 0, b = 0, c = 0, d = 0] = words;
      const next = xoshiro128([a, b, c, d]);
      const stream = uniformStream(seed);
      for (let i = 0; i < 50; i += 1) expect(stream()).toBe((next() + 0.5) / 2 ** 32);
    }
  });

  test('of the first seed and the last lie strictly between 0 and 1', () => {
    for (const seed of [0, 4294967295]) {
      const stream = uniformStream(seed);
      const draws = [
        ...Array.from({ length: 2000 }, stream),
        ...drawUniform(seed, '', new Float64Array(2000)),
        ...Array.from({ length: 2000 }, (_, i) => namedPlaces(seed, '')(i, 0)),
      ];
      expect(Math.min(...draws)).toBeGreaterThan(0);
      expect(Math.max(...draws)).toBeLessThan(1);
      // Even: 6000 draws have a mean of ½ within 4 standard errors of √(1/12/6000).
      const mean = draws.reduce((sum, u) => sum + u, 0) / draws.length;
      expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * 6000));
    }
  });

  test('differ by seed, by every letter of the name, and by sample and attempt', () => {
    const firsts = [
      [1, 'plover/hrc'],
      [2, 'plover/hrc'],
      [1, 'plover/hrd'],
      [1, 'qlover/hrc'],
      [1, 'lpover/hrc'],
      [1, 'plover/hrc '],
      [1, ''],
    ] as const;
    const streams = firsts.map(([seed, name]) => [...drawUniform(seed, name, new Float64Array(4))]);
    expect(new Set(streams.flat()).size).toBe(4 * firsts.length);
    expect(drawUniform(1, 'plover/hrc', new Float64Array(4))).toEqual(Float64Array.from(streams[0] ?? []));
    const places = firsts.flatMap(([seed, name]) => {
      const at = namedPlaces(seed, name);
      return [at(0, 0), at(0, 1), at(1, 0), at(1, 1), at(2, 0), at(0, 2)];
    });
    expect(new Set(places).size).toBe(6 * firsts.length);
  });
});
