import type { Family, TermId } from '../types.ts';
import {
  carbideMmOf,
  lnApex,
  lnApexTangent,
  lnBevelForce,
  lnFinish,
  lnGrindForce,
  lnLife,
  lnSteel,
  lnThickness,
  type Calculation,
  type SharedId,
} from './calculation.ts';
import type { Point } from './point.ts';
import { weightedSum, type Values } from './values.ts';

/** A factor: one reason for which a knife cuts longer than another. */
export interface Factor {
  id: TermId;
  family: Family;
  /**
   * How it combines: what `multiplies` is a factor of the life in every structure; what `resists` is a force, and
   * multiplies, adds to other forces, or takes its share of the last force.
   */
  combines: 'multiplies' | 'resists';
  /** By the quick sum: ln of how long a knife cuts for this reason, of which two are taken from each other. */
  quick: (knife: Point) => number;
  quickStatus: string;
  /**
   * By the careful estimate: ln of how long a knife cuts for this reason, or, where it resists, ln of the force. One
   * value, or one a sample.
   */
  careful: (knife: Calculation) => Values;
  /** What takes its place where the force reaches a limit, if that is another. */
  atLimit?: (knife: Calculation) => Values;
  /** The part of another factor that this one stands for, between two knives: that factor shows the rest. */
  partOf?: { factor: TermId; ln: (a: Calculation, b: Calculation) => number };
  /** The parameters whose stated ranges give the range of the factor. */
  parameters: readonly SharedId[];
  /** Whether a steel off the published line widens the range. */
  offTheLine?: boolean;
  status: string;
}

const LOG2 = Math.log(2);
/** Each halving of the grind's wedge half angle counts a tenth (common practice, no source). */
const TENTH_A_HALVING = Math.log2(1.1);

const nothing = (): Values => 0;

/** A life of scalars only: what `partOf` compares. */
const number = (values: Values): number => (typeof values === 'number' ? values : Number.NaN);

/** ln of the life of one knife's hardness with another's carbide. */
const crossed = (hardness: Calculation, carbide: Calculation): number =>
  number(lnLife(hardness, 'crossed', hardness.measured('hrc'), carbideMmOf(carbide)));

/** The carbide's part of the steel: nothing where the published line sees no difference, all where the hardness is one. */
function carbideLn(a: Calculation, b: Calculation): number {
  if (carbideMmOf(a) === carbideMmOf(b)) return 0;
  if (a.measured('hrc') === b.measured('hrc')) return number(lnSteel(a)) - number(lnSteel(b));
  return (crossed(a, a) - crossed(a, b) + crossed(b, a) - crossed(b, b)) / 2;
}

/**
 * The factors, each once. `compare`, the samples, what is solved for, fields, links, sentences and figures take theirs
 * from here. To add one, add an entry and its id to `TermId`.
 *
 * Hardness and carbide share the published line, which adds them: hardness carries both, and carbide takes out its own
 * part, the mean in the logarithm of exchanging it first and second. The two together are card(a)/card(b) and agree
 * through any third knife; each alone does so only nearly.
 */
export const factors: readonly Factor[] = [
  {
    id: 'wedge',
    family: 'geometry',
    combines: 'resists',
    quick: ({ angleDeg }) => -Math.log(angleDeg),
    quickStatus: 'angle against angle',
    careful: lnBevelForce,
    parameters: ['friction'],
    status: 'derived; equal spread force and friction assumed',
  },
  {
    id: 'apex',
    family: 'geometry',
    combines: 'multiplies',
    quick: ({ apexAngleDeg }) => -Math.log(apexAngleDeg),
    quickStatus: 'angle against angle',
    careful: (k) => negative(k, 'apex', lnApex(k)),
    atLimit: (k) => negative(k, 'apex tangent', lnApexTangent(k)),
    parameters: ['angleExponent'],
    status: 'calibrated on the published regression',
  },
  {
    id: 'thickness',
    family: 'geometry',
    combines: 'resists',
    quick: ({ edgeMm }) => -Math.log(edgeMm),
    quickStatus: 'thickness against thickness',
    careful: lnThickness,
    parameters: ['thicknessExponent'],
    status: 'exponent assumed',
  },
  {
    id: 'grind',
    family: 'geometry',
    combines: 'resists',
    quick: ({ grindHalfAngleDeg }) => -TENTH_A_HALVING * Math.log(grindHalfAngleDeg),
    quickStatus: 'a tenth for each halving; common practice, no source',
    careful: lnGrindForce,
    parameters: ['friction'],
    status: 'derived; contact depth and friction assumed',
  },
  {
    id: 'finish',
    family: 'finish',
    combines: 'multiplies',
    quick: ({ finishUm }) => Math.log(finishUm),
    quickStatus: 'grain size against grain size; slicing only',
    careful: lnFinish,
    parameters: ['finishExponent'],
    status: 'exponent assumed; slicing only',
  },
  {
    id: 'hardness',
    family: 'steel',
    combines: 'multiplies',
    quick: ({ hrc }) => 2 * Math.log(hrc),
    quickStatus: 'hardness squared',
    careful: lnSteel,
    parameters: ['lifeExponent', 'hardnessExponent'],
    offTheLine: true,
    status: 'published regression to an assumed power, halves exchanged',
  },
  {
    id: 'carbide',
    family: 'steel',
    combines: 'multiplies',
    quick: ({ carbideVolPercent }) => (carbideVolPercent * LOG2) / 20,
    quickStatus: 'twenty volume per cent doubles; assumed',
    careful: nothing,
    partOf: { factor: 'hardness', ln: carbideLn },
    parameters: ['lifeExponent', 'hardnessExponent'],
    offTheLine: true,
    status: 'published regression to an assumed power, halves exchanged',
  },
];

/** The negative of a part, kept as a part. */
function negative(k: Calculation, name: string, values: Values): Values {
  return k.part(`minus ${name}`, [values], (old) => weightedSum([[-1, values]], old));
}
