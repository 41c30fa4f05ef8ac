/** What would it take: the value of one attribute at which a knife reaches a target against another. */

import { refuse } from '../check.ts';
import { compare } from '../chain/compare.ts';
import { structures } from '../chain/structures.ts';
import { angleFloorDeg } from '../chain/limits.ts';
import { attributeSearch, attributeValue, changedKnife, type SolvableAttribute } from './attributes.ts';
import { gapOf } from './gap.ts';
import { nearestRoot } from './roots.ts';
import { nominal } from '../quantities.ts';
import { regression } from '../steel/carbide.ts';
import { vickersFromRockwellC } from '../steel/hardness.ts';
import type { Comparison, Knife, Structure } from '../types.ts';

export interface Question {
  /** Id of the knife that changes. */
  knife: string;
  /** Id of the knife it is compared with, which stays as it is. */
  against: string;
  /** The one attribute that changes. */
  attribute: SolvableAttribute;
  /** How many times as long as the other it should cut, above 0; 1, the default, draws level. */
  target?: number;
  /** How the factors combine; all multiplied if left out. */
  structure?: Structure;
}

export interface Answer {
  /** Degrees per side, mm, µm, HRC or volume %; null where no value does it. */
  value: number | null;
  /**
   * `not in reach`: there is none; `below the floor`: the value exists, but the edge would break away; `out of the
   * regression`: a hardness the published regression does not cover, so that an assumed exponent stands in for it.
   */
  note?: 'not in reach' | 'below the floor' | 'out of the regression';
}

/**
 * The value of one attribute at which `knife` cuts `target` times as long as `against` by the careful estimate, everything
 * else as it is and uncertain inputs at their middle. Put back into the comparison (`withAttribute`) it gives the target to
 * 1e-9. Where more than one value does, the one nearest the present is given.
 *
 * @param comparison as for `compare`
 * @returns degrees per side, mm, µm, HRC or volume %
 * @throws RangeError for what `compare` refuses, a knife not in the comparison, the same knife twice, a microbevel angle
 * asked of a knife without one, or a target not above 0
 * @example whatItTakes({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 15, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { knife: 'plover', against: 'dunlin', attribute: 'angleDeg' }).value // → 15.000000
 */
export function whatItTakes(comparison: Comparison, question: Question): Answer {
  const { changing, target } = checkQuestion(comparison, question);
  const { attribute } = question;
  compare(comparison);

  const gap = gapOf(comparison, { ...question, target });
  const value = nearestRoot(gap, attributeValue(changing, attribute), attributeSearch(changing, attribute));
  if (value === null) return { value, note: 'not in reach' };
  if (breaksAway(changedKnife(changing, attribute, value), attribute))
    return { value, note: 'below the floor' };
  if (attribute === 'hrc' && (value < regression.hrc.low || value > regression.hrc.high))
    return { value, note: 'out of the regression' };
  return { value };
}

/** The knife that changes and the target, if the question is one. */
export function checkQuestion(
  comparison: Comparison,
  question: Question,
): { changing: Knife; target: number } {
  const { knife, against, attribute, target = 1, structure = 'multiplied' } = question;
  if (!structures.includes(structure))
    refuse(`structure ${String(structure)} is not one of ${structures.join(', ')}`);
  if (!(target > 0 && Number.isFinite(target))) refuse(`target ${target} is not a number above 0`);
  const changing = comparison.knives.find(({ id }) => id === knife);
  if (changing === undefined) return refuse(`knife ${knife} is not one of the comparison's`);
  if (!comparison.knives.some(({ id }) => id === against))
    refuse(`against ${against} is not one of the comparison's knives`);
  if (knife === against) refuse(`against ${against} is the knife itself, another is needed`);
  attributeValue(changing, attribute);
  return { changing, target };
}

/** Whether a change of the attribute has brought the edge below the floor of its hardness. */
export function breaksAway(knife: Knife, attribute: SolvableAttribute): boolean {
  const { angleDeg, microbevelAngleDeg, hrc } = knife;
  const moves =
    attribute === 'hrc' ||
    attribute === 'microbevelAngleDeg' ||
    (attribute === 'angleDeg' && microbevelAngleDeg === undefined);
  return (
    moves && nominal(microbevelAngleDeg ?? angleDeg) < angleFloorDeg(vickersFromRockwellC(nominal(hrc))).low
  );
}
