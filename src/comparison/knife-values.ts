/** What the fields of a knife hold, where a number alone is not enough. */
import type { CarbideVolPercent, Quantity } from '../model/index.ts';

/** Three readings along the edge of one knife, in the unit of the field. */
export interface Along {
  heel: number;
  middle: number;
  tip: number;
}

/** One value for the whole edge, or readings along it. */
export type Placed = Quantity | Along;

/**
 * How the edge angle was found. `deg` is per side. `bevelMm` is the thickness at the shoulder of the bevel;
 * `plusMinus` then is the ± of each caliper reading, mm, beside what ± a reading has of its own.
 */
export type AngleEntry =
  | {
      deg: Placed;
      /** The visitor confirmed that an angle over 30° is meant per side. */
      perSide?: true;
    }
  | { bevelMm: Quantity; slantWidthMm: Quantity; plusMinus?: number }
  | { bevelMm: Quantity; heightMm: Quantity; plusMinus?: number };

/** Typical hardened volumes by standard designation, or the volume per cent of each kind. */
export type CarbideEntry = { volPercent: CarbideVolPercent } | { designation: string };

/** What happened to the edge before it was measured. */
export const edgeStates = ['as bought', 'resharpened', 'modified', 'not recorded'] as const;
