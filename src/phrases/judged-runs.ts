import type { RunsVerdict } from '../model/index.ts';
import type { LogJudgement, Measured } from '../runs/judge-log.ts';
import { countInWords, inDecimals, percent, short, thousands } from '../scene/show.ts';

/** Two knives by the names sentences take: the one looked at, and the one it is compared with. */
export interface Pair {
  subject: string;
  baseline: string;
}

/** A ratio in a sentence: two figures. */
export function ratioSaid(ratio: number): string {
  if (ratio >= 100_000) return 'over 100,000';
  if (ratio < 0.001) return 'under 0.001';
  // Near 1 two figures would hide the difference.
  if (Math.abs(ratio - 1) < 0.095) return short(inDecimals(ratio, 2));
  return ratio >= 1000 ? thousands(Number(short(ratio, 2))) : short(ratio, 2);
}

/** A range in a sentence; the two ends may read alike. */
export function rangeSaid(low: number, high: number): string {
  const [from, to] = [ratioSaid(low), ratioSaid(high)];
  return from === to ? `about ${from}` : `${from} to ${to}`;
}

/**
 * An interval about 1 as how much less or more it is.
 *
 * @example lessOrMore(0.86, 1.08) // → '14% less to 8% more'
 */
export const lessOrMore = (low: number, high: number): string =>
  [low, high].map((end) => `${percent(Math.abs(end - 1))} ${end < 1 ? 'less' : 'more'}`).join(' to ');

/** The range and its middle, once. */
export const measuredSaid = ({ ratio, low, high }: Measured, { subject, baseline }: Pair): string =>
  `${subject} lasted ${rangeSaid(low, high)} times as long as ${baseline}; ${ratioSaid(ratio)} is the middle.`;

/** What a verdict is called, in figures and tables. */
export const verdictName: Record<RunsVerdict, string> = {
  longer: 'a real difference',
  shorter: 'a real difference',
  'as good as equal': 'as good as equal',
  'not distinguished': 'can’t be told apart',
  'cannot be separated': 'knife and batch cannot be separated',
  'too few runs': 'no interval',
};

/** The bounds within which knives are as good as equal: those of the model. */
export const equalBounds = { low: 0.8, high: 1.25 };

/** What an interval allows to be said, with the one range that belongs to it. */
export function verdictSaid(verdict: RunsVerdict, measured: Measured, pair: Pair): string[] {
  const { subject, baseline } = pair;
  const { low, high, low90, high90 } = measured;
  if (verdict === 'as good as equal')
    return [
      `${subject} lasted ${lessOrMore(low90, high90)} than ${baseline}, by a 90% interval.`,
      `All of it lies within 25%, so ${subject} and ${baseline} are as good as equal.`,
    ];
  const range = measuredSaid(measured, pair);
  if (verdict === 'longer' || verdict === 'shorter')
    return [
      range,
      `That is a real difference: ${verdict === 'longer' ? subject : baseline} lasts longer.`,
      low > equalBounds.low && high < equalBounds.high ? 'It is a small one, under 25% either way.' : '',
    ];
  return [
    range,
    `${subject} and ${baseline} can’t be told apart by these runs: either may last longer.`,
    'That doesn’t make them equal.',
  ];
}

/** What the interval that is shown means, in one sentence. */
export function intervalMeans({ family, verdict }: Pick<LogJudgement, 'family' | 'verdict'>): string {
  const often = verdict === 'as good as equal' ? 90 : 95;
  return family === 1
    ? `Of a hundred tests like this, about ${often} give a range that holds the true ratio.`
    : `This log can judge ${countInWords(family)} pairs of knives, so each range is wider. In ${often} logs of a hundred all of them hold.`;
}

/** Where and how the two were compared. */
export function methodSaid(
  { method, batches, verdict }: LogJudgement,
  { subject, baseline }: Pair,
): string[] {
  if (verdict === 'too few runs' || verdict === 'cannot be separated') return [];
  return [
    batches.length > 0
      ? `${subject} and ${baseline} are compared within ${batches.length === 1 ? 'the batch' : `the ${countInWords(batches.length)} batches`} they share. So a harder batch makes no difference.`
      : 'No batch is recorded, so a harder batch would look like a worse knife.',
    `Method: ${method}.`,
  ];
}

/** What to cut next where each knife was cut in batches of its own. */
export function separateBy(
  own: readonly string[],
  other: readonly string[],
  { subject, baseline }: Pair,
): string[] {
  const ways = [
    ...(other[0] === undefined ? [] : [`${subject} in ${other[0]}`]),
    ...(own[0] === undefined ? [] : [`${baseline} in ${own[0]}`]),
  ];
  return [
    `Knife and batch cannot be separated: no batch was cut with both ${subject} and ${baseline}.`,
    'A harder batch would look like a worse knife, so there is no verdict.',
    `Cut next: ${ways.join(', or ') || `${subject} and ${baseline} in one batch`}.`,
    'You need at least two sharpenings of each in a shared batch. Six tell you far more.',
  ];
}
