import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchDrift, runSheet } from '../../../src/model/index.ts';
import type { KnifeLife } from '../../../src/model/index.ts';
import { isSheetCode } from '../../../src/model/runs/sheet-code.ts';

describe('a run sheet', () => {
  const plan = fc.record({
    knives: fc.uniqueArray(fc.constantFrom('plover', 'dunlin', 'curlew', 'avocet'), { minLength: 2 }),
    runs: fc.integer({ min: 3, max: 9 }),
    batches: fc.uniqueArray(fc.constantFrom('coil 1', 'coil 2', 'coil 3'), { minLength: 1 }),
    seed: fc.nat(),
    blind: fc.boolean(),
  });

  it('cuts every knife equally often, in every batch to within one, and can be read back by its key', () => {
    fc.assert(
      fc.property(plan, (p) => {
        const { rows, key } = runSheet({ ...p, control: 'gull' });
        expect(rows.map(({ order }) => order)).toEqual(rows.map((_, i) => i + 1));
        expect(key.map(({ order, label }) => [order, label])).toEqual(
          rows.map(({ order, label }) => [order, label]),
        );
        for (const knife of p.knives) {
          const own = key.filter((entry) => entry.knife === knife);
          expect(own.map(({ sharpening }) => sharpening)).toEqual(
            Array.from({ length: p.runs }, (_, i) => i + 1),
          );
        }
        for (const batch of p.batches) {
          const block = rows.filter((row) => row.batch === batch).map(({ order }) => key[order - 1]?.knife);
          expect([block.at(0), block.at(-1)]).toEqual(['gull', 'gull']);
          const counts = p.knives.map((knife) => block.filter((name) => name === knife).length);
          expect(new Set(counts).size).toBe(1);
          expect(Math.abs((counts[0] ?? 0) - p.runs / p.batches.length)).toBeLessThan(1);
        }
        if (p.blind) {
          const shown = rows.filter(({ label }) => label !== 'gull').map(({ label }) => label);
          expect(new Set(shown).size).toBe(p.runs * p.knives.length);
          for (const label of shown) expect(label).toMatch(/^[A-Z]{2}\d\d$/);
        }
      }),
    );
  });

  it('is the same for the same seed, and every order of two knives comes up', () => {
    const sheet = (seed: number) =>
      runSheet({ knives: ['plover', 'dunlin'], runs: 1, batches: ['coil 1'], seed });
    expect(sheet(5)).toEqual(sheet(5));
    const first = Array.from({ length: 200 }, (_, seed) => sheet(seed).rows[0]?.label);
    expect(first.filter((label) => label === 'plover').length).toBeGreaterThan(70);
    expect(first.filter((label) => label === 'dunlin').length).toBeGreaterThan(70);
  });

  it('refuses plans that are none', () => {
    const plan = { knives: ['plover', 'dunlin'], runs: 4, batches: ['a'], seed: 1 };
    expect(() => runSheet({ ...plan, knives: ['plover'] })).toThrow('knives has 1 names');
    expect(() => runSheet({ ...plan, control: 'plover' })).toThrow('“plover” twice');
    expect(() => runSheet({ ...plan, batches: [] })).toThrow('batches has no name');
    expect(() => runSheet({ ...plan, batches: ['a', 'a'] })).toThrow('batches has “a” twice');
    expect(() => runSheet({ ...plan, runs: 0 })).toThrow('runs 0 is not a whole number');
    expect(() => runSheet({ ...plan, runs: 2, batches: ['a', 'b', 'c'] })).toThrow(
      'below the number of batches',
    );
    expect(() => runSheet({ ...plan, seed: -1 })).toThrow('seed -1');
  });
});

describe('a code', () => {
  it('is known in either case and with blanks about it, and by nothing less or more', () => {
    for (const name of ['KM47', 'km47', 'Wx92', '  kM47\n']) expect(isSheetCode(name)).toBe(true);
    // No vowel, no digit that looks like a letter, and no more of either.
    for (const name of [
      '',
      'K47',
      'KMN7',
      'AM47',
      'KO47',
      'KM40',
      'KM81',
      'KM477',
      'XKM47',
      'K M47',
      'KM 47',
    ])
      expect(isSheetCode(name)).toBe(false);
  });

  it('of every blind sheet is one', () => {
    const plan = { knives: ['plover', 'dunlin'], runs: 40, batches: ['coil 1'], seed: 3, blind: true };
    for (const { label } of runSheet(plan).rows) expect(isSheetCode(label)).toBe(true);
  });
});

describe('drift between batches', () => {
  const lives = (table: Record<string, Record<string, number[]>>): KnifeLife[] =>
    Object.entries(table).flatMap(([batch, knives]) =>
      Object.entries(knives).flatMap(([knife, all]) => all.map((life) => ({ knife, batch, life }))),
    );

  it('is found again where it is put in, however unevenly the knives are spread', () => {
    const { batches } = batchDrift(
      lives({
        a: { plover: [100], dunlin: [300, 300] },
        b: { plover: [70, 70, 70], dunlin: [210] },
        c: { dunlin: [300] },
      }),
    );
    expect(batches.map(({ batch, runs }) => [batch, runs])).toEqual([
      ['a', 3],
      ['b', 4],
      ['c', 1],
    ]);
    expect((batches[1]?.ratio ?? NaN) / (batches[0]?.ratio ?? NaN)).toBeCloseTo(0.7, 9);
    expect(batches.reduce((product, { ratio }) => product * ratio, 1)).toBeCloseTo(1, 9);
  });

  it('has the p of the two-sided t test where one knife is cut in two batches', () => {
    // F with 1 and n degrees of freedom is t squared. Student's readings as logarithms: pooled t 1.8608, df 18,
    // p 0.07919 (as statistics programs print it; memory).
    const x = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0].map(Math.exp);
    const y = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4].map(Math.exp);
    expect(batchDrift(lives({ a: { plover: x }, b: { plover: y } })).p).toBeCloseTo(0.07919, 5);
  });

  it('is refused, or left open, where it cannot be told', () => {
    expect(() => batchDrift(lives({ a: { plover: [1, 2] } }))).toThrow('there is 1 batch');
    expect(() => batchDrift(lives({ a: { plover: [1] }, b: { dunlin: [1] } }))).toThrow(
      'batch b shares no knife with batch a',
    );
    expect(() => batchDrift(lives({ a: { plover: [0] }, b: { plover: [1] } }))).toThrow('life 0 0 is not');
    expect(batchDrift(lives({ a: { plover: [1] }, b: { plover: [2] } })).p).toBeNull();
  });
});
