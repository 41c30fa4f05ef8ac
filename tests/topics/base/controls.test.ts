import { describe, expect, test } from 'vitest';
import { controls, knifeOf, showControl } from '../../../src/topics/base/controls.ts';
import type { Control } from '../../../src/topics/base/controls.ts';
import { differentControls } from '../../../src/topics/are-they-different/controls.ts';
import type { AngleEntry, ComparisonEntry, Placed } from '../../../src/comparison/entry.ts';
import { sureControls } from '../../../src/topics/how-sure/controls.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const named = (id: string, all: Record<string, Control> = controls): Control => {
  const control = all[id];
  if (!control) throw new Error(`no control ${id}`);
  return control;
};
const angled = (angle: AngleEntry): ComparisonEntry => loftWith('dunlin', { angle });
const thick = (edgeMm: Placed): ComparisonEntry => loftWith('dunlin', { edgeMm });
const angleOf = (entry: ComparisonEntry): AngleEntry => knifeOf(entry, 'subject').angle;
const edgeOf = (entry: ComparisonEntry): Placed => knifeOf(entry, 'subject').edgeMm;

// 2 arcsin(0.5/(2·1.2)) = 24.05° included (plain trigonometry of the bevel), half of it per side.
const caliper: AngleEntry = { bevelMm: 0.5, slantWidthMm: 1.2 };
const perSide = 12.02;

describe('the slider of the edge angle', () => {
  const slider = named('subject.angle');

  test.each<[string, AngleEntry, number]>([
    ['a number', { deg: 15 }, 15],
    ['a middle with its ±', { deg: { value: 16, plusMinus: 1 } }, 16],
    ['the middle of a range', { deg: { unknown: true, low: 12, high: 20 } }, 16],
    ['the mean along the edge', { deg: { heel: 18, middle: 15, tip: 12 } }, 15],
    ['what the caliper read', caliper, perSide],
  ])('stands at %s', (_, angle, deg) => {
    expect(slider.read(angled(angle))).toBeCloseTo(deg, 2);
  });

  test.each<[string, AngleEntry, AngleEntry]>([
    ['a number', { deg: 15 }, { deg: 13 }],
    ['a ± that was entered', { deg: { value: 16, plusMinus: 1 } }, { deg: { value: 13, plusMinus: 1 } }],
    ['what was not known', { deg: { unknown: true, low: 12, high: 20 } }, { deg: 13 }],
    ['readings along the edge', { deg: { heel: 18, middle: 15, tip: 12 } }, { deg: 13 }],
    ['caliper readings', caliper, { deg: 13 }],
  ])('moves %s', (_, angle, moved) => {
    expect(angleOf(slider.write(angled(angle), 13))).toEqual(moved);
  });
});

test.each<[string, Placed, number, Placed]>([
  ['a number', 0.3, 0.3, 0.5],
  ['a middle with its ±', { value: 0.3, plusMinus: 0.05 }, 0.3, { value: 0.5, plusMinus: 0.05 }],
  ['readings along the edge', { heel: 0.5, middle: 0.4, tip: 0.3 }, 0.4, 0.5],
])('the slider of the thickness takes %s', (_, edgeMm, stands, moved) => {
  const slider = named('subject.edge');
  expect(slider.read(thick(edgeMm))).toBeCloseTo(stands, 12);
  expect(edgeOf(slider.write(thick(edgeMm), 0.5))).toEqual(moved);
});

