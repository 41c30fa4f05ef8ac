import { describe, expect, test } from 'vitest';
import { hardeningRange, saturationCarbon } from '../../../src/model/index.ts';
import {
  carbideFromComposition,
  usualHardening,
  type Composition,
} from '../../../src/model/steel/composition.ts';

const sum = (of: Composition): number =>
  Object.values(carbideFromComposition(of).volPercent).reduce((total, volume) => total + volume, 0);

describe('the saturation table', () => {
  test('keeps its own ± between the points of a row, and widens it by a tenth each 50 °C beyond them', () => {
    const at = (chromium: number, celsius: number) => saturationCarbon({ chromium, celsius });
    // From memory: 10 % Cr 0.45 at 1000 and 0.75 at 1100 °C; plain steel 0.95 at 800 and 1.24 at 900 °C.
    expect(at(10, 1075).value).toBeCloseTo(0.675, 12);
    expect(at(10, 1075).plusMinus).toBeCloseTo(0.1, 12);
    expect(at(0, 850).value).toBeCloseTo(1.095, 12);
    expect(at(0, 850).plusMinus).toBeCloseTo(0.1, 12);
    expect(at(10, 1125).value).toBeCloseTo(0.825, 12);
    expect(at(10, 1125).plusMinus).toBeCloseTo(0.15, 12);
  });

  test('above 17 % chromium is as at 17 %', () => {
    expect(hardeningRange(18)).toEqual(hardeningRange(17));
    for (const celsius of [950, 1050, 1150])
      expect(saturationCarbon({ chromium: 18, celsius })).toEqual(
        saturationCarbon({ chromium: 17, celsius }),
      );
  });

  test('is refused beyond its ends by name', () => {
    expect(() => hardeningRange(18.1)).toThrow(new RangeError('chromium 18.1 % is not between 0 % and 18 %'));
    expect(() => saturationCarbon({ chromium: 12, celsius: 949 })).toThrow(
      new RangeError('hardening temperature at 12 % chromium 949 °C is not between 950 °C and 1150 °C'),
    );
  });

  test('the usual temperatures turn at 3 % chromium, as far as the table reaches', () => {
    // Straight between the rows at 1.5 and 5 % the table reaches from 800 + 150·1.4/3.5 = 860 to 1020 °C at 2.9 %.
    expect(usualHardening(2.9).low).toBeCloseTo(860, 9);
    expect(usualHardening(2.9).high).toBeCloseTo(860, 9);
    expect(usualHardening(3).low).toBe(960);
    expect(usualHardening(3).high).toBeCloseTo(1000 + (50 * 1.5) / 3.5, 9);
    expect(usualHardening(0)).toEqual({ low: 780, high: 860 });
  });
});

describe('the ± of the carbon in austenite', () => {
  // The row of 12 % Cr, ±0.1: 0.30, 0.42 and 0.575 at 1000, 1050 and 1100 °C, 0.25 a 100 °C beyond (memory).
  test.each([
    [1000, 0.1],
    [{ value: 1050, plusMinus: 50 }, 0.575 + 0.1 - 0.42],
    // 980 °C is 20 below the points: 0.30 − 0.05, ± 0.14.
    [{ value: 1030, plusMinus: 50 }, 0.372 - (0.25 - 0.14)],
  ] as const)('hardened from %o', (austenitizingC, plusMinus) => {
    const { austeniteCarbon } = carbideFromComposition({ carbon: 2, chromium: 12, austenitizingC });
    expect(austeniteCarbon.plusMinus).toBeCloseTo(plusMinus, 9);
  });
});

