import type { Measured } from '../../model/index.ts';
import {
  alikeText,
  amount,
  countedExactly,
  extent,
  batchesOf,
  neededFor,
  power,
  predicted,
  ratioByBatch,
  spread,
} from './values.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { leftOut } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, times } from '../../scene/show.ts';
import { trialOf, whyNotOwn } from './trial.ts';
import type { Trial } from './trial.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { counted } from '../../phrases/counted.ts';

const bounds = `${alikeText.low} and ${alikeText.high}`;

const unitOf = ({ unit }: Trial): string => (unit === 'cuts' ? 'cuts' : 'mm of cut');

const interval = ({ low, high }: Measured): string => `${times(low)} to ${times(high)}`;

/** Whose runs these are, and how many. */
function given(scene: Scene): string {
  const trial = trialOf(scene);
  const { subject, baseline } = scene;
  const { x, y, origin } = trial;
  const batches = batchesOf(trial).filter((batch) => batch !== undefined).length;
  const number =
    x.length === y.length
      ? `${x.length} sharpenings of ${subject.name} and as many of ${baseline.name}`
      : `${x.length} sharpenings of ${subject.name} and ${y.length} of ${baseline.name}`;
  const from =
    batches > 0 ? `, in ${batches === 1 ? 'one lot' : `${batches} lots`}` : ', without a lot on record';
  if (origin === 'own') return `The log has ${number}${from}.`;
  if (origin === 'loft') return `The loft has ${number}${from}. They are invented: nobody cut them.`;
  return `There are no runs of ${subject.name} and ${baseline.name} with these edges, so they are imagined: ${number}${from}, as they might fall if the close reading’s ${times(predicted(scene))} were the truth.`;
}

/** What an interval allows to be said, never more. */
function verdict({ verdict: said, alike, ratio }: Measured, { subject, baseline }: Scene): string {
  if (said === 'apart')
    return `That leaves ×1 out: they are told apart, and ${ratio > 1 ? subject.name : baseline.name} lasts longer.${alike ? ' Yet the difference is so small that they are shown alike too.' : ''}`;
  if (said === 'alike')
    return `×1 lies inside, so ${subject.name} is not told apart from ${baseline.name}; and everything likely lies between ${bounds}, so the two are shown alike.`;
  return `×1 lies inside, so ${subject.name} is not told apart from ${baseline.name}. Nor are they shown alike, for a ratio beyond ${bounds} is still possible: nothing is settled.`;
}

/** Why batches cannot be kept apart. */
function withoutBatches(trial: Trial, { subject, baseline }: Scene): string {
  return ratioByBatch(trial).length === 0
    ? `No lot on record was cut with both ${subject.name} and ${baseline.name}, so what the stock did cannot be taken out.`
    : `Within their lots there are too few runs of ${subject.name} and ${baseline.name} to give an interval.`;
}

const often = percent(power);

/** How many runs, in words: a round number where they are too many to be counted exactly. */
const soManyRuns = (count: number): string =>
  count > countedExactly ? `about ${counted(count, 'run')}` : counted(count, 'run');

/** What can be said best of a trial: within batches, where there is such a comparison. */
const bestOf = ({ within, across }: Trial): Measured => within ?? across;

/** A plan of runs for the predicted ratio. */
function plan(scene: Scene): string[] {
  const { subject, baseline, row } = scene;
  const ratio = predicted(scene);
  const { within, mixed, alike } = neededFor(scene);
  const missing = leftOut(row.careful);
  const incomplete = missing.length > 0 ? ` (${list(missing)} left out)` : '';
  return [
    refusedWork(scene),
    within === null || mixed === null
      ? `The close reading has ${subject.name} and ${baseline.name} level${incomplete}: no number of runs tells apart what does not differ.`
      : `The close reading has ${subject.name} at ${times(ratio)} against ${baseline.name}${incomplete}. To notice that in ${often} of trials, with lots kept apart, takes ${soManyRuns(within)} a knife; with every run from another lot, and lots ignored, ${soManyRuns(mixed)}.`,
    alike === null
      ? `They cannot be shown alike, for at that ratio they are not: it lies beyond ${bounds}.`
      : `To show them alike, between ${bounds}, takes ${soManyRuns(alike)} a knife within lots.`,
  ];
}

