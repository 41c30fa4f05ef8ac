import * as Plot from '@observablehq/plot';
import { drivable, exponentsOf, routesAt, routesOf } from '../../scene/routes.ts';
import type { Routes } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, short, times } from '../../scene/show.ts';
import type { Figure, Size } from '../../figure-kit/figure.ts';
import { baselineY, gridY } from '../../figure-kit/grid.ts';
import { ratioAxis, tickValues } from '../../figure-kit/ratio-axis.ts';
import { centredLabel } from '../../figure-kit/centred-label.ts';
import { frameOf } from '../../figure-kit/frame.ts';
import { strokeKey } from '../../figure-kit/key.ts';
import { linearAt, logAt } from '../../figure-kit/pixels.ts';

type Route = 'wedge' | 'tooth' | 'wear' | 'full' | 'careful';

/** The curves from the highest to the lowest at a slim edge, each with its own stroke (`kf-route-…`). */
const curves: readonly { route: Route; name: string; short: string }[] = [
  { route: 'full', name: 'wedge × tooth, in full', short: 'both in full' },
  { route: 'careful', name: 'wedge × apex, as estimated', short: 'careful' },
  { route: 'wear', name: 'apex alone: steel to wear', short: 'apex: wear' },
  { route: 'tooth', name: 'apex alone: tooth depth', short: 'apex: tooth' },
  { route: 'wedge', name: 'wedge alone', short: 'wedge' },
];

const [lowDeg, highDeg] = [8, 30];
const stepsOf = 44;

/** The routes at angles across the figure, as far as such an edge can be driven at all. */
function along(scene: Scene, low: number, high: number): Routes[] {
  return Array.from({ length: stepsOf + 1 }, (_, step) => low + ((high - low) * step) / stepsOf)
    .filter((angleDeg) => drivable(scene, angleDeg))
    .map((angleDeg) => routesAt(scene, angleDeg));
}

const strokeOf = (route: Route): string => `kf-route-${route}`;

const highest = (list: readonly Routes[]): number =>
  Math.max(1, ...list.flatMap((at) => curves.map(({ route }) => at[route])));

/** The curves and their key, and the ends of the axes that leave the key the upper right corner to itself. */
function layoutOf(scene: Scene, { width, narrow }: Size) {
  const now = routesOf(scene);
  const [from, to] = [Math.min(lowDeg, now.angleDeg), Math.max(highDeg, now.angleDeg)];
  const routes = along(scene, from, to);
  const { frame, inner } = frameOf(width, narrow ? 340 : 380, { top: 24, right: 10, bottom: 42, left: 38 });
  const atX = linearAt(from, to, inner.width);
  const [keyPx, strokePx] = narrow ? [inner.width - 166, 26] : [inner.width - 268, 40];
  const keyBottomPx = 10 + 18 * curves.length;
  const inKey = ({ angleDeg }: Routes): boolean => angleDeg > atX(keyPx - 8);

  const all = [...routes, now];
  const low = Math.min(1, ...all.flatMap((at) => curves.map(({ route }) => at[route]))) / 1.1;
  // The axis goes on upwards until no curve reaches the key.
  const underKey = highest(all.filter(inKey));
  const high = Math.max(
    highest(all) * 1.15,
    low * (underKey / low) ** (1 / (1 - (keyBottomPx + 4) / inner.height)),
  );
  const atY = logAt(high, low, inner.height);
  const key = curves.map(({ route, name, short }, index) => ({
    className: strokeOf(route),
    y: atY(10 + 18 * index),
    text: `${narrow ? short : name} ${times(now[route])}`,
  }));
  const strokes = [atX(keyPx), atX(keyPx + strokePx)] as const;
  // The line of the present angle ends below the key.
  const markTop = inKey(now) ? atY(keyBottomPx) : high;
  return { now, routes, frame, from, to, low, high, key, strokes, markTop };
}

/** Wedge, apex by both mechanisms and their product, against the angle of the knife looked at. */
export const twoRoutes: Figure = {
  id: 'two-routes',
  title: ({ subject, baseline }) =>
    `What the edge angle of ${subject.name} is worth against ${baseline.name}`,
  units: 'times as long, by degrees per side',
  scale: 'logarithmic axis upwards',
  reading: () => 'in full, and careful estimate',
  source: 'factor model',
  options(scene, size) {
    const { narrow } = size;
    const { now, routes, frame, from, to, low, high, key, strokes, markTop } = layoutOf(scene, size);
    return {
      ...frame,
      x: {
        domain: [from, to],
        ...centredLabel(narrow ? 'edge angle, ° per side' : `edge angle of the knife looked at, ° per side`),
        ticks: narrow ? 5 : 10,
      },
      y: ratioAxis(low, high, narrow, 'times as long as the baseline'),
      marks: [
        gridY(tickValues(low, high, narrow)),
        baselineY(1),
        Plot.ruleX([now.angleDeg], { y1: low, y2: markTop, className: 'kf-dimension' }),
        ...curves.map(({ route }) =>
          Plot.line(routes, { x: 'angleDeg', y: route, className: strokeOf(route) }),
        ),
        ...strokeKey(key, strokes),
        Plot.dot(
          curves.map(({ route }) => ({ x: now.angleDeg, y: now[route] })),
          { x: 'x', y: 'y', r: 4, className: 'kf-answer' },
        ),
      ],
    };
  },
  drag: () => ({ control: 'subject.angle', value: ({ x }) => x }),
  table(scene) {
    const now = routesOf(scene);
    const listed = [8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30]
      .filter((angleDeg) => angleDeg !== now.angleDeg && drivable(scene, angleDeg))
      .map((angleDeg) => routesAt(scene, angleDeg));
    return {
      columns: [
        'Edge angle per side',
        'Wedge',
        'Apex: tooth depth',
        'Apex: steel to wear',
        'Wedge × tooth, in full',
        'Careful estimate',
      ],
      rows: [...listed, now]
        .sort((a, b) => a.angleDeg - b.angleDeg)
        .map((at) => [
          `${brief(at.angleDeg)}°${at === now ? ` (${scene.subject.name})` : ''}`,
          times(at.wedge),
          times(at.tooth),
          times(at.wear),
          times(at.full),
          times(at.careful),
        ]),
    };
  },
  caption(scene) {
    const { angleDeg, wedge, tooth, wear, full, careful } = routesOf(scene);
    return `At ${short(angleDeg)}° per side ${scene.subject.name} has ${times(wedge)} by the wedge and at the apex ${times(tooth)} by tooth depth or ${times(wear)} by steel to wear. Wedge and tooth in full make ${times(full)}; the careful estimate, with E at ${brief(exponentsOf(scene).total)}, makes ${times(careful)}.`;
  },
};
