import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAnswer } from '../../src/exercises/index.ts';
import type { Asks } from '../../src/exercises/index.ts';

const value = (text: string, asks: Asks = 'times as long'): number => {
  const read = readAnswer(text, asks);
  if (!read.ok) throw new Error(read.message);
  return read.value;
};

describe('an answer asked as a number of times', () => {
  // One ratio, written in the ways people write it: all of these are 4.49 times as long.
  test.each([
    ['4.49'],
    ['4,49'],
    ['×4.49'],
    ['x 4,49'],
    ['4.49×'],
    ['4.49 times'],
    ['4.49 times as long'],
    ['4.49-fold'],
    ['+349 %'],
    ['+349%'],
    ['349 % more'],
    ['349 per cent more'],
    ['449 %'],
    ['449%'],
    ['449 % as long'],
    ['449/100'],
    ['4 49/100'],
    ['  4.49  '],
    ['４.４９'],
    ['+349\u202f%'],
  ])('%s', (text) => {
    expect(value(text)).toBe(4.49);
  });

  test.each([
    ['9/4', 2.25],
    ['2 1/4', 2.25],
    ['2¼', 2.25],
    ['9⁄4', 2.25],
    ['9 / 4', 2.25],
    ['½', 0.5],
    ['.5', 0.5],
    ['−40 %', 0.6],
    ['-40 %', 0.6],
    ['40 % less', 0.6],
    ['40 %', 0.4],
    ['1 234,5', 1234.5],
    ["1'234.5", 1234.5],
  ])('%s is %d', (text, expected) => {
    expect(value(text)).toBe(expected);
  });
});

describe('an answer asked as per cent more', () => {
  test.each([
    ['125'],
    ['125 %'],
    ['+125 %'],
    ['+125'],
    ['125,0'],
    ['×2.25'],
    ['2.25 times'],
    ['9/4'],
    ['225 % as long'],
    ['125 % more'],
  ])('%s', (text) => {
    expect(value(text, '% more')).toBe(2.25);
  });

  test('a minus means less', () => {
    expect(value('−40', '% more')).toBe(0.6);
    expect(value('0', '% more')).toBe(1);
  });
});

describe('what cannot be read', () => {
  test('an empty field is told from a wrong one', () => {
    expect(readAnswer(' \u200b ', 'times as long')).toMatchObject({ ok: false, kind: 'empty' });
  });

  test.each([
    ['3O'],
    ['about four'],
    ['1e308'],
    ['9'.repeat(400)],
    ['9/0'],
    ['1/2/3'],
    ['2 9/4'],
    ['1.2.3'],
    ['--4'],
    ['0'],
    ['−2'],
    ['−100 %'],
    ['0/5'],
    ['NaN'],
    ['Infinity'],
    ['<b>4</b>'],
    ['-5 % less'],
    ['4 4'],
    ['%'],
    ['x'],
  ])('%s', (text) => {
    const read = readAnswer(text, 'times as long');
    expect(read).toMatchObject({ ok: false, kind: 'not readable' });
    expect(read.ok ? '' : read.message).toContain(text.slice(0, 30));
  });

  test('whatever is typed gets a ratio above 0 or a message', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'grapheme' }), fc.stringMatching(/^[-+x]?[\d.,/ ']{0,12} ?%?$/)),
        fc.constantFrom<Asks>('times as long', 'times as many', '% more'),
        (text, asks) => {
          const read = readAnswer(text, asks);
          return read.ok ? read.value > 0 && Number.isFinite(read.value) : read.message.length > 0;
        },
      ),
    );
  });
});

// What is right in each locale is taken from the locale data of the running Node (CLDR through Intl).
describe.each([['en-GB'], ['de-DE'], ['fr-FR'], ['de-CH'], ['ar-EG'], ['fa-IR']])(
  'numbers as %s writes them',
  (locale) => {
    const decimal = new Intl.NumberFormat(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
    const more = new Intl.NumberFormat(locale, {
      style: 'percent',
      signDisplay: 'always',
      minimumFractionDigits: 1,
    });
    const hundredths = fc.integer({ min: 1, max: 9_999_999 });

    test('ratios', () => {
      fc.assert(fc.property(hundredths, (n) => value(decimal.format(n / 100)) === n / 100));
    });

    test('per cent more, in either question', () => {
      fc.assert(
        fc.property(fc.integer({ min: -999, max: 99_999 }), (permille) => {
          const typed = more.format(permille / 1000);
          const expected = (1000 + permille) / 1000;
          return [value(typed), value(typed, '% more')].every(
            (read) => Math.abs(read / expected - 1) < 1e-12,
          );
        }),
      );
    });
  },
);

describe('an answer asked as per cent less', () => {
  test.each([
    ['20', 0.8],
    ['20 %', 0.8],
    ['−20 %', 0.8],
    ['-20', 0.8],
    ['20 % less', 0.8],
    ['20,0 %', 0.8],
    ['×0.8', 0.8],
    ['4/5', 0.8],
    ['80 % as long', 0.8],
    ['+20 %', 1.2],
    ['20 % more', 1.2],
  ])('%s is %d', (text, expected) => {
    expect(value(text, '% less')).toBe(expected);
  });
});

describe('a share asked in per cent', () => {
  test.each([
    ['37.5', 0.375],
    ['37,5 %', 0.375],
    ['3/8', 0.375],
    ['+37.5 %', 0.375],
  ])('%s is %d', (text, expected) => {
    expect(value(text, '%')).toBe(expected);
  });
});

describe('an amount', () => {
  test.each([
    ['84', 84],
    ['84 m', 84],
    ['84m', 84],
    ['84,0 M', 84],
    ['168/2', 84],
    ['1 234,5 m', 1234.5],
  ])('%s is %d', (text, expected) => {
    expect(value(text, 'm')).toBe(expected);
  });

  test.each([['84 %'], ['×84'], ['84 cm'], ['m'], ['0'], ['-84']])('%s is not readable in m', (text) => {
    expect(readAnswer(text, 'm')).toMatchObject({ ok: false, kind: 'not readable' });
  });

  test('degrees', () => {
    expect(value('16.7°', '°')).toBe(16.7);
  });
});

describe('a choice', () => {
  const options = ['14° per side, P220', '14° per side, P600', 'neither'];
  test.each([
    ['b', 2],
    ['B', 2],
    ['(b)', 2],
    ['B.', 2],
    ['option B', 2],
    ['14° per side, P600', 2],
    [' Neither ', 3],
  ])('%s is option %d', (text, expected) => {
    expect(readAnswer(text, 'letter', options)).toEqual({ ok: true, value: expected, form: 'letter' });
  });

  test.each([['D'], ['2'], ['bb'], ['14°']])('%s is not readable', (text) => {
    expect(readAnswer(text, 'letter', options)).toMatchObject({
      ok: false,
      kind: 'not readable',
      message: expect.stringContaining('from A to C') as string,
    });
  });
});