describe('the ± of the volume', () => {
  test('is 30 % of MC and M6C where the austenite holds the rest of the carbon', () => {
    for (const steel of [
      { carbon: 1.6, vanadium: 5 },
      { carbon: 1, tungsten: 20 },
      { carbon: 1.6, vanadium: 4, tungsten: 12 },
    ]) {
      const { volPercent, plusMinus, tieLine } = carbideFromComposition({ ...steel, austenitizingC: 1000 });
      expect(tieLine.massFraction).toBe(0);
      expect(plusMinus).toBeCloseTo(0.3 * ((volPercent.MC ?? 0) + (volPercent.M6C ?? 0)), 9);
      expect(plusMinus).toBeGreaterThan(1);
    }
  });

  test('is what the carbon in austenite may be off, and 30 % of MC', () => {
    // At 12 % Cr 0.30 ± 0.1 % C at 1000 °C: 0.20 is the table's at 960 °C and 0.40 at 1041.7 °C.
    const at = (austenitizingC: number): Composition => ({
      carbon: 1.9,
      chromium: 12,
      vanadium: 1,
      austenitizingC,
    });
    const here = sum(at(1000));
    const off = Math.max(sum(at(960)) - here, here - sum(at(1000 + 50 / 1.2)));
    const { volPercent, plusMinus } = carbideFromComposition(at(1000));
    expect(Object.keys(volPercent)).toEqual(['CrC', 'MC']);
    expect(plusMinus).toBeCloseTo(off + 0.3 * (volPercent.MC ?? NaN), 9);
  });
});

test('what M6C and MC bind and weigh is missing from the matrix', () => {
  const { tieLine } = carbideFromComposition({
    carbon: 1.4,
    tungsten: 12,
    vanadium: 2,
    austenitizingC: 1000,
  });
  // IUPAC weights; W above 2 % (1 % of W/2) as Fe3W3C, V as VC, a carbon each; moles in 100 g.
  const [m6c, mc] = [10 / 183.84 / 3, 2 / 50.9415];
  const left = 100 - 10 - m6c * (3 * 55.845 + 12.011) - mc * (50.9415 + 12.011);
  expect(tieLine.whole).toBeCloseTo((100 * (1.4 - (m6c + mc) * 12.011)) / left, 9);
});

describe('which carbide the chromium makes', () => {
  const either = (carbon: number, chromium: number) =>
    carbideFromComposition({ carbon, chromium, austenitizingC: 1000 }).notes.find((note) =>
      /may be/.test(note),
    );
  const formula = (carbon: number, chromium: number) =>
    carbideFromComposition({ carbon, chromium, austenitizingC: 960 }).tieLine.formula;

  test('cementite below 3 % chromium, Cr23C6 from twelve times the carbon, Cr7C3 between', () => {
    expect(formula(1, 2.9)).toBe('Fe3C');
    expect(formula(1, 3)).toBe('Cr7C3');
    expect(formula(1, 11.9)).toBe('Cr7C3');
    expect(formula(1, 12)).toBe('Cr23C6');
    expect(formula(0.25, 3)).toBe('Cr23C6');
  });

  test('either of the two within a quarter of the line between them', () => {
    const said = (formulas: string) =>
      `With this much chromium to carbon the carbide may be ${formulas}; the ± spans both.`;
    expect(either(1, 9.5)).toBeUndefined();
    expect(either(1, 9.61)).toBe(said('Cr7C3 or Cr23C6'));
    expect(either(1, 11.9)).toBe(said('Cr7C3 or Cr23C6'));
    expect(either(1, 12)).toBe(said('Cr23C6 or Cr7C3'));
    expect(either(1, 15)).toBe(said('Cr23C6 or Cr7C3'));
    expect(either(1, 15.1)).toBeUndefined();
    // No question for cementite, and none without carbon.
    expect(either(0.24, 2.9)).toBeUndefined();
    expect(either(0, 12)).toBeUndefined();
  });
});

