import { headlineOf } from './headline.ts';
import type { Scene } from './scene.ts';
import { temptingSum } from './terms.ts';

/** What a guess at the whole ratio is held beside: the middle of the answer, and the tempting sum where there is one. */
export function heldBeside(scene: Scene): { answer: number; sum: number | null } {
  const answer = headlineOf(scene).middle;
  const sum = temptingSum(scene.row[scene.entry.reading]);
  // A sum that is hardly another number than the answer is no tempting mistake.
  const apart = sum > 0 && Math.abs(Math.log(sum / answer)) > 0.06;
  return { answer, sum: apart ? sum : null };
}
