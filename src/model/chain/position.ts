import { refuse } from '../check.ts';
import { compare, rivalGeometry } from './compare.ts';
import { contactDepthMmOf } from '../quantities.ts';
import { pointOf, type Point } from './factors.ts';
import type { Knife, Comparison, Term } from '../types.ts';

/**
 * The model's disputed assumptions of form, and what may be held instead. The first of each is the careful estimate's own.
 *
 * - `apex`: between one route and two, as calibrated on the published regression; tooth depth in full; steel to wear
 *   away in full.
 * - `push`: the wedge parts the stock at equal spread force; it sinks equally deep into an elastic bed; its bevel is
 *   buried to equal thickness.
 * - `forces`: wedge, thickness and grind multiply, or their forces add.
 * - `floor`: the lowest angle an edge stands moves with its hardness (tan² law), or is 5° for every steel.
 */
export const disputes = {
  apex: ['between', 'tooth', 'wear'],
  push: ['spread', 'bed', 'buried'],
  forces: ['multiply', 'add'],
  floor: ['moving', 'still'],
} as const;

export type Dispute = keyof typeof disputes;
/** Where somebody stands on the disputed assumptions; what is left out is the careful estimate's own. */
export type Position = { [D in Dispute]?: (typeof disputes)[D][number] };

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);

/**
 * The ratio of a knife to the baseline as somebody of that position has it: the careful estimate with wedge and apex put
 * in the form held and, where the forces are held to add, wedge, thickness and grind added as resistances.
 *
 * @param lineUp as for `compare`
 * @returns times as long as the baseline; exactly 1 for the baseline itself
 * @throws RangeError for what `compare` refuses, a knife not in the comparison, and a position there is none of
 * @example ratioUnder({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 10, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, 'dunlin', { apex: 'wear', push: 'bed' }) // → 6.453
 */
export function ratioUnder(comparison: Comparison, knife: string, position: Position): number {
  for (const [dispute, held] of Object.entries(position)) {
    const options: readonly string[] = Object.hasOwn(disputes, dispute) ? disputes[dispute as Dispute] : [];
    if (!options.includes(held)) refuse(`position ${dispute}: ${held} is not one of ${options.join(', ')}`);
  }
  const row = compare(comparison).rows.find((candidate) => candidate.knife === knife);
  const find = (id: string): Knife =>
    comparison.knives.find((candidate) => candidate.id === id) ??
    refuse(`knife ${id} is not among the knives: ${comparison.knives.map((k) => k.id).join(', ')}`);
  const depthMm = contactDepthMmOf(comparison);
  const [a, b] = [pointOf(find(knife), depthMm), pointOf(find(comparison.baseline), depthMm)];
  if (!row || knife === comparison.baseline) return 1;

  const terms = row.terms.map((term): Term => ({
    ...term,
    factor: heldFactor(term, a, b, position),
  }));
  const standing = terms.flatMap(({ id, factor }) => (factor === null ? [] : [{ id, factor }]));
  const product = (of: typeof standing): number => of.reduce((total, { factor }) => total * factor, 1);
  if (position.forces !== 'add') return product(standing);
  const forces: readonly string[] = ['wedge', 'thickness', 'grind'];
  return rivalGeometry(terms, comparison) * product(standing.filter(({ id }) => !forces.includes(id)));
}

function heldFactor(term: Term, a: Point, b: Point, { apex, push }: Position): number | null {
  if (term.id === 'apex' && apex === 'tooth') return sin(b.apexAngleDeg) / sin(a.apexAngleDeg);
  if (term.id === 'apex' && apex === 'wear') return tan(b.apexAngleDeg) / tan(a.apexAngleDeg);
  if (term.id !== 'wedge' || term.factor === null || (push ?? 'spread') === 'spread') return term.factor;
  // On a bed the force goes as tan θ · tan(θ + φ); on a bevel buried to equal thickness as tan(θ + φ) / tan θ.
  const flare = tan(b.angleDeg) / tan(a.angleDeg);
  return push === 'bed' ? term.factor * flare : term.factor / flare;
}
