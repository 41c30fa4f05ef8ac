import * as Plot from '@observablehq/plot';
import type { Dispute } from '../../model/index.ts';
import { ratioHeld, swings } from './numbers.ts';
import { argueWords } from './words.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { ratioAxisX, tickValues } from '../../figure-kit/ratio-axis.ts';
import { valueText } from '../../figure-kit/value-text.ts';

const disputeName: Partial<Record<Dispute, string>> = {
  apex: 'apex',
  push: 'push',
  structure: 'total',
};
const optionName: Record<string, string> = {
  between: 'between',
  tooth: 'tooth',
  wear: 'wear',
  spread: 'parted',
  bed: 'elastic bed',
  buried: 'buried',
  multiplied: 'multiplied',
  added: 'added',
  toLimit: 'to a limit',
};

interface Mark {
  dispute: string;
  value: string;
  ratio: number;
  held: boolean;
}

const marksOf = (scene: Scene): Mark[] =>
  swings(scene).flatMap(({ dispute, held, options }) =>
    options.map(({ value, ratio }) => ({
      dispute: disputeName[dispute] ?? dispute,
      value: optionName[value] ?? value,
      ratio,
      held: value === held,
    })),
  );

/** What each disputed form makes of the ratio, the rest of one's position held. */
export const positionsFigure: Figure = {
  id: 'positions',
  title: ({ subject, baseline }) => `What each form makes of ${subject.name} against ${baseline.name}`,
  units: 'times as long',
  scale: 'logarithmic axis',
  reading: () => 'careful estimate, middle settings, in the forms held',
  source: 'factor model; forms disputed',
  options(scene, { narrow }) {
    const marks = marksOf(scene);
    const ratios = [1, ...marks.map(({ ratio }) => ratio)];
    const low = Math.min(...ratios) / 1.3;
    const high = Math.max(...ratios) * (narrow ? 1.9 : 1.4);
    // Every option has a line of its own, so that no name lies on another.
    const placed = marks.map((mark) => ({ ...mark, line: `${mark.dispute}, ${mark.value}` }));
    return {
      height: placed.length * 30 + 62,
      marginLeft: narrow ? 118 : 140,
      marginRight: narrow ? 30 : 40,
      marginTop: 10,
      marginBottom: 40,
      x: ratioAxisX(low, high, narrow, 'times as long'),
      y: { domain: placed.map(({ line }) => line), label: null, tickSize: 0 },
      marks: [
        gridX(tickValues(low, high, narrow)),
        baselineX(1),
        Plot.ruleX([ratioHeld(scene)], { className: 'kf-dimension' }),
        Plot.dot(placed, {
          x: 'ratio',
          y: 'line',
          r: 5,
          className: 'kf-chance',
          stroke: 'currentColor',
          fill: ({ held }: Mark) => (held ? 'currentColor' : 'var(--sheet)'),
        }),
        valueText(placed, {
          x: 'ratio',
          y: 'line',
          text: ({ ratio }: Mark) => times(ratio),
          dx: 9,
        }),
      ],
    };
  },
  table: (scene) => ({
    columns: ['Disputed', 'Held as', 'Times as long', 'Yours'],
    rows: marksOf(scene).map(({ dispute, value, ratio, held }) => [
      dispute,
      value,
      times(ratio),
      held ? 'yes' : '',
    ]),
  }),
  caption: (scene) => argueWords['argue-swings']?.(scene).join(' ') ?? '',
};
