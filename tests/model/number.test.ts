import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';
import { digestOf } from './panel.ts';

test('the results are those of the model number', () => {
  const digests = JSON.parse(readFileSync('tests/model/model-numbers.json', 'utf8')) as Record<
    string,
    string
  >;
  expect(digestOf(model)).toBe(digests[model.MODEL_NUMBER]);
});
