import { expect, test } from 'vitest';
import { compare, firstOrderBand, predict, structures } from '../../../src/model/index.ts';
import { exact } from '../knives.ts';
import type { Knife, Comparison, Quantity } from '../../../src/model/index.ts';

const known = {
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  carbideVolPercent: { CrC: 5 },
} as const;
const fixed = exact.assumptions;
const pair = (
  angleDeg: Quantity,
  edgeMm: Quantity,
  assumptions: Comparison['assumptions'] = fixed,
): Comparison => ({
  knives: [
    { ...known, id: 'a', angleDeg: 20, edgeMm: 0.5, hrc: 58 },
    { ...known, id: 'b', angleDeg, edgeMm, hrc: 60 },
  ],
  baseline: 'a',
  friction: 0.25,
  assumptions,
});

test('all known and all assumptions fixed, the band is the close value', () => {
  const comparison = pair(14, 0.3);
  const { low, middle, high, logSd } = firstOrderBand(comparison, 'b');
  expect(logSd).toBe(0);
  expect([low, high]).toEqual([middle, middle]);
  expect(middle).toBeCloseTo(compare(comparison).rows[1]?.multiplied ?? NaN, 12);
  expect(predict(comparison, { samples: 200, seed: 1 })[1]).toMatchObject({ low, median: low, high });
});

// The published line at 60 HRC, 5 vol % of chromium carbide and 30° included: −157 + 15.8·60 − 17.8·30 + 11.2·5 = 313 mm.
test('hardness alone: 15.8 mm of card a point, to the power 1.5 of a life, by hand', () => {
  const comparison = pair(14, 0.3);
  const knives = comparison.knives.map((knife) =>
    knife.id === 'b' ? { ...knife, hrc: { value: 60, plusMinus: 1 } } : knife,
  );
  const { logSd, sensitivities } = firstOrderBand({ ...comparison, knives }, 'b');
  expect(sensitivities.map(({ name }) => name)).toEqual(['hrc']);
  expect(logSd).toBeCloseTo((1.5 * 15.8) / 313 / Math.sqrt(3), 6);
});

test('within 2% of the sampling where the ± are small, and parted where they are not', () => {
  const width = ({ low, high }: { low: number; high: number }) => Math.log(high / low);
  const both = (comparison: Comparison) => ({
    line: width(firstOrderBand(comparison, 'b')),
    sampled: width(predict(comparison, { samples: 200_000, seed: 3 })[1] ?? { low: 1, high: 1 }),
  });
  const normal = (value: number, plusMinus: number): Quantity => ({ value, plusMinus, shape: 'normal' });
  const small = both(pair(normal(14, 0.4), normal(0.3, 0.01)));
  expect(Math.abs(small.line / small.sampled - 1)).toBeLessThan(0.02);
  const large = both(pair({ unknown: true, low: 8, high: 30 }, { unknown: true, low: 0.1, high: 0.9 }));
  expect(Math.abs(large.line / large.sampled - 1)).toBeGreaterThan(0.05);
});

// A slope has no leap: half a hundredth of a point inside the end it is the same to a part in a thousand.
test.each([
  [68, 67.995],
  [20, 20.005],
])('at %d HRC, where what the model takes ends, the slope is that of the side there is', (end, inside) => {
  const comparison = pair(14, 0.3);
  const slopeAt = (value: number) => {
    const hrc = { value, plusMinus: 1 };
    const knives = comparison.knives.map((knife) => (knife.id === 'b' ? { ...knife, hrc } : knife));
    return firstOrderBand({ ...comparison, knives }, 'b').logSd;
  };
  expect(slopeAt(inside)).toBeGreaterThan(0);
  expect(Math.abs(slopeAt(end) / slopeAt(inside) - 1)).toBeLessThan(1e-3);
});

