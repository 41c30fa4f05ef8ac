import { describe, expect, test } from 'vitest';
import { loft } from '../../../src/components/scene.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { Scene } from '../../../src/scene/scene.ts';
import { validate } from '../../../src/comparison/validate.ts';
import {
  askedFirst,
  asEntered,
  putInto,
  ratioNow,
  takesOf,
} from '../../../src/topics/what-it-takes/values.ts';
import {
  askedSaid,
  bandCell,
  canPut,
  putDone,
  putSaid,
  takeCells,
} from '../../../src/topics/what-it-takes/words.ts';
import { loftWith } from '../../comparison/entries.ts';
import { oddComparisons } from '../odd-comparisons.ts';

const sceneNamed = (name: string): Scene => {
  const checked = validate(oddComparisons[name]);
  if (!checked.ok) throw new Error(name);
  return sceneOf(checked.entry);
};

describe.each(Object.keys(oddComparisons))('of %s', (name) => {
  const scene = sceneNamed(name);
  const first = askedFirst(scene);
  const now = ratioNow(asEntered(scene), first);

  // Level, and a small step from here.
  test.each([1, now * 1.1])('every value put in gives the multiple %s', (target) => {
    const asked = { ...first, target };
    for (const take of takesOf(scene, asked)) {
      const said = [
        askedSaid(scene, asked),
        ...takeCells(scene, asked, take),
        putSaid(scene, take),
        putDone(scene, asked, take.attribute),
      ].join(' ');
      expect(said).not.toMatch(/NaN|Infinity|undefined|null|not known/);
      if (!canPut(take)) continue;
      const checked = validate(putInto(scene, asked, take.attribute, take.answer.value ?? 0));
      if (!checked.ok) throw new Error(`${name}, ${take.attribute}: refused`);
      const then = sceneOf(checked.entry);
      expect(ratioNow(asEntered(then), asked) / target, take.attribute).toBeCloseTo(1, 4);
    }
  });
});

const entry = loft();
const scene = sceneOf(entry);
const asked = { knife: 'plover', against: 'curlew', target: 1 };

test('what is not in reach says how near the attribute comes, and has nothing to put in', () => {
  const far = { ...asked, target: 40 };
  const takes = takesOf(scene, far);
  expect(takes.every((take) => !canPut(take))).toBe(true);
  const [angle] = takes;
  expect(angle && takeCells(scene, far, angle)[2]).toMatch(
    /^out of reach: 4° comes to ×[\d.]+, below the floor$/,
  );
});

test('an angle below the floor is named as such', () => {
  const takes = takesOf(scene, { ...asked, target: 2.4 });
  const said = takes.map((take) => takeCells(scene, asked, take)[2]);
  expect(said.join('\n')).toContain('below the floor: the edge breaks away');
});

test('a value a comparison does not hold is not in reach either', () => {
  // The solver looks further than the fields: 0.003 mm behind the edge is no knife.
  const level = askedFirst(scene);
  const thin = takesOf(scene, level).find(({ attribute }) => attribute === 'edgeMm');
  if (!thin) throw new Error('no row of the thickness');
  expect(takeCells(scene, level, thin)[2]).toContain('a comparison takes 0.01 mm to 5 mm');
  expect(canPut(thin)).toBe(false);
});

test('a finish is said with the nearest grade of the knife’s own scale', () => {
  const coarser = { ...asked, target: ratioNow(scene.comparison, asked) * 1.05 };
  const finish = takesOf(scene, coarser).find(({ attribute }) => attribute === 'finish');
  expect(finish && takeCells(scene, coarser, finish)[2]).toMatch(/µm, nearest grade FEPA-P P\d+ \(/);
});

test('lengths are said in the unit of the comparison', () => {
  const thou = sceneOf({ ...entry, lengthUnit: 'thou' });
  const [, edge] = takesOf(thou, asked);
  // 0.60 mm over 0.0254 mm.
  expect(edge && takeCells(thou, asked, edge)[1]).toBe('23.6 thou');
});

test('what is made equal does not count, and that is said', () => {
  const equalised = sceneOf({ ...entry, madeEqual: ['angleDeg', 'hrc'] });
  expect(takesOf(equalised, asked)).toEqual(takesOf(scene, asked));
  expect(askedSaid(equalised, asked)).toContain('before anything is made equal');
});

test('a band says where it leaves what a comparison takes', () => {
  const band = { low: 0.004, median: 0.006, high: 0.02, inReach: 1, belowFloor: 0 };
  expect(bandCell(scene, 'edgeMm', band)).toBe('0.004 mm to 0.02 mm; partly beyond what a comparison takes');
  expect(bandCell(scene, 'edgeMm', { ...band, high: 0.009 })).toContain('; beyond what a comparison takes');
});

// 61 HRC is 720 HV (ASTM E140): the floor is 4.84° to 4.92°, tan 5°·(697/720)^k, and only its low end counts as broken.
test('an angle between the ends of the floor is not yet said to break away', () => {
  const dunlin = { knife: 'dunlin', against: 'plover' };
  const said = (deg: number): string => {
    const at = sceneOf(loftWith('dunlin', { angle: { deg } }));
    // Asked as much as that angle gives, it takes that angle.
    const question = { ...dunlin, target: ratioNow(at.comparison, { ...dunlin, target: 1 }) };
    const take = takesOf(scene, question).find(({ attribute }) => attribute === 'angleDeg');
    return take ? takeCells(scene, question, take)[2] : '';
  };
  expect(said(4.88)).not.toContain('below the floor');
  expect(said(4.8)).toContain('below the floor');
});

test('knives that only making equal made possible are refused by name', () => {
  const [plover, dunlin] = entry.knives;
  if (!plover || !dunlin) throw new Error('two knives are needed');
  // A microbevel below its own bevel is none; made equal to 14° the bevel lies below it.
  const odd = sceneOf({
    ...entry,
    knives: [plover, dunlin].map((knife) =>
      knife.id === 'plover' ? { ...knife, angle: { deg: 24 }, microbevelDeg: 20 } : knife,
    ),
    baseline: 'dunlin',
    subject: 'plover',
    madeEqual: ['angleDeg'],
  });
  expect(() => takesOf(odd, askedFirst(odd))).toThrow(RangeError);
});

test('a band says how often there is a value at all', () => {
  const band = { low: 12, median: 13, high: 14, inReach: 0.8, belowFloor: 0.25 };
  expect(bandCell(scene, 'angleDeg', band)).toBe('12° to 14°; only 80% of the tries; below the floor in 25%');
  expect(bandCell(scene, 'hrc', { ...band, low: null, median: null, high: null, inReach: 0 })).toBe(
    'none of the tries',
  );
});