export const differentWords: Record<string, WordsOf> = {
  'runs-given': (scene) => [given(scene)],

  /** The trouble: two pairs of single runs. */
  'runs-trouble': (scene) => {
    const trial = trialOf(scene);
    const { subject, baseline } = scene;
    const [x, y] = [extent(trial.x), extent(trial.y)];
    const [one, other] = [x.most / y.least, x.least / y.most];
    const unit = unitOf(trial);
    return [
      `One sharpening of ${subject.name} made ${amount(x.most, trial)} ${unit}, one of ${baseline.name} ${amount(y.least, trial)}: ${times(one)}.`,
      `Another of ${subject.name} made ${amount(x.least, trial)}, another of ${baseline.name} ${amount(y.most, trial)}: ${times(other)}.`,
      one > 1 && other < 1
        ? 'Whoever cuts with each knife once can come home with either.'
        : `Both say the same knife, ${one > 1 ? subject.name : baseline.name}, but how far ahead it is they say as differently as chance will have it.`,
    ];
  },

  /** All runs, batches ignored. */
  'runs-across': (scene) => {
    const { across } = trialOf(scene);
    const { subject, baseline } = scene;
    return [
      `By all runs together ${subject.name} lasts ${times(across.ratio)} as long as ${baseline.name}, with a 95 % interval from ${interval(across)}.`,
      verdict(across, scene),
    ];
  },

  /** The ratio in each batch. */
  'runs-lots': (scene) => {
    const trial = trialOf(scene);
    const { subject, baseline } = scene;
    const found = ratioByBatch(trial);
    if (found.length === 0) return [withoutBatches(trial, scene)];
    const most = 6;
    const inBatches = found.slice(0, most).map(({ batch, ratio }) => `${times(ratio)} in ${batch}`);
    return [
      `${subject.name} against ${baseline.name}: ${list(inBatches)}${found.length > most ? `, and so on through ${found.length} lots` : ''}.`,
    ];
  },

  /** Within batches. */
  'runs-within': (scene) => {
    const trial = trialOf(scene);
    const { subject, baseline } = scene;
    const { across, within } = trial;
    if (!within) return [withoutBatches(trial, scene)];
    const narrower = Math.log(across.high / across.low) / Math.log(within.high / within.low);
    return [
      `Within lots ${subject.name} lasts ${times(within.ratio)} as long as ${baseline.name}, with an interval from ${interval(within)}${narrower > 1.05 ? `: on a log axis the one before was ${plain(narrower, 2)} times as wide` : ''}.`,
      verdict(within, scene),
      within.unusedBatches.length > 0
        ? `${list(within.unusedBatches.slice(0, 6))} ${within.unusedBatches.length === 1 ? 'holds' : 'hold'} one of the two only and ${within.unusedBatches.length === 1 ? 'says' : 'say'} nothing here.`
        : '',
    ];
  },

  /** The envelope opened. */
  'runs-truth': (scene) => {
    const trial = trialOf(scene);
    const { truth, origin } = trial;
    const { subject, baseline } = scene;
    if (truth === null)
      return [
        `What is true of ${subject.name} and ${baseline.name} nobody knows: these were really cut. An interval made this way holds the truth in 95 of 100 such trials, and nothing on it shows whether yours is one of them.`,
      ];
    const best = bestOf(trial);
    const held = truth >= best.low && truth <= best.high;
    // Unreachable: the one draw that is kept misses no truth; another draw might.
    const holds = held ? 'holds it' : 'misses it, as one in twenty does';
    const wrongWay = best.verdict !== 'apart' && Math.log(truth) * Math.log(best.ratio) < 0;
    return [
      `The truth these runs were made from is ${times(truth)} for ${subject.name} over ${baseline.name}${origin === 'imagined' ? ', the close reading' : ''}. The interval ${holds}.`,
      wrongWay
        ? `Yet the runs lean the other way, to ${times(best.ratio)}: had we named a better one by them, it would have been the wrong one.`
        : '',
    ];
  },

  'runs-plan': plan,

  /** With a visitor's own knives. */
  different: (scene) => {
    const trial = trialOf(scene);
    const { subject, baseline } = scene;
    if (trial.origin !== 'own')
      return [
        whyNotOwn(scene) === ''
          ? `This line-up carries no runs of ${subject.name} and ${baseline.name}, so nothing has been measured and the model alone speaks.`
          : whyNotOwn(scene),
        `If it scatters as the example does, ${percent(spread.within)} from sharpening to sharpening, this is what it would take.`,
        ...plan(scene),
      ];
    const best = bestOf(trial);
    const ratio = predicted(scene);
    const place = ratio < best.low ? 'below' : ratio > best.high ? 'above' : 'inside';
    return [
      given(scene),
      `${trial.within ? 'Within lots' : 'With lots ignored'} ${subject.name} lasts ${times(best.ratio)} as long as ${baseline.name}, from ${interval(best)}.`,
      verdict(best, scene),
      best.verdict === 'not told apart'
        ? best.runsMore === null
          ? 'At the scatter seen no number of runs within reason would settle it.'
          : `At the scatter seen, ${counted(best.runsMore, 'run')} more of each would settle it in ${often} of trials.`
        : '',
      `The close reading, ${times(ratio)}, lies ${place} that interval.`,
    ];
  },
};
