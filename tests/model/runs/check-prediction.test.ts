import { describe, expect, it } from 'vitest';
import { compare, explanations, checkPrediction, withAttribute } from '../../../src/model/index.ts';
import type { Knife, Comparison } from '../../../src/model/index.ts';

const band = (middle: number, logSd: number, z: number) => ({
  low: middle * Math.exp(-z * logSd),
  high: middle * Math.exp(z * logSd),
});

describe('squaring a prediction with a measurement', () => {
  const predicted = { median: 8.58, ...band(8.58, 0.208, 1.6448536) };
  const measured = { ratio: 5, ...band(5, 0.15, 1.959964) };

  it('weighs both by inverse variance in logarithms', () => {
    // Design check values, worked by hand: weights 1/0.208² and 1/0.15² on ln 8.58 and ln 5 give 6.01 and 0.122; ln(5/8.58) ± 1.645·0.2565.
    const { combined, leftover, needsExplaining } = checkPrediction({ predicted, measured });
    expect(combined.ratio).toBeCloseTo(6.01, 2);
    expect(combined.logSd).toBeCloseTo(0.122, 3);
    expect(leftover.ratio).toBeCloseTo(0.583, 3);
    expect(leftover.low).toBeCloseTo(0.38, 2);
    expect(leftover.high).toBeCloseTo(0.89, 2);
    expect(needsExplaining).toBe(true);
  });

  it('finds nothing to explain where the bands meet', () => {
    const near = checkPrediction({ predicted, measured: { ratio: 8, ...band(8, 0.15, 1.959964) } });
    expect(near.needsExplaining).toBe(false);
    const wide = checkPrediction({ predicted, measured: { ratio: 5, ...band(5, 0.6, 1.959964) } });
    expect(wide.needsExplaining).toBe(false);
    expect(Math.abs(Math.log(wide.combined.ratio / 8.58))).toBeLessThan(0.1);
  });

  it('finds as much to explain where the measured is above the predicted', () => {
    const turned = checkPrediction({
      predicted: { median: 5, ...band(5, 0.15, 1.6448536) },
      measured: { ratio: 8.58, ...band(8.58, 0.208, 1.959964) },
    });
    const { leftover, needsExplaining } = checkPrediction({ predicted, measured });
    expect(turned.needsExplaining).toBe(needsExplaining);
    expect(turned.leftover.ratio * leftover.ratio).toBeCloseTo(1, 12);
    expect(turned.leftover.low * leftover.high).toBeCloseTo(1, 7);
  });

  it('reads the width of a band by the share it holds', () => {
    // 50% of a normal distribution lie within 0.6744898 standard deviations, 99% within 2.5758293 (any table).
    const shared = checkPrediction({
      predicted: { median: 8.58, ...band(8.58, 0.208, 0.6744898) },
      predictedShare: 0.5,
      measured: { ratio: 5, ...band(5, 0.15, 2.5758293) },
      measuredConfidence: 0.99,
    });
    expect(shared.predictedLogSd).toBeCloseTo(0.208, 7);
    expect(shared.measuredLogSd).toBeCloseTo(0.15, 7);
    expect(shared.combined.ratio).toBeCloseTo(checkPrediction({ predicted, measured }).combined.ratio, 6);
    expect(shared.combined.low).toBeCloseTo(6.01 * Math.exp(-1.6448536 * 0.1217), 1);
  });

  it('takes bands that end at their middle, and refuses what is no band by its numbers', () => {
    const oneSided = { ratio: 5, low: 5, high: 6 };
    expect(checkPrediction({ predicted, measured: oneSided }).measuredLogSd).toBeGreaterThan(0);
    expect(
      checkPrediction({ predicted, measured: { ratio: 5, low: 4, high: 5 } }).measuredLogSd,
    ).toBeGreaterThan(0);
    const refused = (measured: { ratio: number; low: number; high: number }) =>
      expect(() => checkPrediction({ predicted, measured })).toThrow(
        new RangeError(
          `measured ${measured.low}, ${measured.ratio}, ${measured.high} are not ratios above 0 in order`,
        ),
      );
    refused({ ratio: 5, low: 0, high: 6 });
    refused({ ratio: 5, low: 5.1, high: 6 });
    refused({ ratio: 5, low: 4, high: 4.9 });
    refused({ ratio: 5, low: 4, high: Infinity });
    for (const share of [0, 1, NaN])
      expect(() => checkPrediction({ predicted, measured: oneSided, measuredConfidence: share })).toThrow(
        new RangeError(`share ${share} of measured is not between 0 and 1, both excluded`),
      );
    expect(() => checkPrediction({ predicted: { median: 1, low: 1, high: 1 }, measured: oneSided })).toThrow(
      new RangeError('predicted 1 to 1 has no width: without a band it cannot be weighed'),
    );
  });

  it('refuses bands it cannot weigh', () => {
    const flat = { ratio: 5, low: 5, high: 5 };
    expect(() => checkPrediction({ predicted, measured: flat })).toThrow('measured 5 to 5 has no width');
    expect(() => checkPrediction({ predicted, measured: { ratio: 5, low: 6, high: 7 } })).toThrow('in order');
    expect(() => checkPrediction({ predicted, measured, predictedShare: 90 })).toThrow(
      'share 90 of predicted',
    );
  });
});

