import * as Plot from '@observablehq/plot';
import { edgeAngleRange } from '../../model/index.ts';
import { floorDeg, limitsAt, limitsOf, sharedStretch, trials } from '../../scene/limits.ts';
import type { Limits, Trial } from '../../scene/limits.ts';
import type { Ends } from '../../model/index.ts';
import { sideLoadInWords, sideLoadLabel, sideOf } from '../../phrases/side-load.ts';
import { anglesOf, drivable } from '../../scene/routes.ts';
import { brief, plain, ratioInWords, readAlike, short, times } from '../../scene/show.ts';
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
  rolling: 'rolling',
  chipping: 'chipping',
};

type Stretch = ReturnType<typeof sharedStretch>;

/** The trials of which something can be said. */
const known = (now: Limits): Trial[] => trials.filter((trial) => now[trial] !== null);

/** Both ends of what is said of one trial: slicing has one value alone. */
const endsOf = (at: Limits, trial: Trial): Ends =>
  trial === 'slicing' ? { low: at.slicing, high: at.slicing } : (at.sideLoad[trial] ?? { low: 1, high: 1 });

/** A range as a cell of the table. */
const cell = ({ low, high }: Ends): string =>
  readAlike(low, high) ? times(low) : `${times(low)} to ${times(high)}`;

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
  const [keyPx, strokePx] = narrow ? [inner.width - 166, 26] : [inner.width - 206, 40];
  const keyTopPx = inner.height - 12 - 18 * tried.length;
  const inKey = ({ angleDeg }: Limits): boolean => angleDeg > atX(keyPx - 8);

  const values = (list: readonly Limits[]): number[] =>
    list.flatMap((at) => tried.flatMap((trial) => Object.values(endsOf(at, trial))));
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
    text: `${trialName[trial]} ${trial === 'slicing' ? times(now.slicing) : sideLoadLabel(endsOf(now, trial))}`,
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
function floorName(scene: Scene, { low, high }: Ends): Plot.RenderableMark {
  const there = limitsAt(scene, floorEndDeg);
  const loads = [endsOf(there, 'rolling'), ...(there.chipping === null ? [] : [endsOf(there, 'chipping')])];
  const between = Math.sqrt(there.slicing * Math.max(...loads.map((load) => load.high)));
  const said = plain(low) === plain(high) ? plain(low) : `${plain(low)}–${plain(high)}`;
  return Plot.text([{ x: floorEndDeg, y: between }], {
    x: 'x',
    y: 'y',
    text: () => `floor ${said}°`,
    textAnchor: 'start',
    dx: 4,
    className: 'kf-faint kf-on-paper',
  });
}

/** A trial by the angle: slicing as one curve, a side load as the span between the two ends of its range. */
const curvesOf = (curves: readonly Limits[], trial: Trial): Plot.RenderableMark[] => {
  const end = (side: keyof Ends) =>
    Plot.line(curves, {
      x: 'angleDeg',
      y: (at: Limits) => endsOf(at, trial)[side],
      className: strokeOf(trial),
    });
  return trial === 'slicing' ? [end('low')] : [end('low'), end('high')];
};

/** What fills the spans of the side loads, below all curves. */
const spansOf = (curves: readonly Limits[], tried: readonly Trial[]): Plot.RenderableMark[] =>
  tried
    .filter((trial) => trial !== 'slicing')
    .map((trial) =>
      Plot.areaY(curves, {
        x: 'angleDeg',
        y1: (at: Limits) => endsOf(at, trial).low,
        y2: (at: Limits) => endsOf(at, trial).high,
        className: 'kf-stop-band',
      }),
    );

/** Slicing, rolling and chipping of the subject against the baseline, by the subject's edge angle. */
export const threeLimits: Figure = {
  id: 'three-limits',
  title: ({ subject, baseline }) =>
    `${subject.name} against ${baseline.name} in three trials, by its edge angle`,
  units: 'times the baseline, by degrees per side',
  scale: 'logarithmic axis upwards',
  reading: () => 'slicing: if the factors multiply, middle settings',
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
        ...spansOf(curves, tried),
        gridY(tickValues(low, high, narrow)),
        baselineY(1),
        ...stretchMarks(sharedStretch(scene), from, to),
        Plot.ruleX([...new Set([floor.low, floor.high])], { className: 'kf-centre' }),
        Plot.ruleX([now.angleDeg], { y1: markFoot, y2: high, className: 'kf-dimension' }),
        ...tried.flatMap((trial) => curvesOf(curves, trial)),
        ...strokeKey(key, strokes),
        Plot.dot(
          tried.flatMap((trial) => Object.values(endsOf(now, trial)).map((y) => ({ x: now.angleDeg, y }))),
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
          ...tried.map((trial) => cell(endsOf(at, trial))),
        ]),
    };
  },
  caption(scene) {
    const { slicing, sideLoad } = limitsOf(scene);
    const { subject, baseline } = scene;
    const shared = sharedStretch(scene);
    const bears = (range: Ends): string =>
      sideOf(range) === 'same' ? 'the side load' : `${sideLoadInWords(range)} the side load`;
    return [
      `At ${short(anglesOf(scene).subject.bevel)}° per side ${subject.name} slices ${ratioInWords(slicing)} as ${baseline.name}, if the factors multiply.`,
      `It bears ${bears(sideLoad.rolling)} of ${baseline.name} before rolling${sideLoad.chipping === null ? '; chipping cannot be drawn without a toughness of both' : ` and ${bears(sideLoad.chipping)} before chipping`}.`,
      shared && shared.highDeg - shared.lowDeg < 0.05
        ? `Only at ${short(shared.lowDeg)}° is it behind in none of them, by the middles of the spans.`
        : shared
          ? `Along the thick line, from ${short(shared.lowDeg)}° to ${short(shared.highDeg)}°, it is behind in none of them, by the middles of the spans.`
          : 'At every angle it is behind in one of them, by the middles of the spans.',
    ].join(' ');
  },
};
