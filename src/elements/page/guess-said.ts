import { readAnswer } from '../../exercises/reader/index.ts';
import { guessVerdict } from '../../phrases/guess-verdict.ts';
import { times } from '../../scene/show.ts';

/** What is said of a guess as it was typed, or why it is none. Fetched with the first guess: most readers make none. */
export function guessText(
  typed: string,
  held: { answer: number; sum: number | null },
): { ok: boolean; text: string } {
  const read = readAnswer(typed, 'times as long');
  if (!read.ok) return { ok: false, text: read.message };
  const verdict = guessVerdict(read.value, held);
  return {
    ok: true,
    text: `Your call: ${times(read.value)}. The model: ${times(held.answer)}. ${verdict}`,
  };
}
