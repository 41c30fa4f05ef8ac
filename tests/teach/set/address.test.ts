import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contextIds, kindsFor, levels } from '../../../src/exercises/index.ts';
import type { Level } from '../../../src/exercises/index.ts';
import { makeSet, versions } from '../../../src/exercises/set/index.ts';
import { FIRST_SET, readSetCode, setCode } from '../../../src/teach/set/address.ts';

const requests = fc.constantFrom(...contextIds).chain((context) =>
  fc.record({
    context: fc.constant(context),
    level: fc.constantFrom<Level | 'rising'>(...levels, 'rising'),
    count: fc.integer({ min: 1, max: 40 }),
    version: fc.constantFrom(...versions),
    seed: fc.integer({ min: 0, max: 0xffffffff }),
    kinds: fc.shuffledSubarray(kindsFor(context), { minLength: 1 }),
  }),
);

describe('the code of a set', () => {
  test('comes back as it went, in capitals too', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const code = setCode(request);
        expect(readSetCode(code)).toEqual({ ok: true, request });
        expect(readSetCode(` ${code.toUpperCase()} `)).toEqual({ ok: true, request });
      }),
    );
  });

  test('is short and needs no escaping in an address', () => {
    fc.assert(
      fc.property(requests, (request) => {
        expect(setCode(request)).toMatch(/^[a-z0-9.-]{1,60}$/);
      }),
    );
  });

  // A code stands on printed sheets: what this one means may never change.
  test('of the first set is the one that was printed', () => {
    const code = '1.seed-trays.r.12.b.7.abcdefghijnop.ac';
    expect(setCode(FIRST_SET)).toBe(code);
    const read = readSetCode(code);
    expect(read.ok && makeSet(read.request).items).toHaveLength(12);
  });

  test('with one sign changed or two exchanged is not taken for another', () => {
    fc.assert(
      fc.property(requests, fc.nat(), fc.constantFrom(...'abcr0179.'), (request, place, sign) => {
        const code = setCode(request);
        const at = place % code.length;
        const changed = `${code.slice(0, at)}${sign}${code.slice(at + 1)}`;
        const exchanged = `${code.slice(0, at)}${code
          .slice(at, at + 2)
          .split('')
          .reverse()
          .join('')}${code.slice(at + 2)}`;
        for (const damaged of [changed, exchanged])
          if (damaged !== code) expect(readSetCode(damaged).ok, damaged).toBe(false);
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    ['', 'it is not whole.'],
    ['1.seed-trays.r.12.b.7', 'it is not whole.'],
    ['2.seed-trays.r.12.b.7.abc.ac', 'it is of form 2, and this page reads form 1.'],
    ['1.seed-trays.r.12.b.8.abcdefghijnop.ac', 'one of its signs is not as it was written.'],
  ])('%j is refused with its reason', (code, why) => {
    expect(readSetCode(code)).toEqual({ ok: false, why });
  });

  test('that is well signed and asks for what there is not is refused too', () => {
    const impossible = [
      { ...FIRST_SET, count: 41 },
      { ...FIRST_SET, seed: 2 ** 32 },
      { ...FIRST_SET, context: 'kitchen' as 'tides' },
      { ...FIRST_SET, context: 'tides' as const, kinds: ['two-routes' as const] },
      { ...FIRST_SET, kinds: [] },
      { ...FIRST_SET, kinds: ['undo' as const, 'undo' as const] },
    ];
    for (const request of impossible) expect(readSetCode(setCode(request)).ok).toBe(false);
  });
});
