import * as Plot from '@observablehq/plot';
import type { Scene } from '../lineup/scene.ts';
import { times } from '../lineup/show.ts';
import type { Figure } from './figure.ts';
import { shortName } from './short-name.ts';

interface Place {
  knife: string;
  name: string;
  trial: string;
  /** 1 is best. */
  rank: number;
  value: number;
}

const columns = ['Slicing', 'Rolling', 'Chipping'] as const;

/** Every knife's rank in each trial of which something can be said. */
function placesOf({ lineUp, rankings }: Scene): Place[] {
  const nameOf = (id: string): string => lineUp.knives.find((knife) => knife.id === id)?.name ?? id;
  return [rankings.slicing, rankings.rolling, rankings.chipping ?? []].flatMap((ranked, column) =>
    ranked.map(({ knife, value }, index) => ({
      knife,
      name: nameOf(knife),
      trial: columns[column] ?? '',
      rank: index + 1,
      value,
    })),
  );
}

/** The order of the line-up in three trials: where lines cross, the ranking turns over. */
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
    const most = narrow ? 12 : 26;
    const side = narrow ? 88 : 180;
    const present = columns.filter((trial) => places.some((place) => place.trial === trial));
    const lineOf = (style: string, wanted: (knife: string) => boolean) =>
      Plot.line(
        places.filter(({ knife }) => wanted(knife)),
        { x: 'trial', y: 'rank', z: 'knife', className: style },
      );
    const label = (trial: string | undefined, anchor: 'start' | 'end') =>
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
    const count = scene.lineUp.knives.length;
    return {
      height: count * 44 + 44,
      marginLeft: side,
      marginRight: side,
      marginTop: 34,
      marginBottom: 8,
      x: { type: 'point', domain: present, padding: 0.1, axis: 'top', label: null, tickSize: 0 },
      y: { type: 'linear', domain: [count + 0.4, 0.5], axis: null },
      marks: [
        Plot.ruleX(present, { className: 'kf-grid' }),
        lineOf('kf-thin', (knife) => knife !== subject && knife !== baseline),
        lineOf('kf-limit-rolling', (knife) => knife === baseline),
        lineOf('kf-limit-slicing', (knife) => knife === subject),
        Plot.dot(places, { x: 'trial', y: 'rank', r: 4.5, className: 'kf-answer' }),
        Plot.text(places, {
          x: 'trial',
          y: 'rank',
          text: ({ value }: Place) => times(value),
          dy: -14,
          className: 'kf-on-paper',
        }),
        label(present[0], 'end'),
        label(present.at(-1), 'start'),
      ],
    };
  },
  table(scene) {
    const places = placesOf(scene);
    return {
      columns: ['Knife', ...columns.map((trial) => `${trial}: rank, times the baseline`)],
      rows: scene.lineUp.knives.map(({ id, name }) => [
        name ?? id,
        ...columns.map((trial) => {
          const place = places.find((candidate) => candidate.knife === id && candidate.trial === trial);
          return place ? `${place.rank}, ${times(place.value)}` : 'no toughness to rank by';
        }),
      ]),
    };
  },
  caption(scene) {
    const places = placesOf(scene);
    const at = (trial: string) => {
      const found = places.filter((place) => place.trial === trial);
      return { first: found[0]?.name, last: found.at(-1)?.name };
    };
    const [slicing, rolling, chipping] = columns.map(at);
    return `In slicing ${slicing?.first} comes first and ${slicing?.last} last, in rolling ${rolling?.first} and ${rolling?.last}${chipping?.first === undefined ? '; for chipping no toughness is given to rank by' : `, in chipping ${chipping.first} and ${chipping.last}`}. The thick line is ${scene.subject.name}, the broken one ${scene.baseline.name}.`;
  },
};
