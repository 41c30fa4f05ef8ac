import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studentCdf, studentQuantile } from '../../../src/model/statistics/distributions.ts';
import { uniformStream } from '../../../src/model/statistics/random.ts';
import { fitPower } from '../../../src/model/runs/fit.ts';
import { logSd, pairsNeeded, runsNeeded, twoSamplePower } from '../../../src/model/runs/planning.ts';
import { geometricMeanRatio, ratioOfMeans } from '../../../src/model/runs/ratios.ts';
import { welch } from '../../../src/model/runs/welch.ts';

const life = fc.double({ min: 20, max: 2000, noNaN: true });
const series = fc.array(life, { minLength: 2, maxLength: 12 });
const scatters = (x: number[], y: number[]): boolean =>
  [x, y].some((s) => Math.max(...s) / Math.min(...s) > 1.001);

describe('two series of runs', () => {
  it('swapped, give the inverse ratio and the mirrored difference', () => {
    fc.assert(
      fc.property(series, series, (x, y) => {
        fc.pre(scatters(x, y));
        for (const compareThem of [ratioOfMeans, geometricMeanRatio]) {
          const ab = compareThem(x, y);
          const ba = compareThem(y, x);
          expect(ab.ratio * ba.ratio).toBeCloseTo(1, 9);
          expect(Math.log(ab.low)).toBeCloseTo(-Math.log(ba.high), 9);
        }
        expect(welch(x, y).low).toBeCloseTo(-welch(y, x).high, 6);
      }),
    );
  });

  it('in another unit give the same ratio', () => {
    fc.assert(
      fc.property(series, series, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (x, y, unit) => {
        fc.pre(scatters(x, y));
        const scaled = (s: number[]): number[] => s.map((v) => v * unit);
        expect(geometricMeanRatio(scaled(x), scaled(y)).low / geometricMeanRatio(x, y).low).toBeCloseTo(1, 9);
        expect(ratioOfMeans(scaled(x), scaled(y)).high / ratioOfMeans(x, y).high).toBeCloseTo(1, 9);
      }),
    );
  });

  it('show p below 5% exactly where the 95% interval leaves 1 out', () => {
    fc.assert(
      fc.property(series, series, (x, y) => {
        fc.pre(scatters(x, y));
        const { low, high, p } = geometricMeanRatio(x, y);
        fc.pre(Math.abs(p - 0.05) > 1e-9);
        expect(p < 0.05).toBe(low > 1 || high < 1);
      }),
    );
  });

  it('are refused with the name of what is wrong', () => {
    expect(() => welch([1], [2, 3])).toThrow(new RangeError('x has 1 readings, at least 2 are needed'));
    expect(() => welch([1, NaN], [2, 3])).toThrow('x[1] NaN is not a finite number');
    expect(() => welch([1, 1], [2, 2])).toThrow('scatter of x and y is 0');
    expect(() => welch([1, 2], [2, 3], 95)).toThrow('confidence 95 is not between 0 and 1');
    expect(() => geometricMeanRatio([1, 2], [2, 0])).toThrow('y[1] 0 is not a finite number above 0');
    expect(() => ratioOfMeans([-1, 2], [2, 1])).toThrow('x[0] -1 is not a finite number above 0');
  });
});

describe('Student quantile', () => {
  it('undoes the distribution', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        (p, df) => {
          expect(studentCdf(studentQuantile(p, df), df)).toBeCloseTo(p, 10);
        },
      ),
    );
  });
});

