import { ratioInWords, readsAsOne } from '../scene/show.ts';
import type { Scene } from '../scene/scene.ts';

/**
 * What else sets subject and baseline apart where one part of the chain was spoken of, and what all factors multiplied
 * make at the middle settings.
 *
 * @param part the factor of the part that was spoken of
 */
export function restSaid({ row, subject, baseline }: Scene, part: number): string[] {
  const whole = row.careful.multiplied;
  const rest = whole / part;
  if (readsAsOne(rest)) return [`Nothing else sets ${subject.name} and ${baseline.name} apart.`];
  return [
    `By everything else together ${subject.name} should cut ${ratioInWords(rest)}.`,
    `If all factors multiply, ${subject.name} should cut ${ratioInWords(whole)} as ${baseline.name}, at the middle settings.`,
  ];
}