// Every slope again by moving the comparison itself and comparing: ±0.01% of the value, straight differences.
test('every slope is that of compare, by knife, with the standard uncertainty of its shape', () => {
  const a: Knife = {
    ...known,
    id: 'a',
    angleDeg: { value: 20, plusMinus: 1.5 },
    edgeMm: 0.5,
    hrc: { value: 58, plusMinus: 1, shape: 'normal' },
  };
  const b: Knife = {
    ...known,
    id: 'b',
    angleDeg: { unknown: true, low: 12, high: 18 },
    edgeMm: { value: 0.3, plusMinus: 0.06, shape: 'triangular' },
    finish: { um: { value: 20, plusMinus: 5 } },
    hrc: 60,
    carbideVolPercent: { CrC: 5, MC: { value: 2, plusMinus: 1 } },
  };
  const c: Knife = { ...known, id: 'c', angleDeg: { value: 30, plusMinus: 9 }, edgeMm: 0.4, hrc: 59 };
  const comparison: Comparison = { knives: [a, b, c], baseline: 'a', assumptions: { residualCv: 0 } };
  /** The mean of the three totals, each as likely as the others. */
  const totals = (of: Comparison): number[] => {
    const row = compare(of).rows.find(({ knife }) => knife === 'b');
    return structures.map((structure) => Math.log(row?.[structure] ?? NaN));
  };
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / 3;
  const logRatio = (of: Comparison): number => mean(totals(of));
  const slope = (at: (value: number) => Comparison, middle: number): number => {
    const step = 1e-4 * middle;
    return (logRatio(at(middle + step)) - logRatio(at(middle - step))) / (2 * step);
  };
  const change =
    (id: string, of: (value: number) => Partial<Knife>) =>
    (value: number): Comparison => ({
      ...comparison,
      knives: comparison.knives.map((knife) => (knife.id === id ? { ...knife, ...of(value) } : knife)),
    });
  const assume =
    (name: string) =>
    (value: number): Comparison => ({
      ...comparison,
      assumptions: { ...comparison.assumptions, [name]: value },
    });
  // Standard deviations of half width h: h/√3, h/√6 and h/1.96 (JCGM 100, 4.3.4, 4.3.7, 4.3.9); of a lopsided triangle
  // √((a² + b² + c² − ab − ac − bc)/18).
  const triangle = (low: number, middle: number, high: number): number =>
    Math.sqrt(((high - low) ** 2 + (middle - low) ** 2 + (high - middle) ** 2) / 36);
  const expected: [string | null, string, u: number, slope: number][] = [
    [
      'a',
      'angleDeg',
      1.5 / Math.sqrt(3),
      slope(
        change('a', (angleDeg) => ({ angleDeg })),
        20,
      ),
    ],
    [
      'a',
      'hrc',
      1 / 1.959964,
      slope(
        change('a', (hrc) => ({ hrc })),
        58,
      ),
    ],
    [
      'b',
      'angleDeg',
      3 / Math.sqrt(3),
      slope(
        change('b', (angleDeg) => ({ angleDeg })),
        15,
      ),
    ],
    [
      'b',
      'edgeMm',
      0.06 / Math.sqrt(6),
      slope(
        change('b', (edgeMm) => ({ edgeMm })),
        0.3,
      ),
    ],
    [
      'b',
      'finish',
      5 / Math.sqrt(3),
      slope(
        change('b', (um) => ({ finish: { um } })),
        20,
      ),
    ],
    [
      'b',
      'carbideVolPercent.MC',
      1 / Math.sqrt(3),
      slope(
        change('b', (MC) => ({ carbideVolPercent: { CrC: 5, MC } })),
        2,
      ),
    ],
    [null, 'friction', triangle(0.1, 0.25, 0.4), slope((friction) => ({ ...comparison, friction }), 0.25)],
    [null, 'angleExponent', triangle(1, 1.3, 2.4), slope(assume('angleExponent'), 1.3)],
    [null, 'thicknessExponent', triangle(0.2, 0.5, 1), slope(assume('thicknessExponent'), 0.5)],
    [null, 'finishExponent', triangle(0, 0.3, 0.7), slope(assume('finishExponent'), 0.3)],
    [null, 'lifeExponent', triangle(0.5, 1.5, 2.2), slope(assume('lifeExponent'), 1.5)],
    [null, 'wedgingShare', 0.25 / Math.sqrt(3), slope(assume('wedgingShare'), 0.35)],
    [null, 'limitPower', 0.5 / Math.sqrt(3), slope(assume('limitPower'), 1.5)],
    // How the factors combine is one more: its standard deviation is that of the three totals about their mean.
    [null, 'structure', Math.sqrt(mean(totals(comparison).map((ln) => (ln - logRatio(comparison)) ** 2))), 1],
  ];
  const { sensitivities, logSd, low, middle, high } = firstOrderBand(comparison, 'b');
  // Nothing of the third knife, whose angle moves no ratio of the two; nothing of what is known.
  expect(sensitivities.map(({ knife, name }) => [knife, name])).toEqual(
    expected.map(([knife, name]) => [knife, name]),
  );
  expected.forEach(([, , u, by], i) => {
    expect(sensitivities[i]?.u).toBeCloseTo(u, 10);
    expect((sensitivities[i]?.sensitivity ?? NaN) / by).toBeCloseTo(1, 4);
  });
  expect(logSd).toBeCloseTo(Math.hypot(...expected.map(([, , u, by]) => u * by)), 4);
  // 90% of a normal lies within 1.644854 standard deviations (standard tables).
  expect(Math.log(high / low) / (2 * 1.644854 * logSd)).toBeCloseTo(1, 9);
  expect(Math.log(high * low) / 2).toBeCloseTo(logRatio(comparison), 12);
  expect(Math.log(middle)).toBeCloseTo(logRatio(comparison), 12);
});

