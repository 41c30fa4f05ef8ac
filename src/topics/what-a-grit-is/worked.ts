import { grainSizeUm, nominal, parameters } from '../../model/index.ts';
import { finishesOf, umOf } from './values.ts';
import type { SeenFinish } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, short } from '../../scene/show.ts';
import type { Worked } from '../worked.ts';

/** A grit that stands between two of the FEPA P list, for the step that goes between grades. */
const between = { scale: 'FEPA-P', below: 600, grit: 700, above: 800 } as const;

const size = (grit: number): number => grainSizeUm({ scale: between.scale, grit });

/** The finish factor from the two sizes; and how a grit between two grades gets its size. */
function grits(scene: Scene): Worked {
  const { subject, baseline } = finishesOf(scene);
  const ratio = subject.um / baseline.um;
  const assumed = scene.comparison.assumptions?.finishExponent ?? parameters.finishExponent.default;
  const exponent = nominal(assumed);
  const grain = (name: string, { grit, name: finish, um }: SeenFinish) =>
    `${name} ${grit ? `${finish}, which its list gives as ${umOf(um)}` : `a grain of ${finish}`}`;
  return {
    givens: `${grain(scene.subject.name, subject)}; ${grain(scene.baseline.name, baseline)}.`,
    steps: [
      {
        say: `Divide size by size, never number by number: the grain of ${scene.subject.name} over that of ${scene.baseline.name}.`,
        tex: '\\frac{{{a}}}{{{b}}} \\approx {{ratio}}',
        values: { a: short(subject.um), b: short(baseline.um), ratio: plain(ratio, 4) },
      },
      {
        say: `What that is worth in a slice, by the careful estimate: the ratio to the power of the finish exponent, which is assumed.`,
        tex: '{{ratio}}^{{{e}}} \\approx {{factor}}',
        values: { ratio: plain(ratio, 4), e: brief(exponent), factor: plain(ratio ** exponent) },
      },
      {
        say: `A number between two of the list, say P${between.grit}, lies part of the way from P${between.below} to P${between.above}. Equal multiples count as equal steps, so the part is a ratio of logarithms.`,
        tex: '\\frac{\\log({{g}} \\div {{from}})}{\\log({{to}} \\div {{from}})} \\approx {{part}}',
        values: {
          g: String(between.grit),
          from: String(between.below),
          to: String(between.above),
          part: plain(Math.log(between.grit / between.below) / Math.log(between.above / between.below), 4),
        },
      },
      {
        say: 'Go the same part of the way from the one size to the other, again in multiples. That is its grain in µm.',
        tex: '{{coarse}} \\times \\left(\\frac{{{fine}}}{{{coarse}}}\\right)^{{{part}}} \\approx {{um}}',
        values: {
          coarse: short(size(between.below)),
          fine: short(size(between.above)),
          part: plain(Math.log(between.grit / between.below) / Math.log(between.above / between.below), 4),
          um: plain(size(between.grit)),
        },
        unit: 'µm',
      },
    ],
  };
}

export const gritsWorked: Record<string, (scene: Scene) => Worked> = { grits };
