import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';

/**
 * Runs the `@example` lines of the docstrings, `expression // → value`. A number is held to the digits it is written
 * with; anything else must be equal.
 */
const files = readdirSync('src/model', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => `src/model/${name.replaceAll('\\', '/')}`);
const examples = files.flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(/^ *\* @example (.+)$/gm)].map(
    ([, line = '']): [string, string] => [file, line],
  ),
);

type Names = Record<string, unknown>;
const evaluate = (expression: string, names: Names): unknown =>
  (new Function(...Object.keys(names), `return (${expression});`) as (...values: unknown[]) => unknown)(
    ...Object.values(names),
  );

/** Half a unit of the last digit written. */
function halfDigit(written: string): number {
  const [, decimals = '', exponent = '0'] = /^-?\d+(?:\.(\d+))?(?:e(-?\d+))?$/.exec(written) ?? [];
  return 0.5 * 10 ** (Number(exponent) - decimals.length);
}

describe('the examples in the docstrings', () => {
  test('there are some in every file that offers functions of one concept', () => {
    const withExamples = new Set(examples.map(([file]) => file));
    for (const name of [
      'ratio/log-shares',
      'geometry/geometry',
      'finish/finish',
      'steel/hardness',
      'steel/carbide',
      'chain/limits',
      'quantities',
    ])
      expect(withExamples).toContain(`src/model/${name}.ts`);
  });

  test.each(examples)('%s: %s', async (file, line) => {
    const names: Names = { ...model, ...((await import(`../../${file}`)) as Names) };
    const [expression = '', written = ''] = line.split(' // → ');
    expect(written, 'an example ends in “// → value”').not.toBe('');
    const actual = evaluate(expression, names);
    if (/^-?[\d.]+(e-?\d+)?$/.test(written)) {
      const tolerance = Number.isInteger(Number(written)) ? 1e-9 : halfDigit(written) * 1.000001;
      expect(Math.abs(Number(actual) - Number(written))).toBeLessThanOrEqual(tolerance);
    } else expect(actual).toEqual(evaluate(written, names));
  });
});
