import { describe, expect, it } from 'vitest';
import {
  additiveGuess,
  compound,
  logShares,
  percentReadings,
  signedShares,
  undoPercent,
} from '../../../src/model/index.ts';

const typed = '20' as unknown as number;

describe('percentages and factors at the ends of what they can be', () => {
  it.each([-100, -101, Number.NaN, Infinity, -Infinity, typed])('refuses %s per cent by name', (percent) => {
    const message = new RegExp(`^percentage ${percent}% is not a number above −100%$`);
    for (const refused of [
      () => compound([10, percent]),
      () => additiveGuess([10, percent]),
      () => undoPercent(percent),
    ])
      expect(refused).toThrow(RangeError);
    expect(() => compound([10, percent])).toThrow(message);
  });

  it('takes whatever is above −100%', () => {
    expect(compound([-99.5])).toBeCloseTo(0.005, 12);
    expect(undoPercent(-99.5)).toBeCloseTo(19_900, 6);
  });

  it.each([0, -2, Number.NaN, Infinity, typed])('refuses the factor %s by name', (factor) => {
    const message = new RegExp(`^factor ${factor} is not a number above 0$`);
    expect(() => logShares([2, factor])).toThrow(message);
    expect(() => signedShares([2, factor])).toThrow(message);
  });

  it('refuses readings outside their ranges by name', () => {
    expect(() => percentReadings(100, 0.5)).toThrow(/^percentage 100% is not between 0% and /);
    expect(() => percentReadings(-1, 0.5)).toThrow(/^percentage -1% /);
    expect(() => percentReadings(40, 1.1)).toThrow(/^exponent 1.1 is not between 0 and 1$/);
    expect(percentReadings(0, 1)).toEqual({ faceValue: 1, inverse: 1, damped: 1 });
  });

  it('gives no shares of factors that cancel or that all are 1', () => {
    expect(() => logShares([2, 0.5])).toThrow(/^factors 2, 0.5 nearly cancel/);
    expect(() => logShares([1, 1])).toThrow(/^factors 1, 1 nearly cancel/);
    // ln 1.2 / (ln 1.2 + ln 0.9) = 2.37: large, and still a share.
    expect(logShares([1.2, 0.9])[0]).toBeCloseTo(2.369, 3);
    expect(signedShares([1, 1])).toEqual([0, 0]);
  });
});
