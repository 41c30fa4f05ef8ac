import { jobOf } from '../../phrases/job.ts';
import { headlineOf } from '../../scene/headline.ts';
import { differs, temptingSum } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { inFigures, short } from '../../scene/show.ts';

/** One answer a poll offers: a span of ratios, with the thought that leads there. */
export interface PollOption {
  letter: string;
  /** The span, from `low` up to `high`; 0 and Infinity at the ends. */
  low: number;
  high: number;
  /** The value the thought comes to: where a count of this option is drawn. */
  at: number;
  /** In a sentence. */
  thought: string;
}

interface Candidate {
  at: number;
  thought: string;
}

/** Two values nearer than this share one option: they are too alike to choose between. */
const apart = Math.log(1.22);
const most = 5;

const alike: Candidate = { at: 1, thought: 'You wouldn’t notice a difference.' };

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
    { at: answer, thought: 'The differences build on each other, though perhaps not in full.' },
    alike,
    ...(sum > 0 ? [{ at: sum, thought: 'The differences add up.' }] : []),
    { at: 1 / answer, thought: `${ahead(1 / answer)} is the one that keeps cutting.` },
    { at: row.careful.multiplied, thought: 'All the differences multiply.' },
    { at: largest, thought: 'One difference does nearly all of it.' },
    { at: row.quick.multiplied, thought: 'Every difference counts in full.' },
    // Where the knives are alike or nearly so, the options would be too few.
    { at: 2, thought: `${subject.name} is clearly ahead.` },
    { at: 0.5, thought: `${baseline.name} is clearly ahead.` },
    { at: 1.4, thought: `${subject.name} is a little ahead.` },
    { at: 0.7, thought: `${baseline.name} is a little ahead.` },
    { at: 4, thought: `${subject.name} is far ahead.` },
    { at: 0.25, thought: `${baseline.name} is far ahead.` },
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

/** The question as a poll puts it, without its answer. */
export const questionAsked = ({ entry, subject, baseline }: Scene): string =>
  `In ${jobOf(entry).name}, how many times as long should ${subject.name} cut as ${baseline.name} until both are equally blunt?`;

/** The span of an option in words: “2.5 to 5 times as long”. */
const spanSaid = ({ low, high }: PollOption): string =>
  low === 0
    ? `less than ${short(high, 2)} times as long`
    : high === Infinity
      ? `more than ${short(low, 2)} times as long`
      : `${short(low, 2)} to ${short(high, 2)} times as long`;

/** An option as a page lists it, with its thought below. */
export const optionTitle = (option: PollOption): string => `${option.letter} · ${spanSaid(option)}`;

/** An option as a poll shows it. */
export const optionSaid = (option: PollOption): string =>
  `${option.letter}: ${spanSaid(option)}. ${option.thought}`;
