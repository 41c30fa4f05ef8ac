import {
  carbidesByDesignation,
  edgeAngleDeg,
  isUnknown,
  makeEqual,
  measures,
  memoizeByObject,
  nominal,
  rangeOf,
} from '../model/index.ts';
import type { CarbideVolPercent, Comparison, Knife, Quantity } from '../model/index.ts';
import type { AngleEntry, Along, CarbideEntry, KnifeEntry, ComparisonEntry, Placed } from './schema.ts';

const isAlong = (value: Placed): value is Along => typeof value === 'object' && 'heel' in value;

/** Readings along the edge as one quantity: their mean ± half their spread. */
export function oneQuantity(value: Placed): Quantity {
  if (!isAlong(value)) return value;
  const readings = [value.heel, value.middle, value.tip];
  const plusMinus = (Math.max(...readings) - Math.min(...readings)) / 2;
  // Equal readings are one value; their mean could differ from it in the last digit.
  if (plusMinus === 0) return value.middle;
  return { value: (value.heel + value.middle + value.tip) / 3, plusMinus };
}

/**
 * The edge angle per side of a knife, degrees, however it was found.
 *
 * From caliper readings the ± of the angle is half the way between the readings that make it largest and smallest. Where
 * one of them is not known, neither is the angle, beyond what all the readings it may have come to.
 */
export function perSideDeg(angle: AngleEntry): Quantity {
  if ('deg' in angle) return oneQuantity(angle.deg);
  const { bevelMm, plusMinus = 0 } = angle;
  const sideMm = 'slantWidthMm' in angle ? angle.slantWidthMm : angle.heightMm;
  const half = (thicknessMm: number, side: number): number =>
    edgeAngleDeg(
      'slantWidthMm' in angle ? { thicknessMm, slantWidthMm: side } : { thicknessMm, heightMm: side },
    ) / 2;
  const [bevel, side] = [rangeOf(bevelMm), rangeOf(sideMm)];
  if (isUnknown(bevelMm) || isUnknown(sideMm)) {
    // Some of what a reading may be fits no bevel with the other, or none the model takes.
    const within = (thicknessMm: number, across: number): number =>
      'slantWidthMm' in angle && thicknessMm >= 2 * across
        ? measures.angleDeg.high
        : Math.min(measures.angleDeg.high, Math.max(measures.angleDeg.low, half(thicknessMm, across)));
    const [low, high] = [within(bevel.low, side.high), within(bevel.high, side.low)];
    return { unknown: true, low, high };
  }
  const value = half(nominal(bevelMm), nominal(sideMm));
  const most = half(bevel.high + plusMinus, side.low - plusMinus);
  const least = half(bevel.low - plusMinus, side.high + plusMinus);
  return most === least ? value : { value, plusMinus: (most - least) / 2 };
}

function volumes(carbide: CarbideEntry): CarbideVolPercent {
  if ('volPercent' in carbide) return carbide.volPercent;
  const { designation } = carbide;
  const known = Object.hasOwn(carbidesByDesignation, designation)
    ? carbidesByDesignation[designation]
    : undefined;
  if (!known) {
    throw new RangeError(
      `steel designation “${designation}” is none of: ${Object.keys(carbidesByDesignation).join(', ')}; enter the carbide by volume`,
    );
  }
  return known;
}

/** The knife as the model takes it. The same entry always gives the same object. */
const knifeOf = memoizeByObject((entry: KnifeEntry): Knife => ({
  id: entry.id,
  name: entry.name,
  angleDeg: perSideDeg(entry.angle),
  ...(entry.microbevelDeg === undefined ? {} : { microbevelAngleDeg: entry.microbevelDeg }),
  edgeMm: oneQuantity(entry.edgeMm),
  finish: entry.finish,
  grind: entry.grind,
  hrc: entry.hrc,
  carbideVolPercent: volumes(entry.carbide),
  ...(entry.toughness === undefined ? {} : { toughness: entry.toughness }),
}));

/** What was made last, and of what: an entry that changed only in what the model does not see gives it again. */
let latest: { parts: readonly unknown[]; comparison: Comparison } | undefined;

/**
 * The comparison as the model takes it, what is made equal included. The same entry always gives the same object, and so do
 * two in a row that differ only in what the model does not see.
 *
 * @throws RangeError where caliper readings make no bevel, or a designation is not in the model's table.
 */
export const toModel = memoizeByObject((entry: ComparisonEntry): Comparison => {
  const parts = seenByModel(entry);
  const same = latest?.parts.length === parts.length && parts.every((part, at) => part === latest?.parts[at]);
  const comparison = same && latest ? latest.comparison : converted(entry);
  latest = { parts, comparison };
  return comparison;
});

/** All that a comparison of the model is made of. */
const seenByModel = (entry: ComparisonEntry): unknown[] => [
  entry.baseline,
  entry.subject,
  entry.contactDepthMm,
  entry.friction,
  entry.slicePush,
  entry.assumptions,
  entry.gaugeBias,
  ...entry.madeEqual,
  ...entry.knives,
];

function converted(entry: ComparisonEntry): Comparison {
  const comparison: Comparison = {
    knives: entry.knives.map(knifeOf),
    baseline: entry.baseline,
    contactDepthMm: entry.contactDepthMm,
    friction: entry.friction,
    slicePush: entry.slicePush,
    assumptions: entry.assumptions,
    ...(entry.gaugeBias ? { gaugeBias: entry.gaugeBias } : {}),
  };
  return entry.madeEqual.length === 0 ? comparison : makeEqual(comparison, entry.subject, entry.madeEqual);
}

/** An angle that could be an included angle by mistake: what to ask before using it. */
export interface AngleQuestion {
  /** The id of the knife. */
  knife: string;
  /** What was given as the angle per side, degrees. */
  deg: number;
  /** What the angle per side is if an included angle was given. */
  perSideIfIncluded: number;
}

const likelyIncludedAboveDeg = 30;

const largest = (value: Placed): number => {
  if (typeof value === 'number') return value;
  if ('heel' in value) return Math.max(value.heel, value.middle, value.tip);
  return 'unknown' in value ? (value.low + value.high) / 2 : value.value;
};

/**
 * Knives whose typed angle per side is over 30° and not confirmed. Angles from caliper readings are not asked about:
 * nobody typed them.
 */
export function angleQuestions(entry: ComparisonEntry): AngleQuestion[] {
  return entry.knives.flatMap(({ id, angle }) => {
    if (!('deg' in angle) || angle.perSide) return [];
    const deg = largest(angle.deg);
    return deg > likelyIncludedAboveDeg ? [{ knife: id, deg, perSideIfIncluded: deg / 2 }] : [];
  });
}
