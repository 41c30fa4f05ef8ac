import * as Plot from '@observablehq/plot';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';

interface Place {
  job: string;
  name: string;
  ratio: number;
}

/** Every knife of the comparison in the three jobs of an edge, best first, as the model ranks them. */
function placesOf({ knives, rankings }: Scene): Place[] {
  const nameOf = (id: string): string => knives.find((knife) => knife.id === id)?.name ?? id;
  return [
    { job: 'Slicing', ranked: rankings.slicing },
    { job: 'Rolling', ranked: rankings.rolling },
    { job: 'Chipping', ranked: rankings.chipping ?? [] },
  ].flatMap(({ job, ranked }) =>
    ranked.map(({ knife, value }) => ({ job, name: nameOf(knife), ratio: value })),
  );
}

const jobs = ['Slicing', 'Rolling', 'Chipping'];

/** A job stands at its first line alone. */
const named = (line: string): string => (line.endsWith('-0') ? line.slice(0, -2) : '');

/** The comparison ranked by slicing, by resistance to rolling and by resistance to chipping, side by side. */
export const rankingsFigure: Figure = {
  id: 'rankings',
  title: ({ baseline }) => `Three jobs of an edge, against ${baseline.name}`,
  units: 'times the baseline',
  scale: 'logarithmic axis',
  reading: () => 'careful estimate',
  source: 'derived',
  options(scene, { narrow }) {
    const places = placesOf(scene);
    const present = jobs.filter((job) => places.some((place) => place.job === job));
    const ratios = [1, ...places.map(({ ratio }) => ratio)];
    const low = Math.min(...ratios) / 1.3;
    const high = Math.max(...ratios) * 1.8;
    const ticks = tickValues(low, high, narrow);
    // One line a knife in each job, in the order of the job's ranking, so that no two labels meet.
    const lines = present.flatMap((job) =>
      places
        .filter((place) => place.job === job)
        .map((place, index) => ({ ...place, line: `${job}-${index}`, first: index === 0 })),
    );
    const short = (name: string) =>
      name.length > (narrow ? 12 : 24) ? `${name.slice(0, narrow ? 11 : 23)}…` : name;
    return {
      height: lines.length * 24 + 50,
      marginLeft: 74,
      marginRight: narrow ? 110 : 180,
      marginTop: 6,
      marginBottom: 40,
      x: ratioAxisX(low, high, narrow, 'times the baseline'),
      y: {
        domain: lines.map(({ line }) => line),
        label: null,
        tickSize: 0,
        tickFormat: named,
      },
      marks: [
        gridX(ticks),
        baselineX(1),
        Plot.ruleY(lines, { y: 'line', x1: 1, x2: 'ratio', className: 'kf-stem' }),
        Plot.dot(lines, { x: 'ratio', y: 'line', r: 4.5, className: 'kf-answer' }),
        Plot.text(lines, {
          // Right of the stem on either side of 1.
          x: ({ ratio }: Place) => Math.max(1, ratio),
          y: 'line',
          text: ({ name, ratio }: Place) => `${short(name)} ${times(ratio)}`,
          dx: 9,
          textAnchor: 'start',
        }),
      ],
    };
  },
  table: (scene) => ({
    columns: ['Job', 'Knife', 'Times the baseline'],
    rows: placesOf(scene).map(({ job, name, ratio }) => [job, name, times(ratio)]),
  }),
  caption(scene) {
    const places = placesOf(scene);
    const best = (job: string) => places.find((place) => place.job === job);
    const [slicing, rolling, chipping] = jobs.map(best);
    const first =
      rolling?.name === slicing?.name
        ? `${slicing?.name} slices longest, and resists rolling best.`
        : `${slicing?.name} slices longest; ${rolling?.name} resists rolling best.`;
    return `${first} ${chipping ? `${chipping.name} resists chipping best.` : 'Chipping can’t be ranked, since no toughness is known.'}`;
  },
};
