/** How the model reads what was entered for a knife. */
import {
  carbidesByDesignation,
  edgeAngleDeg,
  isUnknown,
  measures,
  nominal,
  rangeOf,
} from '../model/index.ts';
import type { CarbideVolPercent, Quantity } from '../model/index.ts';
import type { Along, AngleEntry, CarbideEntry, Placed } from './knife-values.ts';

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
  const found = (thicknessMm: number, side: number): number =>
    edgeAngleDeg(
      'slantWidthMm' in angle ? { thicknessMm, slantWidthMm: side } : { thicknessMm, heightMm: side },
    );
  const [bevel, side] = [rangeOf(bevelMm), rangeOf(sideMm)];
  if (isUnknown(bevelMm) || isUnknown(sideMm)) {
    // Some of what a reading may be fits no bevel with the other, or none the model takes.
    const within = (thicknessMm: number, across: number): number =>
      'slantWidthMm' in angle && thicknessMm >= 2 * across
        ? measures.angleDeg.high
        : Math.min(measures.angleDeg.high, Math.max(measures.angleDeg.low, found(thicknessMm, across)));
    const [low, high] = [within(bevel.low, side.high), within(bevel.high, side.low)];
    return { unknown: true, low, high };
  }
  const value = found(nominal(bevelMm), nominal(sideMm));
  const most = found(bevel.high + plusMinus, side.low - plusMinus);
  const least = found(bevel.low - plusMinus, side.high + plusMinus);
  return most === least ? value : { value, plusMinus: (most - least) / 2 };
}

/**
 * The carbide of a knife by volume.
 *
 * @throws RangeError for a designation that is not in the model's table
 */
export function carbideVolumes(carbide: CarbideEntry): CarbideVolPercent {
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
