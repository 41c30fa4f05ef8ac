import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossing } from '../../src/runs/crossing.ts';
import { bluntingCurve } from '../../src/runs/curves.ts';
import { ratioByEndPoint } from '../../src/runs/equal-sharpness.ts';
import { leastSquares } from '../../src/runs/least-squares.ts';
import type { SeriesReading } from '../../src/runs/log.ts';

const digits = (actual: number, printed: number, significant: number): void => {
  expect(Math.abs(actual / printed - 1)).toBeLessThan(0.5 * 10 ** (1 - significant));
};
const cuts = [0, 5, 10, 20, 40, 80, 160, 320, 640, 1280];
const series = (curve: (cut: number) => number, at = cuts): SeriesReading[] =>
  at.map((cut) => ({ cut, sharpness: curve(cut) }));
const falling =
  (start: number, a: number, b: number) =>
  (cut: number): number =>
    start / (1 + a * cut ** b);

describe('least squares', () => {
  const exponential = {
    value: ([a = 0, b = 0]: readonly number[], x: number) => a * 100 * (1 - Math.exp((-b * x) / 1000)),
    slopes: ([a = 0, b = 0]: readonly number[], x: number) => [
      100 * (1 - Math.exp((-b * x) / 1000)),
      ((a * x) / 10) * Math.exp((-b * x) / 1000),
    ],
  };

  test.each([
    ['first', [5, 0.1]],
    ['second', [2.5, 0.5]],
  ])('gives the certified values of NIST StRD Misra1a from its %s start', (_which, start) => {
    // NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b1·(1 − exp(−b2·x)) (memory of the
    // certificate).
    const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
    const y = [
      10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
    ];
    const fit = leastSquares(exponential, x, y, [start]);
    digits((fit.parameters[0] ?? NaN) * 100, 2.3894212918e2, 10);
    digits((fit.parameters[1] ?? NaN) / 1000, 5.5015643181e-4, 10);
    digits((fit.sds?.[0] ?? NaN) * 100, 2.7070075241, 10);
    digits((fit.sds?.[1] ?? NaN) / 1000, 7.2668688436e-6, 10);
    digits(fit.rss, 1.2455138894e-1, 10);
  });

  test('gives the certified values of NIST StRD Norris', () => {
    // NIST Statistical Reference Datasets, linear regression, Norris (memory of the certificate).
    const pairs = [
      [0.2, 0.1],
      [337.4, 338.8],
      [118.2, 118.1],
      [884.6, 888],
      [10.1, 9.2],
      [226.5, 228.1],
      [666.3, 668.5],
      [996.3, 998.5],
      [448.6, 449.1],
      [777, 778.9],
      [558.2, 559.2],
      [0.4, 0.3],
      [0.6, 0.1],
      [775.5, 778.1],
      [666.9, 668.8],
      [338, 339.3],
      [447.5, 448.9],
      [11.6, 10.8],
      [556, 557.7],
      [228.1, 228.3],
      [995.8, 998],
      [887.6, 888.8],
      [120.2, 119.6],
      [0.3, 0.3],
      [0.3, 0.6],
      [556.8, 557.6],
      [339.1, 339.3],
      [887.2, 888],
      [999, 998.5],
      [779, 778.9],
      [11.1, 10.2],
      [118.3, 117.6],
      [229.2, 228.9],
      [669.1, 668.4],
      [448.9, 449.2],
      [0.5, 0.2],
    ] as const;
    const line = {
      value: ([c = 0, m = 0]: readonly number[], x: number) => c + m * x,
      slopes: (_p: readonly number[], x: number) => [1, x],
    };
    const fit = leastSquares(
      line,
      pairs.map(([x]) => x / 1000),
      pairs.map(([, y]) => y / 1000),
      [[0, 1]],
    );
    digits((fit.parameters[0] ?? NaN) * 1000, -0.262323073774029, 12);
    digits(fit.parameters[1] ?? NaN, 1.00211681802045, 12);
    digits((fit.sds?.[0] ?? NaN) * 1000, 0.232818234301152, 12);
    digits(fit.sds?.[1] ?? NaN, 0.429796848199937e-3, 12);
  });
});

