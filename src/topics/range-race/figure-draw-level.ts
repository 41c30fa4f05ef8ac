import * as Plot from '@observablehq/plot';
import { nominal, ratioCurve } from '../../model/index.ts';
import { drawLevel } from '../../scene/draw-level.ts';
import type { Level } from '../../scene/draw-level.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, times } from '../../scene/show.ts';
import { drawLevelWords } from './words.ts';
import { floorBand } from '../base/floor-band.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { valueText } from '../../figure-kit/value-text.ts';

interface Point {
  angleDeg: number;
  ratio: number;
  against: 'whole' | 'steel';
}

const sides = ['whole', 'steel'] as const;

const curve = (scene: Scene, against: 'whole' | 'steel', angles: readonly number[]): Point[] => {
  const { baseline, subject } = scene.entry;
  const ratios = ratioCurve(drawLevel(scene)[against].comparison, {
    knife: baseline,
    against: subject,
    attribute: 'angleDeg',
    values: angles,
  });
  return angles.flatMap((angleDeg, index) => {
    const ratio = ratios[index] ?? null;
    return ratio === null ? [] : [{ angleDeg, ratio, against }];
  });
};

const steps = (low: number, high: number, by: number): number[] =>
  Array.from({ length: Math.floor((high - low) / by) + 1 }, (_, index) => low + index * by);

const short = (name: string, narrow: boolean): string => shortName(name, narrow ? 14 : 28);

const angleOf = ({ answer }: Level): string =>
  answer.value === null ? 'not in reach' : `${plain(answer.value)}°${answer.note ? `, ${answer.note}` : ''}`;

/** The curves, where they meet 1, where they are now, and the ends of the axes that hold them. */
function drawnOf(scene: Scene) {
  const levels = drawLevel(scene);
  const present = nominal(scene.baselineKnife.angleDeg);
  const meets = sides.flatMap((side): Point[] => {
    const { value } = levels[side].answer;
    return value === null ? [] : [{ angleDeg: value, ratio: 1, against: side }];
  });
  const right = Math.min(45, Math.max(30, present, ...meets.map(({ angleDeg }) => angleDeg)) + 0.5);
  const lines = sides.map((side) => curve(scene, side, steps(4, right, 0.5)));
  const ratios = [1, ...lines.flat().map(({ ratio }) => ratio)];
  return {
    present,
    meets,
    lines,
    nowPoints: sides.map((side) => ({ angleDeg: present, ratio: levels[side].now })),
    right,
    low: Math.min(...ratios) / 1.9,
    high: Math.max(...ratios) * 1.3,
  };
}

type Drawn = Pick<ReturnType<typeof drawnOf>, 'present' | 'meets' | 'lines' | 'nowPoints'>;

const curveMarks = ({ present, meets, lines, nowPoints }: Drawn, low: number): Plot.RenderableMark[] => {
  const place = { x: 'angleDeg', y: 'ratio' } as const;
  return [
    Plot.ruleX([present], { className: 'kf-centre' }),
    Plot.line(lines[0] ?? [], { ...place, className: 'kf-level-whole' }),
    Plot.line(lines[1] ?? [], { ...place, className: 'kf-level-steel' }),
    Plot.ruleX(meets, { x: 'angleDeg', y1: low, y2: 1, className: 'kf-dimension' }),
    Plot.dot(nowPoints, { ...place, r: 4, className: 'kf-stem kf-open' }),
    Plot.dot(meets, { ...place, r: 6, symbol: 'diamond', className: 'kf-answer' }),
  ];
};

/** The last point of each curve, with what the curve is called. */
const endsOf = (lines: Drawn['lines'], subject: string): (Point & { text: string })[] =>
  lines.flatMap((line, index) => {
    const end = line.at(-1);
    return end ? [{ ...end, text: index === 0 ? `against ${subject}` : 'against its steel alone' }] : [];
  });

/** The angles in words: where the curves meet 1, the floor, and the present angle. */
const angleMarks = ({ present, meets }: Drawn, low: number, high: number): Plot.RenderableMark[] => [
  valueText(meets, {
    x: 'angleDeg',
    y: 'ratio',
    text: ({ angleDeg }: Point) => `${plain(angleDeg)}°`,
    dx: 8,
    dy: -11,
  }),
  Plot.text([{ x: 4, y: low }], {
    x: 'x',
    y: 'y',
    text: () => 'floor',
    textAnchor: 'start',
    dx: 3,
    dy: -9,
    className: 'kf-faint',
  }),
  Plot.text([{ x: present, y: high }], {
    x: 'x',
    y: 'y',
    text: () => `now ${plain(present)}°`,
    dy: -9,
    className: 'kf-faint',
  }),
];

/** The baseline against the subject as the baseline's angle goes down: where a curve meets 1 they are level. */
export const drawLevelFigure: Figure = {
  id: 'draw-level',
  title: ({ subject, baseline }) => `${baseline.name} against ${subject.name}, by ${baseline.name}’s angle`,
  units: 'degrees per side; times as long',
  scale: 'logarithmic upright axis',
  reading: () => 'careful estimate',
  source: 'factor model; floor common practice',
  options(scene, { narrow }) {
    const { low, high, right, ...drawn } = drawnOf(scene);
    return {
      height: narrow ? 320 : 360,
      marginLeft: 44,
      marginRight: 12,
      marginTop: 26,
      marginBottom: 42,
      x: {
        domain: [4, right],
        ...centredLabel(`edge angle of ${short(scene.baseline.name, narrow)}, degrees per side`),
        ticks: narrow ? 5 : 9,
      },
      y: ratioAxis(low, high, narrow, 'times as long'),
      marks: [
        floorBand(low, high),
        gridY(tickValues(low, high, narrow)),
        baselineY(1),
        ...curveMarks(drawn, low),
        valueText(endsOf(drawn.lines, short(scene.subject.name, narrow)), {
          x: 'angleDeg',
          y: 'ratio',
          text: 'text',
          textAnchor: 'end',
          dy: 13,
        }),
        ...angleMarks(drawn, low, high),
      ],
    };
  },
  drag: () => ({ control: 'baseline.angle', value: ({ x }) => x }),
  table(scene) {
    const { subject, baselineKnife } = scene;
    const angles = [5, 6, 8, 10, 12, 15, 18, 20, 25, 30];
    const cell = (side: 'whole' | 'steel', angleDeg: number) => {
      const [point] = curve(scene, side, [angleDeg]);
      return point ? times(point.ratio) : 'refused';
    };
    const { whole, steel } = drawLevel(scene);
    return {
      columns: ['Angle per side', `Against ${subject.name}`, 'Against its steel alone'],
      rows: [
        ...angles.map((angle) => [`${brief(angle)}°`, cell('whole', angle), cell('steel', angle)]),
        [`now, ${plain(nominal(baselineKnife.angleDeg))}°`, times(whole.now), times(steel.now)],
        ['level at', angleOf(whole), angleOf(steel)],
      ],
    };
  },
  caption: (scene) => drawLevelWords(scene).slice(0, 2).join(' '),
};
