import { describe, expect, test } from 'vitest';
import { assumptionFields } from '../../src/compare/assumption-fields.ts';
import { isUnknown, parameters, predict } from '../../src/model/index.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { sureOf } from '../../src/scene/sure.ts';
import { toModel } from '../../src/comparison/to-model.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { loft } from '../comparison/entries.ts';

type Name = keyof typeof assumptionFields;
const names = Object.keys(assumptionFields) as Name[];
const typed = (name: Name, text: string, entry: ComparisonEntry = loft()): ComparisonEntry => {
  const written = assumptionFields[name].write(entry, text);
  if (!written.ok) throw new Error(written.message);
  return written.entry;
};
const shown = (name: Name, text: string): string => assumptionFields[name].show(typed(name, text));
/** A value that is neither the field's own nor at an end of its range. */
const another = (name: Name): string =>
  name === 'angleExponent' || name === 'limitPower'
    ? '1.2'
    : name === 'structureWeights'
      ? '2 : 1 : 1'
      : '0.2';
/** The fields of one number: they may be left open. */
const numbers = names.filter((name) => name !== 'structureWeights');
/** ln of the upper end over the lower, of Dunlin against Plover, in one structure: between them a wider ± may narrow it. */
const width = (entry: ComparisonEntry, structure: [number, number, number]): number => {
  const comparison = toModel(entry);
  const one = {
    ...comparison,
    assumptions: { ...comparison.assumptions, structureWeights: structure },
  };
  const found = predict(one, { samples: 4000, seed: 1 }).find(({ knife }) => knife === 'dunlin');
  if (!found) throw new Error('no Dunlin');
  return Math.log(found.high / found.low);
};

describe.each(names)('%s', (name) => {
  test('what is shown, typed again, changes nothing', () => {
    for (const text of [assumptionFields[name].show(loft()), '', another(name)]) {
      const entry = typed(name, text);
      expect(assumptionFields[name].write(entry, assumptionFields[name].show(entry))).toEqual({
        ok: true,
        entry,
      });
      expect(validate(entry)).toEqual({ ok: true, entry });
    }
    expect(typed(name, assumptionFields[name].show(loft()), typed(name, another(name)))).toEqual(loft());
  });

  test('refuses what is no number, and what lies outside, and says why', () => {
    expect(assumptionFields[name].write(loft(), 'l2')).toMatchObject({ ok: false });
    const outside = assumptionFields[name].write(loft(), '500');
    const checked = outside.ok ? validate(outside.entry) : undefined;
    const said = outside.ok ? checked?.ok === false && checked.problems[0]?.message : outside.message;
    expect(said).toMatch(/500.* is not (?:between|three numbers)/);
  });
});

test.each(numbers)('%s left empty is not known: it says so, and the band is not narrower for it', (name) => {
  expect(shown(name, '')).toMatch(/^not known \(/);
  expect(typed(name, '')).toEqual(typed(name, '?'));
  const exact = name === 'angleExponent' ? '1.2' : '0';
  const structure: [number, number, number] = ['wedgingShare', 'limitPower'].includes(name)
    ? [0, 0, 1]
    : [1, 0, 0];
  expect(width(typed(name, ''), structure)).toBeGreaterThanOrEqual(width(typed(name, exact), structure));
  expect(width(typed(name, ''), structure)).toBeGreaterThanOrEqual(width(loft(), structure) - 1e-9);
});

test('the weights of the structures are three numbers, not all 0, and a third each if left empty', () => {
  expect(typed('structureWeights', '2 : 1 : 0').assumptions.structureWeights).toEqual([2, 1, 0]);
  expect(typed('structureWeights', '1:0:0').assumptions.structureWeights).toEqual([1, 0, 0]);
  expect(typed('structureWeights', '')).toEqual(loft());
  for (const text of ['1 : 2', '1 : 2 : 3 : 4', '0 : 0 : 0', '1 : −1 : 1', 'a : b : c'])
    expect(assumptionFields.structureWeights.write(loft(), text)).toMatchObject({ ok: false });
});

test('with every ± at 0 and every assumption fixed the band is the careful estimate itself', () => {
  const exact: Partial<Record<Name, string>> = {
    angleExponent: '1.3',
    thicknessExponent: '0.5',
    finishExponent: '0.3',
    hardnessExponent: '1.2',
    residualCv: '0',
    lifeExponent: '1.5',
    wedgingShare: '0.35',
    limitPower: '1.5',
    structureWeights: '1 : 0 : 0',
  };
  const assumed = (Object.entries(exact) as [Name, string][]).reduce(
    (entry, [name, text]) => typed(name, text, entry),
    loft(),
  );
  const entry: ComparisonEntry = {
    ...assumed,
    friction: 0.25,
    knives: assumed.knives.map((knife, index) => ({
      ...knife,
      angle: { deg: 14 + 3 * index },
      edgeMm: 0.3,
      hrc: 59,
      carbide: { volPercent: { CrC: 4 + index } },
    })),
  };
  const scene = sceneOf(entry);
  const { low, median, high, matters } = sureOf(scene);
  for (const end of [low, median, high]) expect(end).toBeCloseTo(scene.row.careful.multiplied, 9);
  expect(matters).toEqual([]);
  // One thing left open again is all that the band is made of.
  const open = sureOf(sceneOf(typed('finishExponent', '', entry)));
  expect(open.high).toBeGreaterThan(open.low);
  expect(open.matters).toHaveLength(1);
});

test('a ± of one’s own and an exact value are kept as typed', () => {
  expect(typed('finishExponent', '0.3 ± 0.1').assumptions.finishExponent).toEqual({
    value: 0.3,
    plusMinus: 0.1,
  });
  expect(typed('finishExponent', '0,4').assumptions.finishExponent).toBe(0.4);
  expect(typed('residualCv', '15').assumptions.residualCv).toBe(0.15);
  expect(typed('residualCv', '15 ± 5%').assumptions.residualCv).toEqual({ value: 0.15, plusMinus: 0.05 });
  expect(typed('gaugeAngle', '± 1').gaugeBias).toEqual({ angleDeg: 1 });
  expect(typed('gaugeAngle', '0', typed('gaugeAngle', '1')).gaugeBias).toBeUndefined();
});

test('the ranges that stand for not known are the model’s stated ones', () => {
  const { finishExponent = 0 } = typed('finishExponent', '').assumptions;
  expect(isUnknown(finishExponent) && [finishExponent.low, finishExponent.high]).toEqual([
    parameters.finishExponent.low,
    parameters.finishExponent.high,
  ]);
});
