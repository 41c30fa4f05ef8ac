import { grainSizeUm, gritTable, nearestGrit } from './finish.ts';
import type { GritScale } from '../types.ts';

/** A grade one can buy, beside the size that was asked for. */
export interface Grade {
  grit: number;
  /** As it is written on the scale, such as `P400`, `F400`, `#400` (JIS) or `400` (CAMI). */
  name: string;
  /** Its own median size, µm. */
  um: number;
  /** Its size over the size asked for. */
  ratio: number;
  /** Whether the size asked for lies beyond the scale's coarsest or finest grade. */
  beyond: boolean;
}

const prefix: Record<GritScale, string> = { 'FEPA-P': 'P', 'FEPA-F': 'F', JIS: '#', CAMI: '' };

/**
 * The grade of a scale nearest, in ratio, to a median particle size.
 *
 * @param um µm, above 0
 * @throws RangeError where the size is not above 0, or the scale is not one of the four
 * @example nearestGrade(34, 'FEPA-P').name // → 'P400'
 */
export function nearestGrade(um: number, scale: GritScale): Grade {
  const sizes = gritTable(scale).rows.map(([, size]) => size);
  const grit = nearestGrit(scale, um);
  const own = grainSizeUm({ scale, grit });
  return {
    grit,
    name: `${prefix[scale]}${grit}`,
    um: own,
    ratio: own / um,
    beyond: um > Math.max(...sizes) || um < Math.min(...sizes),
  };
}
