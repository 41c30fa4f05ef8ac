import * as Plot from '@observablehq/plot';
import { nominal, regression } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, times } from '../../scene/show.ts';
import { takenAtDeg, worthAt, worthsOf } from '../../scene/steel.ts';
import type { Worth } from '../../scene/steel.ts';
import { byAngle } from './words.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { valueText } from '../../figure-kit/value-text.ts';

const { low, high } = regression.includedAngleDeg;

/** The included angles that are marked: where the careful estimate takes the card, and those of the two knives. */
function anglesShown({ subjectKnife, baselineKnife, subject, baseline }: Scene) {
  return [
    { who: 'careful estimate', includedAngleDeg: takenAtDeg },
    { who: subject.name, includedAngleDeg: 2 * nominal(subjectKnife.angleDeg) },
    { who: baseline.name, includedAngleDeg: 2 * nominal(baselineKnife.angleDeg) },
  ];
}

/** The lives that fit a sheet made for the card: beyond it the line of lives leaves the frame. */
const fitting = (worths: readonly Worth[], top: number, of: 'life' | 'taken'): Worth[] =>
  worths.filter((worth) => worth[of] <= top);

/** The end of the upright axis: it holds the line of cards, and of the line of lives as much as leaves that readable. */
function topOf(worths: readonly Worth[], taken: number): number {
  const card = Math.max(1, taken / 1.35, ...worths.map((worth) => worth.card));
  return Math.max(1.3, 1.5 * card, Math.min(3 * card, ...worths.slice(-1).map(({ life }) => life * 1.08)));
}

/** The angles beyond which the published line is not used. */
function beyondLine(worths: readonly Worth[], top: number): Plot.RenderableMark[] {
  const end = worths.at(-1);
  return end !== undefined && end.includedAngleDeg < high
    ? [Plot.rect([end], { x1: 'includedAngleDeg', x2: high, y1: 0, y2: top, className: 'kf-floor' })]
    : [];
}

const onCard = { x: 'includedAngleDeg', y: 'card' } as const;
const onTaken = { x: 'includedAngleDeg', y: 'taken' } as const;

/** The three curves, the worth the careful estimate takes, and the curves' names at their ends. */
function curveMarks(
  worths: readonly Worth[],
  taken: readonly Pick<Worth, 'includedAngleDeg' | 'taken'>[],
  top: number,
): Plot.RenderableMark[] {
  const lives = fitting(worths, top, 'life');
  const asTaken = fitting(worths, top, 'taken');
  const ends = [
    ...worths.slice(-1).map((last) => ({ ...last, y: last.card, text: 'card' })),
    ...asTaken.slice(-1).map((last) => ({ ...last, y: last.taken, text: 'life' })),
    ...lives.slice(-1).map((last) => ({ ...last, y: last.life, text: 'law' })),
  ];
  return [
    Plot.line(lives, { x: 'includedAngleDeg', y: 'life', className: 'kf-level-whole' }),
    Plot.line(worths, { ...onCard, className: 'kf-level-card' }),
    Plot.line(asTaken, { ...onTaken, className: 'kf-level-steel' }),
    Plot.dot(taken, { ...onTaken, r: 5, className: 'kf-answer' }),
    valueText(taken, {
      ...onTaken,
      text: ({ taken: life }: Pick<Worth, 'taken'>) => times(life),
      dx: 6,
      dy: 16,
    }),
    valueText(ends, { x: 'includedAngleDeg', y: 'y', text: 'text', dx: 5 }),
  ];
}

const takenName = Plot.text([takenAtDeg], {
  x: (angle: number) => angle,
  text: () => 'careful estimate',
  frameAnchor: 'top',
  dy: -14,
  className: 'kf-faint',
});

/** Whose angles are marked, each name written away from the nearer edge of the sheet. */
const angleNames = (own: ReturnType<typeof anglesShown>, narrow: boolean): Plot.RenderableMark[] =>
  (['start', 'end'] as const).map((textAnchor) =>
    Plot.text(
      own.filter(({ includedAngleDeg: at }) => at < (low + high) / 2 === (textAnchor === 'start')),
      {
        x: 'includedAngleDeg',
        text: ({ who }: { who: string }) => shortName(who, narrow ? 12 : 24),
        frameAnchor: 'top',
        dy: -28,
        textAnchor,
        className: 'kf-faint',
      },
    ),
  );

const notUsed = Plot.text(['the published line is not used for these two'], {
  frameAnchor: 'middle',
  lineWidth: 18,
  className: 'kf-faint',
});

/** What the subject's steel is worth against the baseline's on edges of one angle, as that angle grows. */
export const worthByAngle: Figure = {
  id: 'worth-by-angle',
  title: ({ subject, baseline }) =>
    `The steel of ${subject.name} against that of ${baseline.name}, both on an edge of one angle`,
  units: 'degrees included; times as much',
  scale: 'linear upright axis from 0',
  reading: () => 'the published line itself; life by an assumed power',
  source: 'Thomas, 2018; life from card assumed',
  options(scene, { narrow }) {
    const worths = worthsOf(scene);
    const taken = { includedAngleDeg: takenAtDeg, taken: scene.row.careful.families.steel };
    const top = topOf(worths, taken.taken);
    const own = anglesShown(scene).filter(
      ({ includedAngleDeg: at }) => at > low && at < high && at !== takenAtDeg,
    );
    return {
      height: narrow ? 320 : 340,
      marginLeft: 34,
      marginRight: 44,
      marginTop: 40,
      marginBottom: 42,
      x: {
        domain: [low, high],
        ...centredLabel('included angle of both edges, degrees'),
        ticks: narrow ? 4 : 10,
      },
      y: { domain: [0, top], label: null, ticks: 6 },
      marks: [
        gridY(6),
        baselineY(0),
        baselineY(1),
        ...beyondLine(worths, top),
        Plot.ruleX([takenAtDeg], { className: 'kf-centre' }),
        Plot.ruleX(own, { x: 'includedAngleDeg', className: 'kf-dimension' }),
        ...curveMarks(worths, [taken], top),
        takenName,
        ...angleNames(own, narrow),
        ...(worths.length === 0 ? [notUsed] : []),
      ],
    };
  },
  // The axis is of included angles.
  drag: () => ({ control: 'subject.angle', value: ({ x }) => x / 2 }),
  table(scene) {
    const row = (name: string, angle: number): string[] => {
      const worth = worthAt(scene, angle);
      return [
        name,
        `${brief(angle)}°`,
        worth ? times(worth.card) : 'off the line',
        worth ? times(worth.taken) : 'off the line',
        worth ? times(worth.life) : 'off the line',
      ];
    };
    return {
      columns: [
        'Where',
        'Included angle',
        'Card in a fixed number of strokes',
        'Life to one end point, as taken',
        'By the law of even blunting',
      ],
      rows: [
        ...[20, 25, 30, 35, 40].map((angle) => row('both at', angle)),
        ...anglesShown(scene)
          .slice(1)
          .map(({ who, includedAngleDeg }) => row(`both as ${who}`, includedAngleDeg)),
      ],
    };
  },
  caption: (scene) => byAngle(scene).filter(Boolean).join(' '),
};
