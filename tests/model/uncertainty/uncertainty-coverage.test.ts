import { expect, test } from 'vitest';
import { compare } from '../../../src/model/chain/compare.ts';
import { parameters } from '../../../src/model/quantities.ts';
import type { Knife, Comparison, Quantity } from '../../../src/model/types.ts';
import { predict } from '../../../src/model/uncertainty/predict.ts';
import { exact as known } from '../knives.ts';
import { loft } from '../loft.ts';

/**
 * Truths are drawn here by means of their own, another generator and other ways to each shape, and put through
 * `compare`; the band of the stated comparison must hold nine tenths of them.
 */
function mulberry(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
/** A standard normal as a sum of twelve (its tails end at six): good to far below what is tested. */
const normal = (u: () => number): number => Array.from({ length: 12 }, u).reduce((sum, v) => sum + v, -6);

function truth(quantity: Quantity, u: () => number, usual: 'uniform' | 'triangular' = 'uniform'): number {
  if (typeof quantity === 'number') return quantity;
  if ('unknown' in quantity) return quantity.low + (quantity.high - quantity.low) * u();
  const { value, plusMinus, shape = usual } = quantity;
  if (shape === 'normal') return value + (plusMinus / 1.96) * normal(u);
  // The sum of two even ones is triangular.
  return value + plusMinus * (shape === 'triangular' ? u() + u() - 1 : 2 * u() - 1);
}
const rooted = (low: number, mode: number, high: number, u: () => number): number => {
  // A lopsided triangle by rejection under its flat top.
  for (;;) {
    const x = low + (high - low) * u();
    if (u() < (x < mode ? (x - low) / (mode - low) : (high - x) / (high - mode))) return x;
  }
};
const assumed = (id: keyof typeof parameters, given: Quantity | undefined, u: () => number): number => {
  const { default: mode, low, high } = parameters[id];
  const even = id === 'wedgingShare' || id === 'limitPower';
  if (given !== undefined) return truth(given, u, even ? 'uniform' : 'triangular');
  return even ? low + (high - low) * u() : rooted(low, mode, high, u);
};

/** ln of the second knife's true ratio in one world the comparison's statements allow. */
function trueRatio(comparison: Comparison, u: () => number): number {
  const { gaugeBias, assumptions } = comparison;
  const bias = (of: 'angleDeg' | 'edgeMm' | 'hrc'): number => (gaugeBias?.[of] ?? 0) * (2 * u() - 1);
  const [angle, edge, hrc] = [bias('angleDeg'), bias('edgeMm'), bias('hrc')];
  const knives = comparison.knives.map((knife): Knife => ({
    ...knife,
    angleDeg: truth(knife.angleDeg, u) + angle,
    edgeMm: truth(knife.edgeMm, u) + edge,
    finish: 'um' in knife.finish ? { um: truth(knife.finish.um, u) } : knife.finish,
    hrc: truth(knife.hrc, u) + hrc,
    carbideVolPercent: Object.fromEntries(
      Object.entries(knife.carbideVolPercent).map(([kind, volume]) => [kind, truth(volume, u)]),
    ),
  }));
  const p =
    comparison.outcome === 'fixed-strokes' ? 1 : assumed('lifeExponent', assumptions?.lifeExponent, u);
  const { rows } = compare({
    ...comparison,
    knives,
    friction: assumed('friction', comparison.friction, u),
    assumptions: {
      angleExponent: assumed('angleExponent', assumptions?.angleExponent, u),
      thicknessExponent: assumed('thicknessExponent', assumptions?.thicknessExponent, u),
      finishExponent: assumed('finishExponent', assumptions?.finishExponent, u),
      hardnessExponent: assumed('hardnessExponent', assumptions?.hardnessExponent, u),
      lifeExponent: p,
      wedgingShare: assumed('wedgingShare', assumptions?.wedgingShare, u),
      limitPower: assumed('limitPower', assumptions?.limitPower, u),
    },
  });
  const cv = assumptions?.residualCv === undefined ? 0.1 : truth(assumptions.residualCv, u, 'triangular');
  // Which of the three is true, by their weights.
  const [multiplied, added, toLimit] = assumptions?.structureWeights ?? [1, 1, 1];
  const pick = u() * (multiplied + added + toLimit);
  const [, row] = rows;
  const ratio = pick < multiplied ? row?.multiplied : pick < multiplied + added ? row?.added : row?.toLimit;
  return (ratio ?? Number.NaN) * Math.exp(p * cv * (normal(u) - normal(u)));
}

// Invented knives of an invented harbour rigging loft.
const within = (value: number, plusMinus: number, shape?: 'normal' | 'triangular'): Quantity =>
  shape === undefined ? { value, plusMinus } : { value, plusMinus, shape };
const plover: Knife = {
  id: 'plover',
  angleDeg: within(20, 1),
  edgeMm: within(0.5, 0.03),
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: within(58, 1),
  carbideVolPercent: { CrC: within(4, 1) },
};
const curlew: Knife = {
  ...plover,
  id: 'curlew',
  angleDeg: within(14, 1),
  edgeMm: within(0.3, 0.05, 'normal'),
  finish: { um: within(15, 4, 'triangular') },
  grind: { form: 'hollow', spineMm: 3, heightMm: 20, radiusMm: 160 },
  hrc: within(61, 1.5, 'normal'),
  carbideVolPercent: { CrC: within(8, 2), MC: within(2, 1) },
};
const exact = known.assumptions;
const cases: Record<string, Comparison> = {
  'every ± and the usual assumptions': { knives: [plover, curlew], baseline: 'plover' },
  'measurements alone': {
    knives: [plover, curlew],
    baseline: 'plover',
    friction: 0.25,
    assumptions: exact,
  },
  'the residual alone': {
    knives: [
      { ...plover, angleDeg: 20, edgeMm: 0.5, hrc: 58, carbideVolPercent: {} },
      { ...curlew, angleDeg: 14, edgeMm: 0.3, finish: { um: 15 }, hrc: 61, carbideVolPercent: { MC: 3 } },
    ],
    baseline: 'plover',
    friction: 0.25,
    assumptions: { ...exact, residualCv: 0.1 },
  },
  'the loft with its own ±': loft,
  'the loft in a fixed number of strokes': { ...loft, outcome: 'fixed-strokes' },
  'the structure alone, half of it the forces added': {
    ...loft,
    // Without a little scatter a band of three points would hold all of them.
    friction: 0.25,
    assumptions: { ...exact, residualCv: 0.1, structureWeights: [1, 2, 1] },
  },
  'one structure': { ...loft, assumptions: { structureWeights: [0, 0, 1] } },
  'gauges that read high or low': {
    knives: [plover, curlew],
    baseline: 'plover',
    friction: 0.25,
    assumptions: { ...exact, residualCv: 0.05 },
    gaugeBias: { angleDeg: 2, edgeMm: 0.1, hrc: 1 },
  },
  'angle and thickness not known': {
    knives: [
      plover,
      {
        ...curlew,
        angleDeg: { unknown: true, low: 8, high: 25 },
        edgeMm: { unknown: true, low: 0.1, high: 1 },
      },
    ],
    baseline: 'plover',
  },
  'a steel softer than the published line covers, its hardness not known': {
    knives: [{ ...plover, hrc: { unknown: true, low: 36, high: 48 } }, curlew],
    baseline: 'plover',
    assumptions: { thicknessExponent: within(0.5, 0.2) },
  },
};

const truths = 3000;

test.each(Object.entries(cases))(
  'a band holds nine tenths of the truths: %s',
  { timeout: 60_000 },
  (_what, comparison) => {
    for (const seed of [1, 2]) {
      const [, band] = predict(comparison, { samples: 20_000, seed });
      const u = mulberry(seed);
      const { low = Number.NaN, median = Number.NaN, high = Number.NaN } = band ?? {};
      let [inside, above] = [0, 0];
      for (let i = 0; i < truths; i += 1) {
        const ratio = trueRatio(comparison, u);
        if (ratio >= low && ratio <= high) inside += 1;
        if (ratio > median) above += 1;
      }
      // Of 3000 the standard error of the count is 0.55% of them.
      expect(inside / truths).toBeGreaterThan(0.88);
      expect(inside / truths).toBeLessThan(0.92);
      expect(Math.abs(above / truths - 0.5)).toBeLessThan(0.03);
    }
  },
);
