import {
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
import {
  intervalMeans,
  measuredSaid,
  rangeSaid,
  ratioSaid,
  separateBy,
  verdictSaid,
} from '../../phrases/judged-runs.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, times } from '../../scene/show.ts';
import { trialOf, whyNotOwn } from './trial.ts';
import type { Trial } from './trial.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { counted } from '../../phrases/counted.ts';

/** Which point of the careful estimate a plan is made for. */
const multipliedSaid = 'with all factors multiplied at the middle settings';

const unitOf = ({ unit }: Trial): string => (unit === 'cuts' ? 'cuts' : 'mm of cut');

const namesOf = ({ subject, baseline }: Scene) => ({ subject: subject.name, baseline: baseline.name });

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
    batches > 0
      ? `, in ${batches === 1 ? 'one batch' : `${batches} batches`}`
      : ', without a batch on record';
  if (origin === 'own') return `The log has ${number}${from}.`;
  if (origin === 'loft') return `The loft has ${number}${from}. They are invented: nobody cut them.`;
  return `There are no runs of ${subject.name} and ${baseline.name} with these edges, so they are imagined: ${number}${from}. So they might fall if ${times(predicted(scene))} were the truth. That is the careful estimate, ${multipliedSaid}.`;
}

/** Batches in which a knife was cut. */
const batchesIn = (lives: Trial['x']): string[] => [...new Set(lives.flatMap(({ batch }) => batch ?? []))];

/** The verdict with its range, or why there is none: the same as on the page of runs. */
function verdict(trial: Trial, scene: Scene): string[] {
  const { log, measured, x, y } = trial;
  return measured === null
    ? separateBy(batchesIn(x), batchesIn(y), namesOf(scene))
    : verdictSaid(log.verdict, measured, namesOf(scene));
}

const often = percent(power);

/** How many runs, in words: a round number where they are too many to be counted exactly. */
const soManyRuns = (count: number): string =>
  count > countedExactly ? `about ${counted(count, 'run')}` : counted(count, 'run');

/** A plan of runs for the predicted ratio. */
function plan(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const ratio = predicted(scene);
  const { within, mixed, alike } = neededFor(scene);
  return [
    refusedWork(scene),
    within === null || mixed === null
      ? `The careful estimate has ${subject.name} and ${baseline.name} level, ${multipliedSaid}. No number of runs shows a difference that isn’t there.`
      : `The careful estimate has ${subject.name} at ${ratioSaid(ratio)} times as long as ${baseline.name}, ${multipliedSaid}. To notice that in ${often} of tests, batch by batch, takes ${soManyRuns(within)} a knife. With every run from another batch, and batches ignored, it takes ${soManyRuns(mixed)}.`,
    alike === null
      ? 'They can’t be shown to be as good as equal, for at that ratio they are not: it lies beyond 25%.'
      : `To show that they are as good as equal takes ${soManyRuns(alike)} a knife, batch by batch.`,
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
  'runs-across': (scene) => [
    `Put all runs together, whichever batch: ${measuredSaid(trialOf(scene).across, namesOf(scene))}`,
    'That would be the answer if every batch cut alike. It is no verdict yet.',
    intervalMeans({ family: trialOf(scene).log.family, verdict: 'not distinguished' }),
  ],

  /** The ratio in each batch. */
  'runs-lots': (scene) => {
    const trial = trialOf(scene);
    const { subject, baseline } = scene;
    const found = ratioByBatch(trial);
    if (found.length === 0)
      return [
        `No batch on record was cut with both ${subject.name} and ${baseline.name}, so what the stock did can’t be taken out.`,
      ];
    const most = 6;
    const inBatches = found.slice(0, most).map(({ batch, ratio }) => `${ratioSaid(ratio)} in ${batch}`);
    return [
      `${subject.name} lasted so many times as long as ${baseline.name}: ${list(inBatches)}${found.length > most ? `, and so on through ${found.length} batches` : ''}.`,
    ];
  },

  /** Within batches. */
  'runs-within': (scene) => {
    const trial = trialOf(scene);
    const { across, measured, log } = trial;
    if (measured === null || log.batches.length === 0) return verdict(trial, scene);
    const narrower = Math.log(across.high / across.low) / Math.log(measured.high / measured.low);
    return [
      ...verdict(trial, scene),
      narrower > 1.05
        ? `On a log axis the range from all runs together was ${plain(narrower, 2)} times as wide.`
        : '',
      log.leftOut.length > 0
        ? `${counted(log.leftOut.length, 'run')} can’t enter the ratio.`.replace(/^\w/, (letter) =>
            letter.toUpperCase(),
          )
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
        `What is true of ${subject.name} and ${baseline.name} nobody knows: these were really cut.`,
        'A range made this way holds the truth in about 95 of 100 such tests. Nothing on it shows whether yours is one of them.',
      ];
    // Unreachable: made runs share their batches.
    const best = trial.measured ?? trial.across;
    const held = truth >= best.low && truth <= best.high;
    // Unreachable: the one draw that is kept misses no truth; another draw might.
    const holds = held ? 'holds it' : 'misses it, as one in twenty does';
    const { verdict: said } = trial.log;
    const wrongWay = said !== 'longer' && said !== 'shorter' && Math.log(truth) * Math.log(best.ratio) < 0;
    return [
      `The truth these runs were made from: ${subject.name} lasts ${ratioSaid(truth)} times as long as ${baseline.name}${origin === 'imagined' ? ', by the careful estimate' : ''}. The range ${holds}.`,
      wrongWay
        ? `Yet the runs lean the other way, to ${ratioSaid(best.ratio)}. Naming a better knife by them would have named the wrong one.`
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
          ? `This comparison carries no runs of ${subject.name} and ${baseline.name}, so nothing has been measured.`
          : whyNotOwn(scene),
        `If it scatters as the example does, ${percent(spread.within)} from sharpening to sharpening, this is what it would take.`,
        ...plan(scene),
      ];
    const { measured } = trial;
    if (measured === null) return [given(scene), ...verdict(trial, scene)];
    const ratio = predicted(scene);
    const place = ratio < measured.low ? 'below' : ratio > measured.high ? 'above' : 'inside';
    return [
      given(scene),
      ...verdict(trial, scene),
      intervalMeans(trial.log),
      `The careful estimate, ${ratioSaid(ratio)} ${multipliedSaid}, lies ${place} the 95% range from ${rangeSaid(measured.low, measured.high)}.`,
    ];
  },
};
