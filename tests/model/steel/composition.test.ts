import { describe, expect, test } from 'vitest';
import {
  carbideVolumePercent,
  hardeningRange,
  leverCarbides,
  saturationCarbon,
} from '../../../src/model/index.ts';
import type { LeverCarbide } from '../../../src/model/index.ts';
import {
  carbideFromComposition,
  usualHardening,
  type Composition,
} from '../../../src/model/steel/composition.ts';

const sum = (of: Composition): number =>
  Object.values(carbideFromComposition(of).volPercent).reduce((total, volume) => total + volume, 0);

describe('the saturation table', () => {
  const at = (carbide: LeverCarbide, chromium: number, celsius: number) =>
    saturationCarbon({ chromium, celsius, carbide });

  test('beside cementite the Acm line less 0.10 and less 0.15 for each per cent of chromium', () => {
    // From memory: the Acm line has 0.95 at 800 and 1.24 at 900 °C.
    expect(at('Fe3C', 0, 800).value).toBeCloseTo(0.85, 12);
    expect(at('Fe3C', 1, 850).value).toBeCloseTo((0.95 + 1.24) / 2 - 0.1 - 0.15, 12);
    expect(at('Fe3C', 2, 850).plusMinus).toBeCloseTo(0.12, 12);
    // No less than nothing.
    expect(at('Fe3C', 17, 950).value).toBe(0);
  });

  test('keeps its ± between the points of a row, and widens it by a tenth each 50 °C beyond them', () => {
    // From memory: 5% Cr 0.65 at 960 and 0.80 at 1000 °C; 17% Cr 0.42 at 1050 and 0.52 at 1100 °C.
    expect(at('Cr7C3', 5, 980).value).toBeCloseTo(0.725, 12);
    expect(at('Cr7C3', 5, 980).plusMinus).toBeCloseTo(0.15, 12);
    expect(at('Cr23C6', 17, 1075).value).toBeCloseTo(0.47, 12);
    // Assumed: the slope of the row goes on past its points.
    expect(at('Cr23C6', 17, 1125).value).toBeCloseTo(0.57, 12);
    expect(at('Cr23C6', 17, 1125).plusMinus).toBeCloseTo(0.2, 12);
    expect(at('Cr23C6', 17, 975).value).toBeCloseTo(0.27, 12);
  });

  test('joins its rows without a jump', () => {
    const carbides = ['Cr7C3', 'Cr23C6'] as const;
    for (const carbide of carbides)
      for (const joint of [3, 5, 12, 13, 14]) {
        const [below, above] = [at(carbide, joint - 1e-9, 1000), at(carbide, joint + 1e-9, 1000)];
        expect(below.value).toBeCloseTo(above.value, 6);
        expect(below.plusMinus).toBeCloseTo(above.plusMinus, 6);
      }
  });

  test('above 14% chromium is as at 14%', () => {
    expect(hardeningRange(18)).toEqual(hardeningRange(14));
    for (const celsius of [950, 1050, 1150])
      expect(at('Cr23C6', 18, celsius)).toEqual(at('Cr23C6', 14, celsius));
  });

  test('is refused beyond its ends by name', () => {
    expect(() => hardeningRange(18.1)).toThrow(new RangeError('chromium 18.1% is not between 0% and 18%'));
    expect(() => at('Cr7C3', 12, 949)).toThrow(
      new RangeError('hardening temperature at 12% chromium 949 °C is not between 950 °C and 1100 °C'),
    );
  });

  test('the usual temperatures turn at 3 and at 9% chromium', () => {
    // From memory.
    expect(usualHardening(0)).toEqual({ low: 780, high: 860 });
    expect(usualHardening(2.9)).toEqual({ low: 780, high: 860 });
    expect(usualHardening(3)).toEqual({ low: 940, high: 1000 });
    expect(usualHardening(9)).toEqual({ low: 960, high: 1060 });
  });
});

describe('the ± of the carbon in austenite', () => {
  // Of 17% Cr with little carbon, ±0.15: 0.32, 0.42 and 0.52 at 1000, 1050 and 1100 °C (memory).
  test.each([
    [1000, 0.15],
    [{ value: 1050, plusMinus: 50 }, 0.52 + 0.15 - 0.42],
    // 980 °C is 20 below the points: 0.32 − 0.04, ± 0.19.
    [{ value: 1030, plusMinus: 50 }, 0.38 - (0.28 - 0.19)],
  ] as const)('hardened from %o', (austenitizingC, plusMinus) => {
    const { austeniteCarbon } = carbideFromComposition({ carbon: 0.75, chromium: 17, austenitizingC });
    expect(austeniteCarbon.plusMinus).toBeCloseTo(plusMinus, 9);
  });
});

