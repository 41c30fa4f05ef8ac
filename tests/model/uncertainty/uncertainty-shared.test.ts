import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/model/chain/compare.ts';
import type { Prediction } from '../../../src/model/uncertainty/prediction.ts';
import { createPredictor } from '../../../src/model/uncertainty/predictor.ts';
import { firstOrder } from '../../../src/model/uncertainty/propagation.ts';
import type { Knife, Comparison, Quantity } from '../../../src/model/types.ts';
import { predict } from '../../../src/model/uncertainty/predict.ts';
import { exact as known } from '../knives.ts';

// Invented knives of an invented harbour rigging loft.
const plover: Knife = {
  id: 'plover',
  angleDeg: 18,
  edgeMm: 0.5,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 58,
  carbideVolPercent: { CrC: 4 },
};
const curlew: Knife = { ...plover, id: 'curlew', angleDeg: 15, hrc: 61, carbideVolPercent: { CrC: 8 } };
const exact = known.assumptions;
const loft = (a: Knife = curlew, b: Knife = plover, more: Partial<Comparison> = {}): Comparison => ({
  knives: [b, a],
  baseline: b.id,
  friction: 0.25,
  assumptions: exact,
  ...more,
});
const options = { samples: 20_000, seed: 3 };
const second = (comparison: Comparison, given = options): Prediction => {
  const [, found] = predict(comparison, given);
  if (found === undefined) throw new Error('the comparison has no second knife');
  return found;
};
const within = (value: number, plusMinus: number): Quantity => ({ value, plusMinus });
const sdOfLog = (comparison: Comparison, knife = 'curlew'): number => {
  const logs = createPredictor(options).logRatios(comparison, knife);
  const mean = logs.reduce((sum, v) => sum + v, 0) / logs.length;
  return Math.sqrt(logs.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (logs.length - 1));
};

describe('the residual of the regression', () => {
  const withCv = (residualCv: Quantity | undefined, a = curlew, b = plover): Comparison => {
    const { residualCv: _none, ...others } = exact;
    return loft(a, b, { assumptions: residualCv === undefined ? others : { ...others, residualCv } });
  };

  it('collapses the band to exactly the close value where it is 0 and nothing else varies', () => {
    const { low, median, high, variance } = second(withCv(0));
    const multiplied = compare(withCv(0)).rows[1]?.multiplied;
    expect([low, median, high]).toEqual([multiplied, multiplied, multiplied]);
    expect(variance).toEqual({});
  });

  it('scatters a ratio of two steels by √2 of its coefficient of variation, to the power of a life', () => {
    for (const cv of [0.05, 0.1, 0.3]) {
      expect(Math.abs(sdOfLog(withCv(cv)) / (1.5 * Math.SQRT2 * cv) - 1)).toBeLessThan(0.015);
      const strokes = { ...withCv(cv), outcome: 'fixed-strokes' } as const;
      expect(Math.abs(sdOfLog(strokes) / (Math.SQRT2 * cv) - 1)).toBeLessThan(0.015);
      expect(second(withCv(cv)).variance['residual']).toBeGreaterThan(0.99);
    }
    // 90% of a normal lies within 1.6449 standard deviations (standard tables).
    const { low, high } = second(withCv(0.1));
    expect(Math.log(high / low) / (2 * 1.6449 * 1.5 * Math.SQRT2 * 0.1)).toBeCloseTo(1, 1);
  });

  it('is there unless it is set to 0, its own size within its range if one is stated', () => {
    // 10% where nothing is said (assumed).
    expect(Math.abs(sdOfLog(withCv(undefined)) / (1.5 * Math.SQRT2 * 0.1) - 1)).toBeLessThan(0.03);
    // Even over 0.1 ± 0.1, a triangle: E[cv²] = 0.1² + 0.1²/6 (JCGM 100, 4.3.9).
    const rms = Math.sqrt(0.01 + 0.01 / 6);
    expect(Math.abs(sdOfLog(withCv(within(0.1, 0.1))) / (1.5 * Math.SQRT2 * rms) - 1)).toBeLessThan(0.03);
    expect(Object.keys(second(withCv(within(0.1, 0.1))).variance)).toEqual(['residual', 'together']);
  });

  it('belongs to the steel: of one steel, entries for nothing aside, there is none between two knives', () => {
    const same = { ...curlew, hrc: plover.hrc, carbideVolPercent: { Fe3C: 0, CrC: 4 } };
    expect(second(withCv(0.2, same)).variance).toEqual({});
    expect(second(withCv(0.2, { ...same, hrc: 58.5 })).variance).not.toEqual({});
  });

  it('is the same beyond the published line', () => {
    const hard = withCv(0.2, { ...curlew, hrc: 67 });
    expect(Math.abs(sdOfLog(hard) / (1.5 * Math.SQRT2 * 0.2) - 1)).toBeLessThan(0.015);
  });

  it('sets the factors’ own ends too', () => {
    const highs = (residualCv: number): number[] =>
      (compare(withCv(residualCv)).rows[1]?.terms ?? [])
        .filter(({ family }) => family === 'steel')
        .map(({ high }) => high);
    highs(0.25).forEach((high, i) => expect(high / (highs(0)[i] ?? NaN)).toBeCloseTo(1.25 ** 1.5, 12));
    expect(() => compare(withCv(1.5))).toThrow('residual of the regression 1.5 is not between 0 and 1');
  });
});

