import * as Plot from '@observablehq/plot';
import { trials } from '../../scene/limits.ts';
import type { Trial } from '../../scene/limits.ts';
import type { Scene } from '../../scene/scene.ts';
import { allLevel, orders } from './orders.ts';
import type { Placed } from './orders.ts';
import { readAlike, times } from '../../scene/show.ts';
import { sideLoadLabel } from '../../phrases/side-load.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { shortName } from '../../figure-kit/short-name.ts';

interface Place extends Placed {
  trial: Trial;
  /** 1 is best. */
  rank: number;
}

const title: Record<Trial, string> = { slicing: 'Slicing', rolling: 'Rolling', chipping: 'Chipping' };
const titleOf = (trial: Trial): string => title[trial];

/** Every knife's rank in each trial of which something can be said. */
function placesOf(scene: Scene): Place[] {
  const all = orders(scene);
  return trials.flatMap((trial) =>
    all[trial].map((placed, index) => ({ ...placed, trial, rank: index + 1 })),
  );
}

const at = { x: 'trial', y: 'rank' } as const;

/** The lines of the wanted knives from trial to trial. */
const linesOf = (className: string, places: readonly Place[], wanted: (knife: string) => boolean) =>
  Plot.line(
    places.filter(({ knife }) => wanted(knife)),
    { ...at, z: 'knife', className },
  );

/** The names of the knives beside their places in one trial. */
const names = (
  places: readonly Place[],
  trial: Trial | undefined,
  textAnchor: 'start' | 'end',
  narrow: boolean,
) =>
  Plot.text(
    places.filter((place) => place.trial === trial),
    {
      ...at,
      text: ({ name }: Place) => shortName(name, narrow ? 9 : 26),
      textAnchor,
      dx: textAnchor === 'end' ? -12 : 12,
      className: 'kf-value',
    },
  );

const values = (places: readonly Place[], dy: number) =>
  Plot.text(places, {
    ...at,
    text: (place: Place) => (place.trial === 'slicing' ? times(place.value) : sideLoadLabel(place)),
    dy,
    className: 'kf-on-paper',
  });

/** How many times the baseline, as a cell of the table. */
const cell = ({ low, high }: Place): string =>
  readAlike(low, high) ? times(low) : `${times(low)} to ${times(high)}`;

/** Whether the lines of a place run on upwards from it rather than downwards: its value then stands below. */
const runsUp =
  (places: readonly Place[], present: readonly Trial[]) =>
  ({ knife, trial, rank }: Place): boolean => {
    const own = present.indexOf(trial);
    const turns = places
      .filter((place) => place.knife === knife && Math.abs(present.indexOf(place.trial) - own) === 1)
      .map((place) => Math.sign(place.rank - rank));
    return turns.reduce((sum, turn) => sum + turn, 0) < 0;
  };

/** The order of the comparison in three trials: where lines cross, the ranking turns over. */
export const turningOver: Figure = {
  id: 'turning-over',
  title: ({ baseline }) => `The order of the knives in three trials, in times of ${baseline.name}`,
  units: 'rank, with times the baseline',
  scale: 'ranks, not to scale',
  reading: () => 'slicing: if the factors multiply; side loads by their middle',
  source: 'derived',
  options(scene, { narrow }) {
    const places = placesOf(scene);
    const { subject, baseline } = scene.entry;
    const side = narrow ? 80 : 180;
    const present = trials.filter((trial) => places.some((place) => place.trial === trial));
    const fromAbove = runsUp(places, present);
    const count = scene.comparison.knives.length;
    return {
      height: count * 48 + 50,
      marginLeft: side,
      marginRight: side,
      marginTop: 34,
      marginBottom: 8,
      x: {
        type: 'point',
        domain: present,
        padding: 0,
        axis: 'top',
        label: null,
        tickSize: 0,
        tickFormat: titleOf,
      },
      y: { type: 'linear', domain: [count + 0.5, 0.5], axis: null },
      marks: [
        Plot.ruleX(present, { className: 'kf-grid' }),
        linesOf('kf-thin', places, (knife) => knife !== subject && knife !== baseline),
        linesOf('kf-limit-rolling', places, (knife) => knife === baseline),
        linesOf('kf-limit-slicing', places, (knife) => knife === subject),
        Plot.dot(places, { ...at, r: 4.5, className: 'kf-answer' }),
        values(
          places.filter((place) => !fromAbove(place)),
          -14,
        ),
        values(places.filter(fromAbove), 15),
        names(places, present[0], 'end', narrow),
        names(places, present.at(-1), 'start', narrow),
      ],
    };
  },
  table(scene) {
    const places = placesOf(scene);
    return {
      columns: ['Knife', ...trials.map((trial) => `${title[trial]}: rank, times the baseline`)],
      rows: scene.comparison.knives.map(({ id, name }) => [
        name ?? id,
        ...trials.map((trial) => {
          const place = places.find((candidate) => candidate.knife === id && candidate.trial === trial);
          return place ? `${place.rank}, ${cell(place)}` : 'no toughness to rank by';
        }),
      ]),
    };
  },
  caption(scene) {
    const { slicing, rolling, chipping } = orders(scene);
    const said = (order: readonly Placed[]) =>
      allLevel(order)
        ? 'all stand level'
        : `${order[0]?.name ?? ''} comes first and ${order.at(-1)?.name ?? ''} last`;
    return `In slicing ${said(slicing)}; in rolling ${said(rolling)}; ${chipping.length === 0 ? 'for chipping no toughness is given to rank by' : `in chipping ${said(chipping)}`}. The thick line is ${scene.subject.name}, the broken one ${scene.baseline.name}.`;
  },
};