describe('the ± of the volume', () => {
  test('is 30% of MC and M6C where the austenite holds the rest of the carbon', () => {
    for (const steel of [
      { carbon: 1.6, vanadium: 5 },
      { carbon: 1, tungsten: 7 },
      { carbon: 1.6, vanadium: 4, tungsten: 7 },
    ]) {
      const { volPercent, plusMinus, tieLine } = carbideFromComposition({ ...steel, austenitizingC: 1000 });
      expect(tieLine.massFraction).toBe(0);
      expect(plusMinus).toBeCloseTo(Math.max(1, 0.3 * ((volPercent.MC ?? 0) + (volPercent.M6C ?? 0))), 9);
    }
  });

  test('is what the carbon in austenite may be off, and 30% of MC', () => {
    // Of 17% Cr 0.42 ± 0.15% C at 1050 °C (memory): by the lever, worked by hand.
    const steel = { carbon: 0.75, chromium: 17, vanadium: 0.5, austenitizingC: 1050 };
    const { volPercent, plusMinus, tieLine } = carbideFromComposition(steel);
    const volume = (matrix: number) => {
      const [mc, rich] = [0.5 * (1 + 12.011 / 50.9415), 5.684];
      const mass = (tieLine.whole - matrix) / (rich - matrix);
      const [lever, rest] = [((100 - mc) * mass) / 6.97, ((100 - mc) * (1 - mass)) / 7.75];
      return (100 * (lever + mc / 5.77)) / (lever + rest + mc / 5.77);
    };
    expect(Object.keys(volPercent)).toEqual(['CrC', 'MC']);
    expect(sum(steel)).toBeCloseTo(volume(0.42), 3);
    const off = Math.max(volume(0.27) - volume(0.42), volume(0.42) - volume(0.57));
    // The most MC of either end.
    expect(plusMinus / (off + 0.3 * (volPercent.MC ?? NaN))).toBeCloseTo(1, 2);
  });

  test('covers either chromium carbide where both may be, from a volume midway', () => {
    const steel = { carbon: 1.075, chromium: 17, austenitizingC: 1000 };
    const { volPercent, plusMinus, tieLine, otherTieLine } = carbideFromComposition(steel);
    expect([tieLine.formula, otherTieLine?.formula]).toEqual(['Cr23C6', 'Cr7C3']);
    const volume = (carbide: 'Cr23C6' | 'Cr7C3', austeniteCarbon: number) =>
      carbideVolumePercent({ carbon: 1.075, austeniteCarbon, carbide });
    const value = (volume('Cr23C6', 0.32) + volume('Cr7C3', 0.32)) / 2;
    expect(volPercent.CrC).toBeCloseTo(value, 9);
    // 0.32 ± 0.15 (memory).
    const ends = [volume('Cr23C6', 0.17) - value, value - volume('Cr7C3', 0.47)];
    expect(plusMinus).toBeCloseTo(Math.max(...ends), 9);
  });
});

