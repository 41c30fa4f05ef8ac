import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as exercises from '../../../src/exercises/index.ts';

const folder = new URL('../../../src/teach/', import.meta.url);
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.ts'),
);
const examples = files.flatMap((name) =>
  [...readFileSync(new URL(name, folder), 'utf8').matchAll(/@example (.+) \/\/ → (.+)/g)].map((found) => ({
    name,
    code: String(found[1]),
    expected: String(found[2]),
  })),
);

test('there are examples to run', () => {
  expect(examples.length).toBeGreaterThan(5);
});

test.each(examples)('$name: $code is $expected', async ({ name, code, expected }) => {
  const scope = { ...exercises, ...((await import(new URL(name, folder).href)) as object) };
  const run = (text: string): unknown =>
    (new Function(...Object.keys(scope), `return (${text});`) as (...given: unknown[]) => unknown)(
      ...Object.values(scope),
    );
  expect(run(code)).toEqual(run(expected));
});
