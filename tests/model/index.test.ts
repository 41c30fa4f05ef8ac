import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';

/** The names other programs rely on: taking one away breaks them. */
const relied = [
  'compare',
  'predict',
  'whatItTakes',
  'compound',
  'additiveGuess',
  'logShares',
  'edgeAngleDeg',
  'wedgeFactor',
  'toothFactor',
  'grindThicknessMm',
  'grainSizeUm',
  'vickersFromRockwellC',
  'tensileStrengthMpa',
  'carbonWeightPercent',
  'leverRule',
  'cardCutMm',
  'cardForChainMm',
  'steelRemovedMm2',
  'welch',
  'ratioOfMeans',
  'geometricMeanRatio',
  'runsNeeded',
  'fitPower',
];

test('no name that other programs rely on is missing from the one door', () => {
  expect(Object.keys(model)).toEqual(expect.arrayContaining(relied));
});

test('the model imports nothing but itself, each file by its full name', () => {
  const files = readdirSync('src/model', { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  expect(files.length).toBeGreaterThan(10);
  for (const file of files) {
    const text = readFileSync(`src/model/${file}`, 'utf8');
    const imported = [...text.matchAll(/(?:\bfrom|\bimport)\s*\(?\s*'([^']+)'/g)].map(
      ([, path = '']) => path,
    );
    for (const path of imported) {
      expect(path, file).toMatch(/^\.{1,2}\/[a-z/.-]+\.ts$/);
      expect(new URL(path, `file:///model/${file}`).pathname, file).toMatch(/^\/model\//);
    }
  }
});

test('a knife against itself is 1 in every term', () => {
  const knife: model.Knife = {
    id: 'plover',
    angleDeg: 20,
    edgeMm: 0.4,
    finish: { um: 35 },
    grind: { form: 'flat', spineMm: 3, heightMm: 16 },
    hrc: 59,
    carbideVolPercent: { CrC: 6 },
  };
  const { rows } = model.compare({ knives: [knife], baseline: 'plover' });
  const factors = rows[0]?.terms.map(({ factor }) => factor) ?? [];
  expect(factors).not.toHaveLength(0);
  expect(new Set(factors)).toEqual(new Set([1]));
});
