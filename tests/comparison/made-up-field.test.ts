import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import * as v from 'valibot';
import type * as Store from '../../src/comparison/store.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import type * as Fields from '../../src/comparison/knife-fields.ts';
import type { KnifeFieldName } from '../../src/comparison/knife-fields.ts';
import type * as Shown from '../../src/compare/knife-fields.ts';
import type { KnifeFieldShown } from '../../src/compare/knife-fields.ts';
import { loft } from './entries.ts';

/*
 * A field that no knife has, put into the two tables of a knife's fields and nowhere else: whatever works for it works
 * for any field that is added there.
 */
const position = 11;
const madeUp = {
  label: 'length of the handle',
  unit: ' mm',
  schema: v.pipe(v.number(), v.minValue(50, 'the handle is below 50 mm')),
  position,
  optional: true,
  pack: (value: number) => value,
  unpack: (packed: unknown) => packed,
  toModel: () => ({}),
};

type WithHandle = ComparisonEntry['knives'][number] & { handleMm?: number };
const handleOf = (knife: object): number | undefined => (knife as WithHandle).handleMm;

const madeUpShown: KnifeFieldShown = {
  asked: [{ place: 'more', title: 'Handle', inputs: ['handle'] }],
  inputs: {
    handle: {
      kind: 'text',
      label: 'Length of the handle',
      show: (knife) => String(handleOf(knife) ?? ''),
      write: (knife, typed) => ({ ok: true, knife: { ...knife, handleMm: Number(typed) } as WithHandle }),
    },
  },
  row: { title: 'Handle', cell: (_knife, entry) => `${handleOf(entry) ?? 'no'} mm` },
  numbers: (_knife, entry) => {
    const handle = handleOf(entry);
    return handle === undefined ? [] : [['length of the handle, mm', handle]];
  },
};

const tables = ['../../src/comparison/knife-fields.ts', '../../src/compare/knife-fields.ts'] as const;

beforeAll(() => {
  vi.resetModules();
  vi.doMock(tables[0], async (original) => {
    const { knifeFields } = await original<typeof Fields>();
    return { knifeFields: { ...knifeFields, handleMm: madeUp } };
  });
  vi.doMock(tables[1], async (original) => {
    const real = await original<typeof Shown>();
    return { ...real, knifeFieldsShown: { ...real.knifeFieldsShown, handleMm: madeUpShown } };
  });
});

afterAll(() => {
  for (const table of tables) vi.doUnmock(table);
  vi.resetModules();
});

/** The loft, Plover with a handle of some length. */
const withHandle = (handleMm: number): ComparisonEntry => {
  const entry = loft();
  return {
    ...entry,
    knives: entry.knives.map((knife) => (knife.id === 'plover' ? { ...knife, handleMm } : knife)),
  };
};

describe('a field that is only in the two tables', () => {
  test('is taken by the check, within its limits, and by the store of a page', async () => {
    const { validate } = await import('../../src/comparison/validate.ts');
    const { createStore } = (await import('../../src/comparison/store.ts')) as typeof Store;
    expect(validate(withHandle(110))).toEqual({ ok: true, entry: withHandle(110) });
    expect(validate(withHandle(40))).toEqual({
      ok: false,
      problems: [{ path: 'knives.0.handleMm', message: 'the handle is below 50 mm' }],
    });
    const store = createStore(loft());
    expect(store.change(() => withHandle(120), 'handle')).toEqual({ ok: true });
    expect(store.entry.value).toEqual(withHandle(120));
  });

  test('comes back from a link', async () => {
    const { decodeLink, encodeLink } = await import('../../src/comparison/link/codec.ts');
    expect(decodeLink(encodeLink(withHandle(110)))).toMatchObject({ ok: true, entry: withHandle(110) });
    // Knives without it are not longer than before.
    const { pack } = await import('../../src/comparison/link/packing.ts');
    const [, , knives] = pack(withHandle(110)) as unknown[][];
    expect(knives?.map((knife) => (knife as unknown[]).length > position)).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });

  test('comes back from storage, from Saved, from a file and from a seal', async () => {
    const texts = new Map<string, string>();
    const storage = {
      getItem: (key: string) => texts.get(key) ?? null,
      setItem: (key: string, value: string) => void texts.set(key, value),
    };
    const { lastStorage, versionOf } = await import('../../src/comparison/saved/last.ts');
    const kept = { ...versionOf(withHandle(110)), origin: 'own', line: '1' };
    lastStorage(() => storage).write(kept);
    expect(lastStorage(() => storage).look()).toEqual({ is: 'kept', ...kept });

    const { createSavedList } = await import('../../src/comparison/saved/saved.ts');
    createSavedList(() => storage).put(withHandle(110));
    expect(createSavedList(() => storage).items()).toMatchObject([{ entry: withHandle(110) }]);

    const { comparisonsFile, readComparisons } = await import('../../src/comparison/files.ts');
    expect(readComparisons(comparisonsFile([{ name: 'a', entry: withHandle(110) }]))).toMatchObject({
      comparisons: [{ entry: withHandle(110) }],
    });

    const { openSeal, sealPrediction } = await import('../../src/comparison/seal/seal.ts');
    const { file, seal } = await sealPrediction(withHandle(110));
    expect(await openSeal(file, seal)).toMatchObject({ ok: true, entry: withHandle(110) });
  });

  test('is a row of the table, and its change a sentence of a correction', async () => {
    const { comparisonTable } = await import('../../src/compare/sheet/table.ts');
    const { sceneOf } = await import('../../src/scene/scene.ts');
    const { rows } = comparisonTable(sceneOf(withHandle(110)));
    expect(rows).toContainEqual(['Handle', '110 mm', 'no mm', 'no mm', 'no mm']);

    const { corrections } = await import('../../src/compare/corrections.ts');
    expect(corrections(withHandle(110), withHandle(120))).toEqual([
      { what: 'Plover, length of the handle, mm', before: 110, now: 120 },
    ]);
  });

  test('is an input of the form, which shows and writes it', async () => {
    const { rowsAt, knifeInputNamed } = await import('../../src/compare/knife-inputs.ts');
    expect(rowsAt('more').find(({ title }) => title === 'Handle')?.inputs).toEqual(['handle']);
    const [plover] = withHandle(110).knives;
    if (!plover) throw new Error('the loft has no knife');
    const input = knifeInputNamed('handle');
    expect(input.show(plover, loft())).toBe('110');
    expect(input.write(plover, '120', loft())).toEqual({ ok: true, knife: withHandle(120).knives[0] });
  });

  test('is in the published JSON schema, with its name and unit', async () => {
    const { jsonSchema } = await import('../../src/comparison/json-schema.ts');
    expect(jsonSchema('comparison.schema.json')).toMatchObject({
      properties: {
        knives: {
          items: {
            properties: { handleMm: { type: 'number', minimum: 50, title: 'length of the handle, mm' } },
          },
        },
      },
    });
  });
});

test('the tables do not compile without one of the fields, or with one more', () => {
  const shown = {} as Record<KnifeFieldName, KnifeFieldShown>;
  const { toughness: _toughness, ...others } = shown;
  // @ts-expect-error toughness is missing
  const tooFew: Record<KnifeFieldName, KnifeFieldShown> = { ...others };
  // @ts-expect-error no knife has a handle
  const tooMany: Record<KnifeFieldName, KnifeFieldShown> = { ...shown, handleMm: madeUpShown };
  expect([tooFew, tooMany]).toHaveLength(2);
});
