import * as Plot from '@observablehq/plot';
import { edgeAngleRange } from '../../model/index.ts';
import { floorDeg, limitsAt, limitsOf, sharedStretch, trials } from '../../scene/limits.ts';
import type { Limits, Trial } from '../../scene/limits.ts';
import { anglesOf, drivable } from '../../scene/routes.ts';
import { brief, plain, short, times } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { floorBand, floorEndDeg } from '../base/floor-band.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { shortName } from '../../figure-kit/short-name.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import { strokeKey } from '../../figure-kit/key.ts';
import { linearAt, logAt } from '../../figure-kit/pixels.ts';

const stepsOf = 52;

const trialName: Record<Trial, string> = {
  slicing: 'slices',
  rolling: 'before rolling',
  chipping: 'before chipping',
};

type Stretch = ReturnType<typeof sharedStretch>;

/** The trials of which something can be said. */
const known = (now: Limits): Trial[] => trials.filter((trial) => now[trial] !== null);

const valueOf = (at: Limits, trial: Trial): number => at[trial] ?? 1;

const shown = (angleDeg: number): string => brief(Number(plain(angleDeg)));

const strokeOf = (trial: Trial): string => `kf-limit-${trial}`;

/** The subject's angles that are drawn, with room for the beginning of the stretch where nothing is lost. */
const anglesDrawn = (now: Limits, shared: Stretch): [from: number, to: number] => [
  edgeAngleRange.low,
  Math.min(edgeAngleRange.high, Math.max(30, now.angleDeg, (shared?.lowDeg ?? 0) + 3)),
];

/** The curves and their key, and the ends of the axes that leave the key the lower right corner to itself. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const now = limitsOf(scene);
  const [from, to] = anglesDrawn(now, sharedStretch(scene));
  const curves = Array.from({ length: stepsOf + 1 }, (_, step) => from + ((to - from) * step) / stepsOf)
    .filter((angleDeg) => drivable(scene, angleDeg))
    .map((angleDeg) => limitsAt(scene, angleDeg));
  const tried = known(now);
  const { frame, inner } = frameOf(width, narrow ? 340 : 380, { top: 24, right: 10, bottom: 42, left: 46 });
  const atX = linearAt(from, to, inner.width);
  const [keyPx, strokePx] = narrow ? [inner.width - 176, 26] : [inner.width - 216, 40];
  const keyTopPx = inner.height - 12 - 18 * tried.length;
  const inKey = ({ angleDeg }: Limits): boolean => angleDeg > atX(keyPx - 8);

  const values = (list: readonly Limits[]): number[] =>
    list.flatMap((at) => tried.map((trial) => valueOf(at, trial)));
  const all = [...curves, now];
  const high = Math.max(1, ...values(all)) * 1.2;
  // The axis goes on downwards until no curve reaches the key.
  const aboveKey = Math.min(1, ...values(all.filter(inKey)));
  const low = Math.min(
    Math.min(1, ...values(all)) / 1.15,
    high * (aboveKey / high) ** (inner.height / (keyTopPx - 8)),
  );
  const atY = logAt(high, low, inner.height);
  const key = tried.map((trial, index) => ({
    className: strokeOf(trial),
    y: atY(keyTopPx + 14 + 18 * index),
    text: `${trialName[trial]} ${times(valueOf(now, trial))}`,
  }));
  const strokes = [atX(keyPx), atX(keyPx + strokePx)] as const;
  // The line of the present angle ends above the key.
  const markFoot = inKey(now) ? atY(keyTopPx) : low;
  return { now, curves, tried, frame, from, to, low, high, key, strokes, markFoot };
}

/** The stretch of angles where the subject is behind in none of the trials, on the line of the baseline. */
const stretchMarks = (shared: Stretch, from: number, to: number): Plot.RenderableMark[] =>
  shared
    ? [
        Plot.ruleY([1], {
          x1: Math.max(from, shared.lowDeg),
          x2: Math.min(to, shared.highDeg),
          className: 'kf-window',
        }),
      ]
    : [];

