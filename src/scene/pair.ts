import { compare } from '../model/index.ts';
import type { Comparison, Row } from '../model/index.ts';
import type { Scene } from './scene.ts';

/**
 * Two knives of a comparison alone, so that searches and runs need not carry the others. The others count only where one
 * of them keeps the regression from speaking for the comparison; then they stay.
 *
 * @param whole the comparison, its baseline one of the two
 * @param row what the other of the two is in it, by the careful estimate
 */
export function pairIn(whole: Comparison, { knife: subject, product, complete }: Row): Comparison {
  if (whole.knives.length === 2) return whole;
  const pair = { ...whole, knives: whole.knives.filter(({ id }) => id === subject || id === whole.baseline) };
  const alone = compare(pair).rows.find(({ knife }) => knife === subject);
  return alone?.product === product && alone.complete === complete ? pair : whole;
}

/** The two knives that are looked at. */
export const pairOf = ({ comparison, row }: Scene): Comparison => pairIn(comparison, row.careful);
