import { expect, test } from 'vitest';
import { cardCutMm, compare, grainSizeUm } from '../../../src/model/index.ts';
import { drawLevel } from '../../../src/scene/draw-level.ts';
import { groundRoom, ordinary, roomIn, roomOfFamilies } from '../../../src/scene/ranges.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { rangeNumbers } from '../../../src/topics/range-race/numbers.ts';
import { rangeWords } from '../../../src/topics/range-race/words.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

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

test('the close room of steel is the ratio of two cards of the published regression', () => {
  // Thomas 2018: mm = −157 + 15.8 HRC − 17.8 A + 11.2 CrC, A = 30° included, written out from the printed coefficients.
  const rich = -157 + 15.8 * 64 - 17.8 * 30 + 11.2 * 15;
  const plain = -157 + 15.8 * 56 - 17.8 * 30;
  expect(roomIn(rooms.careful, 'steel').factor).toBeCloseTo(rich / plain, 9);
  expect(cardCutMm({ hrc: 64, includedAngleDeg: 30, carbideVolPercent: { CrC: 15 } })).toBeCloseTo(rich, 6);
});

test('the close room of finish is the grain ratio to the power assumed', () => {
  const ratio = grainSizeUm(ordinary.finish.worst.finish) / grainSizeUm(ordinary.finish.best.finish);
  expect(roomIn(rooms.careful, 'finish').factor).toBeCloseTo(ratio ** -0.3, 9);
  expect(
    roomIn(roomOfFamilies({ ...work, assumptions: { finishExponent: 0 } }).careful, 'finish').factor,
  ).toBe(1);
});

test('what is ground has well over a hundred to one by the quick sum and about twenty by the careful one', () => {
  expect(groundRoom(rooms.quick).factor).toBeGreaterThan(150);
  expect(groundRoom(rooms.careful).factor).toBeGreaterThan(15);
  expect(groundRoom(rooms.careful).factor).toBeLessThan(25);
  // Each factor at its own end, friction taken as already effective: of the order of 5 and of 160 (assumed ranges).
  const ends = groundRoom(roomOfFamilies({ friction: 0.25 }).careful);
  expect(ends.low).toBeGreaterThan(3);
  expect(ends.low).toBeLessThan(8);
  expect(ends.high).toBeGreaterThan(100);
  expect(ends.high).toBeLessThan(250);
});

test('steel has two to three and a half by either reading', () => {
  for (const reading of ['quick', 'careful'] as const) {
    const steel = roomIn(rooms[reading], 'steel');
    expect(steel.low).toBeGreaterThan(2);
    expect(steel.high).toBeLessThan(3.5);
  }
});

test('the readings disagree about finish alone against steel', () => {
  expect(roomIn(rooms.quick, 'finish').factor).toBeGreaterThan(roomIn(rooms.quick, 'steel').factor);
  expect(roomIn(rooms.careful, 'finish').factor).toBeLessThan(roomIn(rooms.careful, 'steel').factor);
});

test('shares of force given for another baseline do not move the race', () => {
  const shares = { rivalShares: { wedge: 0.9, thickness: 0.05, grind: 0.05 } };
  expect(roomOfFamilies({ ...work, assumptions: shares })).toEqual(rooms);
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
  expect(compare(put).rows.find(({ knife }) => knife === 'dunlin')?.product).toBeCloseTo(1, 9);
  const cot = (deg: number) => 1 / Math.tan((deg * Math.PI) / 180);
  // Two right-angled slivers, each half the thickness wide: plane trigonometry.
  expect(steel.removedMm2).toBeCloseTo(2 * 0.5 * 0.3 * 0.3 * (cot(value) - cot(24)), 9);
  // Side load to roll goes as tan² of the angle: derived, bending of a wedge.
  expect(steel.rolling).toBeCloseTo((cot(24) / cot(value)) ** 2, 9);
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
  expect(forth).toContain('speaks for Dunlin');
  expect(back).toContain('speaks for Dunlin');
  expect(said('draw-level', { ...loft(), subject: 'plover', baseline: 'dunlin' })).toContain('it is ahead');
});

test('an angle below the floor and one out of reach are said to be so', () => {
  expect(said('draw-level', { ...loft(), subject: 'dunlin', baseline: 'avocet' })).toContain(
    'below the floor',
  );
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
