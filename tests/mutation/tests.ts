/**
 * Stands in for `vitest` while the model is mutated: the same `expect`, and a list of tests in place of a run of them.
 * To start vitest anew for each of thousands of mutants takes far longer than the tests themselves.
 */
export { expect } from 'vitest';

export interface Test {
  id: string;
  file: string;
  run: () => unknown;
}

/** Every test of the files imported so far, in their order. */
export const tests: Test[] = [];

let file = '';
const path: string[] = [];

/** Takes in the tests of a file. */
export async function takeIn(name: string): Promise<void> {
  file = name;
  await import(`../../${name}`);
}

/** The function among what follows a name; what may stand before it, such as a limit of time, counts for nothing. */
const bodyOf = (rest: readonly unknown[]) =>
  rest.find((part) => typeof part === 'function') as (...row: unknown[]) => unknown;

function taker(take: (name: string, body: () => unknown) => void) {
  const once = (name: string, ...rest: unknown[]): void => take(name, bodyOf(rest));
  const each =
    (rows: readonly unknown[]) =>
    (name: string, ...rest: unknown[]): void => {
      for (const row of rows) take(name, () => bodyOf(rest)(...(Array.isArray(row) ? row : [row])));
    };
  return Object.assign(once, { each });
}

export const describe = taker((name, body) => {
  path.push(name);
  body();
  path.pop();
});

const list = (name: string, run: () => unknown): void => {
  tests.push({ id: [file, ...path, name, tests.length].join(' › '), file, run });
};
export const test = taker(list);
export const it = taker(list);
