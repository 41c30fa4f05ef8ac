import { expect, test } from 'vitest';
import { firstOrderBand, predict } from '../../src/model/index.ts';
import type { LineUp, Quantity } from '../../src/model/index.ts';

const known = {
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  carbideVolPercent: { CrC: 5 },
} as const;
const fixed = {
  angleExponent: 1.3,
  thicknessExponent: 0.5,
  finishExponent: 0.3,
  hardnessExponent: 1.2,
  residualCv: 0,
};
const pair = (angleDeg: Quantity, edgeMm: Quantity, assumptions: LineUp['assumptions'] = fixed): LineUp => ({
  knives: [
    { ...known, id: 'a', angleDeg: 20, edgeMm: 0.5, hrc: 58 },
    { ...known, id: 'b', angleDeg, edgeMm, hrc: 60 },
  ],
  baseline: 'a',
  friction: 0.25,
  assumptions,
});

test('all known and all assumptions fixed, the band is the close value', () => {
  const lineUp = pair(14, 0.3);
  const { low, high, logSd } = firstOrderBand(lineUp, 'b');
  expect(logSd).toBe(0);
  expect(low).toBe(high);
  expect(predict(lineUp, { samples: 200, seed: 1 })[1]).toMatchObject({ low, median: low, high });
});

// The published line at 60 HRC, 5 vol % of chromium carbide and 30° included: −157 + 15.8·60 − 17.8·30 + 11.2·5 = 313 mm.
test('hardness alone: 15.8 mm of card a point, by hand', () => {
  const lineUp = pair(14, 0.3);
  const knives = lineUp.knives.map((knife) =>
    knife.id === 'b' ? { ...knife, hrc: { value: 60, plusMinus: 1 } } : knife,
  );
  const { logSd, sensitivities } = firstOrderBand({ ...lineUp, knives }, 'b');
  expect(sensitivities.map(({ name }) => name)).toEqual(['hrc']);
  expect(logSd).toBeCloseTo(15.8 / 313 / Math.sqrt(3), 6);
});

test('within 2 % of the sampling where the ± are small, and parted where they are not', () => {
  const width = ({ low, high }: { low: number; high: number }) => Math.log(high / low);
  const both = (lineUp: LineUp) => ({
    line: width(firstOrderBand(lineUp, 'b')),
    sampled: width(predict(lineUp, { samples: 200_000, seed: 3 })[1] ?? { low: 1, high: 1 }),
  });
  const normal = (value: number, plusMinus: number): Quantity => ({ value, plusMinus, shape: 'normal' });
  const small = both(pair(normal(14, 0.4), normal(0.3, 0.01)));
  expect(Math.abs(small.line / small.sampled - 1)).toBeLessThan(0.02);
  const large = both(pair({ unknown: true, low: 8, high: 30 }, { unknown: true, low: 0.1, high: 0.9 }));
  expect(Math.abs(large.line / large.sampled - 1)).toBeGreaterThan(0.05);
});

// A slope has no leap: half a hundredth of a point inside the end it is the same to a part in a thousand.
test.each([
  [68, 67.995],
  [20, 20.005],
])('at %d HRC, where what the model takes ends, the slope is that of the side there is', (end, inside) => {
  const lineUp = pair(14, 0.3);
  const slopeAt = (value: number) => {
    const hrc = { value, plusMinus: 1 };
    const knives = lineUp.knives.map((knife) => (knife.id === 'b' ? { ...knife, hrc } : knife));
    return firstOrderBand({ ...lineUp, knives }, 'b').logSd;
  };
  expect(slopeAt(inside)).toBeGreaterThan(0);
  expect(Math.abs(slopeAt(end) / slopeAt(inside) - 1)).toBeLessThan(1e-3);
});