describe('tungsten and molybdenum steels', () => {
  const m2 = { carbon: 0.85, chromium: 4.1, molybdenum: 5, tungsten: 6.1, vanadium: 1.9 };
  const unknown = (low: number, high: number) => ({ unknown: true, low, high }) as const;
  const wide = {
    carbon: unknown(0.3, 1.5),
    chromium: unknown(0, 17),
    vanadium: unknown(0, 1.9),
    molybdenum: unknown(0, 5),
    tungsten: unknown(0, 6.1),
  };

  test('like AISI M2 take the range of the table, whatever the temperature, and say so', () => {
    // AISI M2 7–10, ±30% (memory).
    for (const austenitizingC of [undefined, 1000, 1220, { value: 1210, plusMinus: 15 }]) {
      const found = carbideFromComposition({
        ...m2,
        ...(austenitizingC === undefined ? {} : { austenitizingC }),
      });
      expect(found).toMatchObject({ volPercent: { M6C: 8.5 }, basis: 'table' });
      expect(found.plusMinus).toBeCloseTo(0.3 * 8.5, 3);
      expect(found.notes.join(' ')).toContain(
        'The range of the table for AISI M2 is used instead, from memory.',
      );
    }
  });

  test('of another make have a ± that covers the table and the balance', () => {
    const other = carbideFromComposition({ ...m2, tungsten: 18, molybdenum: 0 });
    expect(other.basis).toBe('both');
    expect(other.plusMinus).toBeGreaterThan(0.3 * 8.5);
    const value = sum({ ...m2, tungsten: 18, molybdenum: 0 });
    expect(value - other.plusMinus).toBeLessThanOrEqual(0.7 * 8.5);
    expect(value + other.plusMinus).toBeGreaterThanOrEqual(1.3 * 8.5);
    expect(other.notes.join(' ')).toContain(
      'The ± covers the balance and the range of the table for AISI M2',
    );
  });

  test.each<[string, Composition]>([
    ['all contents not known', wide],
    ['all but carbon not known', { ...wide, carbon: 0.85 }],
    ['plain', { carbon: 0.85 }],
    ['tungsten of 0.5%', { carbon: 0.92, chromium: 0.5, tungsten: 0.5 }],
    ['only tungsten not known', { carbon: 0.85, chromium: 4.1, vanadium: 1.9, tungsten: unknown(0, 6.1) }],
  ])('%s: never the narrow range of AISI M2', (_what, steel) => {
    const found = carbideFromComposition(steel);
    expect(found.basis).not.toBe('table');
    expect([sum(steel), found.plusMinus]).not.toEqual([8.5, 0.3 * 8.5]);
    if (found.basis === 'both') expect(found.plusMinus).toBeGreaterThan(0.3 * 8.5);
  });

  test('are hardened from 1300 °C at the hottest', () => {
    expect(() => carbideFromComposition({ ...m2, austenitizingC: 1310 })).toThrow(
      /hardening temperature at 4\.1% chromium 1310 °C is not between .* and 1300 °C/,
    );
    expect(() => carbideFromComposition({ carbon: 1, chromium: 4.1, austenitizingC: 1220 })).toThrow(
      'hardening temperature at 4.1% chromium 1220 °C is not between',
    );
  });
});

test('what M6C and MC bind and weigh is missing from the matrix', () => {
  const { tieLine } = carbideFromComposition({
    carbon: 1.4,
    tungsten: 6,
    vanadium: 2,
    austenitizingC: 1000,
  });
  // IUPAC weights; W above 2% (1% of W/2) as Fe3W3C, V as VC, a carbon each; moles in 100 g.
  const [m6c, mc] = [4 / 183.84 / 3, 2 / 50.9415];
  const left = 100 - 4 - m6c * (3 * 55.845 + 12.011) - mc * (50.9415 + 12.011);
  expect(tieLine.whole).toBeCloseTo((100 * (1.4 - (m6c + mc) * 12.011)) / left, 9);
});

describe('which carbide the chromium makes', () => {
  const of = (carbon: number, chromium: number) => leverCarbides({ carbon, chromium });

  // From memory, as the whole table is.
  test.each([
    ['AISI 52100', 1.04, 1.45, ['Fe3C']],
    ['AISI A2', 1, 5.1, ['Cr7C3']],
    ['AISI D2', 1.5, 12, ['Cr7C3']],
    ['AISI 420', 0.3, 13, ['Cr23C6']],
    ['AISI 440A', 0.68, 17, ['Cr23C6']],
    ['AISI 440B', 0.85, 17, ['Cr23C6', 'Cr7C3']],
    ['AISI 440C', 1.08, 17, ['Cr23C6', 'Cr7C3']],
    ['EN 1.4116', 0.5, 14.5, ['Cr23C6']],
  ])('%s', (_designation, carbon, chromium, carbides) => {
    expect(of(carbon, chromium)).toEqual(carbides);
  });

  test('cementite below 3% chromium, either within 1% of that', () => {
    expect(of(1, 2)).toEqual(['Fe3C']);
    expect(of(1, 2.9)).toEqual(['Fe3C', 'Cr7C3']);
    expect(of(1, 3)).toEqual(['Cr7C3', 'Fe3C']);
    expect(of(1, 4)).toEqual(['Cr7C3']);
  });

  test('Cr7C3 below 11%, either from there to 13% where carbon is low', () => {
    expect(of(0.2, 10.9)).toEqual(['Cr7C3']);
    expect(of(0.4, 11.5)).toEqual(['Cr7C3', 'Cr23C6']);
    expect(of(0.4, 12.5)).toEqual(['Cr23C6', 'Cr7C3']);
    expect(of(1.2, 12.5)).toEqual(['Cr7C3', 'Cr23C6']);
    expect(of(1.3, 12.5)).toEqual(['Cr7C3']);
    expect(of(1.8, 17)).toEqual(['Cr7C3']);
    expect(of(0, 13)).toEqual(['Cr23C6']);
  });
});

