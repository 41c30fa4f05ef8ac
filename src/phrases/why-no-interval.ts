import type { KnifeRuns, RunsOfTwo } from '../scene/runs.ts';
import { countInWords } from '../scene/show.ts';
import { capital } from './list.ts';
import { separateBy } from './judged-runs.ts';

const batchesOf = ({ lives }: KnifeRuns): string[] => [
  ...new Set(lives.flatMap(({ batch }) => (batch === undefined ? [] : [batch]))),
];

const openEnded = ({ name }: KnifeRuns): string =>
  `No run of ${name} reached its end point. All of them ended early, so nobody knows how long it lasts.`;

/** Why the runs of two knives give no interval, in words; only asked where they do not. */
export function whyNoInterval({ subject, baseline, log, promised }: RunsOfTwo): string[] {
  if (promised.waiting && promised.planned !== null)
    return [
      `${promised.reached === 0 ? 'None' : capital(countInWords(promised.reached))} of ${countInWords(promised.planned)} planned sharpenings of ${subject.name} and ${baseline.name} ${promised.reached < 2 ? 'is' : 'are'} cut.`,
      'The verdict waits for the rest: every early look is another chance to be wrong.',
    ];
  const both = [subject, baseline];
  const without = both.filter(({ lives }) => lives.length === 0);
  if (without.length === 2)
    return [
      `The log holds no life of ${subject.name} and none of ${baseline.name} yet, so nothing has been measured.`,
    ];
  const [lacking] = without;
  if (lacking) {
    const other = lacking === subject ? baseline : subject;
    return [`Only ${other.name} has runs to compare. Cut ${lacking.name} in the same batches.`];
  }
  if (log.verdict === 'cannot be separated')
    return separateBy(batchesOf(subject), batchesOf(baseline), {
      subject: subject.name,
      baseline: baseline.name,
    });
  const open = both.filter(({ ended }) => ended === 0);
  if (open.length > 0) return open.map(openEnded);
  const few = both.filter((knife) => (log.runs[idOf(knife, subject, log)] ?? 0) < 2);
  if (few.length > 0) {
    const names = few.map(({ name }) => name).join(' and ');
    return [
      `${names} ${few.length > 1 ? 'have' : 'has'} fewer than two sharpenings that can be compared. One doesn’t show how much lives vary, so there is no interval.`,
    ];
  }
  const why = log.method.replace(/^none: /, '');
  return /do not (vary|show)/.test(why)
    ? [
        `The lives of ${subject.name} and ${baseline.name} don’t show how much they vary. All are alike, or they were looked at too rarely.`,
        'Without scatter there is no interval, and equal numbers are no proof of it.',
      ]
    : [`There is no interval: ${why}.`];
}

/** The judge's own name of a knife, by its place. */
const idOf = (knife: KnifeRuns, subject: KnifeRuns, { runs }: RunsOfTwo['log']): string =>
  Object.keys(runs)[knife === subject ? 0 : 1] ?? '';
