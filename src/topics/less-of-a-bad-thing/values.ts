import { nominal, parameters, percentReadings } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { toModel } from '../../comparison/to-model.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { inDecimals, inFigures, short } from '../../scene/show.ts';

/** A harmful thing that has become less, and what that is worth by each reading, as factors. */
export interface Less {
  /** How much less of it, per cent; 0 to below 100. */
  percent: number;
  /** How much of it is left, per cent. */
  leftPercent: number;
  /** The power the damped reading raises the inverse to. */
  exponent: number;
  faceValue: number;
  inverse: number;
  damped: number;
}

/** What so much less of something is worth when its inverse is raised to an exponent of 0 or more. */
export function readLess(percent: number, exponent: number): Less {
  const { faceValue, inverse } = percentReadings(percent, 1);
  return {
    percent,
    leftPercent: 100 - percent,
    exponent,
    faceValue,
    inverse,
    // An exponent above 1, which a visitor may assume, sharpens instead of damping.
    damped: inverse ** exponent,
  };
}

/** What of the measure `a` is less than `b`, per cent of `b`. */
export const lessThan = (a: number, b: number): number => (1 - a / b) * 100;

/** The exponent with which the careful estimate takes a thickness. */
export const thicknessExponentOf = ({ assumptions }: Pick<ComparisonEntry, 'assumptions'>): number =>
  nominal(assumptions.thicknessExponent ?? parameters.thicknessExponent.default);

/**
 * The percentage a page covers: the first one typed, without its sign; where none is typed that can be "less", what
 * the slimmer of the two edge angles is less than the other.
 */
export function lessPercentOf(entry: ComparisonEntry): number {
  const typed = Math.abs(entry.faceValues?.[0] ?? Number.NaN);
  if (typed < 100) return typed;
  const { knives } = toModel(entry);
  const angles = knives
    .filter(({ id }) => id === entry.subject || id === entry.baseline)
    .map(({ angleDeg }) => nominal(angleDeg));
  return lessThan(Math.min(...angles), Math.max(...angles));
}

/** The harmful thing of a scene. */
export const lessOf = ({ entry }: Pick<Scene, 'entry'>): Less =>
  readLess(lessPercentOf(entry), thicknessExponentOf(entry));

/** A percentage to three figures, without empty decimals: `41.7%`. */
export const shortPercent = (percent: number): string => `${short(inDecimals(inFigures(percent), 4))}%`;

/** The same with its sign: `+41.7%`. */
export const signedShortPercent = (percent: number): string =>
  `${percent < 0 ? '' : '+'}${shortPercent(percent)}`;