describe('what is told with an estimate', () => {
  const unknown = (low: number, high: number) => ({ unknown: true, low, high }) as const;
  const [open, between, dissolved, kept] = [
    'The hardening temperature is not known, which widens the ±.',
    'Between the rows at 5 and 12% chromium the carbon of the matrix is interpolated.',
    'Molybdenum and tungsten up to 1% Mo + W/2 are taken as dissolved (assumed).',
    'Vanadium, molybdenum and tungsten could bind more carbon than there is: 0.3% is kept for the matrix (assumed).',
  ];
  const held = (formula: string) =>
    `At the hardening temperature the austenite could hold all the carbon that is left, so no ${formula} is found.`;
  const either = (formulas: string) =>
    `With this much chromium and carbon the carbide may be ${formulas}. The volume is midway between the two, and the ± covers both.`;

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
    ['chromium of 2%', { carbon: 1.5, chromium: 2, austenitizingC: 850 }, []],
    ['chromium of 2.5%', { carbon: 1.5, chromium: 2.5, austenitizingC: 850 }, [either('Fe3C or Cr7C3')]],
    ['chromium of 17%', { carbon: 1, chromium: 17, austenitizingC: 1050 }, [either('Cr23C6 or Cr7C3')]],
    ['chromium of 5.5%', { carbon: 1.9, chromium: 5.5, austenitizingC: 1000 }, []],
    ['chromium above 5.5%', { carbon: 1.9, chromium: 5.6, austenitizingC: 1000 }, [between]],
    ['chromium below 11.5%', { carbon: 1.9, chromium: 11.4, austenitizingC: 1000 }, [between]],
    ['chromium of 11.5%', { carbon: 1.9, chromium: 11.5, austenitizingC: 1000 }, []],
    ['molybdenum of 1%', { carbon: 1.9, chromium: 12, molybdenum: 1, austenitizingC: 1000 }, [dissolved]],
    ['tungsten of 2%', { carbon: 1.9, chromium: 12, tungsten: 2, austenitizingC: 1000 }, [dissolved]],
    [
      'as much of both',
      { carbon: 1.9, chromium: 12, molybdenum: 0.4, tungsten: 0.4, austenitizingC: 1000 },
      [dissolved],
    ],
    ['molybdenum above 1%', { carbon: 1.9, chromium: 12, molybdenum: 1.5, austenitizingC: 1000 }, []],
    ['more vanadium than carbon', { carbon: 0.6, vanadium: 5, austenitizingC: 850 }, [held('Fe3C'), kept]],
    [
      'chromium not known',
      { carbon: 1.9, chromium: unknown(11.5, 13), austenitizingC: 1000 },
      ['Not known, which widens the ±: chromium from 12 to 13%.'],
    ],
    [
      'little known',
      { carbon: unknown(1.8, 2), chromium: unknown(11.5, 13), austenitizingC: 1000 },
      [
        'Not known, which widens the ±: carbon from 1.8 to 2%, chromium from 12 to 13%.',
        'With neither carbon nor chromium known, this says little more than that it is such a steel.',
      ],
    ],
    [
      'carbon not known, over two carbides',
      { carbon: unknown(0.5, 2), chromium: 17, austenitizingC: 1000 },
      [
        'Not known, which widens the ±: carbon from 0.5 to 2%.',
        'Over these contents the carbide may be Cr23C6 or Cr7C3; the ± covers them.',
      ],
    ],
    [
      'tungsten not known',
      { carbon: 1.9, chromium: 12, tungsten: unknown(0, 12), austenitizingC: 1000 },
      [
        'Not known, which widens the ±: tungsten from 0 to 12%.',
        'Over these contents it may be a tungsten or molybdenum steel. The ± covers the range of the table for AISI M2 too, from memory.',
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
    [{ carbon: 1, molybdenum: 11 }, 'molybdenum 11% is not between 0% and 10%'],
    [{ carbon: 1, tungsten: unknown(22, 24) }, 'tungsten 23% is not between 0% and 20%'],
  ])('%o is outside the tables', (steel, message) => {
    expect(() => carbideFromComposition(steel)).toThrow(new RangeError(message));
  });
});
