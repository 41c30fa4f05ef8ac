import type { FormQuestion, MatchedForms } from './forms.ts';
import { percent } from '../../scene/show.ts';

/** How often each option of each question was chosen: by question, then by option. */
export type Counts = readonly (readonly number[])[];

/** What became of one idea: its part of all answers before and after. */
export interface Move {
  /** `right`, or a misstep. */
  idea: string;
  before: number;
  after: number;
  /** Both as parts of the answers to the questions that offer the idea. */
  shareBefore: number;
  shareAfter: number;
  /** Whether the change is more than chance alone often makes: twice the standard error of two shares. */
  clear: boolean;
}

const total = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

/** Answers with an idea, and answers to the questions that offer it. */
function tallied(questions: readonly FormQuestion[], counts: Counts, idea: string): [number, number] {
  let [chosen, asked] = [0, 0];
  for (const [index, { options }] of questions.entries()) {
    const place = options.findIndex((option) => option.idea === idea);
    if (place < 0) continue;
    chosen += counts[index]?.[place] ?? 0;
    asked += total(counts[index] ?? []);
  }
  return [chosen, asked];
}

/**
 * What moved between two forms, the right answers first and then by how far each idea moved. An idea nobody was asked
 * about on one of the forms is left out.
 *
 * @param before how often each option was chosen on the first form
 * @param after the same on the second
 */
export function moved(forms: MatchedForms, before: Counts, after: Counts): Move[] {
  const ideas = [...new Set(forms.before.flatMap(({ options }) => options.map(({ idea }) => idea)))];
  const moves = ideas.flatMap((idea): Move[] => {
    const [chosen, asked] = tallied(forms.before, before, idea);
    const [then, askedThen] = tallied(forms.after, after, idea);
    if (asked === 0 || askedThen === 0) return [];
    const pooled = (chosen + then) / (asked + askedThen);
    const error = Math.sqrt(pooled * (1 - pooled) * (1 / asked + 1 / askedThen));
    const [shareBefore, shareAfter] = [chosen / asked, then / askedThen];
    return [
      {
        idea,
        before: chosen,
        after: then,
        shareBefore,
        shareAfter,
        clear: Math.abs(shareAfter - shareBefore) > 2 * error,
      },
    ];
  });
  const far = ({ idea, shareBefore, shareAfter }: Move): number =>
    idea === 'right' ? Infinity : Math.abs(shareAfter - shareBefore);
  return moves.sort((a, b) => far(b) - far(a));
}

const fromTo = ({ shareBefore, shareAfter }: Move): string =>
  `from ${percent(shareBefore)} to ${percent(shareAfter)} of the answers where it could be chosen`;

/**
 * Which idea moved, in words. Nothing where one of the forms has no counts yet.
 *
 * @param moves as `moved` gives them
 */
export function movedInWords(moves: readonly Move[]): string[] {
  const right = moves.find(({ idea }) => idea === 'right');
  if (!right) return [];
  const ideas = moves.filter((move) => move !== right);
  const [most] = ideas.filter(({ shareBefore, shareAfter }) => shareAfter !== shareBefore);
  const grown = ideas.filter(({ clear, shareBefore, shareAfter }) => clear && shareAfter > shareBefore);
  const sameWay = (move: Move): string =>
    move.shareAfter < move.shareBefore ? 'It was given up' : 'It gained ground';
  return [
    `Right answers: ${percent(right.shareBefore)} before, ${percent(right.shareAfter)} after.`,
    most
      ? `The idea that moved most is “${most.idea}”. ${sameWay(most)}: ${fromTo(most)}.`
      : 'No wrong idea has moved.',
    most && !most.clear ? 'So small a move can be chance: count more answers before you build on it.' : '',
    ...grown
      .filter((move) => move !== most)
      .map((move) => `“${move.idea}” has grown, ${fromTo(move)}: talk about it next.`),
  ].filter((sentence) => sentence !== '');
}
