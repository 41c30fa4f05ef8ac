import { createPredictor, firstOrderBand, quantiles } from '../model/index.ts';
import type { Band, Family, FirstOrderBand, Predictor, Structure } from '../model/index.ts';
import { found, ofKnife } from '../comparison/found.ts';
import { pairIn, predictedOf, predictor, samples } from '../comparison/predicted.ts';
import { pairOf } from './pair.ts';
import { memoizeByScene } from './guessed.ts';
import type { Scene } from './scene.ts';
import { nearest } from './stack.ts';
import { inDecimals, readsAsNone } from './show.ts';

/** What one thing that is not known exactly has to do with the spread of the ratio. */
export interface Matter {
  /** In words, with the knife's name where it is a knife's. */
  what: string;
  family: Family | 'shared';
  /** Its share of the variance of ln ratio, alone, 0 to 1. */
  share: number;
}

/** How sure the careful estimate's ratio of the subject to the baseline is. */
export interface Sure extends Band {
  /** Share of the samples in which the subject outlasts the baseline. */
  beats: number;
  /** The band of the samples that took each structure. */
  byStructure: Record<Structure, Band>;
  /** Largest first; what only several explain together stands last. */
  readonly matters: Matter[];
  /** ln of all sample ratios, from the lowest to the highest. */
  readonly logs: Float64Array;
  /** The same by first-order propagation. */
  readonly line: FirstOrderBand;
}

/** Of its own: a predictor keeps what its last comparison needed, and two comparisons in turn would keep nothing. */
let neighbours: Predictor | undefined;

/** How sure the ratio is, computed once for a scene; the draws are the same for every scene, so a slider moves it smoothly. */
export const sureOf = memoizeByScene((scene: Scene): Sure => {
  const pair = pairOf(scene);
  const { subject } = scene.entry;
  const { low, median, high, beatsBaseline, byStructure, variance } = predictedOf(scene.comparison, subject);
  let [matters, logs, line]: [Matter[]?, Float64Array?, FirstOrderBand?] = [];
  return {
    low,
    median,
    high,
    beats: beatsBaseline,
    byStructure,
    get matters() {
      return (matters ??= mattersOf(variance, scene, this.line));
    },
    get logs() {
      return (logs ??= predictor().logRatios(pair, subject));
    },
    get line() {
      return (line ??= firstOrderBand(pair, subject));
    },
  };
});

/** The ratios below which given shares of the samples lie. */
export const ratiosAt = (logs: Float64Array, shares: readonly number[]): number[] =>
  quantiles(logs, shares).map(Math.exp);

/** Two knives of a comparison against each other. */
export interface Pairing {
  longer: string;
  shorter: string;
  low: number;
  high: number;
  beats: number;
}

/** The two knives of the comparison that lie nearest to each other; null where there are only two. */
export function nearestPairing(scene: Scene): Pairing | null {
  if (scene.comparison.knives.length < 3) return null;
  neighbours ??= createPredictor({ samples, seed: 1 });
  const { longer, shorter } = nearest(scene);
  const pair = pairIn({ ...scene.comparison, baseline: shorter.id }, longer.id);
  const { low, high, beatsBaseline: beats } = ofKnife(neighbours.predict(pair), longer.id);
  return { longer: longer.name, shorter: shorter.name, low, high, beats };
}

/** Whether the band has no width but for the last binary digits: everything is known, and every assumption fixed. */
export const isExact = ({ low, high }: Sure): boolean => high / low < 1 + 1e-9;

const of: Record<string, readonly [what: string, family: Matter['family']]> = {
  angleDeg: ['the edge angle of', 'geometry'],
  microbevelAngleDeg: ['the microbevel of', 'geometry'],
  edgeMm: ['the thickness behind the edge of', 'geometry'],
  spineMm: ['the thickness at the spine of', 'geometry'],
  heightMm: ['the height of the grind of', 'geometry'],
  radiusMm: ['the radius of the grind of', 'geometry'],
  finish: ['the grain size of', 'finish'],
  hrc: ['the hardness of', 'steel'],
  carbideVolPercent: ['the carbide of', 'steel'],
};

/** What only several inputs at once explain. */
export const together = 'several of these only together';

/** That nobody knows which structure holds. */
export const structureMatter = 'how the effects combine';

const shared: Record<string, readonly [what: string, family: Matter['family']]> = {
  friction: ['the friction in the cut', 'shared'],
  contactDepthMm: ['the depth of contact', 'geometry'],
  angleExponent: ['what an angle is worth (exponent E)', 'geometry'],
  thicknessExponent: ['what thickness is worth (its exponent)', 'geometry'],
  finishExponent: ['what finish is worth (its exponent)', 'finish'],
  hardnessExponent: ['what hardness is worth beyond the published line', 'steel'],
  lifeExponent: ['how card turns into life (exponent p)', 'steel'],
  wedgingShare: ['wedging’s share of the last force', 'shared'],
  limitPower: ['how life grows with the width of the edge', 'shared'],
  structure: [structureMatter, 'shared'],
  residual: ['how far steels lie off the published line', 'steel'],
  together: [together, 'shared'],
  'gauge.angleDeg': ['the common error of the angle gauge', 'geometry'],
  'gauge.edgeMm': ['the common error of the caliper', 'geometry'],
  'gauge.hrc': ['the common error of the hardness tester', 'steel'],
};

/** An input of the model in words; `knife` is the id of the knife it belongs to, null for what all share. */
export function matterName({ name, knife }: { name: string; knife: string | null }, scene: Scene): string {
  const [phrase] = phraseOf(name);
  if (name in shared || knife === null) return phrase;
  return `${phrase} ${found(scene.knives, knife, 'knife').name}`;
}

const phraseOf = (name: string): readonly [what: string, family: Matter['family']] =>
  shared[name] ?? of[name.split('.')[0] ?? ''] ?? [name, 'shared'];

/** How far each thing moves ln ratio by hand, by the words it has. */
export function sizesByHand(line: FirstOrderBand, scene: Scene): Map<string, number> {
  const squares = new Map<string, number>();
  for (const part of line.sensitivities) {
    const what = matterName(part, scene);
    squares.set(what, (part.u * part.sensitivity) ** 2 + (squares.get(what) ?? 0));
  }
  return new Map([...squares].map(([what, square]) => [what, Math.sqrt(square)]));
}

/**
 * Inputs that read the same in words, such as the kinds of one knife's carbide, count as one. Shares that read alike stand
 * in the order of the sum by hand: which of them the samples put first is chance.
 */
function mattersOf(variance: Record<string, number>, scene: Scene, line: FirstOrderBand): Matter[] {
  const byHand = sizesByHand(line, scene);
  const { subject, baseline } = scene.entry;
  const sums = new Map<string, Matter>();
  for (const [name, share] of Object.entries(variance)) {
    const bare = name.replace(/^baseline\./, '');
    const what = matterName({ name: bare, knife: bare === name ? subject : baseline }, scene);
    sums.set(what, { what, family: phraseOf(bare)[1], share: share + (sums.get(what)?.share ?? 0) });
  }
  return [...sums.values()]
    .filter(({ share }) => !readsAsNone(share))
    .sort(
      (a, b) =>
        Number(a.what === together) - Number(b.what === together) ||
        inDecimals(b.share, 2) - inDecimals(a.share, 2) ||
        (byHand.get(b.what) ?? 0) - (byHand.get(a.what) ?? 0),
    );
}
