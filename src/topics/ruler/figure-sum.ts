import * as Plot from '@observablehq/plot';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { textWidthPx } from '../../figure-kit/text-width.ts';
import { readingName } from '../../phrases/reading-name.ts';
import type { Scene } from '../../scene/scene.ts';
import { fixed, readsAsOne } from '../../scene/show.ts';
import { differs, temptingSum } from '../../scene/terms.ts';
import { markText } from './figures-of-ratio.ts';
import { typeOf } from './head.ts';
import { rangeOf, refused, refusedCaption } from './says.ts';

const names = { added: 'Gains added', multiplied: 'If multiplied' };
const barPx = 26;

/** The sum as it is written: to two figures, or to a tenth where it comes to nothing or less. */
const sumText = (sum: number): string => (sum > 0 ? markText(sum) : fixed(sum, 1));

interface Bar {
  name: string;
  value: number;
  text: string;
  className: string;
}

function barsOf({ row }: Scene): Bar[] {
  const sum = temptingSum(row.careful);
  const { multiplied } = row.careful;
  return [
    {
      name: names.added,
      value: Math.max(0, sum),
      text: sum > 0 ? sumText(sum) : `${sumText(sum)}, less than nothing`,
      className: 'kf-sum-added',
    },
    {
      name: names.multiplied,
      value: multiplied,
      text: markText(multiplied),
      className: 'kf-sum-multiplied',
    },
  ];
}

function drawn(scene: Scene, { width, narrow }: Size) {
  const sizePx = typeOf(narrow).word;
  const fromPx = textWidthPx(names.multiplied, sizePx) + 14;
  const bars = barsOf(scene).map((bar, index) => ({ ...bar, y: 21 + index * 44 }));
  const beside = Math.max(...bars.map(({ text }) => textWidthPx(text, sizePx + 1, true)));
  const most = Math.max(1, ...bars.map(({ value }) => value)) * 1.02;
  const words = { sizePx, y: 'y', text: 'name', textAnchor: 'end', fontSize: sizePx } as const;
  const toPx = Math.max(fromPx + 90, width - beside - 12);
  const onePx = fromPx + (toPx - fromPx) / most;
  const axisPx = 90;
  const rule = { y1: 2, y2: axisPx };
  return {
    height: 112,
    margin: 0,
    x: {
      type: 'linear',
      domain: [0, most],
      range: [fromPx, toPx],
      axis: null,
    },
    y: { type: 'linear', domain: [0, 112], range: [0, 112], axis: null },
    marks: [
      ...bars.map(({ value, y, className }) =>
        Plot.rect([0], { x1: 0, x2: value, y1: y - barPx / 2, y2: y + barPx / 2, className }),
      ),
      Plot.link([0], { x1: 0, x2: 0, ...rule, className: 'kf-ruler-tick' }),
      Plot.link([1], { x1: 1, x2: 1, ...rule, className: 'kf-ruler-drop' }),
      Plot.text(bars, { ...words, x: 0, dx: -10 }),
      Plot.text(bars, {
        x: 'value',
        y: 'y',
        text: 'text',
        textAnchor: 'start',
        dx: 8,
        fontSize: sizePx + 1,
        className: 'kf-value kf-ruler-halo',
      }),
      Plot.text([1], {
        x: 1,
        y: axisPx + 12,
        text: () => '1 = no difference',
        textAnchor: onePx > width / 2 ? 'end' : 'start',
        dx: onePx > width / 2 ? 4 : -4,
        fontSize: sizePx - 1,
        className: 'kf-faint',
      }),
    ],
  } satisfies ReturnType<Figure['options']>;
}

function refusedSheet({ width, narrow }: Size): ReturnType<Figure['options']> {
  return {
    height: 40,
    margin: 0,
    x: { type: 'linear', domain: [0, width], range: [0, width], axis: null },
    y: { type: 'linear', domain: [0, 40], range: [0, 40], axis: null },
    marks: [Plot.text([refused], { x: width / 2, y: 20, fontSize: typeOf(narrow).word })],
  };
}

/** The gains added up beside what they make if they multiply. */
export const gainsAdded: Figure = {
  id: 'gains-added',
  title: ({ subject, baseline }) =>
    `The gains of ${subject.name} over ${baseline.name}, added and multiplied`,
  units: 'times as long as the baseline',
  scale: 'linear axis from 0',
  reading: () => readingName.careful,
  source: 'factor model',
  options: (scene, size) => (rangeOf(scene) ? drawn(scene, size) : refusedSheet(size)),
  table(scene) {
    const columns = ['Combined', 'Times as long'];
    if (!rangeOf(scene)) return { columns, rows: [[refused, '']] };
    const { careful } = scene.row;
    return {
      columns,
      rows: [
        [names.added, sumText(temptingSum(careful))],
        [names.multiplied, markText(careful.multiplied)],
      ],
    };
  },
  caption(scene) {
    if (!rangeOf(scene)) return refusedCaption(scene);
    const { careful } = scene.row;
    const sum = temptingSum(careful);
    const product = `if they multiply, they make ${markText(careful.multiplied)}`;
    const loses = careful.terms.some((term) => differs(term) && term.factor < 1);
    const gains = careful.terms.some((term) => differs(term) && term.factor > 1);
    const which = !loses ? 'Gains' : gains ? 'Gains and losses' : 'Losses';
    const added = `${which} added`;
    if (sum > 0 && sumText(sum) === markText(careful.multiplied))
      return readsAsOne(sum)
        ? careful.terms.some(differs)
          ? 'Gains and losses cancel, whether added or multiplied.'
          : 'There is nothing to add or to multiply.'
        : `${which} make ${sumText(sum)} times as long, whether added or multiplied.`;
    if (sum <= 0) return `${added} make ${sumText(sum)}, less than nothing; ${product} times as long.`;
    return readsAsOne(sum)
      ? `${added} make no difference; ${product}.`
      : `${added} make ${sumText(sum)} times as long; ${product}.`;
  },
};
