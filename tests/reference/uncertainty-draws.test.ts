import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../src/model/statistics/distributions.ts';
import { normalScore } from '../../src/model/statistics/normal-score.ts';
import { firstOrder } from '../../src/model/uncertainty/propagation.ts';
import { quantiles } from '../../src/model/statistics/quantiles.ts';
import { drawUniform, namedPlaces } from '../../src/model/statistics/random.ts';
import { logSd } from '../../src/model/runs/planning.ts';
import { spreadOf, valueAt, type Spread } from '../../src/model/uncertainty/sampling.ts';
import { sorted } from '../../src/model/statistics/sorted.ts';
import { evenSlices, slices, varianceShares } from '../../src/model/uncertainty/variance.ts';

const sdOf = (values: ArrayLike<number>): number => {
  const all = Array.from(values);
  const mean = all.reduce((sum, v) => sum + v, 0) / all.length;
  return Math.sqrt(all.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (all.length - 1));
};
const evenDraws = (seed: number, name: string, samples: number): Float64Array =>
  drawUniform(seed, name, new Float64Array(samples));
const anything = { low: -Infinity, high: Infinity };

describe('normal scores', () => {
  it('are the quantiles of the normal distribution, far out too', () => {
    for (const p of [1e-300, 1e-20, 1e-9, 1e-4, 0.01, 0.0749, 0.0751, 0.3, 0.5, 0.6, 0.925, 0.99, 0.999999])
      expect(Math.abs(normalScore(p) / (normalQuantile(p) || 1) - (p === 0.5 ? 0 : 1))).toBeLessThan(1e-13);
    // Standard tables of the normal distribution: 90, 95 and 99% two-sided.
    expect([0.95, 0.975, 0.995].map((p) => Number(normalScore(p).toFixed(4)))).toEqual([
      1.6449, 1.96, 2.5758,
    ]);
  });
});

describe('quantiles', () => {
  it('are those of the sorted results, whatever their order, ties and extremes', () => {
    for (let seed = 0; seed < 40; seed += 1) {
      const even = evenDraws(seed, 'quantiles', 1 + ((seed * 37) % 300));
      const results = even.map((u) => (seed % 3 === 0 ? Math.floor(6 * u) : Math.tan(Math.PI * (u - 0.5))));
      const before = results.slice();
      const inOrder = results.toSorted();
      const shares = [0, 0.05, 0.05, 0.31, 0.5, 0.95, 1];
      const plain = shares.map((p) => {
        const place = p * (inOrder.length - 1);
        const [low, high] = [inOrder[Math.floor(place)] ?? 0, inOrder[Math.ceil(place)] ?? 0];
        return low + (place - Math.floor(place)) * (high - low);
      });
      expect(quantiles(sorted(results), shares)).toEqual(plain);
      expect(results).toEqual(before);
    }
    // Linear between neighbours: Hyndman & Fan, The American Statistician 50:361 (1996), definition 7.
    expect(quantiles(sorted(Float64Array.of(4, 1, 3, 2)), [0.25, 0.5, 0.75])).toEqual([1.75, 2.5, 3.25]);
  });

  it('of many runs scatter about the closed form as they should', () => {
    // The p point of n draws has the standard deviation √(p(1 − p)/n)/f, f the density there (Mood, Graybill & Boes,
    // Introduction to the Theory of Statistics, 1974, VI.5). Uniform 15 ± 2 and normal with sd 2/1.959964.
    const n = 2000;
    const runs = 200;
    const cases: [Spread, (p: number) => number, (p: number) => number][] = [
      [spreadOf({ value: 15, plusMinus: 2 }, anything), (p) => 13 + 4 * p, () => 1 / 4],
      [
        spreadOf({ value: 15, plusMinus: 2, shape: 'normal' }, anything),
        (p) => 15 + (2 / 1.959964) * normalQuantile(p),
        (p) => Math.exp((-1 / 2) * normalQuantile(p) ** 2) / Math.sqrt(2 * Math.PI) / (2 / 1.959964),
      ],
    ];
    for (const [spread, quantile, density] of cases) {
      const found = Array.from({ length: runs }, (_, seed) =>
        quantiles(sorted(evenDraws(seed, spread.shape, n).map((u) => valueAt(spread, u))), [0.05, 0.5, 0.95]),
      );
      [0.05, 0.5, 0.95].forEach((p, k) => {
        const scores = found.map(
          (row) => (((row[k] ?? 0) - quantile(p)) * density(p)) / Math.sqrt((p * (1 - p)) / n),
        );
        const mean = scores.reduce((sum, z) => sum + z, 0) / runs;
        // Three and a half standard errors of a mean, and of a standard deviation, of 200.
        expect(Math.abs(mean)).toBeLessThan(3.5 / Math.sqrt(runs));
        expect(Math.abs(sdOf(scores) - 1)).toBeLessThan(3.5 / Math.sqrt(2 * runs));
      });
    }
  });
});

