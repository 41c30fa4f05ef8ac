import { readFileSync } from 'node:fs';
import fc from 'fast-check';

/** The Big List of Naughty Strings (MIT; a dependency): strings that have broken programs elsewhere. */
export const naughty = JSON.parse(
  readFileSync('node_modules/big-list-of-naughty-strings/blns.json', 'utf8'),
) as string[];

/** The same, alone or with something readable around it, or many times over. */
export const anyNaughty = fc.oneof(
  fc.constantFrom(...naughty),
  fc
    .tuple(
      fc.constantFrom(...naughty),
      fc.constantFrom('22', '22 ± ', '4,49', 'a;b\n', '"', '#with=2.', 'Tern '),
    )
    .chain(([text, around]) => fc.constantFrom(around + text, text + around, around + text + around)),
  fc.tuple(fc.constantFrom(...naughty), fc.integer({ min: 2, max: 200 })).map(([text, n]) => text.repeat(n)),
);

/** Runs a check over every string of the list, and then over mixtures of them. */
export function forEveryNaughty(check: (text: string) => void, mixtures = 500): void {
  for (const text of naughty) check(text);
  fc.assert(fc.property(anyNaughty, check), { numRuns: mixtures });
}
