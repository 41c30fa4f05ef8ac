import * as Plot from '@observablehq/plot';
import { fullName, rulerOf } from './values.ts';
import type { Effect, Ruler } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, short, signedPercent, times } from '../../scene/show.ts';
import { evenTicks } from './even-ticks.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { tickValues } from '../../figure-kit/ratio-axis.ts';

/** Heights of the parts of the drawing, px. */
const lanePx = 32;
const ticksPx = 28;
const betweenPx = 46;
const namePx = 20;

interface Laid extends Effect {
  lane: number;
}

/** Each effect in the lane of its run: a new lane begins where the direction turns, so that none covers another. */
function laidOf({ effects }: Ruler): Laid[] {
  let lane = 0;
  return effects.map((effect, index) => {
    const before = effects[index - 1];
    if (before && before.factor > 1 !== effect.factor > 1) lane += 1;
    return { ...effect, lane };
  });
}

interface Scale {
  /** Where a value lies, 0 to 1. */
  at(value: number): number;
  ticks: number[];
}

/** The same stretch of numbers by ratio and in proportion. */
function scalesOf(
  { effects, product }: Ruler,
  innerWidth: number,
  narrow: boolean,
): { ratio: Scale; linear: Scale } {
  const reach = [1, product, ...effects.map(({ to }) => to)];
  const low = Math.min(...reach);
  const high = Math.max(...reach, low * 1.05);
  const known = tickValues(low, high, narrow);
  const ends = [low, high];
  return {
    ratio: {
      at: (value) => Math.log(value / low) / Math.log(high / low),
      ticks: known.length > 1 ? known : ends,
    },
    linear: {
      at: (value) => (value - low) / (high - low),
      ticks: evenTicks(low, high, innerWidth),
    },
  };
}

const letterWidth = 7.6;

/** Where the two rulers and the foot of the drawing are, px from its top. */
function rowsOf(laid: readonly Laid[]) {
  const lanes = Math.max(1, ...laid.map(({ lane }) => lane + 1));
  const upper = namePx + lanes * lanePx;
  const lower = upper + 2 * ticksPx + betweenPx;
  return { upper, lower, bottom: lower + lanes * lanePx + namePx };
}

type Scales = ReturnType<typeof scalesOf>;
type Rows = ReturnType<typeof rowsOf>;

interface Bar {
  x1: number;
  x2: number;
  y1: number;
  y2: number;
  text: string;
}

/** Each effect above the upper ruler and below the lower one, with as much of its name as it has room for. */
const barsOf = (
  laid: readonly Laid[],
  { ratio, linear }: Scales,
  { upper, lower }: Rows,
  innerWidth: number,
): Bar[] =>
  laid.flatMap((effect) =>
    [
      { scale: ratio, top: upper - (effect.lane + 1) * lanePx },
      { scale: linear, top: lower + effect.lane * lanePx },
    ].map(({ scale, top }) => {
      const [x1, x2] = [scale.at(effect.from), scale.at(effect.to)].sort((a, b) => a - b) as [number, number];
      const room = (x2 - x1) * innerWidth;
      const texts = [`${effect.letter}: ${effect.name}`, effect.letter, ''];
      const text = texts.find((candidate) => candidate.length * letterWidth + 8 <= room) ?? '';
      return { x1, x2, y1: top + 3, y2: top + lanePx - 3, text };
    }),
  );

/** The ticks of both rulers with their numbers, between the rulers. */
function tickMarks({ ratio, linear }: Scales, { upper, lower }: Rows): Plot.RenderableMark[] {
  const ticks = [
    ...ratio.ticks.map((value) => ({ x: ratio.at(value), value, y: upper, way: 1 })),
    ...linear.ticks.map((value) => ({ x: linear.at(value), value, y: lower, way: -1 })),
  ];
  type Tick = (typeof ticks)[number];
  return [
    Plot.link(ticks, {
      x1: 'x',
      x2: 'x',
      y1: 'y',
      y2: ({ y, way }: Tick) => y + 7 * way,
      className: 'kf-stem',
    }),
    Plot.text(ticks, {
      x: 'x',
      y: ({ y, way }: Tick) => y + 17 * way,
      text: ({ value }: Tick) => short(value),
    }),
  ];
}

