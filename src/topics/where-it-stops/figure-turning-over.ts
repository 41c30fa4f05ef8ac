import * as Plot from '@observablehq/plot';
import { trials } from '../../scene/limits.ts';
import type { Trial } from '../../scene/limits.ts';
import type { Scene } from '../../scene/scene.ts';
import { allLevel, orders } from './orders.ts';
import type { Placed } from './orders.ts';
import { times } from '../../scene/show.ts';
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

/** The order of the comparison in three trials: where lines cross, the ranking turns over. */
export const turningOver: Figure = {
  id: 'turning-over',
  title: ({ baseline }) => `The order of the knives in three trials, in times of ${baseline.name}`,
  units: 'rank, with times the baseline',
  scale: 'ranks, not to scale',
  reading: () => 'slicing: close reading',
  source: 'derived',
  options(scene, { narrow }) {
    const places = placesOf(scene);
    const { subject, baseline } = scene.entry;
    const most = narrow ? 9 : 26;
    const side = narrow ? 80 : 180;
    const present = trials.filter((trial) => places.some((place) => place.trial === trial));
    const lineOf = (style: string, wanted: (knife: string) => boolean) =>
      Plot.line(
        places.filter(({ knife }) => wanted(knife)),
        { x: 'trial', y: 'rank', z: 'knife', className: style },
      );
    const label = (trial: Trial | undefined, anchor: 'start' | 'end') =>
      Plot.text(
        places.filter((place) => place.trial === trial),
        {
          x: 'trial',
          y: 'rank',
          text: ({ name }: Place) => shortName(name, most),
          textAnchor: anchor,
          dx: anchor === 'end' ? -12 : 12,
          className: 'kf-value',
        },
      );
    /** Whether the lines of a place run on upwards from it rather than downwards: its value then stands below. */
    const fromAbove = ({ knife, trial, rank }: Place): boolean => {
      const own = present.indexOf(trial);
      const turns = places
        .filter((place) => place.knife === knife && Math.abs(present.indexOf(place.trial) - own) === 1)
        .map((place) => Math.sign(place.rank - rank));
      return turns.reduce((sum, turn) => sum + turn, 0) < 0;
    };
    const values = (dy: number, wanted: (place: Place) => boolean) =>
      Plot.text(places.filter(wanted), {
        x: 'trial',
        y: 'rank',
        text: ({ value }: Place) => times(value),
        dy,
        className: 'kf-on-paper',
      });
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
        lineOf('kf-thin', (knife) => knife !== subject && knife !== baseline),
        lineOf('kf-limit-rolling', (knife) => knife === baseline),
        lineOf('kf-limit-slicing', (knife) => knife === subject),
        Plot.dot(places, { x: 'trial', y: 'rank', r: 4.5, className: 'kf-answer' }),
        values(-14, (place) => !fromAbove(place)),
        values(15, fromAbove),
        label(present[0], 'end'),
        label(present.at(-1), 'start'),
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
          return place ? `${place.rank}, ${times(place.value)}` : 'no toughness to rank by';
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
