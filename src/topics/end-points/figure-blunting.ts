import * as Plot from '@observablehq/plot';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain } from '../../scene/show.ts';
import { endPointsOf } from './values.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY } from '../../figure-kit/grid.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import type { Drawing } from '../../figure-kit/figure.ts';

interface Reading {
  cut: number;
  sharpness: number;
  /** Reading less curve. */
  rest: number;
}

interface Line {
  name: string;
  sharpening: string;
  subject: boolean;
  readings: Reading[];
  curve: { cut: number; sharpness: number }[];
}

/** Every series with its curve, the subject's first. */
function linesOf(scene: Scene): Line[] {
  const endPoints = endPointsOf(scene);
  return (['subject', 'baseline'] as const).flatMap((role) =>
    endPoints[role].series.map(({ sharpening, readings, curve }): Line => {
      const by = endPoints.stretch[role];
      return {
        name: scene[role].name,
        sharpening,
        subject: role === 'subject',
        readings: readings.map(({ cut, sharpness }, index) => ({
          cut: cut * by,
          sharpness,
          rest: curve.residuals[index] ?? 0,
        })),
        // Close together at first, where the curve is steep.
        curve: Array.from({ length: 41 }, (_, index) => {
          const cut = curve.last.cut * (index / 40) ** 2;
          return { cut: cut * by, sharpness: curve.at(cut) };
        }),
      };
    }),
  );
}

const most = (values: readonly number[]): number => Math.max(...values, 0) || 1;

const className = ({ subject }: Line): string => (subject ? 'kf-route-careful' : 'kf-route-full');

const axis = (scene: Scene, narrow: boolean) => ({
  // Cuts spread as their root: the first few take off most of the sharpness.
  type: 'sqrt' as const,
  domain: [0, most(linesOf(scene).flatMap(({ readings }) => readings.map(({ cut }) => cut)))],
  ...centredLabel('cut so far'),
  ticks: narrow ? 4 : 7,
  tickFormat: brief,
});

const dots = (lines: readonly Line[], y: 'sharpness' | 'rest') =>
  lines.map(({ readings, subject }) =>
    Plot.dot(readings, {
      x: 'cut',
      y,
      r: 3.5,
      className: 'kf-chance',
      stroke: 'currentColor',
      fill: subject ? 'currentColor' : 'none',
    }),
  );

const reading = (scene: Scene): string =>
  endPointsOf(scene).origin === 'own' ? 'as logged; no model in it' : 'imagined, after the careful estimate';

/** What the readings are of. */
const readOf = (scene: Scene): string => endPointsOf(scene).read ?? 'reading';

const many = (lines: readonly Line[]): string =>
  lines.length === 1 ? 'one series' : `${lines.length} series`;

interface Twin {
  id: string;
  title(subject: string, baseline: string): string;
  units: string;
  height: Record<'wide' | 'narrow', number>;
  /** What stands upright over the cuts, and the marks of it. */
  upright(
    lines: readonly Line[],
    scene: Scene,
  ): { domain: [number, number]; label: string; marks: Drawing['marks'] };
  caption: Figure['caption'];
}

/** Something about the readings of every edge, over what was cut by then. */
const bluntingFigure = ({ id, title, units, height, upright, caption }: Twin): Figure => ({
  id,
  title: ({ subject, baseline }) => title(subject.name, baseline.name),
  units,
  scale: 'cuts as their square root',
  reading,
  source: 'least squares through each edge’s readings',
  options(scene, { narrow }) {
    const { domain, label, marks } = upright(linesOf(scene), scene);
    return {
      height: height[narrow ? 'narrow' : 'wide'],
      marginLeft: 48,
      marginRight: 16,
      marginTop: 24,
      marginBottom: 42,
      x: axis(scene, narrow),
      y: { domain, label, labelArrow: 'none', ticks: 5, tickFormat: brief },
      marks: [baselineY(0), ...marks],
    };
  },
  table: (scene) => ({
    columns: ['Knife and sharpening', 'Cut so far', 'Reading', 'By the curve', 'Reading less curve'],
    rows: linesOf(scene).flatMap(({ name, sharpening, readings }) =>
      readings
        .slice(0, 40)
        .map(({ cut, sharpness, rest }) => [
          `${name}, ${sharpening}`,
          plain(cut),
          plain(sharpness),
          plain(sharpness - rest),
          plain(rest, 2),
        ]),
    ),
  }),
  caption,
});

const restsOf = (lines: readonly Line[]): number[] =>
  lines.flatMap(({ readings }) => readings.map(({ rest }) => Math.abs(rest)));

/** The readings along every edge, and the curves through them. */
export const bluntingCurves: Figure = bluntingFigure({
  id: 'blunting-curves',
  title: (subject, baseline) => `How ${subject} and ${baseline} blunted`,
  units: 'readings, by what was cut',
  height: { wide: 320, narrow: 280 },
  upright(lines, scene) {
    const top = most(
      lines.flatMap(({ readings, curve }) => [...readings, ...curve].map(({ sharpness }) => sharpness)),
    );
    return {
      domain: [0, top * 1.05],
      label: readOf(scene),
      marks: [
        ...lines.map((line) =>
          Plot.line(line.curve, { x: 'cut', y: 'sharpness', className: className(line) }),
        ),
        ...dots(lines, 'sharpness'),
      ],
    };
  },
  caption(scene) {
    const lines = linesOf(scene);
    const { subject, baseline } = scene;
    return `${many(lines.filter((line) => line.subject))} of ${subject.name} (thick lines, full dots) and ${many(lines.filter((line) => !line.subject))} of ${baseline.name} (broken lines, open dots), each with the curve that lies nearest to its readings.`.replace(
      /^\w/,
      (letter) => letter.toUpperCase(),
    );
  },
});

/** What the curves leave over of the readings: a pattern in it means the curve is the wrong one. */
export const bluntingRests: Figure = bluntingFigure({
  id: 'blunting-rests',
  title: (subject, baseline) => `What the curves of ${subject} and ${baseline} leave over`,
  units: 'reading less curve, by what was cut',
  height: { wide: 220, narrow: 200 },
  upright(lines) {
    const far = most(restsOf(lines));
    return { domain: [-far * 1.15, far * 1.15], label: 'reading less curve', marks: dots(lines, 'rest') };
  },
  caption(scene) {
    const { subject, baseline } = scene;
    return `No reading of ${subject.name} or ${baseline.name} lies further than ${plain(Math.max(0, ...restsOf(linesOf(scene))), 2)} from its curve. Dots above and below the line by turns are chance; a bow of them means that the edge does not blunt along this curve, and that the ratio without a curve is the safer one.`;
  },
});
