import { positive, refuse } from '../check.ts';
import type { Finish, GritScale } from '../types.ts';
import { nominal } from '../quantities.ts';

type GritTable = readonly (readonly [grit: number, um: number])[];

/**
 * Median particle size by scale and grit, µm.
 * FEPA P: ISO 6344-2/-3. FEPA F: ISO 8486-1/-2 (from memory). JIS: JIS R 6001, electrical-resistance d50.
 * CAMI: ANSI B74.18; copies of it differ by a few per cent.
 */
const tables: Record<GritScale, { source: string; rows: GritTable }> = {
  'FEPA-P': {
    source: 'iso-6344-grit',
    rows: [
      [80, 201],
      [100, 162],
      [120, 125],
      [150, 100],
      [180, 82],
      [220, 68],
      [240, 58.5],
      [280, 52.2],
      [320, 46.2],
      [360, 40.5],
      [400, 35.0],
      [500, 30.2],
      [600, 25.8],
      [800, 21.8],
      [1000, 18.3],
      [1200, 15.3],
      [1500, 12.6],
      [2000, 10.3],
      [2500, 8.4],
    ],
  },
  'FEPA-F': {
    source: 'iso-8486-grit',
    rows: [
      [80, 185],
      [90, 154],
      [100, 129],
      [120, 109],
      [150, 82],
      [180, 69],
      [220, 58],
      [230, 53.0],
      [240, 44.5],
      [280, 36.5],
      [320, 29.2],
      [360, 22.8],
      [400, 17.3],
      [500, 12.8],
      [600, 9.3],
      [800, 6.5],
      [1000, 4.5],
      [1200, 3.0],
      [1500, 2.0],
      [2000, 1.2],
    ],
  },
  JIS: {
    source: 'jis-r-6001-grit',
    rows: [
      [240, 57],
      [280, 48],
      [320, 40],
      [360, 35],
      [400, 30],
      [500, 25],
      [600, 20],
      [700, 17],
      [800, 14],
      [1000, 11.5],
      [1200, 9.5],
      [1500, 8.0],
      [2000, 6.7],
      [2500, 5.5],
      [3000, 4.0],
      [4000, 3.0],
      [6000, 2.0],
      [8000, 1.2],
    ],
  },
  CAMI: {
    source: 'ansi-b74-18-grit',
    rows: [
      [80, 192],
      [100, 141],
      [120, 116],
      [150, 93],
      [180, 78],
      [220, 66],
      [240, 53.5],
      [320, 36.0],
      [360, 28.8],
      [400, 23.6],
      [500, 19.7],
      [600, 16.0],
      [800, 12.2],
      [1000, 9.2],
      [1200, 6.5],
    ],
  },
};

/**
 * The grits of a scale with their median particle sizes, µm, from coarse to fine, and the id of their source.
 *
 * @throws RangeError for a scale that is not one of the four
 * @example gritTable('JIS').rows[9] // → [1000, 11.5]
 */
export function gritTable(scale: GritScale): { source: string; rows: GritTable } {
  if (!Object.hasOwn(tables, scale))
    refuse(`grit scale ${String(scale)} is not one of ${Object.keys(tables).join(', ')}`);
  return tables[scale];
}

/**
 * Median particle size of a finish, µm. Between two grits of the table the interpolation is log–log;
 * outside the table the answer is refused rather than guessed.
 *
 * @param f a grit with its scale, or a size in µm
 * @throws RangeError where the grit is outside the scale's table, or the size is not above 0
 * @example grainSizeUm({ scale: 'FEPA-P', grit: 400 }) // → 35
 * @example grainSizeUm({ scale: 'CAMI', grit: 400 }) // → 23.6
 */
export function grainSizeUm(f: { scale: GritScale; grit: number } | { um: number }): number {
  if ('um' in f) return positive('grain size', f.um, ' µm');
  const { rows } = gritTable(f.scale);
  const first = rows[0] ?? refuse('grit table is empty');
  const last = rows[rows.length - 1] ?? first;
  if (!Number.isFinite(f.grit) || f.grit < first[0] || f.grit > last[0]) {
    refuse(`grit ${String(f.grit)} is not between ${first[0]} and ${last[0]} on the ${f.scale} scale`);
  }
  const above = rows.findIndex(([grit]) => grit >= f.grit);
  const [gritB, umB] = rows[above] ?? last;
  if (gritB === f.grit) return umB;
  const [gritA, umA] = rows[above - 1] ?? first;
  const part = Math.log(f.grit / gritA) / Math.log(gritB / gritA);
  return umA * (umB / umA) ** part;
}

/** The size of a finish whose µm may be a quantity: its middle. */
export const finishUm = (finish: Finish): number =>
  grainSizeUm('um' in finish ? { um: nominal(finish.um) } : finish);

/**
 * The grit of a scale whose size is nearest, in ratio, to the one given.
 *
 * @throws RangeError where the size is not above 0; a size beyond the scale gives its last grit
 * @example nearestGrit('FEPA-P', 34) // → 400
 */
export function nearestGrit(scale: GritScale, um: number): number {
  positive('grain size', um, ' µm');
  const { rows } = gritTable(scale);
  const distance = ([, size]: readonly [number, number]) => Math.abs(Math.log(size / um));
  return rows.reduce((best, row) => (distance(row) < distance(best) ? row : best))[0];
}

/**
 * Depth of the scratches a grain leaves: 3–5% of its size, read off two published charts, good to a factor 2.
 *
 * @param um median particle size, µm
 * @returns µm
 * @throws RangeError where the size is not above 0
 * @example scratchDepthUm(100) // → { low: 3, high: 5 }
 */
export function scratchDepthUm(um: number): { low: number; high: number } {
  const size = positive('grain size', um, ' µm');
  return { low: 0.03 * size, high: 0.05 * size };
}
