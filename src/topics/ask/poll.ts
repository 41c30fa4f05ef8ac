import { headlineOf } from '../../scene/headline.ts';
import { differs, temptingSum } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { inFigures, plain } from '../../scene/show.ts';

/** One answer a poll offers: a span of ratios, with the thought that leads there. */
export interface PollOption {
  letter: string;
  /** The span, from `low` up to `high`; 0 and Infinity at the ends. */
  low: number;
  high: number;
  /** The value the thought comes to: where a count of this option is drawn. */
  at: number;
  thought: string;
}

interface Candidate {
  at: number;
  thought: string;
}

/** Two values nearer than this share one option: nobody choosing would tell them apart. */
const apart = Math.log(1.22);
const most = 5;

const alike: Candidate = { at: 1, thought: 'there is no difference anybody would notice' };

/** What people may arrive at, the more important first. */
function candidates(scene: Scene): Candidate[] {
  const { entry, row, subject, baseline } = scene;
  const chosen = row[entry.reading];
  const answer = headlineOf(scene).middle;
  const largest = chosen.terms
    .filter(differs)
    .reduce((best, { factor }) => (Math.abs(Math.log(factor)) > Math.abs(Math.log(best)) ? factor : best), 1);
  const sum = temptingSum(chosen);
  const ahead = (ratio: number) => (ratio > 1 ? subject.name : baseline.name);
  return [
    ...(Math.abs(Math.log(answer)) < apart ? [alike] : []),
    { at: answer, thought: 'the differences build on each other, though perhaps not in full' },
    alike,
    ...(sum > 0 ? [{ at: sum, thought: 'the differences add up' }] : []),
    { at: 1 / answer, thought: `it is ${ahead(1 / answer)} that cuts on` },
    { at: row.careful.multiplied, thought: 'every difference multiplies what the others make' },
    { at: largest, thought: 'one difference does nearly all of it' },
    { at: row.quick.multiplied, thought: 'every difference counts at its face value' },
    // Where the knives are alike or nearly so, the options would be too few.
    { at: 2, thought: `${subject.name} is clearly ahead` },
    { at: 0.5, thought: `${baseline.name} is clearly ahead` },
    { at: 1.4, thought: `${subject.name} is a little ahead` },
    { at: 0.7, thought: `${baseline.name} is a little ahead` },
    { at: 4, thought: `${subject.name} is far ahead` },
    { at: 0.25, thought: `${baseline.name} is far ahead` },
  ];
}

/** The span's end between two values, rounded so that it can be said. */
const between = (low: number, high: number): number => inFigures(Math.sqrt(low * high), 2);

/**
 * Five answers for a poll, in the order of their size: they leave no gap, and one of them holds the middle of the model's
 * answer.
 */
export function pollOf(scene: Scene): PollOption[] {
  const chosen = candidates(scene)
    .reduce<Candidate[]>(
      (kept, candidate) =>
        kept.every(({ at }) => Math.abs(Math.log(at / candidate.at)) >= apart) ? [...kept, candidate] : kept,
      [],
    )
    .slice(0, most)
    .sort((a, b) => a.at - b.at);
  return chosen.map(({ at, thought }, index) => {
    const [before, after] = [chosen[index - 1], chosen[index + 1]];
    return {
      letter: String.fromCharCode(65 + index),
      low: before ? between(before.at, at) : 0,
      high: after ? between(at, after.at) : Infinity,
      at,
      thought,
    };
  });
}

const spanSaid = ({ low, high }: PollOption): string =>
  low === 0
    ? `less than ${plain(high, 2)} times as long`
    : high === Infinity
      ? `${plain(low, 2)} times as long or more`
      : `${plain(low, 2)} to ${plain(high, 2)} times as long`;

/** An option as a poll shows it. */
export const optionSaid = (option: PollOption): string =>
  `${option.letter}: ${spanSaid(option)}, because ${option.thought}.`;
