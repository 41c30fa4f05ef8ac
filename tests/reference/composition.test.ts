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
      const found = carbideFromComposition({ ...steel, austenitizingC });
      expect(Object.keys(found.volPercent)).toEqual(['CrC']);
      expect(found.austeniteCarbon.value).toBeCloseTo(carbon, 9);
      expect(found.tieLine).toMatchObject({ formula: 'Cr23C6', whole: 1.075 });
      // 5.684% C in Cr23C6, IUPAC standard atomic weights: the arms of the lever.
      const { massFraction } = found.tieLine;
      expect(massFraction).toBeCloseTo((1.075 - carbon) / (5.684 - carbon), 4);
      const heavy = massFraction / 6.97;
      expect((100 * heavy) / (heavy + (1 - massFraction) / 7.75)).toBeCloseTo(volume, 1);
      // With Cr7C3 beside it there is less; the published volume stays within the ±.
      expect(Math.abs(sum({ ...steel, austenitizingC }) - volume)).toBeLessThan(found.plusMinus);
    }
  });

  // Hardened as usual, °C (common practice, from memory).
  test.each([
    ['AISI 1095', 790],
    ['AISI W1', 790],
    ['AISI O1', 800],
    ['AISI 52100', 845],
    ['AISI A2', 960],
    ['AISI D2', 1020],
    ['AISI 420', 1010],
    ['AISI 440A', 1050],
    ['AISI 440B', 1050],
    ['AISI 440C', 1050],
    ['EN 1.4116', 1030],
  ])(
    '%s hardened from %i °C has the middle of its typical range within ±6 volume %% or less',
    (name, celsius) => {
      const steel = model.compositionsByDesignation[name];
      // Typical hardened volumes by designation (memory): two memories held together.
      const [typical] = Object.values(model.carbidesByDesignation[name] ?? {});
      const found = carbideFromComposition({ carbon: 0, ...steel, austenitizingC: celsius });
      const value = sum({ carbon: 0, ...steel, austenitizingC: celsius });
      expect(found.basis).toBe('balance');
      expect(Math.abs(value - model.nominal(typical ?? NaN))).toBeLessThanOrEqual(found.plusMinus);
      expect(found.plusMinus).toBeLessThanOrEqual(6);
      // Not knowing the heat treatment widens it.
      expect(carbideFromComposition({ carbon: 0, ...steel }).plusMinus).toBeGreaterThan(found.plusMinus);
    },
  );

  test('AISI M2 has the volume of the table', () => {
    // 7–10, ±30% (memory).
    const { volPercent, plusMinus } = carbideFromComposition({
      carbon: 0,
      ...model.compositionsByDesignation['AISI M2'],
    });
    expect(volPercent).toEqual({ M6C: 8.5 });
    expect(plusMinus).toBeCloseTo(2.55, 9);
  });

  test('there is a composition for every designation the Compare page offers', () => {
    expect(Object.keys(model.compositionsByDesignation)).toEqual(Object.keys(model.carbidesByDesignation));
  });

  test('vanadium as VC: every per cent binds 0.236% carbon and takes 1.6 volume %', () => {
    // 12.011/50.9415 (IUPAC standard atomic weights); 5.77 and 7.75 g/cm³ (matrix from memory).
    const { volPercent, tieLine } = carbideFromComposition({
      carbon: 1.8,
      chromium: 12,
      vanadium: 2,
      austenitizingC: 1000,
    });
    const mass = 2 * (1 + 12.011 / 50.9415);
    expect(tieLine.whole).toBeCloseTo((1.8 - (2 * 12.011) / 50.9415) / (1 - mass / 100), 9);
    const rich = mass / 5.77;
    const cr = ((100 - mass) * tieLine.massFraction) / 6.92;
    const matrix = ((100 - mass) * (1 - tieLine.massFraction)) / 7.75;
    expect(volPercent.MC).toBeCloseTo((100 * rich) / (rich + cr + matrix), 3);
  });

  test('M6C weighs what its cell does', () => {
    // Fe3W3C: 16 formula units in a cube of 1.11 nm, about 14.2 g/cm³ (memory), 731 g/mol (IUPAC weights).
    const { volPercent } = carbideFromComposition({ carbon: 1, tungsten: 7, austenitizingC: 1000 });
    // 5/7 of 7% stay undissolved: 5% W in 25.1/30 of its mass.
    const mass = 5 * (731.07 / (3 * 183.84));
    const byDensity = mass / 14.2 / (mass / 14.2 + (100 - mass) / 7.75);
    expect(Math.abs((volPercent.M6C ?? 0) / (100 * byDensity) - 1)).toBeLessThan(0.01);
  });

  test('strong carbide formers leave the matrix carbon to harden', () => {
    const { tieLine, notes } = carbideFromComposition({ carbon: 0.6, vanadium: 5, austenitizingC: 850 });
    // 0.3% of 100 g in what is not VC.
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
    // 727 °C up to 3%, 910 °C at 5%; straight between them 840 °C is 4.23%.
    const chromium = { unknown: true, low: 0, high: 17 } as const;
    const { notes, volPercent } = carbideFromComposition({ carbon: 1, chromium, austenitizingC: 840 });
    expect(notes[0]).toMatch(/chromium from 0 to 4(\.[12])?%/);
    expect(Object.keys(volPercent)).toEqual(['Fe3C']);
    expect(() => carbideFromComposition({ carbon: 1, chromium, austenitizingC: 400 })).toThrow(
      'hardening temperature at 0–17% chromium 400 °C is not between 727 °C and 1150 °C',
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
    expect(nothing.tieLine).toMatchObject({ massFraction: 0, matrix: 0.5, saturation: 0.85 });
  });

  test.each([
    [{ carbon: 4 }, 'carbon 4% is not between 0% and 3%'],
    [{ carbon: 1, chromium: 25 }, 'chromium 25% is not between 0% and 18%'],
    [{ carbon: 1, vanadium: -1 }, 'vanadium -1% is not between 0% and 10%'],
    [{ carbon: 1, tungsten: Number.NaN }, 'tungsten NaN% is not between 0% and 20%'],
    [
      { carbon: 1, chromium: 12, austenitizingC: 1200 },
      'hardening temperature at 12% chromium 1200 °C is not between 950 °C and 1100 °C',
    ],
    [
      { carbon: 1, austenitizingC: 700 },
      'hardening temperature at 0% chromium 700 °C is not between 727 °C and 1100 °C',
    ],
  ])('%o is outside the tables', (steel, message) => {
    expect(() => carbideFromComposition(steel)).toThrow(RangeError);
    expect(() => carbideFromComposition(steel)).toThrow(message);
  });

  test('saturation, row by row', () => {
    // All from memory: plain and low-alloy steels by the Acm line, ±0.12; the rows of chromium steels ±0.15; 17Cr at 1000
    // and 1100 °C published too.
    const acm = { 727: 0.76, 800: 0.95, 900: 1.24, 1000: 1.6, 1100: 1.97 };
    for (const [celsius, carbon] of Object.entries(acm))
      for (const chromium of [0, 0.5, 1.45])
        expect(model.saturationCarbon({ chromium, celsius: Number(celsius), carbide: 'Fe3C' })).toMatchObject(
          { value: expect.closeTo(carbon - 0.1 - 0.15 * chromium, 9), plusMinus: 0.12 },
        );
    for (const [carbide, chromium, celsius, carbon] of [
      ['Cr7C3', 5, 960, 0.65],
      ['Cr7C3', 5, 1000, 0.8],
      ['Cr7C3', 12, 1020, 0.5],
      ['Cr23C6', 12, 1000, 0.3],
      ['Cr23C6', 13, 1050, 0.42],
      ['Cr23C6', 14, 1000, 0.32],
      ['Cr23C6', 17, 1030, 0.38],
      ['Cr7C3', 17, 1050, 0.42],
      ['Cr23C6', 17, 1100, 0.52],
    ] as const) {
      const found = model.saturationCarbon({ chromium, celsius, carbide });
      expect(found.value).toBeCloseTo(carbon, 12);
      expect(found.plusMinus).toBeCloseTo(0.15, 12);
    }
    // Half way between rows.
    const half = model.saturationCarbon({ chromium: 13.5, celsius: 1000, carbide: 'Cr23C6' });
    expect(half.value).toBeCloseTo(0.31, 12);
  });
});
