import { expect, test } from 'vitest';
import { assumptionFields } from '../../../src/comparison/assumption-fields.ts';
import { comparisonFields } from '../../../src/comparison/comparison-fields.ts';
import { knifeFields } from '../../../src/comparison/knife-fields.ts';
import { runFieldsOf } from '../../../src/comparison/link/run-packing.ts';
import { planFields } from '../../../src/comparison/plan-fields.ts';

/** Links already sent depend on these: a name may be added at the end, and nothing else may change. */
const names = {
  comparison:
    'title invented knives baseline subject reading work slicePush contactDepthMm friction assumptions lengthUnit madeEqual faceValues gaugeBias position runs plan corrections outcome',
  knife: 'id name state angle edgeMm finish grind hrc carbide microbevelDeg toughness',
  // A place with no name had a field once, and stays empty.
  assumptions:
    'angleExponent thicknessExponent finishExponent hardnessExponent - residualCv lifeExponent wedgingShare limitPower structureWeights',
  plan: 'cv ratio batches seed blind runs control endPoint closed reopened start correlation numbersRestart endPointLate looks lookEvery life',
  run: 'knife batch sharpening cutMm endPoint checkedEvery startSharpness angleDeg burrChecked judge censored cuts series cycles order date remarks leftOutBecause',
};

const tables: Record<keyof typeof names, object> = {
  comparison: comparisonFields,
  knife: knifeFields,
  assumptions: assumptionFields,
  plan: planFields,
  run: runFieldsOf([]),
};

test.each(Object.entries(tables))('every field of the %s has the position it always had', (of, table) => {
  const fields = Object.entries(table) as [string, { position: number }][];
  const found = Object.fromEntries(fields.map(([name, { position }]) => [name, position]));
  const wanted = names[of as keyof typeof names]
    .split(' ')
    .map((name, position) => [name, position] as const);
  expect(found).toEqual(Object.fromEntries(wanted.filter(([name]) => name !== '-')));
});
