import { describe, expect, test } from 'vitest';
import { fieldNamed, fields } from '../../src/bench/fields.ts';
import { sceneOf } from '../../src/lineup/scene.ts';
import { validate } from '../../src/lineup/schema.ts';
import type { KnifeEntry, LineUpEntry } from '../../src/lineup/schema.ts';
import { sureOf } from '../../src/lineup/sure.ts';
import { carbidesByDesignation, rangeOf } from '../../src/model/index.ts';
import { loft } from './entries.ts';

const knifeOf = ({ knives }: LineUpEntry, id: string): KnifeEntry => {
  const found = knives.find((knife) => knife.id === id);
  if (!found) throw new Error(`the loft has no ${id}`);
  return found;
};

/** The loft with carbide by volume in Dunlin, and one of its fields written into. */
function written(name: string, text: string): LineUpEntry {
  const entry = loft();
  const byVolume = fieldNamed('steel').write(knifeOf(entry, 'dunlin'), 'volume', entry);
  if (!byVolume.ok) throw new Error(byVolume.message);
  const field = fieldNamed(name).write(byVolume.knife, text, entry);
  if (!field.ok) throw new Error(field.message);
  return { ...entry, knives: entry.knives.map((knife) => (knife.id === 'dunlin' ? field.knife : knife)) };
}

const width = (entry: LineUpEntry): number => {
  const { low, high } = sureOf(sceneOf(entry));
  return high / low;
};

/** Fields whose text the model can take as not known. */
const clearable = [
  'angle',
  'edge',
  'hrc',
  ...Object.keys(fields).filter((name) => name.startsWith('carbide')),
];

describe.each(clearable)('%s cleared', (name) => {
  const cleared = written(name, '');

  test('is not known, stays in view, and reads back as it is shown', () => {
    const field = fieldNamed(name);
    const knife = knifeOf(cleared, 'dunlin');
    const shown = field.show(knife, cleared);
    expect(shown).toMatch(/^not known \([\d.]+–[\d.]+\)$/);
    expect(field.applies?.(knife) ?? true).toBe(true);
    expect(field.write(knife, shown, cleared)).toEqual({ ok: true, knife });
    expect(validate(cleared)).toMatchObject({ ok: true });
  });

  test('widens the band', () => {
    const known = name.startsWith('carbide') ? written(name, '5') : loft();
    expect(width(cleared)).toBeGreaterThan(width(known));
  });
});

test('carbide that is not known may be as much as any standard designation has', () => {
  const most = Object.values(carbidesByDesignation).flatMap((kinds) =>
    Object.values(kinds).map((volume) => rangeOf(volume).high),
  );
  for (const name of clearable.filter((one) => one.startsWith('carbide'))) {
    const field = fieldNamed(name);
    expect('unknown' in field ? field.unknown?.high : NaN).toBeGreaterThanOrEqual(Math.max(...most));
  }
});