describe('draws under a name', () => {
  it('are even, and independent of those under another', () => {
    const n = 20_000;
    const names = ['plover/angleDeg', 'plover/edgeMm', 'dunlin/angleDeg', '/friction', ''];
    const all = names.map((name) => evenDraws(5, name, n));
    for (const [i, a] of all.entries()) {
      expect(Math.abs(sdOf(a) * Math.sqrt(12) - 1)).toBeLessThan(0.02);
      for (const b of all.slice(i + 1)) {
        const covariance = a.reduce((sum, v, j) => sum + (v - 0.5) * ((b[j] ?? 0) - 0.5), 0) / n;
        expect(Math.abs(12 * covariance)).toBeLessThan(4 / Math.sqrt(n));
      }
    }
  });

  it('by place are even over samples and over attempts', () => {
    const again = namedPlaces(5, 'plover/angleDeg');
    for (const draws of [
      Array.from({ length: 20_000 }, (_, i) => again(i, 1)),
      Array.from({ length: 20_000 }, (_, i) => again(7, i)),
    ]) {
      // χ² with 99 degrees of freedom: 148.2 is its 99.9% point (standard tables (memory)).
      const counts = new Float64Array(100);
      for (const u of draws) counts[Math.floor(100 * u)] = (counts[Math.floor(100 * u)] ?? 0) + 1;
      expect(counts.reduce((sum, count) => sum + (count - 200) ** 2 / 200, 0)).toBeLessThan(148.2);
      expect(new Set(draws).size).toBeGreaterThan(19_990);
    }
  });
});

describe('propagation by sampling', () => {
  const n = 100_000;
  const normal = (name: string) => evenDraws(1, name, n).map(normalScore);

  it('gives the ten resistors their 1 Ω with one bias, and 0.32 Ω without', () => {
    // JCGM 100:2008, 5.2.2, example and its footnote.
    const shared = normal('comparison').map((z) => 10 * 1000 + 10 * 0.1 * z);
    expect(sdOf(shared)).toBeCloseTo(1, 2);
    const own = Array.from({ length: 10 }, (_, k) => normal(`resistor ${k}`));
    const sums = normal('').map((_, i) => own.reduce((sum, z) => sum + 1000 + 0.1 * (z[i] ?? 0), 0));
    expect(sdOf(sums)).toBeCloseTo(0.32, 2);
  });

  it("gives Eurachem's product and quotient", () => {
    // Eurachem/CITAC Guide CG 4 (QUAM), example of rule 2: 0.557092 with u 0.023747.
    const [o, p, q, r] = ['o', 'p', 'q', 'r'].map(normal) as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const y = o.map(
      (z, i) =>
        ((2.46 + 0.02 * z) * (4.32 + 0.13 * (p[i] ?? 0))) /
        ((6.38 + 0.11 * (q[i] ?? 0)) * (2.99 + 0.07 * (r[i] ?? 0))),
    );
    expect(quantiles(sorted(y), [0.5])[0]).toBeCloseTo(0.557092, 3);
    expect(Math.abs(sdOf(y) / 0.023747 - 1)).toBeLessThan(0.01);
  });

  it('compounds five lognormal factors to a 95% factor of 1.764', () => {
    // Coefficients of variation 10, 15, 10, 5 and 20%: worked by hand from σ² = ln(1 + CV²).
    const sds = [0.1, 0.15, 0.1, 0.05, 0.2].map(logSd);
    const factors = sds.map((sd, k) => normal(`factor ${k}`).map((z) => Math.exp(sd * z)));
    const products = normal('').map((_, i) => factors.reduce((product, f) => product * (f[i] ?? 1), 1));
    const [low = 0, high = 0] = quantiles(sorted(products), [0.025, 0.975]);
    expect(Math.sqrt(high / low)).toBeCloseTo(1.764, 1);
    expect(Math.exp(1.959964 * firstOrder(sds.map((u) => ({ u }))))).toBeCloseTo(1.764, 3);
  });
});

describe('variance shares of a sum', () => {
  it('are aᵢ²σᵢ²/Σ, by even draws and by scores alike', () => {
    // y = x₁ + 2x₂ + 3x₃ of equal spread: 1/14, 4/14, 9/14 exactly, nothing left to act together
    // (Saltelli et al., Global Sensitivity Analysis: The Primer, 2008, the linear case).
    const n = 20_000;
    const even = ['x1', 'x2', 'x3'].map((name) => evenDraws(2, name, n));
    const y = new Float64Array(n).map((_, i) => even.reduce((sum, x, k) => sum + (k + 1) * (x[i] ?? 0), 0));
    for (const slicing of [evenSlices, slices]) {
      const shares = varianceShares(y, Object.fromEntries(even.map((x, k) => [`x${k + 1}`, slicing(x)])));
      [1, 4, 9].forEach((weight, k) => {
        expect(Math.abs((shares[`x${k + 1}`] ?? 0) - weight / 14)).toBeLessThan(0.01);
      });
      expect(shares['together']).toBeLessThan(0.01);
    }
  });
});
