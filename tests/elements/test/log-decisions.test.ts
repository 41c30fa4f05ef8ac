import { expect, test } from 'vitest';
import { knifeChoices, runSaid } from '../../../src/elements/test/log-decisions.ts';
import { loft } from '../../comparison/entries.ts';

test('a run can be of each knife once, however its name is written, of those a log names, and of a code', () => {
  const [one, two] = loft().knives;
  // The same letters, once as one character and once as two.
  const entry = {
    ...loft(),
    knives: [
      { ...one, name: ' Caf\u00e9 ' },
      { ...two, name: 'Cafe\u0301' },
    ],
  } as ReturnType<typeof loft>;
  expect(knifeChoices(entry, ['Ruff', 'Caf\u00e9 (1)'], ['K1', 'Ruff'])).toEqual([
    'Caf\u00e9 (1)',
    'Caf\u00e9 (2)',
    'Ruff',
    'K1',
  ]);
});

test('what is said of a run is its first four cells, and how many runs there are after one more', () => {
  const cells = ['Dunlin', 'coil 1', '2', '140 cuts', 'not said'];
  expect(runSaid(cells, true, 3)).toBe('Changed: Dunlin, coil 1, 2, 140 cuts.');
  expect(runSaid(cells, false, 1)).toBe('Added: Dunlin, coil 1, 2, 140 cuts. The log has 1 run.');
  expect(runSaid(cells, false, 2)).toMatch(/ The log has 2 runs\.$/);
});
