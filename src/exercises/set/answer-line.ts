import { modeOf } from '../asks.ts';
import type { Problem } from '../problem.ts';

const GAP = '__________';

/** The line on which the answer is written, with the words around it. */
export function answerLine({ unit }: Problem): string {
  const mode = modeOf(unit);
  if (mode === 'letter') return `Answer (letter): ${GAP}`;
  return `Answer: ${GAP} ${unit}`;
}
