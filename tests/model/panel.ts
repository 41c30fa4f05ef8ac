import { createHash } from 'node:crypto';
import type * as door from '../../src/model/index.ts';
import type { Comparison, Knife } from '../../src/model/index.ts';

type Model = typeof door;

/**
 * A fixed panel: every factor in both readings and to both outcomes, within the published line and beyond it, all three
 * totals, predictions, and every table and formula.
 * Its digest stands in model-numbers.json under the model's number. Where a result changes, raise `MODEL_NUMBER` and add
 * the digest the failure prints; never change an old line.
 */
const knife = (id: string, change: Partial<Knife>): Knife => ({
  id,
  angleDeg: 20,
  edgeMm: 0.5,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 15 },
  hrc: 58,
  carbideVolPercent: { Fe3C: 3 },
  toughness: 20,
  ...change,
});
const knives = [
  knife('plain', {}),
  knife('slim', { angleDeg: 11, edgeMm: 0.2, hrc: 63, carbideVolPercent: { MC: 4, CrVC: 6 }, toughness: 12 }),
  knife('hollow', {
    grind: { form: 'hollow', spineMm: 3, heightMm: 20, radiusMm: 160 },
    microbevelAngleDeg: 24,
  }),
  knife('convex', { grind: { form: 'convex', spineMm: 4, heightMm: 25, radiusMm: 90 }, finish: { um: 3 } }),
  knife('unknown', {
    hrc: { unknown: true, low: 54, high: 62 },
    carbideVolPercent: { CrC: { value: 6, plusMinus: 2 } },
  }),
];
const comparisons: Comparison[] = [
  { knives, baseline: 'plain' },
  { knives, baseline: 'slim', slicePush: 3, friction: 0.3, contactDepthMm: 12 },
  {
    knives,
    baseline: 'plain',
    assumptions: { angleExponent: 1.6, thicknessExponent: 0.8, finishExponent: 0.1 },
  },
  { knives: [...knives, knife('soft', { hrc: 44 }), knife('hard', { hrc: 68 })], baseline: 'plain' },
  { knives, baseline: 'hollow', outcome: 'fixed-strokes', gaugeBias: { angleDeg: 0.5 } },
  {
    // Thick, so that wedging takes most of the force.
    knives: [...knives, knife('thick', { edgeMm: 2.5, grind: { form: 'flat', spineMm: 3, heightMm: 4 } })],
    baseline: 'plain',
    assumptions: { lifeExponent: 2, wedgingShare: 0.55, limitPower: 1.8, structureWeights: [1, 2, 3] },
  },
];
const range = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

const panel = (model: Model): unknown => [
  comparisons.flatMap((comparison) =>
    (['quick', 'careful'] as const).map((reading) =>
      model.compare(comparison, { reading }).rows.map(({ notes: _words, terms, ...numbers }) => ({
        ...numbers,
        terms: terms.map(({ id, factor, low, high }) => ({ id, factor, low, high })),
      })),
    ),
  ),
  comparisons.map((comparison) => model.predict(comparison, { samples: 200, seed: 1 })),
  (['FEPA-P', 'FEPA-F', 'JIS', 'CAMI'] as const).map((scale) => model.gritTable(scale).rows),
  range(20, 68, 1).map((hrc) => model.vickersFromRockwellC(hrc)),
  range(250, 650, 10).map((vickers) => model.tensileStrengthMpa(vickers)),
  range(727, 1100, 20).map((celsius) => model.austeniteCarbonPercent(celsius)),
  range(400, 940, 20).map((vickers) => model.angleFloorDeg(vickers)),
  [0.83, 1, 1.3, 2.4, 4].map((total) => model.apexExponent(total)),
  range(5, 45, 5).map((angleDeg) => [
    model.apexFactors({ angleDeg, baselineAngleDeg: 20 }),
    model.wedgeFactorRange({ angleDeg, baselineAngleDeg: 20, friction: 0.25 }),
    model.wearAreaUm2({ flatUm: 10, angleDeg }),
  ]),
  model.regression,
  model.carbidesByDesignation,
  Object.values(model.compositionsByDesignation).map((contents) => {
    const { volPercent, plusMinus } = model.carbideFromComposition(contents);
    return [volPercent, plusMinus];
  }),
  [20, 45, 49.9, 50, 58, 66, 68].map((hrc) =>
    model.cardForChainMm({ hrc, carbideVolPercent: { CrC: 3, MC: 1 } }),
  ),
  range(0, 2, 0.1).map((share) => model.widthAt(share)),
  model.abrasiveOverPhase,
  model.jobProfiles.map(({ id, endsBy, slicingChain, contactDepthMm, slicePush }) => [
    id,
    endsBy,
    slicingChain,
    contactDepthMm,
    slicePush,
  ]),
  Object.values(model.parameters).map(({ default: middle, low, high, ...entry }) => [
    middle,
    low,
    high,
    'shape' in entry ? entry.shape : 'triangular',
  ]),
];

/** The digest of all results of a model, be it the source or the built file. */
export function digestOf(model: Model): string {
  // Ten digits: more would depend on the last bit of a machine's tangent.
  const text = JSON.stringify(panel(model), (_key, value: unknown) =>
    typeof value === 'number' ? Number(value.toPrecision(10)) : value,
  );
  return createHash('sha256').update(text).digest('hex').slice(0, 32);
}
