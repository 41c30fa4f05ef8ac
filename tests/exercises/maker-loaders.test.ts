import { expect, test } from 'vitest';
import { kinds, makeProblem } from '../../src/exercises/index.ts';
import { makerLoaders } from '../../src/exercises/maker-loaders.ts';
import { problemBy } from '../../src/exercises/set-problem.ts';
import type { Maker } from '../../src/exercises/maker.ts';

test('there is a loader for each kind and for no other', () =>
  expect(Object.keys(makerLoaders)).toEqual(kinds));

// A maker fetched in the browser must make what the build made: otherwise key and page part.
test.each(kinds)('%s comes out the same, fetched or at hand', async (kind) => {
  const maker = (await makerLoaders[kind]()) as Maker<unknown>;
  for (const level of [1, 2, 3] as const)
    expect(problemBy(maker, kind, 17, { level })).toEqual(makeProblem(kind, 17, { level }));
});
