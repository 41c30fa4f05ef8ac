import { isUnknown, nominal } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import type * as Plot from '@observablehq/plot';
import type { Points } from '../../figure-kit/plane.ts';
import { nameWithin } from '../../figure-kit/short-name.ts';
import type { Scene } from '../../scene/scene.ts';
import { edgesOf } from '../edges/section.ts';
import { carbidePercent, carbideSaid, hardnessSaid } from './measures.ts';
import { filled, fontPx, written } from './drawn.ts';
import type { Picture } from './drawn.ts';

/** A block of steel, px. */
const block = { width: 148, height: 84, top: 26, left: [4, 178] } as const;

/** Rows and columns a grain of carbide may lie in. */
const [columns, rows] = [12, 7] as const;
/** A grain of the usual size, px². */
const grainPx2 = 62;

/** How deep the same point goes in, px: the harder the shallower, much enlarged. */
export const dentPx = ({ hrc }: Knife): number => Math.min(62, Math.max(4, 20 + (60 - nominal(hrc)) * 1.4));

/** A corner of a grain with five sides and its area, about its middle. */
const corner = (
  [x, y]: readonly [number, number],
  area: number,
  side: number,
  turn: number,
): [number, number] => {
  const radius = Math.sqrt(area / (2.5 * Math.sin((2 * Math.PI) / 5)));
  const angle = (2 * Math.PI * side) / 5 + turn;
  return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
};

/** The grains of a block: together as large a part of it as the carbide is of the steel. */
export function grainsOf(knife: Knife, left: number): Points[] {
  const area = (carbidePercent(knife) / 100) * block.width * block.height;
  const dent = dentPx(knife);
  const [wide, high] = [(block.width - 8) / columns, (block.height - 8) / rows];
  const places = Array.from({ length: columns * rows }, (_, index) => {
    // A step that shares no factor with the number of places goes through all of them, far from the last each time.
    const place = (index * 31 + 11) % (columns * rows);
    const [column, row] = [place % columns, Math.floor(place / columns)];
    const middle: readonly [number, number] = [
      4 + (column + 0.5) * wide + 1.5 * Math.sin(7 * place),
      4 + (row + 0.5) * high + 1.5 * Math.cos(5 * place),
    ];
    return { middle, turn: place };
  }).filter(({ middle: [x, y] }) => y - 8 > dent - Math.abs(x - block.width / 2) * 0.9 || y > dent + 10);
  const count = Math.min(places.length, Math.round(area / grainPx2) || (area > 0 ? 1 : 0));
  return places
    .slice(0, count)
    .map(({ middle: [x, y], turn }) =>
      Array.from({ length: 6 }, (_, side) => corner([left + x, block.top + y], area / count, side % 5, turn)),
    );
}

/** Two blocks of steel dented by the same point, with their grains of carbide. */
export function steelPicture(scene: Scene): Picture {
  const marks = edgesOf(scene).flatMap(({ name, knife }, index): Plot.Markish[] => {
    const left = block.left[index] ?? 0;
    const dent = dentPx(knife);
    const [right, centre, bottom] = [left + block.width, left + block.width / 2, block.top + block.height];
    const unknown = isUnknown(knife.hrc) || Object.values(knife.carbideVolPercent).some(isUnknown);
    const outline: Points = [
      [left, block.top],
      [centre - 1.1 * dent, block.top],
      [centre, block.top + dent],
      [centre + 1.1 * dent, block.top],
      [right, block.top],
      [right, bottom],
      [left, bottom],
      [left, block.top],
    ];
    const point: Points = [-1, 0, 1].map((side) => [
      centre + side * 44,
      block.top + dent - 1.5 - Math.abs(side) * 40,
    ]);
    const lines = [nameWithin(name, 140, fontPx), hardnessSaid(knife), carbideSaid(knife)];
    return [
      filled(outline, unknown ? 'kf-blade kf-not-known' : 'kf-blade'),
      filled(point, 'kf-thin'),
      ...grainsOf(knife, left).map((grain) => filled(grain, 'kf-carbide')),
      ...lines.map((line, at) =>
        written(left, bottom + 16 + 20 * at, line, {
          textAnchor: 'start',
          className: `kf-reason ${at === 0 ? 'kf-value' : 'kf-faint'}`,
        }),
      ),
    ];
  });
  return { height: block.top + block.height + 70, marks };
}
