import {
  bandRounding,
  compare,
  createPredictor,
  firstOrderBand,
  memoizeByObject,
  quantiles,
  shareAbove,
} from '../model/index.ts';
import type { Family, FirstOrderBand, Predictor } from '../model/index.ts';
import { found, ofKnife } from '../comparison/found.ts';
import { pairIn, pairOf } from './pair.ts';
import type { Scene } from './scene.ts';
import { nearest } from './stack.ts';
import { readsAsNone } from './show.ts';

/** What one thing that is not known exactly has to do with the spread of the ratio. */
export interface Matter {
  /** In words, with the knife's name where it is a knife's. */
  what: string;
  family: Family | 'shared';
  /** Its share of the variance of ln ratio, alone, 0 to 1. */
  share: number;
}

/** How sure the careful estimate's ratio of the subject to the baseline is. */
export interface Sure {
  /** The central 90 % of the samples, and their middle. */
  low: number;
  median: number;
  high: number;
  /** Share of the samples in which the subject outlasts the baseline. */
  beats: number;
  /** What the band supports: figures, and the middle rounded to them. */
  rounding: { figures: number; median: number };
  /** Largest first; what only several explain together stands last. */
  readonly matters: Matter[];
  /** ln of all sample ratios, from the lowest to the highest. */
  logs: Float64Array;
  /** The same by first-order propagation. */
  line: FirstOrderBand;
}

export const samples = 20_000;

let predictor: Predictor | undefined;
/** Of its own: a predictor keeps what its last comparison needed, and two comparisons in turn would keep nothing. */
let neighbours: Predictor | undefined;
/** How sure the ratio is, computed once for a scene; the draws are the same for every scene, so a slider moves it smoothly. */
export const sureOf = memoizeByObject((scene: Scene): Sure => {
  predictor ??= createPredictor({ samples, seed: 1 });
  const runs = predictor;
  const pair = pairOf(scene);
  const { subject } = scene.entry;
  const careful = scene.row.careful.product;
  const logs = runs.logRatios(pair, subject);
  // Where all samples are one, it is the close value to the last digit.
  const varies = logs[0] !== logs.at(-1);
  const [low = careful, median = careful, high = careful] = varies ? ratiosAt(logs, [0.05, 0.5, 0.95]) : [];
  let matters: Matter[] | undefined;
  const sure: Sure = {
    low,
    median,
    high,
    beats: shareAbove(logs, 0),
    rounding: bandRounding({ low, median, high }),
    // Few places ask for it, and it takes as long as all the rest.
    get matters() {
      return (matters ??= mattersOf(ofKnife(runs.predict(pair), subject).variance, scene));
    },
    logs,
    line: firstOrderBand(pair, subject),
  };
  return sure;
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
  const whole = { ...scene.comparison, baseline: shorter.id };
  const pair = pairIn(whole, ofKnife(compare(whole).rows, longer.id));
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

const shared: Record<string, readonly [what: string, family: Matter['family']]> = {
  friction: ['the friction in the cut', 'shared'],
  contactDepthMm: ['the depth of contact', 'geometry'],
  angleExponent: ['what an angle is worth (exponent E)', 'geometry'],
  thicknessExponent: ['what thickness is worth (its exponent)', 'geometry'],
  finishExponent: ['what finish is worth (its exponent)', 'finish'],
  hardnessExponent: ['what hardness is worth (its exponent)', 'steel'],
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
  return `${phrase} ${found(scene.entry.knives, knife, 'knife').name}`;
}

const phraseOf = (name: string): readonly [what: string, family: Matter['family']] =>
  shared[name] ?? of[name.split('.')[0] ?? ''] ?? [name, 'shared'];

/** Inputs that read the same in words, such as the kinds of one knife's carbide, count as one. */
function mattersOf(variance: Record<string, number>, scene: Scene): Matter[] {
  const { subject, baseline } = scene.entry;
  const sums = new Map<string, Matter>();
  for (const [name, share] of Object.entries(variance)) {
    const bare = name.replace(/^baseline\./, '');
    const what = matterName({ name: bare, knife: bare === name ? subject : baseline }, scene);
    sums.set(what, { what, family: phraseOf(bare)[1], share: share + (sums.get(what)?.share ?? 0) });
  }
  return [...sums.values()]
    .filter(({ share }) => !readsAsNone(share))
    .sort((a, b) => Number(a.what === together) - Number(b.what === together) || b.share - a.share);
}