/** Factors end to end on a ruler of ratios, and the same stretches on a linear ruler below it. */
export const ratioRuler: Figure = {
  id: 'ratio-ruler',
  title: () => 'The effects end to end: a ruler of ratios above, a linear ruler below',
  units: 'times the start',
  scale: 'logarithmic above, linear below',
  reading: (scene) => (scene.entry.faceValues ? 'face values' : 'careful estimate'),
  source: 'derived',
  options(scene, { width, narrow }) {
    const ruler = rulerOf(scene);
    const laid = laidOf(ruler);
    const [marginLeft, marginRight] = [18, 18];
    const innerWidth = width - marginLeft - marginRight;
    const scales = scalesOf(ruler, innerWidth, narrow);
    const rows = rowsOf(laid);
    const { upper, lower, bottom } = rows;
    const bars = barsOf(laid, scales, rows, innerWidth);
    const boundaries = [1, ...laid.map(({ to }) => to)].map((value) => ({
      x1: scales.ratio.at(value),
      x2: scales.linear.at(value),
    }));
    return {
      width,
      height: bottom + 8,
      marginLeft,
      marginRight,
      marginTop: 4,
      marginBottom: 4,
      x: { domain: [0, 1], axis: null },
      y: { domain: [bottom, 0], axis: null },
      marks: [
        Plot.link(boundaries, {
          x1: 'x1',
          x2: 'x2',
          y1: upper + ticksPx,
          y2: lower - ticksPx,
          className: 'kf-centre',
        }),
        Plot.rect(bars, { x1: 'x1', x2: 'x2', y1: 'y1', y2: 'y2', className: 'kf-product' }),
        Plot.ruleY([upper, lower], { className: 'kf-stem' }),
        ...tickMarks(scales, rows),
        Plot.text(bars, {
          x: ({ x1, x2 }: Bar) => (x1 + x2) / 2,
          y: ({ y1, y2 }: Bar) => (y1 + y2) / 2,
          text: 'text',
          className: 'kf-value kf-on-paper',
        }),
        Plot.text(
          [
            { y: 8, text: 'Ruler of ratios: equal ratios are equally long' },
            { y: bottom - 6, text: 'Linear ruler: equal amounts are equally long' },
          ],
          { x: 0, y: 'y', text: 'text', textAnchor: 'start', className: 'kf-faint' },
        ),
      ],
    };
  },
  table(scene) {
    const { effects, product, steps, cancel } = rulerOf(scene);
    return {
      columns: [
        'Effect',
        'Factor',
        'From',
        'To',
        'Steps of a tenth',
        cancel ? 'Part of all lengths' : 'Share of the ruler',
      ],
      rows: [
        ...effects.map((effect) => [
          `${effect.letter}: ${effect.name}`,
          times(effect.factor),
          plain(effect.from),
          plain(effect.to),
          plain(effect.steps),
          cancel ? signedPercent(effect.share) : percent(effect.share),
        ]),
        [
          'Together',
          times(product),
          plain(1),
          plain(product),
          plain(steps),
          cancel ? 'they cancel' : percent(effects.length > 0 ? 1 : 0),
        ],
      ],
    };
  },
  caption(scene: Scene) {
    const { effects, product, cancel } = rulerOf(scene);
    if (effects.length === 0) return 'No effect: nothing lies on the rulers.';
    const said = effects
      .map(
        (effect) =>
          `${effect.letter} (${fullName(effect)}) ${cancel ? signedPercent(effect.share) : percent(effect.share)}`,
      )
      .join(', ');
    return cancel
      ? `Forward and back, the effects end at ${times(product)}, near where they began. Parts of all the lengths laid out: ${said}.`
      : `From 1 to ${plain(product)}. Shares of the upper ruler’s length: ${said}. Change the order, and each keeps its length above; below it does not.`;
  },
};
