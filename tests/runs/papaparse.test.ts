import { readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../../src/runs/csv.ts';

/** The cases PapaParse tests its own parser with, as its package brings them along (MIT). */
interface Case {
  description: string;
  input: string;
  config?: object;
  expected: { data: string[][]; errors: { code: string; row: number }[] };
}
const file = readFileSync('node_modules/papaparse/tests/test-cases.js', 'utf8');
const cases = file.slice(file.indexOf('var CORE_PARSER_TESTS'), file.indexOf("describe('Core Parser Tests'"));
const all = runInNewContext(`${cases};CORE_PARSER_TESTS`) as Case[];
// Comments, other delimiters and the library's own headers are no part of a log.
const plain = all.filter(({ config }) => config === undefined);

const blank = (row: readonly string[]): boolean => row.every((cell) => cell.trim() === '');
const withoutCarriage = (row: readonly string[]): string[] => row.map((cell) => cell.replace(/\r$/, ''));

test('they are all there', () => {
  expect(plain.length).toBeGreaterThan(35);
});

describe('a file whose rows are', () => {
  test.each(plain.map((one) => [one.description, one] as const))('%s', (_what, { input, expected }) => {
    const newline = input.includes('\r') && !input.includes('\n') ? '\r' : '\n';
    const {
      preview,
      problems,
      blank: blanks,
      runs,
    } = readCsv(`h1,h2,h3${newline}${input}`, { delimiter: ',' });
    const rows = expected.data.filter((row) => !blank(row)).map(withoutCarriage);
    expect(preview.map(withoutCarriage)).toEqual(rows.slice(0, 10));
    // No header is known: every row is a problem, and what is none is blank; nothing is lost.
    expect(runs).toEqual([]);
    expect(new Set(problems.map(({ line }) => line)).size).toBe(rows.length);
    expect(blanks).toBeGreaterThanOrEqual(expected.data.length - rows.length - 1);
    const quotes = problems.filter(({ message }) => message.startsWith('a quotation mark')).length;
    expect(quotes > 0).toBe(expected.errors.length > 0);
  });
});