describe('the slider of the angle’s ±', () => {
  const slider = named('subject.angle.plusMinus', sureControls);

  test.each<[string, AngleEntry, number]>([
    ['none where none was entered', { deg: 15 }, 0],
    ['the one entered', { deg: { value: 16, plusMinus: 1.5 } }, 1.5],
    ['half the range of what is not known', { deg: { unknown: true, low: 12, high: 20 } }, 4],
    ['half the spread along the edge', { deg: { heel: 18, middle: 15, tip: 13 } }, 2.5],
    ['none of a caliper without one', caliper, 0],
  ])('shows %s', (_, angle, plusMinus) => {
    expect(slider.read(angled(angle))).toBeCloseTo(plusMinus, 12);
  });

  test('of a caliper is what its own ± does to the angle', () => {
    // By hand: arcsin(0.52/2.36) − arcsin(0.48/2.44) = 12.730° − 11.345°, half of it.
    expect(slider.read(angled({ ...caliper, plusMinus: 0.02 }))).toBeCloseTo(0.69, 2);
  });

  test.each<[string, AngleEntry, number, AngleEntry]>([
    ['a number gets one', { deg: 15 }, 1, { deg: { value: 15, plusMinus: 1 } }],
    [
      'its shape stays',
      { deg: { value: 35, plusMinus: 1, shape: 'normal' }, perSide: true },
      2,
      { deg: { value: 35, plusMinus: 2, shape: 'normal' }, perSide: true },
    ],
    ['at nothing it is exact', { deg: { value: 16, plusMinus: 1 } }, 0, { deg: 16 }],
    [
      'readings along the edge become their mean',
      { deg: { heel: 18, middle: 15, tip: 12 } },
      1,
      { deg: { value: 15, plusMinus: 1 } },
    ],
  ])('%s', (_, angle, value, written) => {
    expect(angleOf(slider.write(angled(angle), value))).toEqual(written);
  });

  test('of caliper readings keeps the angle they gave, per side', () => {
    const angle = angleOf(slider.write(angled(caliper), 1));
    expect(angle).toMatchObject({ deg: { plusMinus: 1 }, perSide: true });
    expect(named('subject.angle').read(angled(angle))).toBeCloseTo(perSide, 2);
  });
});

test('the slider of the thickness’ ± takes readings along the edge', () => {
  const slider = named('subject.edge.plusMinus', sureControls);
  const along = thick({ heel: 0.5, middle: 0.4, tip: 0.3 });
  expect(slider.read(along)).toBeCloseTo(0.1, 12);
  expect(edgeOf(slider.write(along, 0))).toBeCloseTo(0.4, 12);
});

test('an assumption left out is the model’s own, and set back to it is left out again', () => {
  const finish = named('finishExponent');
  const { finishExponent: _own, ...others } = loft().assumptions;
  const bare = { ...loft(), assumptions: others };
  // The middle value of the model’s table of parameters.
  expect(finish.read(bare)).toBe(0.3);
  expect(finish.write(bare, 0.5).assumptions).toEqual({ ...others, finishExponent: 0.5 });
  expect(finish.write(finish.write(bare, 0.5), 0.3).assumptions).toEqual(others);
  const residual = named('residualCv', sureControls);
  expect(residual.read(bare)).toBe(0.1);
  expect(residual.read(residual.write(bare, 0.2))).toBe(0.2);
});

test('a percentage beyond the chain fills it with effects of nothing', () => {
  const third = named('percentage.3');
  const none = { ...loft(), faceValues: null };
  expect(third.read(none)).toBe(0);
  expect(third.write(none, 40).faceValues).toEqual([0, 0, 40]);
  expect(third.write({ ...none, faceValues: [10, 20, 30] }, -5).faceValues).toEqual([10, 20, -5]);
});

test.each([
  ['percentage.1', 40, '+40%'],
  ['percentage.1', 0, '0%'],
  ['percentage.1', -25, '−25%'],
  ['subject.angle', 14.5, '14.5°'],
])('%s at %f reads %s', (id, value, text) => {
  expect(showControl(named(id), value, loft())).toBe(text);
});

test('a choice is said by what is chosen', () => {
  const control = named('chosen.subject', differentControls);
  expect(showControl(control, control.read(loft()), loft())).toBe('Dunlin');
});

test('a role no knife has is refused by its name', () => {
  const entry = { ...loft(), subject: 'heron' };
  expect(() => named('subject.angle').read(entry)).toThrow('subject heron is none of: plover, dunlin');
});
