import * as Plot from '@observablehq/plot';
import { shareText } from './numbers.ts';
import { fullName, largest, rulerOf } from './values.ts';
import type { Effect, Ruler } from './values.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineX, gridX } from '../../figure-kit/grid.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { whisker } from '../../figure-kit/whisker.ts';
import { valueText } from '../../figure-kit/value-text.ts';

const line = ({ letter, name }: Effect): string => `${letter}: ${name}`;
const nothing = 'no effect';

const endsOf = ({ effects }: Ruler): [number, number] => {
  const all = effects.flatMap(({ share, gain, least, most }) => [share, gain ?? 0, least ?? 0, most ?? 0]);
  return [Math.min(0, ...all) * 1.05, Math.max(0.5, ...all) * 1.05];
};

const x = (of: (effect: Effect) => number | null) => (effect: Effect) => (of(effect) ?? 0) * 100;

/** The part each effect added in this order, what it could be in any order, and its share on the ruler. */
export const shareByOrder: Figure = {
  id: 'share-by-order',
  title: () => 'What part is due to each effect, by what it added and on the ruler',
  units: 'per cent of the whole',
  scale: 'linear axis',
  reading: (scene) => (scene.entry.faceValues ? 'face values' : 'careful estimate'),
  source: 'derived',
  options(scene, { narrow }) {
    const ruler = rulerOf(scene);
    const { effects } = ruler;
    const moved = effects.filter(({ gain }) => gain !== null);
    const [low, high] = endsOf(ruler);
    return {
      height: Math.max(1, effects.length) * 46 + 50,
      marginLeft: narrow ? 92 : 104,
      marginRight: 48,
      marginTop: 6,
      marginBottom: 42,
      x: {
        domain: [low * 100, high * 100],
        ...centredLabel('per cent of the whole'),
        ticks: narrow ? 4 : 8,
      },
      y: { domain: effects.length > 0 ? effects.map(line) : [nothing], label: null, tickSize: 0 },
      marks: [
        gridX(narrow ? 4 : 8),
        Plot.barX(moved, {
          y: line,
          x: x(({ gain }) => gain),
          insetTop: 5,
          insetBottom: 16,
          className: 'kf-product',
        }),
        baselineX(0),
        // From the least to the most that any order gives it, under its bar.
        ...whisker(moved, {
          y: line,
          low: x(({ least }) => least),
          high: x(({ most }) => most),
          dy: 14,
          insetTop: 31,
          insetBottom: 3,
        }),
        Plot.dot(effects, {
          y: line,
          x: x(({ share }) => share),
          dy: 14,
          r: 5,
          symbol: 'diamond',
          className: 'kf-answer',
        }),
        valueText(moved, {
          y: line,
          x: (effect: Effect) => Math.max(0, (effect.gain ?? 0) * 100),
          text: ({ gain }: Effect) => percent(gain ?? 0),
          dx: 7,
          dy: -6,
        }),
      ],
    };
  },
  /** The largest effect by its row, to another place in the order. */
  drag(scene, _size, { y: row }) {
    const ruler = rulerOf(scene);
    const big = largest(ruler);
    return big && ruler.effects[row] === big ? { control: 'order', value: ({ y }) => y + 1 } : undefined;
  },
  table(scene) {
    const { effects, product, cancel } = rulerOf(scene);
    return {
      columns: ['Effect', 'Factor', 'Added in this order', 'Least in any', 'Most in any', 'On the ruler'],
      rows: [
        ...effects.map((effect) => [
          line(effect),
          times(effect.factor),
          shareText(effect.gain),
          shareText(effect.least),
          shareText(effect.most),
          cancel ? 'they cancel' : percent(effect.share),
        ]),
        ['Together', times(product), '', '', '', ''],
      ],
    };
  },
  caption: (scene: Scene) => {
    const ruler = rulerOf(scene);
    const big = largest(ruler);
    if (!big) return 'No effect: nothing to share out.';
    if (big.gain === null)
      return `The effects nearly cancel: together they make ${times(ruler.product)}, and there is no whole to have a share of. The diamonds are parts of all the lengths laid out.`;
    return `In this order ${fullName(big)} comes to ${shareText(big.gain)} of all that was added; the line under its bar is what other orders would give it, ${shareText(big.least)} to ${shareText(big.most)}. The diamond, its share on the ruler, is ${shareText(big.share)} in every order.`;
  },
};
