import { expect, test } from 'vitest';
import { compare } from '../../src/model/index.ts';
import { angleQuestions } from '../../src/comparison/angle-questions.ts';
import { toModel } from '../../src/comparison/to-model.ts';
import { validate } from '../../src/comparison/validate.ts';
import { loft, loftDocument } from './entries.ts';

test('the loft is a comparison, marked as invented, and needs no question', () => {
  expect(validate(loftDocument())).toEqual({ ok: true, entry: loftDocument() });
  expect(loft().invented).toBe(true);
  expect(angleQuestions(loft())).toEqual([]);
});

test('Curlew and Avocet are nearly alike; Plover and Dunlin are not', () => {
  const { rows } = compare(toModel(loft()), { reading: 'careful' });
  const product = (id: string) => rows.find(({ knife }) => knife === id)?.multiplied ?? Number.NaN;
  expect(Math.abs(Math.log(product('curlew') / product('avocet')))).toBeLessThan(Math.log(1.1));
  expect(product('dunlin') / product('plover')).toBeGreaterThan(5);
});
