import * as Plot from '@observablehq/plot';
import { edgeAngleRange } from '../../model/index.ts';
import { floorDeg, limitsAt, limitsOf, sharedStretch, trials } from '../../scene/limits.ts';
import type { Limits, Trial } from '../../scene/limits.ts';
import { anglesOf, drivable } from '../../scene/routes.ts';
import { plain, short, times } from '../../scene/show.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { shortName } from '../../figure-kit/short-name.ts';

const stepsOf = 52;

const trialName: Record<Trial, string> = {
  slicing: 'slices',
  rolling: 'before rolling',
  chipping: 'before chipping',
};

/** The trials of which something can be said. */
const known = (now: Limits): Trial[] => trials.filter((trial) => now[trial] !== null);

const valueOf = (at: Limits, trial: Trial): number => at[trial] ?? 1;

/** Slicing, rolling and chipping of the subject against the baseline, by the subject's edge angle. */
export const threeLimits: Figure = {
  id: 'three-limits',
  title: ({ subject, baseline }) =>
    `${subject.name} against ${baseline.name} in three trials, by its edge angle`,
  units: 'times the baseline, by degrees per side',
  scale: 'logarithmic axis upwards',
  reading: () => 'slicing: close reading',
  source: 'derived; floor common practice',
  options(scene, { narrow, width }) {
    const now = limitsOf(scene);
    const shared = sharedStretch(scene);
    const [from, to] = [
      edgeAngleRange.low,
      // Room for the beginning of the stretch where nothing is lost.
      Math.min(edgeAngleRange.high, Math.max(30, now.angleDeg, (shared?.lowDeg ?? 0) + 3)),
    ];
    const curves = Array.from({ length: stepsOf + 1 }, (_, step) => from + ((to - from) * step) / stepsOf)
      .filter((angleDeg) => drivable(scene, angleDeg))
      .map((angleDeg) => limitsAt(scene, angleDeg));
    const shownTrials = known(now);
    const [height, marginTop, marginBottom, marginLeft, marginRight] = [narrow ? 340 : 380, 24, 42, 46, 10];
    const inner = { width: width - marginLeft - marginRight, height: height - marginTop - marginBottom };
    const atX = (px: number): number => from + ((to - from) * px) / inner.width;
    const [keyPx, strokePx] = narrow ? [inner.width - 176, 26] : [inner.width - 216, 40];
    const keyTopPx = inner.height - 12 - 18 * shownTrials.length;

    const values = (list: readonly Limits[]): number[] =>
      list.flatMap((at) => shownTrials.map((trial) => valueOf(at, trial)));
    const all = [...curves, now];
    const high = Math.max(1, ...values(all)) * 1.2;
    // The key has the lower right corner to itself: the axis goes on downwards until no curve reaches it there.
    const aboveKey = Math.min(1, ...values(all.filter(({ angleDeg }) => angleDeg > atX(keyPx - 8))));
    const low = Math.min(
      Math.min(1, ...values(all)) / 1.15,
      high * (aboveKey / high) ** (inner.height / (keyTopPx - 8)),
    );
    const ticks = tickValues(low, high, narrow);
    const atY = (px: number): number => high * (low / high) ** (px / inner.height);
    const key = shownTrials.map((trial, index) => ({
      trial,
      y: atY(keyTopPx + 14 + 18 * index),
      text: `${trialName[trial]} ${times(valueOf(now, trial))}`,
    }));
    const floor = floorDeg(scene.subjectKnife);
    const atSix = limitsAt(scene, 6);
    const between = Math.sqrt(
      valueOf(atSix, 'slicing') * Math.max(valueOf(atSix, 'rolling'), atSix.chipping ?? 0),
    );
    return {
      height,
      marginTop,
      marginBottom,
      marginLeft,
      marginRight,
      x: {
        domain: [from, to],
        label: `edge angle of ${shortName(scene.subject.name, narrow ? 12 : 28)}, ° per side`,
        labelAnchor: 'center',
        labelArrow: 'none',
        ticks: narrow ? 5 : 10,
      },
      y: ratioAxis(low, high, narrow, 'times the baseline'),
      marks: [
        Plot.rect([{ x1: 4, x2: 6, y1: low, y2: high }], {
          x1: 'x1',
          x2: 'x2',
          y1: 'y1',
          y2: 'y2',
          className: 'kf-floor',
        }),
        gridY(ticks),
        baselineY(1),
        ...(shared
          ? [
              Plot.ruleY([1], {
                x1: Math.max(from, shared.lowDeg),
                x2: Math.min(to, shared.highDeg),
                className: 'kf-window',
              }),
            ]
          : []),
        Plot.ruleX([floor], { className: 'kf-centre' }),
        Plot.ruleX([now.angleDeg], {
          y1: now.angleDeg > atX(keyPx - 8) ? atY(keyTopPx) : low,
          y2: high,
          className: 'kf-dimension',
        }),
        ...shownTrials.map((trial) =>
          Plot.line(curves, {
            x: 'angleDeg',
            y: (at: Limits) => valueOf(at, trial),
            className: `kf-limit-${trial}`,
          }),
        ),
        ...key.map(({ trial, y }) =>
          Plot.line(
            [
              [atX(keyPx), y],
              [atX(keyPx + strokePx), y],
            ],
            { className: `kf-limit-${trial}` },
          ),
        ),
        Plot.text(key, {
          x: atX(keyPx + strokePx),
          y: 'y',
          text: 'text',
          dx: 6,
          textAnchor: 'start',
          className: 'kf-value kf-on-paper',
        }),
        Plot.dot(
          shownTrials.map((trial) => ({ x: now.angleDeg, y: valueOf(now, trial) })),
          { x: 'x', y: 'y', r: 4, className: 'kf-answer' },
        ),
        // Right of the floor, between the curve that falls and those that rise.
        Plot.text([{ x: 6, y: between }], {
          x: 'x',
          y: 'y',
          text: () => `floor ${plain(floor)}°`,
          textAnchor: 'start',
          dx: 4,
          className: 'kf-faint kf-on-paper',
        }),
      ],
    };
  },
  drag: () => ({ control: 'limits.angle', value: ({ x }) => x }),
  table(scene) {
    const now = limitsOf(scene);
    const shownTrials = known(now);
    const listed = [4, 5, 6, 8, 10, 12, 14, 17, 20, 24, 30]
      .filter((angleDeg) => angleDeg !== now.angleDeg && drivable(scene, angleDeg))
      .map((angleDeg) => limitsAt(scene, angleDeg));
    return {
      columns: [
        'Edge angle per side',
        'Slices, times as long',
        ...(shownTrials.includes('rolling') ? ['Side load before rolling'] : []),
        ...(shownTrials.includes('chipping') ? ['Side load before chipping'] : []),
      ],
      rows: [...listed, now]
        .sort((a, b) => a.angleDeg - b.angleDeg)
        .map((at) => [
          `${short(at.angleDeg)}°${at === now ? ` (${scene.subject.name})` : ''}${at.angleDeg <= 6 ? ', at the floor' : ''}`,
          ...shownTrials.map((trial) => times(valueOf(at, trial))),
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
