import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readNumber, readQuantity, readWindow, showQuantity } from '../../src/comparison/read.ts';
import type { Expected } from '../../src/comparison/read.ts';

const number = (text: string, expected?: Expected) => {
  const read = readNumber(text, expected);
  return read.ok ? read.value : read.kind;
};
const quantity = (text: string, expected?: Expected) => {
  const read = readQuantity(text, expected);
  return read.ok ? read.value : read.kind;
};
const refusal = (text: string, expected?: Expected): string => {
  const read = readQuantity(text, expected);
  return read.ok ? '' : read.message;
};

describe('one number', () => {
  test.each([
    ['0.5', 0.5],
    ['0,5', 0.5],
    ['  22 ', 22],
    ['.5', 0.5],
    ['5.', 5],
    ['+40', 40],
    ['-25', -25],
    ['−25', -25],
    ['\u00a025\u202f', 25],
    ['1e3', 1000],
    ['0,250', 0.25],
    ['1.200', 1.2],
  ])('%j is %d', (text, value) => expect(number(text)).toBe(value));

  test('minus nought is nought', () => expect(Object.is(number('-0'), 0)).toBe(true));

  test.each(['NaN', 'Infinity', '∞', 'abc', '1.2.3', '1,2,3', '--5', '22 23', '0x10', '1/2', '±1', '٣'])(
    '%j is not readable',
    (text) => expect(number(text)).toBe('not readable'),
  );

  test.each(['', '   ', '\t'])('%j is empty', (text) => expect(number(text)).toBe('empty'));

  test.each(['1e308', '-1e308', '1e309', '9999999'])('%j is out of range', (text) =>
    expect(number(text)).toBe('out of range'),
  );

  test('a letter for a digit is named', () => {
    expect(refusal('3O')).toContain('letter O for zero?');
    expect(refusal('1o.5')).toContain('letter O for zero?');
    expect(refusal('l2')).toContain('a letter for the digit one?');
  });

  test('a comma that could part thousands is asked about', () => {
    expect(number('1,200')).toBe('not readable');
    expect(refusal('1,200')).toContain('1200 or 1.200');
  });

  test('a long text is quoted by its beginning', () => {
    expect(refusal('sharp enough for a rope of hemp', { what: 'the start' })).toContain(
      'the start: “sharpenoughforaropeofhem…” is not readable',
    );
  });

  test('ten thousand characters are refused without being repeated', () => {
    const message = refusal('9'.repeat(10_000));
    expect(message).toContain('10000 characters');
    expect(message.length).toBeLessThan(120);
  });

  test('the range is named with value and unit', () => {
    const read = readNumber('91', { what: 'edge angle', unit: '°', low: 4, high: 45 });
    expect(read).toEqual({
      ok: false,
      kind: 'out of range',
      message: 'edge angle 91° is not between 4° and 45°',
    });
    expect(number('4', { low: 4, high: 45 })).toBe(4);
    expect(number('45', { low: 4, high: 45 })).toBe(45);
  });
});

describe('units', () => {
  // The international inch is 25.4 mm exactly, so a thousandth of it is 0.0254 mm.
  test.each<[string, Expected, number | string]>([
    ['20 thou', { unit: 'mm' }, 0.508],
    ['20thou', { unit: 'mm' }, 0.508],
    ['0,508 mm', { unit: 'thou' }, 20],
    ['1000 thou', { unit: 'mm' }, 25.4],
    ['0.5 mm', { unit: 'mm' }, 0.5],
    ['22°', { unit: '°' }, 22],
    ['60 HRC', { unit: 'HRC' }, 60],
    ['60hrc', {}, 60],
    ['15 µm', { unit: 'µm' }, 15],
    ['5 vol %', { unit: '%' }, 5],
    ['22°', { unit: 'mm' }, 'not readable'],
    ['20 thou', { unit: '°' }, 'not readable'],
    // In a field whose unit is not told, a length would be a guess.
    ['20 thou', {}, 'not readable'],
    ['20 mm', {}, 'not readable'],
    ['mm', { unit: 'mm' }, 'not readable'],
  ])('%j in %j is %j', (text, expected, value) => expect(number(text, expected)).toEqual(value));

  test('the range is that of the field after conversion', () =>
    expect(number('20 thou', { unit: 'mm', low: 0.6, high: 1 })).toBe('out of range'));
});

