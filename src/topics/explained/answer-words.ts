import { predictedOf } from '../../comparison/predicted.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import { aboutJob } from '../../phrases/about-job.ts';
import { madeEqualSaid, notKnown } from '../../phrases/answer.ts';
import { headlineRange, otherWayRound } from '../../phrases/headline.ts';
import { jobDone, jobOf } from '../../phrases/job.ts';
import { capital } from '../../phrases/list.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { whatCounts } from '../../phrases/what-counts.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { countInWords, short, shownRatio } from '../../scene/show.ts';
import { differs } from '../../scene/terms.ts';

const inTwo = (ratio: number): string => short(ratio, 2);

/** What all factors make, and which way that moves where some of them don’t multiply. */
function allMultiplied({ row }: Scene): string {
  const { multiplied, added, toLimit } = row.careful;
  const all = inTwo(multiplied);
  if (inTwo(added) === all && inTwo(toLimit) === all) return `Multiplied, they make ${all}.`;
  const others = [added, toLimit];
  const less = others.every((other) => other <= multiplied);
  const more = others.every((other) => other >= multiplied);
  return less || more
    ? `If all multiply, they make ${all}; if some don’t, ${less ? 'less' : 'more'}.`
    : `If all multiply, they make ${all}.`;
}

/** From here on a factor is called large in a sentence. */
const large = 2;

/** How many factors make a difference, and which way they pull. */
export function factorsCounted(scene: Scene): string[] {
  const { row, subject } = scene;
  const { terms, multiplied } = row.careful;
  const felt = terms.filter(differs);
  if (felt.length < 2) return [];
  const up = felt.filter(({ factor }) => factor > 1).length;
  const down = felt.length - up;
  const [count, possible] = [countInWords(felt.length), countInWords(terms.length)];
  const every = felt.length === terms.length;
  const noneLarge = up > 2 && down === 0 && multiplied > large && felt.every(({ factor }) => factor < large);
  const oneWay = `${felt.length === 2 ? 'both' : 'all'} ${up > 0 ? 'help' : 'count against'} ${subject.name}`;
  const head = every
    ? `There are ${count} reasons`
    : `${capital(count)} of the ${possible} reasons make a difference`;
  const sides = `${countInWords(up)} ${up === 1 ? 'helps' : 'help'} ${subject.name} and ${countInWords(down)} ${down === 1 ? 'holds' : 'hold'} it back`;
  const pull =
    up > 0 && down > 0
      ? every
        ? `Of the ${count} reasons, ${sides}.`
        : `${head}: ${sides}.`
      : noneLarge
        ? `${head}, none of them large.`
        : `${head}, and ${oneWay}.`;
  return [pull, allMultiplied(scene)];
}

/** Every other knife of the comparison against the baseline, the longest-lasting first. */
function others({ entry, knives, comparison }: Scene): string[] {
  if (!jobOf(entry).slicingChain) return [];
  return knives
    .filter(({ id }) => id !== entry.baseline && id !== entry.subject)
    .flatMap(({ id, name }) => {
      const band = unlessRefused(() => predictedOf(comparison, id));
      return band ? [{ name, band }] : [];
    })
    .sort((one, other) => other.band.median - one.band.median)
    .map(({ name, band }) => {
      const [low, middle, high] = [band.low, band.median, band.high].map(shownRatio) as [
        number,
        number,
        number,
      ];
      return low === high
        ? `${name}: about ${short(low)} times as long.`
        : `${name}: ${short(low)} to ${short(high)} times as long, middle ${short(middle)}.`;
    });
}

export const answerWords: Record<string, WordsOf> = {
  /** Above the question: that the knives are invented, or what the comparison is called. */
  'short-whose': ({ entry }) => [entry.invented ? 'Invented knives' : entry.title.trim() || 'Your knives'],

  /** Beside it: the work. */
  'short-doing': ({ entry }) => [jobDone(entry)],

  /** In large type: the range without its middle; in a work without slicing, what counts there. */
  'explained-answer': (scene) =>
    jobOf(scene.entry).slicingChain ? [headlineRange(scene)] : aboutJob(scene).slice(-1),

  /** Below it: the middle, and what is counted. */
  'explained-middle': (scene) => {
    if (!jobOf(scene.entry).slicingChain) return aboutJob(scene).slice(0, -1);
    const { low, middle, high } = headlineOf(scene);
    return [low === high ? '' : `${short(middle)} is the middle.`, otherWayRound(scene), whatCounts(scene)];
  },

  /** Behind what is said of the guess. */
  'explained-count': (scene) => [
    madeEqualSaid(scene),
    notKnown(scene),
    ...(jobOf(scene.entry).slicingChain ? factorsCounted(scene) : []),
  ],

  'explained-others-heading': (scene) =>
    others(scene).length === 0 ? [] : [`Others against ${scene.baseline.name}`],
  'explained-others': others,
};
