import { expect, test } from 'vitest';
import { explanations, whatItTakesBand } from '../../../src/model/index.ts';
import type { Knife, Comparison } from '../../../src/model/index.ts';
import { exact } from '../knives.ts';

const plain: Knife = {
  id: 'plover',
  angleDeg: 20,
  edgeMm: 0.4,
  finish: { um: 35 },
  grind: { form: 'flat', spineMm: 3, heightMm: 16 },
  hrc: 59,
  carbideVolPercent: { CrC: 6 },
};
const pair = (change: Partial<Knife>, rest: Partial<Comparison> = exact): Comparison => ({
  ...rest,
  knives: [plain, { ...plain, ...change, id: 'dunlin' }],
  baseline: 'plover',
});
const question = { knife: 'plover', against: 'dunlin', attribute: 'edgeMm' } as const;

test('where everything is exact the band is the one answer', () => {
  // (0.4/0.3)^0.5 of thickness, drawn level by the thickness itself.
  const { low, median, high, inReach } = whatItTakesBand(pair({ edgeMm: 0.3 }), question, { samples: 100 });
  expect([low, median, high].map((value) => Number(value?.toFixed(4)))).toEqual([0.3, 0.3, 0.3]);
  expect(inReach).toBe(1);
});

test('a gauge’s common error moves the answer by as much as it may be off, and no further', () => {
  const comparison = pair({ edgeMm: { value: 0.3, plusMinus: 0.0001 } });
  const { low, high } = whatItTakesBand({ ...comparison, gaugeBias: { edgeMm: 0.02 } }, question, {
    samples: 300,
  });
  // 90% of an even spread of ±0.02 mm is ±0.018.
  expect(low).toBeGreaterThan(0.2799);
  expect(high).toBeLessThan(0.3201);
  expect((high ?? 0) - (low ?? 0)).toBeGreaterThan(0.03);
});

test('a grain size is explained within its own ±, and a carbide of nothing has no ratio to move by', () => {
  const comparison = pair({ finish: { um: { value: 40, plusMinus: 8 } }, carbideVolPercent: {} });
  const found = explanations(comparison, { knife: 'dunlin', against: 'plover', ratio: 0.8 });
  const finish = found.find(({ knife, attribute }) => knife === 'dunlin' && attribute === 'finish');
  expect(finish?.from).toBe(40);
  expect(finish?.withinStated).toBe(finish?.to !== null && Math.abs((finish?.to ?? 0) - 40) <= 8);
  // From 0 every value is endlessly far as a ratio, and such suspects stand last.
  const far = found.map(({ from, to }) => (to === null || from === 0 ? 1 : 0));
  expect(far).toEqual([...far].sort());
});
