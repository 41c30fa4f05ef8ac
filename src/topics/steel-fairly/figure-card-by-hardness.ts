import * as Plot from '@observablehq/plot';
import { measures, regression } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, fixed, plain } from '../../scene/show.ts';
import { bendMm, chainCardOf, steelsOf } from '../../scene/steel.ts';
import type { Steel } from '../../scene/steel.ts';
import { lineUse } from './line-use.ts';
import { sameCarbide, steelWords } from './words.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';

const { low: first, high: last } = regression.hrc;
const hardest = measures.hrc.high;
/** The softest steel drawn, unless a knife is softer, HRC. */
const drawnFrom = 40;

interface Card {
  hrc: number;
  mm: number;
}

/** A steel's carbide with its card over all hardnesses drawn, and the knife's own place on it. */
interface Curve {
  steel: Steel;
  className: string;
  cards: Card[];
  own: Card;
}

const cardAt = (scene: Scene, hrc: number, steel: Steel): Card => ({
  hrc,
  mm: chainCardOf(scene, hrc, steel),
});

/** Both curves, the baseline's first; from the softest steel to the hardest the model takes. */
function curvesOf(scene: Scene): Curve[] {
  const { subject, baseline } = steelsOf(scene);
  const from = Math.floor(Math.min(drawnFrom, subject.hrc, baseline.hrc));
  const hardnesses = Array.from({ length: 2 * (hardest - from) + 1 }, (_, step) => from + step / 2);
  return [
    { steel: baseline, className: 'kf-level-card' },
    { steel: subject, className: 'kf-level-steel' },
  ].map(({ steel, className }) => ({
    steel,
    className,
    cards: hardnesses.map((hrc) => cardAt(scene, hrc, steel)),
    own: cardAt(scene, steel.hrc, steel),
  }));
}

/** The places of the two knives, named so that their names do not lie on each other. */
function placesOf(curves: readonly Curve[], { narrow }: Size): Plot.RenderableMark[] {
  const places = curves.map(({ steel, own }) => ({ ...own, name: shortName(steel.name, narrow ? 10 : 20) }));
  const [lower, upper] = [...places].sort((a, b) => a.mm - b.mm);
  const named = { x: 'hrc', y: 'mm', text: 'name', textAnchor: 'end' } as const;
  return [
    Plot.dot(places, { x: 'hrc', y: 'mm', r: 5, className: 'kf-answer' }),
    ...(upper ? [valueText([upper], { ...named, dx: -8, dy: -10 })] : []),
    ...(lower ? [valueText([lower], { ...named, textAnchor: 'start', dx: 8, dy: 14 })] : []),
  ];
}

/** Card by hardness as the careful estimate takes it: the published line, bent below and continued on either side. */
export const cardByHardness: Figure = {
  id: 'card-by-hardness',
  title: ({ subject, baseline }) =>
    `Card by hardness, with the carbide of ${baseline.name} and with that of ${subject.name}`,
  units: 'mm of card in 60 strokes; HRC',
  scale: 'linear axes',
  reading: () => 'careful estimate, at 30° included',
  source: 'Thomas, 2018; bend and continuation assumed',
  options(scene, size) {
    const { narrow } = size;
    const curves = curvesOf(scene);
    const from = curves[0]?.cards[0]?.hrc ?? drawnFrom;
    const most = Math.max(bendMm, ...curves.flatMap(({ cards }) => cards.map(({ mm }) => mm)));
    return {
      height: narrow ? 320 : 340,
      marginLeft: 44,
      marginRight: 14,
      marginTop: 30,
      marginBottom: 42,
      x: { domain: [from, hardest], ...centredLabel('hardness, HRC'), ticks: narrow ? 5 : 9 },
      y: { domain: [0, most * 1.08], label: 'mm of card', labelArrow: 'none' as const, ticks: 6 },
      marks: [
        gridY(6),
        baselineY(0),
        Plot.ruleX([first, last], { className: 'kf-centre' }),
        Plot.text([first, last], {
          x: (hrc: number) => hrc,
          text: (hrc: number) => (hrc === first ? 'the published line' : 'ends'),
          textAnchor: 'start',
          frameAnchor: 'top',
          dx: 4,
          dy: -12,
          className: 'kf-faint',
        }),
        ...curves.map(({ cards, className }) => Plot.line(cards, { x: 'hrc', y: 'mm', className })),
        ...placesOf(curves, size),
      ],
    };
  },
  /** Either knife by its place, along the axis. */
  drag(scene, _size, { x, y }) {
    const away = ({ own }: Curve): number => Math.abs(own.hrc - x) / 28 + Math.abs(own.mm - y) / 400;
    const [baseline, subject] = curvesOf(scene);
    if (!baseline || !subject) return undefined;
    const control = away(subject) <= away(baseline) ? 'subject.hrc' : 'baseline.hrc';
    return { control, value: (at) => at.x };
  },
  table(scene) {
    const { subject, baseline } = steelsOf(scene);
    const listed = [drawnFrom, 45, 49.9, first, 55, 60, last, 66.1, hardest];
    const row = (name: string, hrc: number) => [
      name,
      ...[baseline, subject].map((steel) => fixed(chainCardOf(scene, hrc, steel), 1)),
    ];
    return {
      columns: ['Hardness', `Carbide of ${baseline.name}, mm`, `Carbide of ${subject.name}, mm`],
      rows: [
        ...listed.map((hrc) => row(`${brief(hrc)} HRC`, hrc)),
        row(`${plain(baseline.hrc)} HRC, ${baseline.name}`, baseline.hrc),
        row(`${plain(subject.hrc)} HRC, ${subject.name}`, subject.hrc),
      ],
    };
  },
  caption: (scene) =>
    [
      ...(steelWords['steel-no-jump']?.(scene) ?? []),
      sameCarbide(steelsOf(scene).subject, steelsOf(scene).baseline) ? 'Both have one curve.' : '',
      ...lineUse(scene),
    ]
      .filter(Boolean)
      .join(' '),
};