/** The floor in words, right of it, between the curve that falls and those that rise. */
function floorName(scene: Scene, floor: number): Plot.RenderableMark {
  const there = limitsAt(scene, floorEndDeg);
  const between = Math.sqrt(
    valueOf(there, 'slicing') * Math.max(valueOf(there, 'rolling'), there.chipping ?? 0),
  );
  return Plot.text([{ x: floorEndDeg, y: between }], {
    x: 'x',
    y: 'y',
    text: () => `floor ${plain(floor)}°`,
    textAnchor: 'start',
    dx: 4,
    className: 'kf-faint kf-on-paper',
  });
}

/** Slicing, rolling and chipping of the subject against the baseline, by the subject's edge angle. */
export const threeLimits: Figure = {
  id: 'three-limits',
  title: ({ subject, baseline }) =>
    `${subject.name} against ${baseline.name} in three trials, by its edge angle`,
  units: 'times the baseline, by degrees per side',
  scale: 'logarithmic axis upwards',
  reading: () => 'slicing: close reading',
  source: 'derived; floor common practice',
  options(scene, size) {
    const { narrow } = size;
    const { now, curves, tried, frame, from, to, low, high, key, strokes, markFoot } = layoutOf(scene, size);
    const floor = floorDeg(scene.subjectKnife);
    return {
      ...frame,
      x: {
        domain: [from, to],
        ...centredLabel(`edge angle of ${shortName(scene.subject.name, narrow ? 12 : 28)}, ° per side`),
        ticks: narrow ? 5 : 10,
      },
      y: ratioAxis(low, high, narrow, 'times the baseline'),
      marks: [
        floorBand(low, high),
        gridY(tickValues(low, high, narrow)),
        baselineY(1),
        ...stretchMarks(sharedStretch(scene), from, to),
        Plot.ruleX([floor], { className: 'kf-centre' }),
        Plot.ruleX([now.angleDeg], { y1: markFoot, y2: high, className: 'kf-dimension' }),
        ...tried.map((trial) =>
          Plot.line(curves, {
            x: 'angleDeg',
            y: (at: Limits) => valueOf(at, trial),
            className: strokeOf(trial),
          }),
        ),
        ...strokeKey(key, strokes),
        Plot.dot(
          tried.map((trial) => ({ x: now.angleDeg, y: valueOf(now, trial) })),
          { x: 'x', y: 'y', r: 4, className: 'kf-answer' },
        ),
        floorName(scene, floor),
      ],
    };
  },
  drag: () => ({ control: 'limits.angle', value: ({ x }) => x }),
  table(scene) {
    const now = limitsOf(scene);
    const tried = known(now);
    const listed = [4, 5, 6, 8, 10, 12, 14, 17, 20, 24, 30]
      .filter((angleDeg) => angleDeg !== now.angleDeg && drivable(scene, angleDeg))
      .map((angleDeg) => limitsAt(scene, angleDeg));
    return {
      columns: [
        'Edge angle per side',
        'Slices, times as long',
        ...(tried.includes('rolling') ? ['Side load before rolling'] : []),
        ...(tried.includes('chipping') ? ['Side load before chipping'] : []),
      ],
      rows: [...listed, now]
        .sort((a, b) => a.angleDeg - b.angleDeg)
        .map((at) => [
          `${shown(at.angleDeg)}°${at === now ? ` (${scene.subject.name})` : ''}${at.angleDeg <= 6 ? ', at the floor' : ''}`,
          ...tried.map((trial) => times(valueOf(at, trial))),
        ]),
    };
  },
  caption(scene) {
    const { slicing, rolling, chipping } = limitsOf(scene);
    const { subject, baseline } = scene;
    const shared = sharedStretch(scene);
    return `At ${short(anglesOf(scene).subject.bevel)}° per side ${subject.name} slices ${times(slicing)} as long as ${baseline.name}. It bears ${times(rolling)} the side load of ${baseline.name} before rolling${chipping === null ? '; chipping cannot be drawn without a toughness of both' : ` and ${times(chipping)} before chipping`}. ${shared && shared.highDeg - shared.lowDeg < 0.05 ? `Only at ${short(shared.lowDeg)}° is it behind in none of them.` : shared ? `Along the thick line, from ${short(shared.lowDeg)}° to ${short(shared.highDeg)}°, it is behind in none of them.` : 'At every angle it is behind in one of them.'}`;
  },
};