test('a residual is its size for either steel, to the power of a life, and none between knives of one steel', () => {
  const comparison = pair(14, 0.3, { ...fixed, residualCv: 0.1 });
  const { sensitivities, logSd } = firstOrderBand(comparison, 'b');
  expect(sensitivities.map(({ knife, name, u }) => [knife, name, u])).toEqual([
    ['a', 'residual', 1],
    ['b', 'residual', 1],
  ]);
  expect(sensitivities.map(({ sensitivity }) => sensitivity)).toEqual([
    expect.closeTo(-0.15, 9),
    expect.closeTo(0.15, 9),
  ]);
  // Before the power 1.5 of a life.
  expect(logSd).toBeCloseTo(1.5 * 0.1 * Math.SQRT2, 9);
  const alike = { ...comparison, knives: comparison.knives.map((knife) => ({ ...knife, hrc: 58 })) };
  expect(firstOrderBand(alike, 'b')).toMatchObject({ logSd: 0, sensitivities: [] });
});

test('the baseline’s own ratio is 1, whatever varies', () => {
  expect(firstOrderBand(pair({ value: 14, plusMinus: 2 }, 0.3, {}), 'a')).toEqual({
    logSd: 0,
    middle: 1,
    low: 1,
    high: 1,
    sensitivities: [],
  });
});

test('weights on the structures weigh the middle and the slopes', () => {
  const [row] = compare(pair(14, 0.3)).rows.slice(1);
  const weighed = (structureWeights: [number, number, number]) =>
    firstOrderBand(pair(14, 0.3, { ...fixed, structureWeights }), 'b');
  const [m, a, l] = structures.map((structure) => Math.log(row?.[structure] ?? NaN)) as [
    number,
    number,
    number,
  ];
  const found = weighed([2, 1, 1]);
  const middle = m / 2 + a / 4 + l / 4;
  expect(Math.log(found.middle)).toBeCloseTo(middle, 12);
  expect(found.logSd).toBeCloseTo(
    Math.sqrt((m - middle) ** 2 / 2 + (a - middle) ** 2 / 4 + (l - middle) ** 2 / 4),
    12,
  );
  expect(weighed([0, 0, 1])).toMatchObject({ logSd: 0, middle: row?.toLimit });
});