describe('what is told with an estimate', () => {
  const unknown = (low: number, high: number) => ({ unknown: true, low, high }) as const;
  const [open, one, dissolved, kept] = [
    'The hardening temperature is not known, which widens the ±.',
    'Between 2 and 10 % chromium the table has one value, from memory: the ± is wide for that.',
    'Molybdenum and tungsten up to 1 % Mo + W/2 are taken as dissolved (assumed).',
    'Vanadium, molybdenum and tungsten could bind more carbon than there is: 0.3 % is kept for the matrix (assumed).',
  ];
  const held = (formula: string) =>
    `At the hardening temperature the austenite could hold all the carbon that is left, so no ${formula} is found; a short soak leaves some.`;

  test.each<[string, Composition, string[]]>([
    ['nothing', { carbon: 1.2, austenitizingC: 800 }, []],
    ['an open temperature', { carbon: 1.9, chromium: 12 }, [open]],
    ['a temperature not known', { carbon: 1.9, chromium: 12, austenitizingC: unknown(980, 1040) }, [open]],
    [
      'a temperature with a ±',
      { carbon: 1.9, chromium: 12, austenitizingC: { value: 1000, plusMinus: 20 } },
      [],
    ],
    ['all carbon held', { carbon: 0.5, austenitizingC: 800 }, [held('Fe3C')]],
    ['all carbon held, with chromium', { carbon: 0.1, chromium: 14, austenitizingC: 1050 }, [held('Cr23C6')]],
    ['chromium of 2 %', { carbon: 1.5, chromium: 2, austenitizingC: 850 }, []],
    ['chromium above 2 %', { carbon: 1.5, chromium: 2.1, austenitizingC: 850 }, [one]],
    ['chromium below 10 %', { carbon: 1.9, chromium: 9.9, austenitizingC: 1000 }, [one]],
    ['chromium of 10 %', { carbon: 1.9, chromium: 10, austenitizingC: 1000 }, []],
    ['molybdenum of 1 %', { carbon: 1.9, chromium: 12, molybdenum: 1, austenitizingC: 1000 }, [dissolved]],
    ['tungsten of 2 %', { carbon: 1.9, chromium: 12, tungsten: 2, austenitizingC: 1000 }, [dissolved]],
    [
      'as much of both',
      { carbon: 1.9, chromium: 12, molybdenum: 0.4, tungsten: 0.4, austenitizingC: 1000 },
      [dissolved],
    ],
    ['molybdenum above 1 %', { carbon: 1.9, chromium: 12, molybdenum: 1.5, austenitizingC: 1000 }, []],
    ['more vanadium than carbon', { carbon: 0.6, vanadium: 5, austenitizingC: 850 }, [held('Fe3C'), kept]],
    [
      'chromium not known',
      { carbon: 1.9, chromium: unknown(11, 13), austenitizingC: 1000 },
      ['Not known, which widens the ±: chromium from 11 to 13 %.'],
    ],
    [
      'little known',
      { carbon: unknown(1.8, 2), chromium: unknown(11, 13), austenitizingC: 1000 },
      [
        'Not known, which widens the ±: carbon from 1.8 to 2 %, chromium from 11 to 13 %.',
        'With neither carbon nor chromium known, this says little more than that it is such a steel.',
      ],
    ],
    [
      'carbon not known, over two carbides',
      { carbon: unknown(0.5, 2), chromium: 12, austenitizingC: 1000 },
      [
        'Not known, which widens the ±: carbon from 0.5 to 2 %.',
        'Over these contents the carbide may be Cr7C3 or Cr23C6; the ± spans them.',
      ],
    ],
  ])('%s', (_what, steel, notes) => {
    expect(carbideFromComposition(steel).notes).toEqual(notes);
  });

  test('kinds go by the names of the regression', () => {
    const kinds = (steel: Composition) => Object.keys(carbideFromComposition(steel).volPercent);
    expect(kinds({ carbon: 1.2, austenitizingC: 800 })).toEqual(['Fe3C']);
    expect(kinds({ carbon: 1.9, chromium: 12, vanadium: 1, molybdenum: 3, austenitizingC: 1000 })).toEqual([
      'CrC',
      'MC',
      'M6C',
    ]);
  });

  test.each([
    [{ carbon: 1, molybdenum: 11 }, 'molybdenum 11 % is not between 0 % and 10 %'],
    [{ carbon: 1, tungsten: unknown(22, 24) }, 'tungsten 23 % is not between 0 % and 20 %'],
  ])('%o is outside the tables', (steel, message) => {
    expect(() => carbideFromComposition(steel)).toThrow(new RangeError(message));
  });
});
