import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as figures from '../../src/exercises/figures.ts';
import * as exercises from '../../src/exercises/index.ts';
import * as judgeShown from '../../src/exercises/judge-shown.ts';
import * as percent from '../../src/exercises/percent.ts';
import * as set from '../../src/exercises/set/index.ts';
import * as shownNumber from '../../src/exercises/shown-number.ts';

const folder = new URL('../../src/exercises/', import.meta.url);
const scope: Record<string, unknown> = {
  ...figures,
  ...percent,
  ...exercises,
  ...set,
  ...judgeShown,
  ...shownNumber,
};

const examples = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) =>
    [...readFileSync(new URL(name, folder), 'utf8').matchAll(/@example (.+) \/\/ → (.+)/g)].map((found) => [
      String(found[1]),
      String(found[2]),
    ]),
  );

const run = (code: string): unknown =>
  new Function(...Object.keys(scope), `return (${code});`)(...Object.values(scope));

test('there are examples to run', () => {
  expect(examples.length).toBeGreaterThan(5);
});

test.each(examples)('%s is %s', (code, expected) => {
  expect(run(code)).toEqual(run(expected));
});
