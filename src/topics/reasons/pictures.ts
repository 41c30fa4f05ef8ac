import * as Plot from '@observablehq/plot';
import { isUnknown, nominal, scratchDepthUm } from '../../model/index.ts';
import { arrows } from '../../figure-kit/arrow.ts';
import { halfOutline } from '../../figure-kit/outline.ts';
import type { Points } from '../../figure-kit/plane.ts';
import { segmentEnds } from '../../figure-kit/segments.ts';
import { nameWithin } from '../../figure-kit/short-name.ts';
import { short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { edgesOf, lengthShownMm } from '../edges/section.ts';
import type { SceneEdge } from '../edges/section.ts';
import { finishSaid, grainUm } from './measures.ts';
import type { NamedReason, Reason } from './reasons.ts';
import { filled, fontPx, pictureWidth, written } from './drawn.ts';
import type { Picture } from './drawn.ts';
import { steelPicture } from './steel-picture.ts';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
/** The middles of two columns. */
const middles = [pictureWidth * 0.26, pictureWidth * 0.74] as const;
const middle = (index: number): number => middles[index] ?? 0;

const blade = (unknown: boolean): string => (unknown ? 'kf-blade kf-not-known' : 'kf-blade');

/** Two wedges as deep as each other, each with its angle, and its microbevel where it has one. */
function anglePicture(scene: Scene): Picture {
  const edges = edgesOf(scene);
  const widest = Math.max(...edges.map(({ shape }) => shape.angleDeg));
  const deep = Math.min(112, 70 / tan(widest));
  const tip = deep + 6;
  const anyMicro = edges.some(({ knife }) => knife.microbevelAngleDeg !== undefined);
  const marks = edges.flatMap(({ name, knife, shape }, index): Plot.Markish[] => {
    const { angleDeg } = shape;
    const micro = knife.microbevelAngleDeg === undefined ? angleDeg : nominal(knife.microbevelAngleDeg);
    const half = deep * tan(angleDeg);
    const foot = micro === angleDeg ? 0 : 0.16 * half;
    const flatTip = tip - foot / tan(angleDeg) + foot / tan(micro);
    const centre = middle(index);
    const angle = isUnknown(knife.angleDeg) ? 'not known' : `${short(angleDeg)}°`;
    const points: Points = [
      [centre - half, 6],
      [centre + half, 6],
      [centre + foot, tip - foot / tan(angleDeg)],
      [centre, flatTip],
      [centre - foot, tip - foot / tan(angleDeg)],
      [centre - half, 6],
    ];
    return [
      filled(points, blade(isUnknown(knife.angleDeg))),
      written(centre, tip + 18, `${nameWithin(name, 90, fontPx)}, ${angle}`, {
        className: 'kf-reason kf-value',
      }),
      ...(knife.microbevelAngleDeg === undefined
        ? []
        : [written(centre, tip + 38, `${short(micro)}° at the apex`, { className: 'kf-reason kf-faint' })]),
    ];
  });
  return { height: tip + (anyMicro ? 52 : 32), marks };
}

/** Both edges up to a little above the shoulder, to one scale, with the thickness there between arrows. */
function edgePicture(scene: Scene): Picture {
  const edges = edgesOf(scene);
  const deep = 100;
  const lengthMm = lengthShownMm(edges, 0, deep, 110, 1.5);
  const scale = deep / lengthMm;
  const marks = edges.flatMap(({ name, knife, shape }, index): Plot.Markish[] => {
    const centre = middle(index);
    const half = halfOutline(knife, lengthMm).map(({ upMm, halfMm }): [number, number] => [
      halfMm * scale,
      6 + deep - upMm * scale,
    ]);
    const unknown = isUnknown(knife.edgeMm);
    const y = 6 + deep - shape.shoulder.upMm * scale;
    const out = shape.shoulder.halfMm * scale;
    return [
      filled(
        [
          ...half.map(([across, at]): [number, number] => [centre + across, at]),
          ...[...half].reverse().map(([across, at]): [number, number] => [centre - across, at]),
        ],
        blade(unknown),
      ),
      ...arrows(
        [1, -1].map((side) => ({
          x1: centre + side * (out + 24),
          x2: centre + side * (out + 2),
          y1: y,
          y2: y,
        })),
        1,
      ),
      written(
        centre,
        deep + 26,
        `${nameWithin(name, 80, fontPx)}, ${unknown ? 'not known' : `${short(shape.edgeMm)} mm`}`,
        { className: 'kf-reason kf-value' },
      ),
    ];
  });
  return { height: deep + 40, marks };
}

/** Both sections up to the depth of contact, one above the other, to one scale. */
function grindPicture(scene: Scene): Picture {
  const edges = edgesOf(scene);
  const [left, long] = [6, pictureWidth - 12];
  const depth = nominal(scene.comparison.contactDepthMm ?? 8);
  const lengthMm = lengthShownMm(edges, depth, long, 90, 1.5);
  const scale = long / lengthMm;
  let top = 4;
  const marks = edges.flatMap((edge: SceneEdge): Plot.Markish[] => {
    const half = halfOutline(edge.knife, lengthMm).map(({ upMm, halfMm }): [number, number] => [
      left + upMm * scale,
      halfMm * scale,
    ]);
    const thick = Math.max(...half.map(([, out]) => out));
    const centre = top + thick;
    top += 2 * thick + 34;
    return [
      filled([
        ...half.map(([x, out]): [number, number] => [x, centre - out]),
        ...[...half].reverse().map(([x, out]): [number, number] => [x, centre + out]),
      ]),
      Plot.link([{ x1: left, x2: left + long, y1: centre, y2: centre }], {
        ...segmentEnds,
        className: 'kf-centre',
      }),
      written(left, centre + thick + 16, `${nameWithin(edge.name, 180, fontPx)}, ${edge.knife.grind.form}`, {
        textAnchor: 'start',
        className: 'kf-reason kf-faint',
      }),
    ];
  });
  return { height: top, marks };
}

/** Edge lines of a finish: its scratches as teeth, as deep against each other as the model takes them to be. */
function finishPicture(scene: Scene): Picture {
  const edges = edgesOf(scene);
  const depths = edges.map(({ knife }) => {
    const { low, high } = scratchDepthUm(grainUm(knife));
    return (low + high) / 2;
  });
  const deepest = Math.max(...depths);
  const [least, most] = [Math.min(...depths), deepest];
  // Two that are near each other are finer and coarser, and neither of them need be fine.
  const called = (depth: number): string =>
    least === most
      ? 'scratches'
      : `${depth === most ? 'coarse' : 'fine'}${most / least < 2.5 ? 'r' : ''} scratches`;
  const [left, right] = [6, pictureWidth - 6];
  const marks = edges.flatMap(({ name, knife }, index): Plot.Markish[] => {
    const depth = depths[index] ?? 0;
    const tooth = Math.max(1, (15 * depth) / deepest);
    const count = Math.max(2, Math.round((right - left) / Math.max(3, 1.8 * tooth)));
    const [top, line] = [4 + index * 72, 32 + index * 72];
    const teeth = Array.from({ length: 2 * count + 1 }, (_, step): [number, number] => [
      left + ((right - left) * step) / (2 * count),
      line + (step % 2) * tooth,
    ]);
    return [
      filled(
        [[left, top], ...teeth, [right, top], [left, top]],
        blade(finishSaid(knife) === 'finish not known'),
      ),
      written(left, line + 30, `${nameWithin(name, 100, fontPx)}, ${finishSaid(knife)}: ${called(depth)}`, {
        textAnchor: 'start',
        className: 'kf-reason kf-faint',
      }),
    ];
  });
  return { height: 146, marks };
}

/** Bars as long as the two knives cut for this reason alone. */
export function barsPicture({ subject, baseline }: Scene, { factor }: Reason): Picture {
  const most = Math.max(1, factor);
  const bars = [
    { name: baseline.name, times: 1 },
    { name: subject.name, times: factor },
  ];
  return {
    height: 110,
    marks: bars.flatMap(({ name, times }, index) => {
      const [top, end] = [26 + index * 54, 6 + (280 * times) / most];
      return [
        written(6, top - 12, nameWithin(name, 300, fontPx), { textAnchor: 'start' }),
        filled([
          [6, top],
          [end, top],
          [end, top + 20],
          [6, top + 20],
          [6, top],
        ]),
      ];
    }),
  };
}

export const pictures: Record<NamedReason, (scene: Scene) => Picture> = {
  angle: anglePicture,
  edge: edgePicture,
  grind: grindPicture,
  finish: finishPicture,
  steel: steelPicture,
};
