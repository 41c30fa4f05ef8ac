/** The runs of a scene's two knives: a visitor's own, the loft's, or such as the prediction would let one expect. */
import { memoizeByObject, nominal } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import { judged } from '../../comparison/judged.ts';
import { judgeLog, measuredOf } from '../../runs/judge-log.ts';
import type { LogJudgement, Measured } from '../../runs/judge-log.ts';
import { inventedRuns, loftRuns, loftTruths } from '../../runs/invented.ts';
import { sharpeningsOf } from '../../runs/lives.ts';
import type { LifeUnit, SharpenedLife } from '../../runs/lives.ts';
import type { Run } from '../../runs/log.ts';
import { whyNoInterval } from '../../phrases/why-no-interval.ts';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';

export interface Trial {
  /** Who cut them: the visitor, the invented loft, or nobody, after the careful estimate's ratio. */
  origin: 'own' | 'loft' | 'imagined';
  unit: LifeUnit;
  /** Lives of the knife looked at and of the baseline, one for every edge in every batch. */
  x: readonly SharpenedLife[];
  y: readonly SharpenedLife[];
  /** The judgement, the same as on the page of runs. */
  readonly log: LogJudgement;
  /** Its ratio with its intervals; null where it gives none. */
  readonly measured: Measured | null;
  /** The ratio as it would be if every batch cut alike, which it is not: no verdict goes by it. */
  readonly across: Measured;
  /** The ratio the runs were made from; null where nobody knows it. */
  truth: number | null;
}

/** Made runs have the batches and the spread of the loft's, and its seed. */
const seed = 11;
/** Cuts of the shorter-lived knife of an imagined pair, in a batch of factor 1. */
const shorterCuts = 120;

type Truth = (typeof loftTruths.knives)[number];

interface Found {
  trial: Trial;
  /** Why a visitor's own log gives no ratio, '' where it does or where there is none. */
  why: string;
}

const foundIn = memoizeByObject((scene: Scene): Found => {
  const { runs = [] } = scene.entry;
  const own = runs.length > 0 ? ownTrial(scene) : '';
  const found =
    typeof own === 'string'
      ? { trial: loftTrial(scene) ?? imaginedTrial(scene), why: own }
      : { trial: own, why: '' };
  return found;
});

/** The runs of the two knives and what they say, once for a scene. */
export const trialOf = (scene: Scene): Trial => foundIn(scene).trial;

/** Why a visitor's own log gives no ratio, '' where it does or where there is none. */
export const whyNotOwn = (scene: Scene): string => foundIn(scene).why;

/** The trial of a visitor's own runs, or why there is none. */
function ownTrial(scene: Scene): Trial | string {
  const { entry } = scene;
  const { subject, baseline } = entry;
  const { log } = runsOf(scene);
  const across = measuredOf(judged(entry, subject, baseline, true));
  const measured = measuredOf(log);
  if (runsOf(scene).promised.waiting) return whyNoInterval(runsOf(scene)).join(' ');
  if (across === null || (measured === null && log.verdict !== 'cannot be separated'))
    return whyNoInterval(runsOf(scene)).join(' ');
  const [x, y] = [sharpeningsOf(log.lives, subject), sharpeningsOf(log.lives, baseline)];
  return { origin: 'own', unit: log.unit, x, y, log, measured, across, truth: null };
}

function made(
  runs: readonly Run[],
  names: readonly [string, string],
  truth: number,
  origin: Trial['origin'],
): Trial {
  const question = { knife: names[0], against: names[1] };
  const log = judgeLog(runs, question);
  // What the runs say as if there were no batches takes longer to compute than the runs to draw.
  let across: Measured | null | undefined;
  return {
    origin,
    unit: log.unit,
    x: sharpeningsOf(log.lives, names[0]),
    y: sharpeningsOf(log.lives, names[1]),
    truth,
    log,
    measured: measuredOf(log),
    get across() {
      across ??= measuredOf(judgeLog(runs, { ...question, ignoreBatches: true }));
      // Unreachable: made runs are many and vary.
      if (across === null) throw new RangeError('the made runs give no interval');
      return across;
    },
  };
}

/** The loft's runs, where both knives are the loft's and still have the edge these runs were cut with. */
function loftTrial(scene: Scene): Trial | null {
  const { entry, subjectKnife, baselineKnife } = scene;
  if (!entry.invented) return null;
  const truthOf = ({ id, angleDeg }: Knife) =>
    loftTruths.knives.find((truth) => truth.knife === id && truth.angleDeg === nominal(angleDeg));
  const [x, y] = [truthOf(subjectKnife), truthOf(baselineKnife)];
  return x && y ? loftPair(x, y) : null;
}

const ofLoft = new Map<string, Trial>();

/** The loft's own trials, computed once: a slider goes through them again and again. */
function loftPair(x: Truth, y: Truth): Trial {
  const key = `${x.knife} over ${y.knife}`;
  const trial = ofLoft.get(key) ?? made(loftRuns(), [x.knife, y.knife], x.cuts / y.cuts, 'loft');
  ofLoft.set(key, trial);
  return trial;
}

/** Runs as they might fall if the careful estimate were true. */
function imaginedTrial({ entry, row }: Scene): Trial {
  const truth = row.careful.multiplied;
  const knives = [
    { knife: entry.subject, cuts: shorterCuts * Math.max(1, truth) },
    { knife: entry.baseline, cuts: shorterCuts * Math.max(1, 1 / truth) },
  ];
  return made(
    inventedRuns({ ...loftTruths, knives }, seed),
    [entry.subject, entry.baseline],
    truth,
    'imagined',
  );
}
