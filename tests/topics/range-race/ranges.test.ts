import { expect, test } from 'vitest';
import { cardCutMm, compare, grainSizeUm } from '../../../src/model/index.ts';
import { drawLevel } from '../../../src/scene/draw-level.ts';
import { groundRoom, ordinary, roomIn, roomOfFamilies } from '../../../src/scene/ranges.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { rangeNumbers } from '../../../src/topics/range-race/numbers.ts';
import { rangeWords } from '../../../src/topics/range-race/words.ts';
import { loft, loftWith } from '../../comparison/entries.ts';
import { pair } from '../odd-comparisons.ts';

const work = { friction: 0.25, slicePush: 3, contactDepthMm: 8 };
const rooms = roomOfFamilies(work);

test('the pocket rooms are the sums one can do in the head', () => {
  // Grain sizes of P120 and P2000: ISO 6344-2 and -3.
  expect(roomIn(rooms.quick, 'finish').factor).toBeCloseTo(125 / 10.3, 6);
  expect(roomIn(rooms.quick, 'steel').factor).toBeCloseTo((64 / 56) ** 2 * 2 ** (15 / 20), 9);
  const grind = roomIn(rooms.quick, 'geometry').factor / ((25 / 12) ** 2 * 4);
  // A deeper or higher grind is worth about a tenth each: common practice, no source.
  expect(grind).toBeGreaterThan(1.05);
  expect(grind).toBeLessThan(1.3);
});

test('the careful room of steel is the ratio of two cards of the published regression, to the power assumed', () => {
  // Thomas 2018: mm = −157 + 15.8 HRC − 17.8 A + 11.2 CrC, A = 30° included, written out from the printed coefficients.
  const rich = -157 + 15.8 * 64 - 17.8 * 30 + 11.2 * 15;
  const plain = -157 + 15.8 * 56 - 17.8 * 30;
  // Below 200 mm the line bends to 200·exp((L − 200)/200), and the power is 1.5 (both assumed).
  const bent = plain < 200 ? 200 * Math.exp((plain - 200) / 200) : plain;
  expect(roomIn(rooms.careful, 'steel').factor).toBeCloseTo((rich / bent) ** 1.5, 9);
  const strokes = roomOfFamilies({ ...work, outcome: 'fixed-strokes' });
  expect(roomIn(strokes.careful, 'steel').factor).toBeCloseTo(rich / bent, 9);
  expect(cardCutMm({ hrc: 64, includedAngleDeg: 30, carbideVolPercent: { CrC: 15 } })).toBeCloseTo(rich, 6);
});

test('the careful room of finish is the grain ratio to the power assumed', () => {
  const ratio = grainSizeUm(ordinary.finish.worst.finish) / grainSizeUm(ordinary.finish.best.finish);
  expect(roomIn(rooms.careful, 'finish').factor).toBeCloseTo(ratio ** -0.3, 9);
  expect(
    roomIn(roomOfFamilies({ ...work, assumptions: { finishExponent: 0 } }).careful, 'finish').factor,
  ).toBe(1);
});

// Own calculation from the forms written out in the model's own text, friction 0.25 and slice/push 3.
test('geometry and finish have well over a hundred to one by the quick sum, and about twenty by the careful estimate', () => {
  expect(groundRoom(rooms.quick).factor).toBeGreaterThan(150);
  expect(groundRoom(rooms.careful).factor).toBeGreaterThan(15);
  expect(groundRoom(rooms.careful).factor).toBeLessThan(25);
});

test('steel has more room than geometry alone unless the factors multiply, and less than geometry and finish together', () => {
  const [geometry, steel] = [roomIn(rooms.careful, 'geometry'), roomIn(rooms.careful, 'steel')];
  expect(geometry.factor).toBeGreaterThan(steel.factor);
  expect(geometry.added).toBeLessThan(steel.factor);
  expect(geometry.toLimit).toBeLessThan(steel.factor);
  const ground = groundRoom(rooms.careful);
  for (const room of [ground.factor, ground.added, ground.toLimit])
    expect(room).toBeGreaterThan(steel.factor);
});

