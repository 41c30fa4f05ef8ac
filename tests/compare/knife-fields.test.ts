import { describe, expect, test } from 'vitest';
import { knifeInputNamed, knifeInputs } from '../../src/compare/knife-inputs.ts';
import { workFieldNamed } from '../../src/compare/work-fields.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { KnifeEntry, ComparisonEntry } from '../../src/comparison/entry.ts';
import { sureOf } from '../../src/scene/sure.ts';
import { carbidesByDesignation, rangeOf } from '../../src/model/index.ts';
import { loft } from '../comparison/entries.ts';

const knifeOf = ({ knives }: ComparisonEntry, id: string): KnifeEntry => {
  const found = knives.find((knife) => knife.id === id);
  if (!found) throw new Error(`the loft has no ${id}`);
  return found;
};

/** What must be chosen first for a field to have a meaning. */
const chosen = (name: string): [field: string, choice: string][] => [
  ['steel', 'volume'],
  ...(name.startsWith('bevel') ? [['angleWay', 'width'] as [string, string]] : []),
  ...(name === 'radius' ? [['grindForm', 'hollow'] as [string, string]] : []),
];

/** The loft with one of the fields of Dunlin written into, after what it needs. */
function written(name: string, text: string): ComparisonEntry {
  const entry = loft();
  const dunlin = [...chosen(name), [name, text] as const].reduce(
    (knife, [field, typed]) => {
      const read = knifeInputNamed(field).write(knife, typed, entry);
      if (!read.ok) throw new Error(read.message);
      return read.knife;
    },
    knifeOf(entry, 'dunlin'),
  );
  return { ...entry, knives: entry.knives.map((knife) => (knife.id === 'dunlin' ? dunlin : knife)) };
}

/** High over low in one structure: across the three a wider ± may narrow the band. */
const width = (entry: ComparisonEntry): number => {
  const { low, high } = sureOf(
    sceneOf({ ...entry, assumptions: { ...entry.assumptions, structureWeights: [1, 0, 0] } }),
  );
  return high / low;
};

/** Fields whose text the model can take as not known. */
const clearable = [
  'angle',
  'bevelThickness',
  'bevelSide',
  'edge',
  'spine',
  'grindHeight',
  'radius',
  'hrc',
  ...Object.keys(knifeInputs).filter((name) => name.startsWith('carbide')),
];

describe.each(clearable)('%s cleared', (name) => {
  const cleared = written(name, '');

  test('is not known, stays in view, and reads back as it is shown', () => {
    const field = knifeInputNamed(name);
    const knife = knifeOf(cleared, 'dunlin');
    const shown = field.show(knife, cleared);
    expect(shown).toMatch(/^not known \([\d.]+–[\d.]+\)$/);
    expect(field.applies?.(knife) ?? true).toBe(true);
    expect(field.write(knife, shown, cleared)).toEqual({ ok: true, knife });
    expect(validate(cleared)).toMatchObject({ ok: true });
  });

  test('widens the band', () => {
    const middle = { bevelThickness: '0.5', bevelSide: '1.2', radius: '150' }[name];
    const known = name.startsWith('carbide') ? written(name, '5') : middle ? written(name, middle) : loft();
    expect(width(cleared)).toBeGreaterThan(width(known));
  });
});

test('carbide that is not known may be as much as any standard designation has', () => {
  const most = Object.values(carbidesByDesignation).flatMap((kinds) =>
    Object.values(kinds).map((volume) => rangeOf(volume).high),
  );
  for (const name of clearable.filter((one) => one.startsWith('carbide'))) {
    const field = knifeInputNamed(name);
    expect('unknown' in field ? field.unknown?.high : NaN).toBeGreaterThanOrEqual(Math.max(...most));
  }
});

test('a depth of contact that is not known widens the band, and reads back as it is shown', () => {
  const field = workFieldNamed('contactDepth');
  // Two grinds of one wedge would feel no depth: the curved one does.
  const entry = written('grindForm', 'convex');
  const cleared = field.write(entry, '');
  if (!cleared.ok) throw new Error(cleared.message);
  const shown = field.show(cleared.entry);
  expect(shown).toMatch(/^not known \([\d.]+–[\d.]+\)$/);
  expect(field.write(entry, shown)).toEqual(cleared);
  expect(validate(cleared.entry)).toMatchObject({ ok: true });
  expect(width(cleared.entry)).toBeGreaterThan(width(entry));
});