describe('what would explain it', () => {
  const knife = (id: string, change: Partial<Knife>): Knife => ({
    id,
    angleDeg: { value: 20, plusMinus: 1 },
    edgeMm: { value: 0.4, plusMinus: 0.05 },
    finish: { scale: 'FEPA-P', grit: 400 },
    grind: { form: 'flat', spineMm: 3, heightMm: 18 },
    hrc: { value: 59, plusMinus: 1 },
    carbideVolPercent: { CrC: { value: 6, plusMinus: 2 } },
    ...change,
  });
  const comparison: Comparison = {
    knives: [knife('plover', {}), knife('dunlin', { angleDeg: { value: 14, plusMinus: 1 } })],
    baseline: 'plover',
  };
  const ratio = (l: Comparison): number => l.knives.length && (compare(l).rows[1]?.multiplied ?? NaN);
  const suspects = explanations(comparison, {
    knife: 'dunlin',
    against: 'plover',
    ratio: ratio(comparison) * 0.93,
  });

  it('names values that give the measured ratio when put back', () => {
    const found = suspects.filter(({ to }) => to !== null);
    expect(found.length).toBeGreaterThan(8);
    for (const { knife: id, attribute, to } of found)
      expect(ratio(withAttribute(comparison, id, attribute, to ?? NaN)) / ratio(comparison)).toBeCloseTo(
        0.93,
        8,
      );
  });

  it('puts first what lies within the ± it was entered with', () => {
    expect(suspects[0]?.withinStated).toBe(true);
    const kinds = suspects.map(({ withinStated }) => withinStated);
    expect(kinds.lastIndexOf(true)).toBeLessThan(kinds.indexOf(false));
    const angle = suspects.find((s) => s.knife === 'dunlin' && s.attribute === 'angleDeg');
    expect(angle).toMatchObject({ from: 14, withinStated: (angle?.to ?? NaN) <= 15 });
    const grit = suspects.find((s) => s.knife === 'dunlin' && s.attribute === 'finish');
    expect(grit?.withinStated).toBe(false);
    expect(suspects.some(({ attribute }) => attribute === 'microbevelAngleDeg')).toBe(false);
  });

  it('refuses knives it does not know', () => {
    expect(() => explanations(comparison, { knife: 'curlew', against: 'plover', ratio: 2 })).toThrow(
      'knife curlew',
    );
    expect(() => explanations(comparison, { knife: 'dunlin', against: 'plover', ratio: 0 })).toThrow(
      'target 0',
    );
  });
});
