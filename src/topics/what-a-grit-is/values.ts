import { grainSizeUm, gritTable, nearestGrit, nominal } from '../../model/index.ts';
import type { Finish, GritScale, Knife } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, short } from '../../scene/show.ts';

export const scales: readonly GritScale[] = ['FEPA-P', 'FEPA-F', 'JIS', 'CAMI'];

/** A scale as it stands before a number: P220, JIS 240. */
const prefix: Record<GritScale, string> = { 'FEPA-P': 'P', 'FEPA-F': 'F', JIS: 'JIS ', CAMI: 'CAMI ' };
export const scaleName: Record<GritScale, string> = {
  'FEPA-P': 'FEPA P',
  'FEPA-F': 'FEPA F',
  JIS: 'JIS',
  CAMI: 'CAMI',
};

export const gritName = (scale: GritScale, grit: number): string => `${prefix[scale]}${brief(grit)}`;

/** A size of three figures, without empty decimals: 68 µm, 15.3 µm. */
export const umOf = (um: number): string => `${short(um)} µm`;

/** The finish of one knife of the scene, as the model takes it. */
export interface SeenFinish {
  /** Median particle size, µm; the middle of its range where it is not known. */
  um: number;
  /** The grit with its scale; null where the size was given in µm. */
  grit: { scale: GritScale; number: number } | null;
  /** "P220", or "34 µm" where no grit was given. */
  name: string;
  notKnown: boolean;
}

function seen({ finish }: Knife): SeenFinish {
  if ('um' in finish) {
    const um = nominal(finish.um);
    const notKnown = typeof finish.um === 'object' && 'unknown' in finish.um;
    return { um, grit: null, name: umOf(um), notKnown };
  }
  const { scale, grit } = finish;
  const um = grainSizeUm(finish);
  return { um, grit: { scale, number: grit }, name: gritName(scale, grit), notKnown: false };
}

/** The finishes of subject and baseline. */
export const finishesOf = ({
  subjectKnife,
  baselineKnife,
}: Scene): Record<'subject' | 'baseline', SeenFinish> => ({
  subject: seen(subjectKnife),
  baseline: seen(baselineKnife),
});

/** First and last grit of a scale's list. */
export function spanOf(scale: GritScale): { first: number; last: number } {
  const grits = gritTable(scale).rows.map(([grit]) => grit);
  return { first: Math.min(...grits), last: Math.max(...grits) };
}

/** What a number stands for on a scale, µm; null where the scale's list does not reach it. */
export function sizeOn(scale: GritScale, grit: number): number | null {
  const { first, last } = spanOf(scale);
  return grit < first || grit > last ? null : grainSizeUm({ scale, grit });
}

/** The grade of a scale whose grain comes nearest, or which end of its list the grain lies beyond. */
export function gradeOn(
  scale: GritScale,
  um: number,
): { grit: number; um: number } | 'none so coarse' | 'none so fine' {
  const sizes = gritTable(scale).rows.map(([, size]) => size);
  if (um > Math.max(...sizes)) return 'none so coarse';
  if (um < Math.min(...sizes)) return 'none so fine';
  const grit = nearestGrit(scale, um);
  return { grit, um: grainSizeUm({ scale, grit }) };
}

/** A finish in grit, whatever it was given in: in µm it becomes the nearest grade of FEPA P. */
export const asGrit = (finish: Finish): { scale: GritScale; grit: number } =>
  'um' in finish ? { scale: 'FEPA-P', grit: nearestGrit('FEPA-P', nominal(finish.um)) } : finish;
