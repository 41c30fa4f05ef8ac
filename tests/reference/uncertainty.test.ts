import { describe, expect, it } from 'vitest';
import { firstOrder } from '../../src/model/uncertainty/propagation.ts';
import { uniformStream } from '../../src/model/statistics/random.ts';
import { logSd } from '../../src/model/runs/planning.ts';
import { spreadOf, valueAt } from '../../src/model/uncertainty/sampling.ts';
import { slices, varianceShares } from '../../src/model/uncertainty/variance.ts';

describe('first-order propagation', () => {
  it("gives Eurachem's product and quotient", () => {
    // Eurachem/CITAC Guide CG 4, Quantifying Uncertainty in Analytical Measurement (QUAM), example of rule 2:
    // y = o·p/(q·r) with 2.46(0.02), 4.32(0.13), 6.38(0.11), 2.99(0.07).
    const y = (2.46 * 4.32) / (6.38 * 2.99);
    expect(y).toBeCloseTo(0.557092, 6);
    const relative = firstOrder([
      { u: 0.02 / 2.46 },
      { u: 0.13 / 4.32 },
      { u: 0.11 / 6.38, sensitivity: -1 },
      { u: 0.07 / 2.99, sensitivity: -1 },
    ]);
    expect(y * relative).toBeCloseTo(0.023747, 6);
  });

  it('adds ten resistors measured with one and the same bias', () => {
    // JCGM 100:2008, 5.2.2, example: ten resistors of 1000 Ω, each with 0.1 Ω, fully correlated: 1 Ω.
    const ten = Array.from({ length: 10 }, () => ({ u: 0.1 }));
    expect(firstOrder(ten, 1)).toBeCloseTo(1, 12);
    // Independent, they would give 0.32 Ω (the footnote of the same place).
    expect(firstOrder(ten)).toBeCloseTo(0.32, 2);
  });

  it('compounds five lognormal factors to a 95% factor of 1.764', () => {
    // Coefficients of variation 10, 15, 10, 5 and 20%: worked by hand from σ² = ln(1 + CV²).
    const combined = firstOrder([0.1, 0.15, 0.1, 0.05, 0.2].map((cv) => ({ u: logSd(cv) })));
    expect(Math.exp(1.959964 * combined)).toBeCloseTo(1.764, 3);
  });

  it('lets two factors driven by one input add, not combine as if independent', () => {
    // One angle drives wedge and apex with exponents 0.83 and 0.47 at 15°: 1.30 together, where √ would give 0.95.
    const parts = [
      { u: 1, sensitivity: 0.83 },
      { u: 1, sensitivity: 0.47 },
    ];
    expect(firstOrder(parts, 1)).toBeCloseTo(1.3, 12);
    expect(firstOrder(parts)).toBeCloseTo(0.95, 2);
  });
});

describe('draws', () => {
  // JCGM 100:2008, 4.3.7, 4.3.9 and 4.3.4: standard deviations of half width h.
  it.each([
    ['uniform', Math.sqrt(3)],
    ['triangular', Math.sqrt(6)],
    ['normal', 1.96],
  ] as const)('of a %s ± h scatter by h over %f', (shape, divisor) => {
    const uniform = uniformStream(11);
    const spread = spreadOf({ value: 15, plusMinus: 2, shape }, { low: 4, high: 45 });
    const sample = Array.from({ length: 40_000 }, () => valueAt(spread, uniform()));
    const mean = sample.reduce((sum, v) => sum + v, 0) / sample.length;
    const sd = Math.sqrt(sample.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (sample.length - 1));
    expect(Math.abs(mean - 15)).toBeLessThan(0.03);
    expect(Math.abs(sd / (2 / divisor) - 1)).toBeLessThan(0.015);
  });

  it('of a lopsided triangle have its mean, (low + mode + high)/3', () => {
    const uniform = uniformStream(5);
    const spread = {
      shape: 'triangular',
      low: 1,
      middle: 1.3,
      high: 1.8,
      allowed: { low: 0, high: 5 },
    } as const;
    const sample = Array.from({ length: 40_000 }, () => valueAt(spread, uniform()));
    expect(sample.reduce((sum, v) => sum + v, 0) / sample.length).toBeCloseTo(4.1 / 3, 2);
    expect(Math.min(...sample)).toBeGreaterThanOrEqual(1);
    expect(Math.max(...sample)).toBeLessThanOrEqual(1.8);
  });
});

describe('variance shares', () => {
  it("are those known for Ishigami's function", () => {
    // Ishigami & Homma (1990): sin x₁ + 7 sin² x₂ + 0.1 x₃⁴ sin x₁ on −π…π; first-order indices 0.3139, 0.4424 and 0
    // (Saltelli et al., Global Sensitivity Analysis: The Primer, 2008), so that 0.2437 is left to act together.
    const uniform = uniformStream(1);
    const n = 40_000;
    const x = [0, 1, 2].map(() => Float64Array.from({ length: n }, () => Math.PI * (2 * uniform() - 1)));
    const [x1, x2, x3] = x as [Float64Array, Float64Array, Float64Array];
    const y = x1.map(
      (v, i) => Math.sin(v) + 7 * Math.sin(x2[i] ?? 0) ** 2 + 0.1 * (x3[i] ?? 0) ** 4 * Math.sin(v),
    );
    const shares = varianceShares(y, { x1: slices(x1), x2: slices(x2), x3: slices(x3) });
    expect(Math.abs((shares['x1'] ?? 0) - 0.3139)).toBeLessThan(0.015);
    expect(Math.abs((shares['x2'] ?? 0) - 0.4424)).toBeLessThan(0.015);
    expect(shares['x3']).toBeLessThan(0.005);
    expect(Math.abs((shares['together'] ?? 0) - 0.2437)).toBeLessThan(0.02);
  });
});