describe('the common bias of a gauge', () => {
  it('cancels between knives that are alike, and not between others', () => {
    const gaugeBias = { angleDeg: 2, edgeMm: 0.1, hrc: 1 };
    const alike = second(loft({ ...plover, id: 'curlew' }, plover, { gaugeBias }));
    expect(alike).toMatchObject({ low: 1, median: 1, high: 1, variance: {} });
    const { variance } = second(loft({ ...curlew, edgeMm: 0.2 }, plover, { gaugeBias }));
    expect(Object.keys(variance)).toEqual(['gauge.angleDeg', 'gauge.edgeMm', 'gauge.hrc', 'together']);
    expect(variance['gauge.angleDeg']).toBeGreaterThan(0.005);
    expect(variance['gauge.edgeMm']).toBeGreaterThan(0.5);
  });

  it('adds as u² = u_a² + u_b² − 2ρ u_a u_b, ρ 1', () => {
    // JCGM 100:2008, 5.2.2 (equation 16) for a difference of two inputs with one bias. ln of the thicknesses, each by e = ½.
    const u = 0.01 / Math.sqrt(3);
    const comparison = loft({ ...plover, id: 'curlew', edgeMm: 0.25 }, plover, {
      contactDepthMm: 0.1,
      gaugeBias: { edgeMm: 0.01 },
    });
    const slope = (edgeMm: number, knife: 'a' | 'b'): number => {
      const at = (mm: number): number => {
        const changed =
          knife === 'a'
            ? loft({ ...plover, id: 'curlew', edgeMm: mm }, plover, { contactDepthMm: 0.1 })
            : loft(
                { ...plover, id: 'curlew', edgeMm: 0.25 },
                { ...plover, edgeMm: mm },
                { contactDepthMm: 0.1 },
              );
        return Math.log(compare(changed).rows[1]?.multiplied ?? 0);
      };
      return (at(edgeMm + 1e-5) - at(edgeMm - 1e-5)) / 2e-5;
    };
    const hand = firstOrder(
      [
        { u, sensitivity: slope(0.25, 'a') },
        { u, sensitivity: slope(0.5, 'b') },
      ],
      1,
    );
    expect(Math.abs(sdOfLog(comparison) / hand - 1)).toBeLessThan(0.02);
  });

  it('goes for the microbevel as for the bevel, and for nothing that was not measured', () => {
    const gaugeBias = { angleDeg: 1 };
    // A microbevel half a degree above its bevel stays above it under one bias.
    const careful = { ...curlew, microbevelAngleDeg: 15.5 };
    expect(second(loft(careful, plover, { gaugeBias })).redrawn).toBe(0);
    const unknown = (low: number, high: number): Quantity => ({ unknown: true, low, high });
    const neither = loft({ ...curlew, angleDeg: unknown(15, 15) }, { ...plover, angleDeg: unknown(18, 18) });
    expect(second({ ...neither, gaugeBias }).variance).toEqual({});
  });

  it('is refused where it is no ±', () => {
    for (const angleDeg of [-1, Number.NaN, Infinity, 90])
      expect(() => second(loft(curlew, plover, { gaugeBias: { angleDeg } }))).toThrow(
        `gauge bias of edge angle ± ${angleDeg}° is not between 0 and 45°`,
      );
  });
});

