import { describe, expect, test } from 'vitest';
import { compare } from '../../../src/model/index.ts';
import { middleCalculation, middleShared, ordinaryBlade } from '../../../src/model/chain/calculation.ts';
import {
  lnLifeOf,
  lnTotals,
  lnWidth,
  structures,
  forcesOf,
  wedgingOf,
  weightsOf,
} from '../../../src/model/chain/structures.ts';
import { loft } from '../loft.ts';

const calculations = loft.knives.map((knife) => middleCalculation(loft, knife));
const [plover, dunlin] = calculations;
if (!plover || !dunlin) throw new Error('no knives');

describe('the width the blunt edge may grow to', () => {
  // 1 − x, and 0.09/(x − 0.4) beyond 0.7 (assumed), by hand.
  test.each([
    [0, 1],
    [0.35, 0.65],
    [0.7, 0.3],
    [1, 0.15],
    [1.3, 0.1],
  ])('at x %f is %f', (x, width) => {
    expect(Math.exp(lnWidth(x))).toBeCloseTo(width, 12);
  });

  test('falls all along, and never to nothing', () => {
    for (let x = 0; x < 5; x += 0.01) {
      expect(lnWidth(x + 0.01)).toBeLessThan(lnWidth(x));
      expect(Number.isFinite(lnWidth(x))).toBe(true);
    }
  });
});

describe('weights of the structures', () => {
  test('are a third each where none are given, and add up to 1', () => {
    expect(weightsOf()).toEqual([1 / 3, 1 / 3, 1 / 3]);
    expect(weightsOf({})).toEqual([1 / 3, 1 / 3, 1 / 3]);
    expect(weightsOf({ structureWeights: [1, 2, 5] })).toEqual([0.125, 0.25, 0.625]);
    expect(weightsOf({ structureWeights: [0, 0, 3] })).toEqual([0, 0, 1]);
  });
});

test('wedging over the ordinary blade’s is the mean of the forces that a row shows', () => {
  // Own calculation, tests/reference/model-three.test.ts: 0.721 and 1.126.
  const shown = compare(loft).rows.map(({ forces }) => forces);
  expect(shown.map((forces) => Object.keys(forces))).toEqual(Array(2).fill(['wedge', 'thickness', 'grind']));
  expect(shown.map((forces) => Number(wedgingOf(forces).toFixed(3)))).toEqual([1.126, 0.721]);
});

describe('a life', () => {
  test('of the ordinary blade has a wedging of exactly 1', () => {
    expect(wedgingOf(forcesOf(middleCalculation(loft, ordinaryBlade)))).toBeCloseTo(1, 14);
  });

  test('by one structure a sample is that of each structure by itself', () => {
    const totals = lnTotals(dunlin);
    const found = lnLifeOf(dunlin, Float64Array.of(0, 1, 2, 1, 0));
    expect([...(found as Float64Array)]).toEqual([
      totals.multiplied,
      totals.added,
      totals.toLimit,
      totals.added,
      totals.multiplied,
    ]);
    structures.forEach((structure, place) => expect(lnLifeOf(dunlin, place)).toBe(totals[structure]));
  });

  test('with other values beside it varies only where its own structure reads them', () => {
    const shared = middleShared(loft);
    const width = {
      ...dunlin,
      shared: (id: keyof typeof shared) => (id === 'limitPower' ? Float64Array.of(1, 2) : shared[id]),
    };
    const [low = NaN, high = NaN] = lnLifeOf(width, 0) as Float64Array;
    expect(low).toBe(high);
    const [one = NaN, two = NaN] = lnLifeOf(width, 2) as Float64Array;
    // u^m: from m 1 to m 2 the life falls by ln u once more.
    expect(two - one).toBeCloseTo(lnWidth(shared.wedgingShare * wedgingOf(forcesOf(dunlin))), 12);
  });

  test('against another is the total that compare gives', () => {
    const row = compare(loft).rows[1];
    const [a, b] = [lnTotals(dunlin), lnTotals(plover)];
    for (const structure of structures)
      expect(Math.exp(a[structure] - b[structure])).toBeCloseTo(row?.[structure] ?? NaN, 12);
  });
});
