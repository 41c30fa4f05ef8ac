import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import { carbideFromComposition, type Composition } from '../../src/model/steel/composition.ts';

const sum = (of: Composition): number =>
  Object.values(carbideFromComposition(of).volPercent).reduce((total, volume) => total + volume, 0);

describe('carbide from composition', () => {
  test('17Cr-1.075C-0.8Mo', () => {
    // Published calculation: austenite 0.32 C at 1000 °C and 0.52 C at 1100 °C; Cr23C6, densities 6.97 and 7.75.
    const steel = { carbon: 1.075, chromium: 17, molybdenum: 0.8 };
    for (const [austenitizingC, carbon, volume] of [
      [1000, 0.32, 15.4],
      [1100, 0.52, 11.8],
    ] as const) {
      const { volPercent, austeniteCarbon, tieLine } = carbideFromComposition({ ...steel, austenitizingC });
      expect(Object.keys(volPercent)).toEqual(['CrC']);
      expect(volPercent.CrC).toBeCloseTo(volume, 1);
      expect(austeniteCarbon.value).toBeCloseTo(carbon, 9);
      expect(tieLine).toMatchObject({ formula: 'Cr23C6', whole: 1.075 });
      // 5.684 % C in Cr23C6, IUPAC standard atomic weights: the arms of the lever.
      expect(tieLine.massFraction).toBeCloseTo((1.075 - carbon) / (5.684 - carbon), 4);
    }
  });

  test.each([
    ['AISI 52100', { carbon: 1.0, chromium: 1.5, austenitizingC: 850 }],
    ['AISI D2', { carbon: 1.55, chromium: 12, molybdenum: 0.8, vanadium: 0.8, austenitizingC: 1020 }],
    ['AISI 440C', { carbon: 1.075, chromium: 17, molybdenum: 0.75, austenitizingC: 1050 }],
    ['AISI M2', { carbon: 0.85, chromium: 4, molybdenum: 5, tungsten: 6.4, vanadium: 1.9 }],
  ])('%s comes within its typical range', (designation, steel) => {
    // Typical hardened volumes by designation, ±30 % (memory).
    const [typical] = Object.values(model.carbidesByDesignation[designation] ?? {});
    const { low, high } = model.rangeOf(typical ?? NaN);
    expect(sum(steel)).toBeGreaterThan(low);
    expect(sum(steel)).toBeLessThan(high);
  });

  // Hardened volumes as remembered, ±30 % and at least what the estimate itself allows: two memories held together.
  test.each(Object.entries(model.compositionsByDesignation))(
    '%s of its standard comes to about its typical volume',
    (designation, steel) => {
      const [typical] = Object.values(model.carbidesByDesignation[designation] ?? {});
      const { low, high } = model.rangeOf(typical ?? NaN);
      const { plusMinus } = carbideFromComposition(steel);
      expect(sum(steel)).toBeGreaterThanOrEqual(low - plusMinus);
      expect(sum(steel)).toBeLessThanOrEqual(high + plusMinus);
    },
  );

  test('there is a composition for every designation the Compare page offers', () => {
    expect(Object.keys(model.compositionsByDesignation)).toEqual(Object.keys(model.carbidesByDesignation));
  });

  test('vanadium as VC: every per cent binds 0.236 % carbon and takes 1.6 volume %', () => {
    // 12.011/50.9415 (IUPAC standard atomic weights); 5.77 and 7.75 g/cm³ (matrix from memory).
    const { volPercent, tieLine } = carbideFromComposition({
      carbon: 1,
      chromium: 12,
      vanadium: 2,
      austenitizingC: 1000,
    });
    const mass = 2 * (1 + 12.011 / 50.9415);
    expect(tieLine.whole).toBeCloseTo((1 - (2 * 12.011) / 50.9415) / (1 - mass / 100), 9);
    const rich = mass / 5.77;
    const cr = ((100 - mass) * tieLine.massFraction) / 6.92;
    const matrix = ((100 - mass) * (1 - tieLine.massFraction)) / 7.75;
    // Cr23C6 at 6.97 or Cr7C3 at 6.92 g/cm³ moves this by less than a thousandth.
    expect(volPercent.MC).toBeCloseTo((100 * rich) / (rich + cr + matrix), 2);
  });

  test('M6C weighs what its cell does', () => {
    // Fe3W3C: 16 formula units in a cube of 1.11 nm, about 14.2 g/cm³ (memory), 731 g/mol (IUPAC weights).
    const { volPercent } = carbideFromComposition({ carbon: 1, tungsten: 12, austenitizingC: 1000 });
    // 10/12 of 12 % stay undissolved: 10 % W in 25.1/30 of its mass.
    const mass = 10 * (731.07 / (3 * 183.84));
    const byDensity = mass / 14.2 / (mass / 14.2 + (100 - mass) / 7.75);
    expect(Math.abs((volPercent.M6C ?? 0) / (100 * byDensity) - 1)).toBeLessThan(0.01);
  });

  test('strong carbide formers leave the matrix carbon to harden', () => {
    const { tieLine, notes } = carbideFromComposition({ carbon: 0.6, vanadium: 5, austenitizingC: 850 });
    // 0.3 % of 100 g in what is not VC.
    expect(tieLine.whole * (1 - 0.3 / 0.19079 / 100)).toBeCloseTo(0.3, 4);
    expect(notes.join(' ')).toContain('kept for the matrix');
  });

  test('the ± is never below 1 volume %, and unknown heat treatment widens it', () => {
    const content = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({ carbon: content(2), chromium: content(18), vanadium: content(4) }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (steel, part) => {
          const { low, high } = model.hardeningRange(steel.chromium);
          const known = carbideFromComposition({ ...steel, austenitizingC: low + part * (high - low) });
          const unknown = carbideFromComposition({ ...steel, austenitizingC: { unknown: true, low, high } });
          expect(known.plusMinus).toBeGreaterThanOrEqual(1);
          expect(unknown.plusMinus).toBeGreaterThanOrEqual(2);
          const { matrix, whole, carbide, massFraction } = known.tieLine;
          // The lever balances: what both ends hold is what there is.
          expect((1 - massFraction) * matrix + massFraction * carbide).toBeCloseTo(whole, 9);
        },
      ),
      { numRuns: 200, seed: 2 },
    );
    const d2 = { carbon: 1.55, chromium: 12 };
    const known = carbideFromComposition({ ...d2, austenitizingC: 1020 }).plusMinus;
    expect(carbideFromComposition(d2).plusMinus).toBeGreaterThan(known);
    const unsure = { value: 1020, plusMinus: 40 };
    expect(carbideFromComposition({ ...d2, austenitizingC: unsure }).plusMinus).toBeGreaterThan(known);
  });

  // A content that is not known may be any in its range, and each such steel must lie within the ±.
  test('contents that are not known widen the ± to all the steels it may be', () => {
    const elements = ['carbon', 'chromium', 'vanadium', 'molybdenum', 'tungsten'] as const;
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    const openings = fc.subarray([...elements], { minLength: 1 });
    fc.assert(
      fc.property(
        openings,
        fc.tuple(part, part, part, part, part),
        part,
        fc.boolean(),
        (open, parts, heat, hot) => {
          const steel = { carbon: 0, chromium: 0, vanadium: 0, molybdenum: 0, tungsten: 0 };
          for (const [place, element] of elements.entries()) {
            const { low, high } = model.designationsHold(element);
            steel[element] = low + (parts[place] ?? 0) * (high - low);
          }
          const { low, high } = model.hardeningRange(steel.chromium);
          const temperature = hot ? { austenitizingC: low + heat * (high - low) } : {};
          const unknown = open.map((element) => [
            element,
            { unknown: true, ...model.designationsHold(element) },
          ]);
          const known = { ...steel, ...temperature };
          const of: Composition = { ...known, ...Object.fromEntries(unknown) };
          const estimate = carbideFromComposition(of);
          expect(Math.abs(sum(of) - sum(known))).toBeLessThanOrEqual(estimate.plusMinus + 1e-9);
          expect(estimate.notKnown).toEqual(elements.filter((element) => open.includes(element)));
          for (const element of open) expect(estimate.notes[0]).toContain(element);
        },
      ),
      { numRuns: 400, seed: 5 },
    );
  });

  test('of a steel hardened from 840 °C not known chromium is no more than the table reaches', () => {
    // The rows: 727 °C at 0 %, 800 °C at 1.5 %, 950 °C from 5 % on; straight between them 840 °C is 2.43 %.
    const chromium = { unknown: true, low: 0, high: 17 } as const;
    const { notes, volPercent } = carbideFromComposition({ carbon: 1, chromium, austenitizingC: 840 });
    expect(notes[0]).toMatch(/chromium from 0 to 2(\.\d)? %/);
    expect(Object.keys(volPercent)).toEqual(['Fe3C']);
    expect(() => carbideFromComposition({ carbon: 1, chromium, austenitizingC: 400 })).toThrow(
      'hardening temperature at 0–17 % chromium 400 °C is not between 727 °C and 1150 °C',
    );
  });

  test('a content with a ± is looked at from end to end about its value', () => {
    const at = (carbon: model.Quantity) =>
      carbideFromComposition({ carbon, chromium: 12, austenitizingC: 1000 });
    const [low, middle, high] = [at(1.3), at(1.5), at(1.7)];
    const unsure = at({ value: 1.5, plusMinus: 0.2 });
    expect(unsure.volPercent).toEqual(middle.volPercent);
    expect(unsure.notKnown).toEqual([]);
    const crc = ({ volPercent }: typeof low) => volPercent.CrC ?? NaN;
    expect(unsure.plusMinus).toBeGreaterThanOrEqual(crc(high) - crc(middle));
    expect(unsure.plusMinus).toBeGreaterThanOrEqual(crc(middle) - crc(low));
    expect(unsure.plusMinus).toBeGreaterThan(middle.plusMinus);
  });

  test('more heat or chromium-free steel leaves no more carbide', () => {
    const at = (austenitizingC: number) => sum({ carbon: 1.2, chromium: 14, austenitizingC });
    expect(at(950)).toBeGreaterThan(at(1050));
    expect(at(1050)).toBeGreaterThan(at(1150));
    const nothing = carbideFromComposition({ carbon: 0.5, austenitizingC: 800 });
    expect(nothing.volPercent).toEqual({});
    expect(nothing.tieLine).toMatchObject({ massFraction: 0, matrix: 0.5, saturation: 0.95 });
  });

  test.each([
    [{ carbon: 4 }, 'carbon 4 % is not between 0 % and 3 %'],
    [{ carbon: 1, chromium: 25 }, 'chromium 25 % is not between 0 % and 18 %'],
    [{ carbon: 1, vanadium: -1 }, 'vanadium -1 % is not between 0 % and 10 %'],
    [{ carbon: 1, tungsten: Number.NaN }, 'tungsten NaN % is not between 0 % and 20 %'],
    [
      { carbon: 1, chromium: 12, austenitizingC: 1200 },
      'hardening temperature at 12 % chromium 1200 °C is not between 950 °C and 1150 °C',
    ],
    [
      { carbon: 1, austenitizingC: 700 },
      'hardening temperature at 0 % chromium 700 °C is not between 727 °C and 1100 °C',
    ],
  ])('%o is outside the tables', (steel, message) => {
    expect(() => carbideFromComposition(steel)).toThrow(RangeError);
    expect(() => carbideFromComposition(steel)).toThrow(message);
  });

  test('saturation, row by row', () => {
    // From memory, ±0.1; plain steels along the Acm line; 17Cr published.
    for (const [chromium, celsius, carbon] of [
      [0, 727, 0.76],
      [0, 1000, 1.6],
      [5, 1000, 1.05],
      [10, 1000, 0.45],
      [10, 1100, 0.75],
      [12, 1000, 0.3],
      [12, 1050, 0.42],
      [12, 1100, 0.575],
      [17, 1100, 0.52],
    ] as const)
      expect(model.saturationCarbon({ chromium, celsius }).value).toBeCloseTo(carbon, 12);
    // Half way between rows, and 25 °C past the points of one.
    expect(model.saturationCarbon({ chromium: 11, celsius: 1000 }).value).toBeCloseTo(0.375, 12);
    expect(model.saturationCarbon({ chromium: 12, celsius: 975 })).toEqual({
      value: 0.3 - 0.0625,
      plusMinus: 0.15000000000000002,
    });
  });
});