describe('beside first-order propagation', () => {
  /** Sensitivity of ln ratio to one input of the second knife, by the exact functions. */
  const slopeOf = (attribute: 'angleDeg' | 'edgeMm' | 'hrc', value: number): number => {
    const at = (v: number): number =>
      Math.log(compare(loft({ ...curlew, [attribute]: v })).rows[1]?.multiplied ?? 0);
    return (at(value * 1.0001) - at(value * 0.9999)) / (value * 0.0002);
  };

  it('agrees within 2% where the ± are small, one by one and together', () => {
    const plusMinus = { angleDeg: 0.3, edgeMm: 0.02, hrc: 0.5 } as const;
    const names = ['angleDeg', 'edgeMm', 'hrc'] as const;
    const part = (name: (typeof names)[number]) => ({
      u: plusMinus[name] / Math.sqrt(3),
      sensitivity: slopeOf(name, Number(curlew[name])),
    });
    const knifeWith = (some: readonly (typeof names)[number][]): Knife => ({
      ...curlew,
      ...Object.fromEntries(some.map((name) => [name, within(Number(curlew[name]), plusMinus[name])])),
    });
    for (const some of [['angleDeg'], ['edgeMm'], ['hrc'], names] as const)
      expect(Math.abs(sdOfLog(loft(knifeWith(some))) / firstOrder(some.map(part)) - 1)).toBeLessThan(0.02);
  });

  it('parts from it where an input is not known', () => {
    // ln t of t even from 0.05 to 0.95 is far from straight: its sd is ½·0.70, the tangent at the middle says ½·0.52.
    const sd = sdOfLog(loft({ ...curlew, edgeMm: { unknown: true, low: 0.05, high: 0.95 } }));
    const tangent = firstOrder([{ u: 0.45 / Math.sqrt(3), sensitivity: slopeOf('edgeMm', 0.5) }]);
    expect(sd / tangent).toBeGreaterThan(1.15);
  });

  it('lets one angle’s two sensitivities add: 0.83 + 0.47 = 1.30, not 0.95', () => {
    // At 15°, friction 0.25 and slice/push 3 the wedge's exponent is 2θ/sin 2(θ + φ), φ held, and the apex has what is left of
    // E = 1.3. That φ moves with the angle as well takes a little of it: by hand, dφ/dθ = −φ' of µ₀/√(1 + ξ² cos² θ).
    const u = 0.15 / Math.sqrt(3) / 15;
    const sd = sdOfLog(loft({ ...curlew, angleDeg: within(15, 0.15) }, plover, { slicePush: 3 }));
    const theta = Math.PI / 12;
    const phi = (angle: number): number => Math.atan(0.25 / Math.sqrt(1 + 9 * Math.cos(angle) ** 2));
    const wedge = (2 * theta) / Math.sin(2 * (theta + phi(theta)));
    const drift = 1 + (phi(theta + 1e-6) - phi(theta - 1e-6)) / 2e-6;
    expect(wedge).toBeCloseTo(0.83, 2);
    expect(1.3 - wedge).toBeCloseTo(0.47, 2);
    expect(Math.hypot(wedge, 1.3 - wedge)).toBeCloseTo(0.95, 2);
    expect(Math.abs(sd / u - (wedge * drift + 1.3 - wedge))).toBeLessThan(0.02);
    expect(sd / u).toBeCloseTo(1.3, 1);
  });
});

describe('an input that is not known', () => {
  const unknown = (low: number, high: number): Quantity => ({ unknown: true, low, high });
  const cleared: Record<string, Partial<Knife>> = {
    angle: { angleDeg: unknown(4, 45) },
    'thickness behind the edge': { edgeMm: unknown(0.05, 3.5) },
    finish: { finish: { um: unknown(1, 200) } },
    hardness: { hrc: unknown(40, 68) },
    carbide: { carbideVolPercent: { CrC: unknown(0, 20) } },
  };

  it.each(Object.entries(cleared))('widens the band and never blocks: %s', (_what, change) => {
    const width = (a: Knife, b: Knife): number => {
      const { low, high } = second(loft(a, b, { assumptions: {} }));
      return high / low;
    };
    const before = width(curlew, plover);
    expect(width({ ...curlew, ...change }, plover)).toBeGreaterThan(1.02 * before);
    expect(width(curlew, { ...plover, ...change })).toBeGreaterThan(1.02 * before);
  });

  it('never blocks where nothing at all is known of ten knives', () => {
    const nothing = Object.assign({}, ...Object.values(cleared)) as Partial<Knife>;
    const knives = Array.from({ length: 10 }, (_, k): Knife => ({ ...plover, ...nothing, id: `knife ${k}` }));
    const rows = predict({ knives, baseline: 'knife 0' }, { samples: 500, seed: 1 });
    for (const { low, high } of rows.slice(1)) expect(high / low).toBeGreaterThan(10);
  });
});
