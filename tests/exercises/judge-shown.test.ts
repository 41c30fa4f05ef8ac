import { describe, expect, test } from 'vitest';
import { judgeShown } from '../../src/exercises/judge-shown.ts';
import { shownNumber } from '../../src/exercises/shown-number.ts';

describe('a number typed in place of one shown', () => {
  test.each([
    ['1.96', 'times', '1,96'],
    ['1.96', 'times', '×1.96'],
    ['1.96', 'times', '1.96 times'],
    ['1.96', 'times', '+96%'],
    ['1.96', 'times', '196%'],
    ['2.25', 'times', '9/4'],
    ['2.25', 'times', '2 1/4'],
    ['1.96', 'times', '1.9549'],
    ['−0.35', 'times', '-0,35'],
    ['0', 'times', '0'],
    ['1230', 'HV', '1234 HV'],
    ['22.4', 'µm', '22.4 μm'],
    ['0.153', 'mm²', '0,153 mm2'],
    ['18.2', '°', '18.2°'],
    ['−28.57', '%', '−28.57'],
    ['−28.57', '%', '-28,57%'],
    ['−28.57', '%', '28.57% less'],
    ['1.2 × 10^−4', 'times', '1,2 x 10^-4'],
    ['1.2 × 10^−4', 'times', '0.00012'],
    ['1.2 × 10^−4', 'times', '1.2 × 10⁻⁴'],
  ] as const)('%s, asked as %s: %s is right', (shown, asks, typed) => {
    expect(judgeShown(shown, asks, typed).verdict).toBe('right');
  });

  test.each([
    ['1.96', 'times', '1.9', /^You wrote 1\.9\. Not yet: the result is larger\./],
    ['1.96', 'times', '2.5', /the result is smaller\./],
    ['1.96', 'times', '1.99', /Very near/],
    ['1.96', 'times', '19.6', /decimal mark/],
    ['1.96', 'times', '−1.96', /sign/],
    ['1.96', 'times', '0.51', /one divided by/],
    ['−28.57', '%', '28.57', /sign/],
    ['0', 'times', '0.2', /Not yet/],
    ['22.4', 'µm', '0', /^You wrote 0 µm\./],
  ] as const)('%s, asked as %s: %s gets a word, and never the result', (shown, asks, typed, word) => {
    const { verdict, message } = judgeShown(shown, asks, typed);
    expect(verdict).toBe('not right');
    expect(message).toMatch(word);
    expect(message.split(/[^\d.−]+/)).not.toContain(shown);
  });

  test.each(['', 'rather a lot', '1.9.6', '×'])('“%s” is not called wrong', (typed) => {
    expect(judgeShown('1.96', 'times', typed).verdict).toBe('not readable');
  });

  test('what is shown as no number is nobody’s blank', () => {
    expect(() => shownNumber('left out')).toThrow(RangeError);
    expect(() => shownNumber('')).toThrow(RangeError);
  });
});
