import { drawLevel } from '../../scene/draw-level.ts';
import { groundRoom, roomIn, roomOfFamilies } from '../../scene/ranges.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, times } from '../../scene/show.ts';
import type { Reading } from '../../model/index.ts';
import { families } from '../../scene/factors.ts';

const readings: readonly Reading[] = ['quick', 'careful'];

/** The numbers of the range race: rooms by reading and family, and the angle that draws level. */
export const rangeNumbers: Record<string, (scene: Scene) => string> = {
  ...Object.fromEntries(
    readings.flatMap((reading) => {
      const rooms = ({ comparison }: Scene) => roomOfFamilies(comparison)[reading];
      return [
        ...families.flatMap((family) => [
          [`range.${reading}.${family}`, (scene: Scene) => times(roomIn(rooms(scene), family).factor)],
          [`range.${reading}.${family}.low`, (scene: Scene) => times(roomIn(rooms(scene), family).low)],
          [`range.${reading}.${family}.high`, (scene: Scene) => times(roomIn(rooms(scene), family).high)],
          [`range.${reading}.${family}.added`, (scene: Scene) => times(roomIn(rooms(scene), family).added)],
          [
            `range.${reading}.${family}.toLimit`,
            (scene: Scene) => times(roomIn(rooms(scene), family).toLimit),
          ],
        ]),
        [`range.${reading}.ground`, (scene: Scene) => times(groundRoom(rooms(scene)).factor)],
        [`range.${reading}.ground.low`, (scene: Scene) => times(groundRoom(rooms(scene)).low)],
        [`range.${reading}.ground.high`, (scene: Scene) => times(groundRoom(rooms(scene)).high)],
        [`range.${reading}.ground.added`, (scene: Scene) => times(groundRoom(rooms(scene)).added)],
        [
          `range.${reading}.contest`,
          (scene: Scene) => times(groundRoom(rooms(scene)).factor / roomIn(rooms(scene), 'steel').factor),
        ],
      ] as [string, (scene: Scene) => string][];
    }),
  ),
  'level.steel.now': (scene) => times(1 / drawLevel(scene).steel.now),
  'level.steel.angle': (scene) => {
    const { value } = drawLevel(scene).steel.answer;
    return value === null ? 'no angle' : `${plain(value)}°`;
  },
};
