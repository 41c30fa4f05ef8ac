import { describe, expect, test } from 'vitest';
import { drawLevel } from '../../../src/scene/draw-level.ts';
import { fileName } from '../../../src/comparison/saved/file-name.ts';
import { levelBandWords } from '../../../src/topics/cost/level-band.ts';
import { rangeNumbers } from '../../../src/topics/range-race/numbers.ts';
import { rangeWords } from '../../../src/topics/range-race/words.ts';
import { rangeWorked } from '../../../src/topics/range-race/worked.ts';
import { roomIn, roomOfFamilies } from '../../../src/scene/ranges.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { codeSaid } from '../../../src/compare/sheet/words.ts';
import { pair } from '../odd-comparisons.ts';

const described = (of: string, entry: ComparisonEntry): string =>
  (rangeWords[of]?.(sceneOf(entry)) ?? []).join(' ');

/** Finish that counts for nothing, geometry damped as far as it goes: the steel is then the larger room. */
const damped = pair(
  { finish: { scale: 'FEPA-P', grit: 220 } },
  {},
  {
    assumptions: { finishExponent: 0, thicknessExponent: 0, angleExponent: 0.8262 },
    friction: 0.25,
    slicePush: 0,
  },
);

describe('the room of a family', () => {
  test('without an exponent a finish has none, and no share of it is used', () => {
    // d^0 is 1 whatever the grain.
    expect(roomIn(roomOfFamilies(sceneOf(damped).comparison).careful, 'finish').factor).toBe(1);
    expect(described('ranges', damped)).toMatch(/less than steel by the careful estimate\.$/);
  });

  test('of no family there is', () => {
    expect(() => roomIn([], 'steel')).toThrow('family steel is not among the rooms');
  });

  test('of finish can be as large as that of steel', () => {
    // The finish’s room goes as its exponent: ln room = e ln(125/10.3), P120 over P2000 (FEPA, ISO 6344).
    const steel = roomIn(roomOfFamilies(sceneOf(pair({})).comparison).careful, 'steel').factor;
    const finishExponent = Math.log(steel) / Math.log(125 / 10.3);
    expect(described('ranges', pair({}, {}, { assumptions: { finishExponent } }))).toMatch(
      /as much as steel by the careful estimate\.$/,
    );
  });

  test('of steel can reach that of the other two at its ends, and pass it where the forces add', () => {
    const { careful } = roomOfFamilies(sceneOf(damped).comparison);
    const [geometry, finish, steel] = [
      roomIn(careful, 'geometry'),
      roomIn(careful, 'finish'),
      roomIn(careful, 'steel'),
    ];
    const said = described('ranges-doubt', damped);
    expect(said.includes('then the race is open')).toBe(geometry.low * finish.low <= steel.high);
    expect(said).toMatch(/if the forces add, less than steel/i);
    expect(geometry.added * finish.added).toBeLessThan(steel.factor);
    expect(said).toContain('then the race is open');
  });
});

describe('no angle at which the baseline draws level', () => {
  // Steel at both ends of what is used, geometry that the angle alone cannot make up.
  const far = pair(
    { hrc: 65, carbide: { volPercent: { MC: 20 } } },
    { hrc: 51, carbide: { volPercent: {} } },
  );

  test('is said as such, as a number, in its example and of its band', () => {
    const scene = sceneOf(far);
    expect(described('draw-level', far)).toMatch(/level is not in reach: no angle from 4° to 45° does it/);
    expect(Object.values(rangeNumbers).map((number) => number(scene))).toContain('no angle');
    expect(
      Object.values(rangeWorked)
        .map((work) => work(scene).givens)
        .join(' '),
    ).toContain('and no angle at which it draws level with the steel of Dunlin');
    expect(levelBandWords(scene).join(' ')).toMatch(
      /Where there is an angle of drawing level, it lies between .* In \d+% of the tries no angle does it\./,
    );
  });

  test('in any try is said too', () => {
    const exact = {
      friction: 0.25,
      assumptions: {
        angleExponent: 1.3,
        thicknessExponent: 0.5,
        finishExponent: 0.3,
        residualCv: 0,
        lifeExponent: 2,
        wedgingShare: 0.35,
        limitPower: 1.5,
      },
    };
    const farther = pair(
      { hrc: 65, carbide: { volPercent: { MC: 40 } } },
      { hrc: 51, carbide: { volPercent: {} } },
      exact,
    );
    expect(levelBandWords(sceneOf(farther)).at(-1)).toBe('No try has an angle at which the two draw level.');
  });
});

test('an angle of drawing level below the floor is named as such in its example', () => {
  const steel = (hrc: number, MC: number) => ({ angle: { deg: 8 }, hrc, carbide: { volPercent: { MC } } });
  const scene = sceneOf(pair(steel(61, 3), steel(58, 1)));
  const { answer } = drawLevel(scene).steel;
  // The floor of 58 HRC is at tan 5° √(697/653), or 5.165°; 697 and 653 HV are 60 and 58 HRC (ASTM E140, table 1).
  expect(answer.value).toBeLessThan(5.165);
  expect(rangeWorked['level-cost']?.(scene).givens).toMatch(
    /to be taken to the 5\.0\d+° at which it draws level with the steel of Dunlin \(below the floor\)\.$/,
  );
});

test.each([
  ['The loft’s two!', 'the-loft-s-two.json'],
  ['***', 'comparison.json'],
  ['Ножи 2', 'ножи-2.json'],
])('a file of “%s” is named %s', (title, name) => {
  expect(fileName(title, 'json')).toBe(name);
});

test('what a code holds, and what it does not, is said', () => {
  expect(codeSaid(true)).toContain('opens this comparison');
  expect(codeSaid(false)).toContain('longer than a code holds');
});