test('the readings disagree about finish alone against steel', () => {
  expect(roomIn(rooms.quick, 'finish').factor).toBeGreaterThan(roomIn(rooms.quick, 'steel').factor);
  expect(roomIn(rooms.careful, 'finish').factor).toBeLessThan(roomIn(rooms.careful, 'steel').factor);
});

test('the angle that draws level, put back, is level; the steel to remove follows from the cotangents', () => {
  const scene = sceneOf({ ...loft(), subject: 'dunlin', baseline: 'plover' });
  const { steel, whole } = drawLevel(scene);
  const value = steel.answer.value ?? Number.NaN;
  const put = {
    ...steel.comparison,
    knives: steel.comparison.knives.map((knife) =>
      knife.id === 'plover' ? { ...knife, angleDeg: value } : knife,
    ),
  };
  expect(compare(put).rows.find(({ knife }) => knife === 'dunlin')?.multiplied).toBeCloseTo(1, 9);
  const cot = (deg: number) => 1 / Math.tan((deg * Math.PI) / 180);
  // Two right-angled slivers, each half the thickness wide: plane trigonometry.
  expect(steel.removedMm2).toBeCloseTo(2 * 0.5 * 0.3 * 0.3 * (cot(value) - cot(24)), 9);
  // Side load to roll goes between tan and tan² of the angle: derived, bending of a wedge.
  expect(steel.rolling?.low).toBeCloseTo((cot(24) / cot(value)) ** 2, 9);
  expect(steel.rolling?.high).toBeCloseTo(cot(24) / cot(value), 9);
  // Dunlin leads by geometry and finish as well: no angle of Plover's makes that up.
  expect(whole.answer).toEqual({ value: null, note: 'not in reach' });
});

test('the steel alone is what the comparison says of it', () => {
  const scene = sceneOf({ ...loft(), subject: 'dunlin', baseline: 'plover' });
  const row = compare(scene.comparison).rows.find(({ knife }) => knife === 'dunlin');
  expect(1 / drawLevel(scene).steel.now).toBeCloseTo(row?.families.steel ?? Number.NaN, 9);
});

const said = (name: string, entry = loft()) => (rangeWords[name]?.(sceneOf(entry)) ?? []).join(' ');

test('opposed comparisons are told opposed things', () => {
  const forth = said('range-race', { ...loft(), subject: 'dunlin', baseline: 'plover' });
  const back = said('range-race', { ...loft(), subject: 'plover', baseline: 'dunlin' });
  expect(forth).not.toBe(back);
  expect(forth).toContain('in favour of Dunlin');
  expect(back).toContain('in favour of Dunlin');
  expect(said('draw-level', { ...loft(), subject: 'plover', baseline: 'dunlin' })).toContain('it is ahead');
});

test('an angle below the floor and one out of reach are said to be so', () => {
  const steel = (hrc: number, MC: number) => ({ angle: { deg: 8 }, hrc, carbide: { volPercent: { MC } } });
  expect(said('draw-level', pair(steel(61, 3), steel(58, 1)))).toContain('below the floor');
  expect(said('draw-level', { ...loft(), subject: 'dunlin', baseline: 'plover' })).toContain('not in reach');
  const same = { ...loftWith('dunlin', { hrc: 57, carbide: { volPercent: { CrC: 4 } } }) };
  expect(said('draw-level', { ...same, subject: 'dunlin', baseline: 'plover' })).toContain('level already');
});

test('every number of the race is a number in every pair of the loft', () => {
  const ids = loft().knives.map(({ id }) => id);
  for (const subject of ids) {
    for (const baseline of ids.filter((id) => id !== subject)) {
      const scene = sceneOf({ ...loft(), subject, baseline });
      for (const [name, read] of Object.entries(rangeNumbers)) {
        if (name.startsWith('range.')) expect(read(scene), name).toMatch(/^×[\d.]+$/);
        if (name.startsWith('level.')) expect(read(scene), name).not.toMatch(/NaN|undefined|not known/);
      }
    }
  }
});