describe('runs needed', () => {
  it('is the least number whose power is enough', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        fc.double({ min: 1.05, max: 3, noNaN: true }),
        (cv, ratio) => {
          const n = runsNeeded({ cv, ratio });
          const effect = Math.log(ratio) / logSd(cv);
          expect(twoSamplePower(effect, n)).toBeGreaterThanOrEqual(0.8);
          if (n > 2) expect(twoSamplePower(effect, n - 1)).toBeLessThan(0.8);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('follows the rule of thumb 16 over the effect squared when many are needed', () => {
    const effect = Math.log(1.05) / logSd(0.3);
    expect(runsNeeded({ cv: 0.3, ratio: 1.05 }) / (16 / effect ** 2)).toBeCloseTo(1, 1);
  });

  it('promises more than Welch gives below five a knife', () => {
    // Three runs a knife, ratio 1.3, scatter 10%: about 0.57 by Welch where the pooled test has 0.68.
    const uniform = uniformStream(3);
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const runs = (mean: number): number[] =>
      Array.from({ length: 3 }, () => Math.exp(mean + logSd(0.1) * normal()));
    const trials = 4000;
    let noticed = 0;
    for (let i = 0; i < trials; i += 1)
      if (geometricMeanRatio(runs(Math.log(1.3)), runs(0)).p < 0.05) noticed += 1;
    expect(Math.abs(noticed / trials - 0.57)).toBeLessThan(0.03);
  });

  it('refuses what it cannot answer', () => {
    expect(() => runsNeeded({ cv: 0.2, ratio: 1 })).toThrow('ratio 1 is not a number above 0 other than 1');
    expect(() => runsNeeded({ cv: 0, ratio: 2 })).toThrow('cv 0 is not above 0 and up to 5');
    expect(() => runsNeeded({ cv: 0.2, ratio: 1.2, power: 1 })).toThrow(
      'power 1 is not between alpha 0.05 and 1',
    );
    expect(() => runsNeeded({ cv: 0.2, ratio: 1.2, alpha: 0 })).toThrow(
      'alpha 0 is not between 0.000001 and 0.5',
    );
    expect(() => runsNeeded({ cv: 1, ratio: 1.0001 })).toThrow('too close to 1');
    expect(() => pairsNeeded({ cv: 0.2, ratio: 1.2, correlation: 1 })).toThrow(
      'correlation 1 is not from -1 to below 1',
    );
  });
});

describe('power law', () => {
  it('is found again where the readings follow one exactly', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.uniqueArray(fc.integer({ min: 1, max: 500 }), { minLength: 3, maxLength: 12 }),
        (a, b, x) => {
          const fit = fitPower(
            x,
            x.map((v) => a * v ** b),
          );
          expect(fit.a / a).toBeCloseTo(1, 8);
          expect(fit.b).toBeCloseTo(b, 8);
        },
      ),
    );
  });

  it('leaves residuals no small change of a or b improves', () => {
    const x = [1, 2, 3, 5, 8, 13];
    const y = [2.2, 2.9, 3.2, 4.6, 5.1, 7.4];
    const fit = fitPower(x, y);
    const rss = (a: number, b: number): number =>
      x.reduce((sum, v, i) => sum + ((y[i] ?? NaN) - a * v ** b) ** 2, 0);
    expect(rss(fit.a, fit.b)).toBeCloseTo(fit.rss, 12);
    for (const da of [-1e-4, 0, 1e-4])
      for (const db of [-1e-4, 0, 1e-4]) expect(rss(fit.a + da, fit.b + db)).toBeGreaterThanOrEqual(fit.rss);
  });

  it('is not the log–log line', () => {
    // NIST StRD DanWood again: the line through the logarithms gives 0.74995 and 3.9172.
    const x = [1.309, 1.471, 1.49, 1.565, 1.611, 1.68];
    const y = [2.138, 3.421, 3.597, 4.34, 4.882, 5.66];
    expect(fitPower(x, y).b).not.toBeCloseTo(3.9172, 2);
  });

  it('is refused where there is none', () => {
    expect(() => fitPower([1, 2], [1, 2])).toThrow('x has 2 readings, at least 3 are needed');
    expect(() => fitPower([1, 2, 3], [1, 2])).toThrow('y has 2 readings, as many as x (3) are needed');
    expect(() => fitPower([0, 2, 3], [1, 2, 3])).toThrow('x[0] 0 is not a finite number above 0');
    expect(() => fitPower([2, 2, 2], [1, 2, 3])).toThrow('x is 2 throughout');
    expect(() => fitPower([1, 2, 4], [0, 0, 1])).toThrow('y follows no power law in x');
    expect(() => fitPower([1, 2, 4], [0, 0, 0])).toThrow('y is 0 throughout');
  });
});