describe('a quantity', () => {
  const unknown = { low: 12, high: 28 };
  test.each<[string, unknown]>([
    ['22', 22],
    ['22 ± 1', { value: 22, plusMinus: 1 }],
    ['22±1', { value: 22, plusMinus: 1 }],
    ['22 +/- 0,5', { value: 22, plusMinus: 0.5 }],
    ['22° ± 1°', { value: 22, plusMinus: 1 }],
    ['22 ± 1 (normal)', { value: 22, plusMinus: 1, shape: 'normal' }],
    ['20–24', { value: 22, plusMinus: 2 }],
    ['20-24', { value: 22, plusMinus: 2 }],
    ['20 — 24', { value: 22, plusMinus: 2 }],
    ['20 to 24', { value: 22, plusMinus: 2 }],
    ['-5 - -3', { value: -4, plusMinus: 1 }],
    ['0.1–0.3', { value: 0.2, plusMinus: 0.1 }],
    ['24–24', 24],
    ['not known (5–9)', { unknown: true, low: 5, high: 9 }],
    ['25–20', 'reversed'],
    ['22 ± -1', 'not readable'],
    ['22 ±', 'not readable'],
    ['± 1', 'not readable'],
    ['22 ± 1 ± 1', 'not readable'],
    ['20–24–28', 'not readable'],
    ['20–3O', 'not readable'],
    ['not known (9–5)', 'reversed'],
    ['not known', 'not readable'],
    ['?', 'not readable'],
    ['', 'empty'],
  ])('%j is %j', (text, value) => expect(quantity(text)).toEqual(value));

  test.each(['', ' ', '?', 'not known', 'Not known', 'unknown'])('%j stands for the range given', (text) =>
    expect(quantity(text, { unknown })).toEqual({ unknown: true, low: 12, high: 28 }),
  );

  test('a range that runs backwards says how it should run', () =>
    expect(refusal('25–20')).toContain('write 20–25'));

  test('± and range are converted with their unit', () => {
    expect(quantity('20 ± 2 thou', { unit: 'mm' })).toEqual({ value: 0.508, plusMinus: 0.0508 });
    expect(quantity('20 thou – 24 thou', { unit: 'mm' })).toEqual({ value: 0.5588, plusMinus: 0.0508 });
  });

  test('the value must lie in the range, the end of its ± need not', () => {
    expect(quantity('5 ± 2', { low: 4, high: 45 })).toEqual({ value: 5, plusMinus: 2 });
    expect(quantity('3 ± 2', { low: 4, high: 45 })).toBe('out of range');
    expect(quantity('2–6', { low: 4, high: 45 })).toBe('out of range');
  });

  test('what is shown reads back', () => {
    const value = fc.integer({ min: -99_999, max: 99_999 }).map((n) => n / 1000);
    const half = fc.integer({ min: 0, max: 9_999 }).map((n) => n / 1000);
    const any = fc.oneof(
      value,
      fc.record({ value, plusMinus: half }),
      fc.record({
        value,
        plusMinus: half,
        shape: fc.constantFrom('uniform' as const, 'triangular' as const, 'normal' as const),
      }),
      fc
        .tuple(value, half)
        .map(([low, width]) => ({ unknown: true as const, low, high: Number((low + width).toFixed(3)) })),
    );
    fc.assert(
      fc.property(any, (quantity) => {
        expect(readQuantity(showQuantity(quantity, 6))).toEqual({ ok: true, value: quantity });
      }),
    );
  });

  test('shown without trailing zeros', () => {
    expect(showQuantity(22, 4)).toBe('22');
    expect(showQuantity({ value: 0.35, plusMinus: 0.02 }, 3)).toBe('0.35 ± 0.02');
    expect(showQuantity(-1 / 3, 3)).toBe('−0.333');
  });

  test('any text is read or refused, never thrown at', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const read = readQuantity(text);
        if (read.ok) return;
        expect(read.message.length).toBeGreaterThan(0);
        expect(read.message).not.toContain('undefined');
      }),
    );
  });
});

describe('a window', () => {
  const expected: Expected = { what: 'the start', low: 0.1, high: 1000 };

  test.each(['90–110', '90-110', '90 to 110', '90 — 110'])('%s is from where to where', (text) =>
    expect(readWindow(text, expected)).toEqual({ ok: true, low: 90, high: 110 }),
  );

  test.each([
    ['', 'the start is empty'],
    ['110–90', 'the start: 110–90 runs backwards; write 90–110'],
    ['90', 'the start: write from where to where, as 90–110, not “90”'],
    ['0–110', 'the start 0 is not between 0.1 and 1000'],
    ['90–1100', 'the start 1100 is not between 0.1 and 1000'],
  ])('“%s” is refused in words', (text, message) =>
    expect(readWindow(text, expected)).toMatchObject({ ok: false, message }),
  );

  test('without a name is a range', () => {
    expect(readWindow('wide')).toMatchObject({
      message: expect.stringMatching(/^the range: write from/) as string,
    });
  });
});

test.each([
  ['22 ± 1,234', 'the ± of the angle: “1,234” could be 1234 or 1.234; write it that way'],
  ['22 ± 2e6', 'the ± of the angle 2000000 is not between 0 and 1000000'],
])('in “%s” it is the ± that is refused', (text, message) =>
  expect(readQuantity(text, { what: 'the angle' })).toMatchObject({ ok: false, message }),
);
