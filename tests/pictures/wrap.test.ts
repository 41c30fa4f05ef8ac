import fc from 'fast-check';
import { expect, it } from 'vitest';
import { wrap } from '../../src/pictures/wrap.ts';

const perSign = (line: string) => [...line].length;

it('breaks at spaces, and a word wider than a line where it must', () => {
  expect(wrap('one two three', 7, 9, perSign)).toEqual(['one two', 'three']);
  expect(wrap('abcdefgh ij', 3, 9, perSign)).toEqual(['abc', 'def', 'gh', 'ij']);
  expect(wrap('', 3, 9, perSign)).toEqual([]);
});

it('cuts what does not fit the last line, and says so', () => {
  expect(wrap('one two three four', 7, 2, perSign)).toEqual(['one two', 'three…']);
});

it('never makes a line wider than there is room, nor loses a word while there are lines', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 60 }),
      fc.integer({ min: 2, max: 30 }),
      (text, width) => {
        const lines = wrap(text, width, 99, perSign);
        expect(lines.every((line) => perSign(line) <= width)).toBe(true);
        expect(lines.join('').replaceAll(/\s/g, '')).toBe(text.replaceAll(/\s/g, ''));
        expect(wrap(text, width, 1, perSign).every((line) => perSign(line) <= width)).toBe(true);
      },
    ),
  );
});
