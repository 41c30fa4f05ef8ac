import { expect, test } from 'vitest';
import { readGuesses } from '../../../src/elements/page/read-guesses.ts';
import { pollOf } from '../../../src/topics/ask/poll.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import { loft } from '../../comparison/entries.ts';

const options = pollOf(sceneOf(loft()));
const read = (text: string) => readGuesses(text, options);

test('reads a guess a line, in any way a ratio is written', () =>
  expect(read('2\n×3\r\n+50%\n3/2\n2,5').guesses.map(({ ratio }) => ratio)).toEqual([2, 3, 1.5, 1.5, 2.5]));

test('reads several in one line', () =>
  expect(read('2 3 4; 5').guesses.map(({ ratio }) => ratio)).toEqual([2, 3, 4, 5]));

test('reads counts of the poll’s options, and a bare letter as one', () =>
  expect(read('A: 3\nb 12\nC').guesses).toEqual([
    { ratio: options[0]?.at, count: 3 },
    { ratio: options[1]?.at, count: 12 },
    { ratio: options[2]?.at, count: 1 },
  ]));

test('passes over empty lines and drops nothing in silence', () => {
  const { guesses, problems } = read('2\n\nmany\nZ 4\n-3\nA 99999999\n');
  expect(guesses).toHaveLength(1);
  expect(problems.map((problem) => problem.slice(0, 7))).toEqual([
    'Line 3:',
    'Line 4:',
    'Line 5:',
    'Line 6:',
  ]);
});

test('a hundred thousand lines are cut, and it is said', () =>
  expect(read('2\n'.repeat(100_000)).problems).toEqual(['Only the first 20000 lines are read.']));
