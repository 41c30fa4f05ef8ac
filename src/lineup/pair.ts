import { compare } from '../model/index.ts';
import type { LineUp } from '../model/index.ts';
import type { Scene } from './scene.ts';

/**
 * The two knives alone, so that searches and runs need not carry the others. The others count only where one of them
 * keeps the regression from speaking for the line-up; then they stay.
 */
export function pairOf({ lineUp, entry, row }: Scene): LineUp {
  const pair = {
    ...lineUp,
    knives: lineUp.knives.filter(({ id }) => id === entry.subject || id === entry.baseline),
  };
  const alone = compare(pair).rows.find(({ knife }) => knife === entry.subject);
  return alone?.product === row.close.product && alone.complete === row.close.complete ? pair : lineUp;
}