describe('a curve of blunting', () => {
  test('is found again where the readings follow one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 1000, noNaN: true }),
        fc.double({ min: 0.003, max: 0.3, noNaN: true }),
        fc.double({ min: 0.4, max: 1.3, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (start, a, b, unit) => {
          const curve = bluntingCurve(
            series(
              (x) => falling(start, a, b)(x / unit),
              cuts.map((x) => x * unit),
            ),
          );
          expect(curve.start.value / start).toBeCloseTo(1, 7);
          expect(curve.b.value / b).toBeCloseTo(1, 6);
          const endPoint = falling(start, a, b)(100);
          expect((curve.cutsTo(endPoint) ?? NaN) / unit).toBeCloseTo(100, 4);
          expect(curve.at(0)).toBeCloseTo(curve.start.value, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('rising with the force is found too', () => {
    const curve = bluntingCurve(
      series((x) => 2 + 0.3 * x ** 0.5),
      'rising',
    );
    expect(curve.start.value).toBeCloseTo(2, 7);
    expect(curve.a.value).toBeCloseTo(0.3, 6);
    expect(curve.cutsTo(5)).toBeCloseTo(100, 4);
    expect(curve.cutsTo(1.5)).toBeNull();
    expect(curve.cutsTo(100)).toBeNull();
  });

  test('has intervals around its values that hold the truth, and residuals that add up', () => {
    const noise = [0.8, -1.1, 0.3, 0.9, -0.6, -0.2, 0.7, -0.9, 0.5, -0.3];
    const readings = series(falling(100, 0.05, 0.7)).map(({ cut, sharpness }, i) => ({
      cut,
      sharpness: sharpness + (noise[i] ?? 0),
    }));
    const curve = bluntingCurve(readings);
    for (const [{ value, low, high }, truth] of [
      [curve.start, 100],
      [curve.a, 0.05],
      [curve.b, 0.7],
    ] as const) {
      expect(low).toBeLessThan(truth);
      expect(high).toBeGreaterThan(truth);
      expect(value).toBeGreaterThan(low ?? NaN);
    }
    expect(curve.residuals.reduce((sum, r) => sum + r * r, 0)).toBeCloseTo(curve.rss, 9);
    readings.forEach(({ cut, sharpness }, i) =>
      expect(curve.at(cut) + (curve.residuals[i] ?? NaN)).toBeCloseTo(sharpness, 9),
    );
    // No small change of the curve leaves less.
    for (const [ds, da, db] of [
      [0.1, 0, 0],
      [0, 1e-3, 0],
      [0, 0, 5e-3],
    ] as const)
      for (const sign of [1, -1]) {
        const other = falling(
          curve.start.value + sign * ds,
          curve.a.value + sign * da,
          curve.b.value + sign * db,
        );
        const rss = readings.reduce((sum, { cut, sharpness }) => sum + (sharpness - other(cut)) ** 2, 0);
        expect(rss).toBeGreaterThan(curve.rss);
      }
  });

  test('says nothing above its start, below its last reading, or of readings that are none', () => {
    const curve = bluntingCurve(series(falling(100, 0.05, 0.7)));
    expect(curve.cutsTo(101)).toBeNull();
    expect(curve.cutsTo(curve.last.sharpness * 0.99)).toBeNull();
    const three = bluntingCurve(series(falling(100, 0.05, 0.7), [0, 50, 400]));
    expect(three.b.low).toBeNull();
    expect(() => bluntingCurve(series(falling(100, 0.05, 0.7), [0, 50]))).toThrow('there are 2 readings');
    expect(() => bluntingCurve(series(() => 50))).toThrow('not falling: 50 at first, 50 at last');
    expect(() => bluntingCurve([...series(falling(9, 1, 1)), { cut: 0, sharpness: 1 }])).toThrow(
      'does not grow',
    );
    expect(() => bluntingCurve(series(() => 0))).toThrow('sharpness 0 of reading 0');
  });
});

describe('a crossing without a curve', () => {
  test('lies on the straight line between the readings around it', () => {
    const readings = [100, 80, 60, 50].map((sharpness, i) => ({ cut: i * 10, sharpness }));
    expect(crossing(readings, 70)).toBe(15);
    expect(crossing(readings, 50)).toBe(30);
    expect(crossing(readings, 49)).toBeNull();
    expect(crossing(readings, 100)).toBeNull();
  });

  test('takes readings that rise again for one', () => {
    const readings = [100, 60, 80, 40].map((sharpness, i) => ({ cut: i * 10, sharpness }));
    // 60 and 80 pool to 70: between the second and the third reading it stays there.
    expect(crossing(readings, 70)).toBe(10);
    expect(crossing(readings, 55)).toBe(25);
  });
});

/** Readings, each series of an edge of its own. */
const edges = (...all: SeriesReading[][]) => all.map((readings, i) => ({ readings, edge: String(i) }));

describe('forces, which rise as an edge dulls', () => {
  const rising =
    (start: number, a: number, b: number) =>
    (cut: number): number =>
      start + a * cut ** b;

  test('are compared at equal force, by hand ((F − y₀)/a)^(1/b) of each', () => {
    const x = edges(series(rising(3, 0.02, 0.8)));
    const y = edges(series(rising(3.2, 0.05, 0.8)));
    const last = Math.min(x[0]?.readings.at(-1)?.sharpness ?? NaN, y[0]?.readings.at(-1)?.sharpness ?? NaN);
    const endPoint = 3.2 + (last - 3.2) / 2;
    const [at] = ratioByEndPoint(x, y, { endPoints: [endPoint] });
    const byHand = (((endPoint - 3) / 0.02) * (0.05 / (endPoint - 3.2))) ** (1 / 0.8);
    expect(at?.ratio).toBeCloseTo(byHand, 4);
    const endPoints = ratioByEndPoint(x, y).map((one) => one.endPoint);
    expect(endPoints).toHaveLength(25);
    // From sharp to blunt is from little force to much, and only where both knives have been.
    expect(endPoints).toEqual([...endPoints].sort((one, other) => one - other));
    expect(Math.min(...endPoints)).toBeGreaterThan(3.2);
    expect(Math.max(...endPoints)).toBeLessThanOrEqual(last);
    expect(ratioByEndPoint(x, y, { endPoints: [3.1, last * 1.01] })).toEqual([]);
  });

  test('say the same as the sharpness whose inverse they are', () => {
    // S = S₀/(1 + a·x) and F = 1000/S = F₀·(1 + a·x) are one law.
    const sharpOf = (start: number, a: number) => edges(series(falling(start, a, 1)));
    const forcesOf = (all: ReturnType<typeof edges>) =>
      edges(
        ...all.map(({ readings }) =>
          readings.map(({ cut, sharpness }) => ({ cut, sharpness: 1000 / sharpness })),
        ),
      );
    const [x, y] = [sharpOf(100, 0.02), sharpOf(92, 0.04)];
    for (const endPoint of [80, 60, 50]) {
      const [byS] = ratioByEndPoint(x, y, { endPoints: [endPoint] });
      const [byF] = ratioByEndPoint(forcesOf(x), forcesOf(y), { endPoints: [1000 / endPoint] });
      expect(byF?.ratio).toBeCloseTo(byS?.ratio ?? NaN, 5);
    }
    for (const share of [0.9, 0.7, 0.6]) {
      const options = { endPoints: [share], relative: true };
      const [byS] = ratioByEndPoint(x, y, options);
      const [byF] = ratioByEndPoint(forcesOf(x), forcesOf(y), options);
      expect(byF?.ratio).toBeCloseTo(byS?.ratio ?? NaN, 5);
    }
  });

  test('have no stop in common with a sharpness', () => {
    expect(
      ratioByEndPoint(edges(series(rising(3, 0.02, 0.8))), edges(series(falling(100, 0.05, 0.7)))),
    ).toEqual([]);
  });

  test('cross a stop on the straight line between two readings', () => {
    const readings = [3, 4, 6, 7].map((sharpness, i) => ({ cut: i * 10, sharpness }));
    expect(crossing(readings, 5)).toBe(15);
    expect(crossing(readings, 7)).toBe(30);
    expect(crossing(readings, 7.1)).toBeNull();
    expect(crossing(readings, 3)).toBeNull();
  });
});

describe('the ratio at equal sharpness', () => {
  // Two knives that start at 100 and 92, the same shape of blunting: 1/b, and the rate of the second, follow from asking
  // for 3.7 at a stop of 60 and 2.9 at 30: ratio = (a₂/a₁ · (100/s − 1)/(92/s − 1))^(1/b).
  const at = (endPoint: number): number => (100 / endPoint - 1) / (92 / endPoint - 1);
  const b = Math.log(at(60) / at(30)) / Math.log(3.7 / 2.9);
  const a = 0.03;
  const x = edges(series(falling(100, a, b)));
  const y = edges(series(falling(92, (a * 3.7 ** b) / at(60), b)));

  test('depends on the stop', () => {
    const far = cuts.map((cut) => cut * 40);
    const [sharp, blunt] = ratioByEndPoint(
      edges(series(falling(100, a, b), far)),
      edges(series(falling(92, (a * 3.7 ** b) / at(60), b), far)),
      { endPoints: [30, 60] },
    );
    expect(sharp).toMatchObject({
      endPoint: 60,
      ratio: expect.closeTo(3.7, 4) as number,
      low: null,
      high: null,
    });
    expect(blunt).toMatchObject({ endPoint: 30, ratio: expect.closeTo(2.9, 4) as number });
  });

  test('is told only where both knives have been', () => {
    const [lastX, lastY] = [x[0]?.readings.at(-1)?.sharpness ?? NaN, y[0]?.readings.at(-1)?.sharpness ?? NaN];
    const endPoints = ratioByEndPoint(x, y);
    expect(endPoints).toHaveLength(25);
    for (const { endPoint } of endPoints) {
      expect(endPoint).toBeLessThan(92);
      expect(endPoint).toBeGreaterThanOrEqual(Math.max(lastX, lastY));
    }
    expect(ratioByEndPoint(x, y, { endPoints: [95, Math.min(lastX, lastY)] })).toEqual([]);
    expect(() => ratioByEndPoint([], y)).toThrow('x has no series');
  });

  test('at equal relative loss does not see where the knives started', () => {
    const shares = ratioByEndPoint(x, y, { relative: true, endPoints: [0.9, 0.8, 0.7] });
    const expected = 3.7 / at(60) ** (1 / b);
    expect(shares.map(({ endPoint }) => endPoint)).toEqual([0.9, 0.8, 0.7]);
    for (const { ratio } of shares) expect(ratio).toBeCloseTo(expected, 4);
  });

  test('has a band from several runs, and a curve-free value beside it', () => {
    const runs = (start: number, rate: number) =>
      edges(...[0.85, 1, 1.2].map((spread) => series(falling(start, rate * spread, b))));
    const [middle] = ratioByEndPoint(runs(100, a), runs(92, a * 2), { endPoints: [75] });
    expect(middle?.low).toBeLessThan(middle?.ratio ?? NaN);
    expect(middle?.high).toBeGreaterThan(middle?.ratio ?? NaN);
    expect((middle?.curveFree ?? NaN) / (middle?.ratio ?? NaN)).toBeCloseTo(1, 0);
    expect(middle?.curveFree).not.toBe(middle?.ratio);
  });

  test('has a wider band for all end points at once than for one chosen before', () => {
    const runs = (start: number, rate: number) =>
      edges(...[0.85, 1, 1.2].map((spread) => series(falling(start, rate * spread, b))));
    const [one] = ratioByEndPoint(runs(100, a), runs(92, a * 2), { endPoints: [75] });
    const three = ratioByEndPoint(runs(100, a), runs(92, a * 2), { endPoints: [80, 75, 70] });
    // t of 4 degrees of freedom at 97.5 and 99.1667% (Bonferroni for 3): 2.776 and 3.961 (standard tables).
    const width = (of: typeof one): number => Math.log((of?.high ?? NaN) / (of?.low ?? NaN));
    expect(width(three[1]) / width(one)).toBeCloseTo(3.961 / 2.776, 2);
  });

  test('is within batches, and there is none where no batch holds both', () => {
    const of = (batch: string, start: number, rate: number) => ({
      readings: series(falling(start, rate, b)),
      batch,
      edge: batch,
    });
    const x = [of('one', 100, a), of('two', 100, a * 3)];
    const shared = [of('one', 92, a * 2), of('two', 92, a * 6)];
    const apart = ratioByEndPoint(x, [of('three', 92, a * 2)], { endPoints: [75] });
    expect(apart).toEqual([]);
    const [first] = ratioByEndPoint(x.slice(0, 1), shared.slice(0, 1), { endPoints: [75] });
    // A batch that blunts both three times as fast changes nothing; a third one without the other knife neither.
    const [both] = ratioByEndPoint(x, [...shared, of('three', 92, a * 50)], { endPoints: [75] });
    expect((both?.ratio ?? NaN) / (first?.ratio ?? NaN)).toBeCloseTo(1, 4);
  });
});
