import { describe, expect, test } from 'vitest';
import { compare, predict } from '../../../src/model/index.ts';
import type { Knife, Comparison, Quantity } from '../../../src/model/index.ts';

const plover: Knife = {
  id: 'plover',
  name: 'Plover',
  angleDeg: 20,
  edgeMm: 0.4,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 16 },
  hrc: 59,
  carbideVolPercent: { CrC: 6 },
};
/** As thick at the spine as behind the edge: its faces are parallel. */
const dunlin: Knife = {
  ...plover,
  id: 'dunlin',
  name: 'Dunlin',
  grind: { form: 'flat', spineMm: 0.4, heightMm: 16 },
};
const at = (friction: Quantity, knives: Knife[] = [plover, dunlin]): Comparison => ({
  knives,
  baseline: 'plover',
  friction,
});
const grindOf = (comparison: Comparison) => {
  const term = compare(comparison).rows[1]?.terms.find(({ id }) => id === 'grind');
  if (!term) throw new Error('no grind factor');
  return term;
};
const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);

describe('a primary grind with parallel faces', () => {
  test('counts as half a degree a side, with friction and without', () => {
    // tan(α + φ)/tan(0.5° + φ) with tan α = (3 − 0.4)/2/16 by the sheet of the grind (derived).
    const alpha = (Math.atan((3 - 0.4) / 2 / 16) * 180) / Math.PI;
    for (const friction of [0, 0.25, 0.8]) {
      const phi = (Math.atan(friction) * 180) / Math.PI;
      expect(grindOf(at(friction)).factor).toBeCloseTo(tan(alpha + phi) / tan(0.5 + phi), 9);
      const [, row] = compare(at(friction)).rows;
      for (const total of [row?.multiplied, row?.added, row?.toLimit]) expect(total).toBeGreaterThan(1);
      const [, band] = predict(at(friction), { samples: 100, seed: 1 });
      expect(Number.isFinite(band?.high)).toBe(true);
    }
  });

  test('keeps its range finite where friction may reach 0', () => {
    for (const friction of [
      { value: 0.2, plusMinus: 0.2 },
      { unknown: true, low: 0, high: 0.4 },
    ] as Quantity[]) {
      const { low, factor, high } = grindOf(at(friction));
      expect(Number(low)).toBeLessThanOrEqual(Number(factor));
      expect(Number(high)).toBeGreaterThanOrEqual(Number(factor));
      expect(Number.isFinite(high)).toBe(true);
      const [, band] = predict(at(friction), { samples: 400, seed: 1 });
      expect(Number.isFinite(band?.high)).toBe(true);
    }
  });

  test('without friction other grinds are compared as ever', () => {
    expect(grindOf(at(0, [plover, { ...plover, id: 'dunlin' }])).factor).toBe(1);
  });
});
