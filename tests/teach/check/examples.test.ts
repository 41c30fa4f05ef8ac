import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as html from '../../../src/teach/check/html.ts';
import * as math from '../../../src/teach/check/math.ts';

const folder = new URL('../../../src/teach/check/', import.meta.url);
const scope: Record<string, unknown> = { ...html, ...math };
const examples = readdirSync(folder).flatMap((name) =>
  [...readFileSync(new URL(name, folder), 'utf8').matchAll(/@example (.+) \/\/ → (.+)/g)].map(
    ([, code = '', expected = '']) => [code, expected] as const,
  ),
);
const run = (code: string): unknown =>
  new Function(...Object.keys(scope), `return (${code});`)(...Object.values(scope));

test('there are examples to run', () => expect(examples.length).toBeGreaterThan(1));
test.each(examples)('%s is %s', (code, expected) => expect(run(code)).toEqual(run(expected)));
