import { expect, test } from 'vitest';
import { compare, ratioCurve, structures, withAttribute } from '../../../src/model/index.ts';
import type { SolvableAttribute } from '../../../src/model/index.ts';
import { loft as comparison } from '../loft.ts';

const spans: [SolvableAttribute, number[]][] = [
  ['angleDeg', [8, 14, 21, 30]],
  ['edgeMm', [0.1, 0.35, 0.9]],
  ['finish', [10, 35, 120]],
  ['hrc', [45, 49.9, 50, 58, 68]],
];

test.each(spans)('over %s it gives what the whole comparison gives for each value', (attribute, values) => {
  for (const structure of [undefined, ...structures]) {
    const curve = ratioCurve(comparison, {
      knife: 'plover',
      against: 'dunlin',
      attribute,
      values,
      structure,
    });
    values.forEach((value, index) => {
      const { rows } = compare(withAttribute(comparison, 'plover', attribute, value));
      const of = (id: string) =>
        rows.find(({ knife }) => knife === id)?.[structure ?? 'multiplied'] ?? Number.NaN;
      expect(curve[index]).toBeCloseTo(of('plover') / of('dunlin'), 10);
    });
  }
});

test('a value the model refuses has no ratio, and the others keep theirs', () => {
  const question = { knife: 'plover', against: 'dunlin', attribute: 'edgeMm', values: [0.3, 50] } as const;
  expect(ratioCurve(comparison, question)).toEqual([expect.any(Number), null]);
  expect(() => ratioCurve(comparison, { ...question, knife: 'heron' })).toThrow(
    /heron is not among the knives/,
  );
});
