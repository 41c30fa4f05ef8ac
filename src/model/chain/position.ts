import { refuse } from '../check.ts';
import type { Comparison, Knife, Structure } from '../types.ts';
import { lnApexSine, lnApexTangent, lnBevelTangent, middleCalculation } from './calculation.ts';
import { compare } from './compare.ts';
import { factors, type Factor } from './factors.ts';
import { lnTotals } from './structures.ts';
import { weightedSum } from './values.ts';

/**
 * The model's disputed assumptions of form, and what may be held instead. The first of each is the careful estimate's own.
 *
 * - `apex`: between one route and two, as calibrated on the published regression; tooth depth in full; steel to wear
 *   away in full. Where the force reaches a limit the apex counts as steel to wear away whatever is held.
 * - `push`: the wedge parts the material at equal spread force; it sinks equally deep into an elastic bed; its bevel is
 *   buried to equal thickness.
 * - `structure`: all factors multiply; wedge, thickness and grind add as forces; the force reaches a limit.
 * - `floor`: the lowest angle an edge stands moves with its hardness, or is 5° for every steel.
 */
export const disputes = {
  apex: ['between', 'tooth', 'wear'],
  push: ['spread', 'bed', 'buried'],
  structure: ['multiplied', 'added', 'toLimit'],
  floor: ['moving', 'still'],
} as const;

export type Dispute = keyof typeof disputes;
/** Where somebody stands on the disputed assumptions; what is left out is the careful estimate's own. */
export type Position = { [D in Dispute]?: (typeof disputes)[D][number] };

/**
 * The ratio of a knife to the baseline as somebody of that position has it, uncertain inputs at their middle: the careful
 * estimate with wedge and apex in the form held, combined by the structure held.
 *
 * @param comparison as for `compare`
 * @returns times as long as the baseline; exactly 1 for the baseline itself
 * @throws RangeError for what `compare` refuses, a knife not in the comparison, and a position there is none of
 * @example ratioUnder({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 10, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, 'dunlin', { apex: 'wear', push: 'bed' }) // → 6.453
 */
export function ratioUnder(comparison: Comparison, knife: string, position: Position): number {
  for (const [dispute, held] of Object.entries(position)) {
    const options: readonly string[] = Object.hasOwn(disputes, dispute) ? disputes[dispute as Dispute] : [];
    if (!options.includes(held)) refuse(`position ${dispute}: ${held} is not one of ${options.join(', ')}`);
  }
  compare(comparison);
  const table = factorsHeld(position);
  const structure: Structure = position.structure ?? 'multiplied';
  const life = (id: string): number => {
    const found: Knife =
      comparison.knives.find((candidate) => candidate.id === id) ??
      refuse(`knife ${id} is not among the knives: ${comparison.knives.map((k) => k.id).join(', ')}`);
    return lnTotals(middleCalculation(comparison, found), table)[structure];
  };
  return knife === comparison.baseline ? 1 : Math.exp(life(knife) - life(comparison.baseline));
}

/** The factors with wedge and apex in the form held. */
const factorsHeld = ({ apex = 'between', push = 'spread' }: Position): Factor[] =>
  factors.map((factor) => {
    if (factor.id === 'apex' && apex !== 'between') {
      const route = apex === 'tooth' ? lnApexSine : lnApexTangent;
      return { ...factor, careful: (k) => weightedSum([[-1, route(k)]]) };
    }
    if (factor.id !== 'wedge' || push === 'spread') return factor;
    // On a bed the force goes as tan θ · tan(θ + φ); on a bevel buried to equal thickness as tan(θ + φ) / tan θ.
    const flare = push === 'bed' ? 1 : -1;
    const careful: Factor['careful'] = (k) =>
      weightedSum([
        [1, factor.careful(k)],
        [flare, lnBevelTangent(k)],
      ]);
    return { ...factor, careful };
  });
