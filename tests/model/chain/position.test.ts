import { expect, test } from 'vitest';
import { compare, disputes, ratioUnder } from '../../../src/model/index.ts';
import type { Comparison } from '../../../src/model/index.ts';
import { loft as comparison } from '../loft.ts';

const knife = {
  edgeMm: 0.5,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 25 },
  hrc: 58,
} as const;
const angles: Comparison = {
  knives: [
    { ...knife, id: 'twenty', angleDeg: 20, carbideVolPercent: {} },
    { ...knife, id: 'ten', angleDeg: 10, carbideVolPercent: {} },
  ],
  baseline: 'twenty',
  friction: 0.25,
};
const rad = Math.PI / 180;

test('anyone who holds nothing else has the careful estimate, under the structure held', () => {
  for (const row of compare(comparison).rows) {
    expect(ratioUnder(comparison, row.knife, {})).toBeCloseTo(row.multiplied, 12);
    for (const structure of disputes.structure)
      expect(ratioUnder(comparison, row.knife, { structure })).toBeCloseTo(row[structure], 12);
  }
});

// Statics of a wedge, worked out by hand for 20° against 10° at µ 0.25: ×3.13 on an elastic bed, ×0.73 buried.
test('the wedge takes the form held', () => {
  const apex = Math.sin(20 * rad) / Math.sin(10 * rad);
  const under = (push: 'spread' | 'bed' | 'buried') =>
    ratioUnder(angles, 'ten', { apex: 'tooth', push }) / apex;
  expect(under('spread')).toBeCloseTo(1.514, 3);
  expect(under('bed')).toBeCloseTo(3.13, 2);
  expect(under('buried')).toBeCloseTo(0.73, 2);
});

test('the apex takes the form held', () => {
  const wedge = ratioUnder(angles, 'ten', { apex: 'tooth' }) / ratioUnder(angles, 'ten', { apex: 'wear' });
  expect(wedge).toBeCloseTo(1.97 / 2.064, 3);
});

test('to a limit the apex is steel to wear away whatever is held of it, and the wedge takes the form held', () => {
  const under = (position: Parameters<typeof ratioUnder>[2]) =>
    ratioUnder(angles, 'ten', { structure: 'toLimit', ...position });
  for (const apex of disputes.apex) expect(under({ apex })).toBe(under({}));
  expect(under({ push: 'bed' })).toBeGreaterThan(under({}));
  expect(under({ push: 'buried' })).toBeLessThan(under({}));
});

test('every position keeps a/b · b/a = 1 and is 1 for the baseline', () => {
  const positions = disputes.apex.flatMap((apex) =>
    disputes.push.flatMap((push) => disputes.structure.map((structure) => ({ apex, push, structure }))),
  );
  for (const position of positions) {
    const there = ratioUnder(comparison, 'dunlin', position);
    const back = ratioUnder({ ...comparison, baseline: 'dunlin' }, comparison.baseline, position);
    expect(there * back).toBeCloseTo(1, 10);
    expect(ratioUnder(comparison, comparison.baseline, position)).toBe(1);
  }
});

test('what nobody holds is refused by name', () => {
  expect(() => ratioUnder(comparison, 'dunlin', { apex: 'magic' as 'tooth' })).toThrow(
    /apex: magic is not one of between, tooth, wear/,
  );
  expect(() => ratioUnder(comparison, 'heron', {})).toThrow(/heron is not among the knives/);
});
