/** The runs of a scene's two knives: a visitor's own, the loft's, or such as the prediction would let one expect. */
import { measuredRatio, memoizeByObject, nominal, studentQuantile } from '../../model/index.ts';
import type { BatchLife, Knife, Measured } from '../../model/index.ts';
import { inventedRuns, loftRuns, loftTruths } from '../../runs/invented.ts';
import { livesOf } from '../../runs/lives.ts';
import type { LifeUnit } from '../../runs/lives.ts';
import type { Run } from '../../runs/log.ts';
import { found } from '../../comparison/found.ts';
import type { Scene } from '../../scene/scene.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';

export interface Trial {
  /** Who cut them: the visitor, the invented loft, or nobody, after the careful estimate's ratio. */
  origin: 'own' | 'loft' | 'imagined';
  unit: LifeUnit;
  /** Lives of the knife looked at and of the baseline, one a sharpening. */
  x: readonly BatchLife[];
  y: readonly BatchLife[];
  /** The ratio with the batches ignored. */
  readonly across: Measured;
  /** The ratio within batches; null where no lot holds both knives or too few runs are left. */
  readonly within: Measured | null;
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
  const own = runs.length > 0 ? ownTrial(scene, runs) : '';
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

const spelt = (name: string): string => name.trim().normalize('NFC');

/** The name of a knife as a log spells it, without what keeps it from turning a line round. */
const nameIn = ({ entry }: Scene, id: string): string => spelt(found(entry.knives, id, 'knife').name);

/** The trial of a visitor's own runs, or why there is none. */
function ownTrial(scene: Scene, runs: readonly Run[]): Trial | string {
  const { subject, baseline, entry } = scene;
  const names = [nameIn(scene, entry.subject), nameIn(scene, entry.baseline)] as const;
  if (names[0] === names[1])
    return `Both knives bear the name ${subject.name}, so the log cannot say whose runs are whose; ${baseline.name} needs a name of its own.`;
  const lives = (unit: LifeUnit): [BatchLife[], BatchLife[]] => [
    livesOf(runs, names[0], unit),
    livesOf(runs, names[1], unit),
  ];
  const fewer = ([x, y]: [BatchLife[], BatchLife[]]): number => Math.min(x.length, y.length);
  const unit = fewer(lives('mm')) > fewer(lives('cuts')) ? 'mm' : 'cuts';
  const [x, y] = lives(unit);
  for (const [side, name] of [
    [x, subject.name],
    [y, baseline.name],
  ] as const) {
    const ended = side.filter(({ high }) => high < Infinity).length;
    if (side.length === 0) return `The log has no run of ${name} that could be compared.`;
    if (side.length === 1)
      return `The log has one sharpening of ${name}: one does not show how much they scatter.`;
    if (ended < 2)
      return `Of ${side.length} runs of ${name} too few reached their stop to say how long it lasts.`;
  }
  const across = attempt(x, y, false);
  if (!across)
    return `The runs of ${subject.name} and ${baseline.name} do not show how much they scatter, so no interval can be given.`;
  return { origin: 'own', unit, x, y, across, within: attempt(x, y, true), truth: null };
}

/** The interval of 90 % of a comparison: where it lies within the bounds, the knives are shown alike. */
export function inner({ ratio, high, df }: Measured): { low: number; high: number } {
  const reach = (high / ratio) ** (studentQuantile(0.95, df) / studentQuantile(0.975, df));
  return { low: ratio / reach, high: ratio * reach };
}

/** The comparison, or null where the model refuses it. */
const attempt = (x: readonly BatchLife[], y: readonly BatchLife[], withinBatches: boolean): Measured | null =>
  unlessRefused(() => measuredRatio({ x, y, withinBatches }));

function made(
  runs: readonly Run[],
  names: readonly [string, string],
  truth: number,
  origin: Trial['origin'],
): Trial {
  const [x, y] = [livesOf(runs, names[0], 'cuts'), livesOf(runs, names[1], 'cuts')];
  // What the runs say takes longer to compute than the runs to draw.
  let [across, within]: [Measured?, (Measured | null)?] = [];
  return {
    origin,
    unit: 'cuts',
    x,
    y,
    truth,
    get across() {
      return (across ??= measuredRatio({ x, y }));
    },
    get within() {
      return (within ??= attempt(x, y, true));
    },
  };
}

/** The loft's runs, where both knives are the loft's and still have the edge these runs were cut with. */
function loftTrial(scene: Scene): Trial | null {
  const { entry, subjectKnife, baselineKnife } = scene;
  if (!entry.invented) return null;
  const truthOf = ({ id, angleDeg }: Knife) =>
    loftTruths.knives.find(
      (truth) => truth.knife === nameIn(scene, id) && truth.angleDeg === nominal(angleDeg),
    );
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
  const truth = row.careful.product;
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
