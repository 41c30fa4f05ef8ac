import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { findCsv } from '../../src/runs/csv-found.ts';
import { logCsv } from '../../src/runs/csv-out.ts';
import { readCsv, readCsvParts } from '../../src/runs/csv.ts';
import type { CsvPart } from '../../src/runs/csv.ts';
import { validateRun } from '../../src/runs/log.ts';
import type { NamedRun } from '../../src/runs/log.ts';
import { textOf } from '../../src/runs/text.ts';
import { aRun } from './runs.ts';

const amount = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
const orNot = <T>(value: fc.Arbitrary<T>) => fc.oneof(value, fc.constant('not recorded' as const));
/** Names as people and troublemakers give them, formulas among them. */
const name = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }),
  fc
    .tuple(fc.stringMatching(/^'{0,2}[=+@＝-]$/u), fc.string({ maxLength: 9 }))
    .map((parts) => parts.join('')),
);
const howFar = fc.oneof(
  amount.map((cutMm) => ({ cutMm })),
  amount.map((cuts) => ({ cuts })),
  fc
    .array(fc.double({ min: 0.001, max: 1000, noNaN: true }), { minLength: 1, maxLength: 5 })
    .map((cycles) => ({
      cycles,
    })),
  fc.uniqueArray(fc.nat(1e6), { minLength: 1, maxLength: 5 }).chain((cuts) =>
    fc.array(amount, { minLength: cuts.length, maxLength: cuts.length }).map((values) => ({
      series: cuts.sort((a, b) => a - b).map((cut, i) => ({ cut, sharpness: values[i] ?? 1 })),
    })),
  ),
);
const anyRun: fc.Arbitrary<NamedRun> = fc
  .tuple(
    fc.record({
      knife: name,
      batch: name,
      sharpening: name,
      endPoint: name,
      judge: name,
      checkedEvery: orNot(amount),
      startSharpness: orNot(amount),
      angleDeg: orNot(fc.double({ min: 4, max: 45, noNaN: true })),
      burrChecked: orNot(fc.boolean()),
    }),
    howFar,
    fc.constantFrom(
      {},
      { censored: true as const },
      { order: 7, date: '2026-11-25', remarks: '=2', leftOutBecause: 'it slipped, badly' },
    ),
  )
  .map(([run, far, censored]) => validateRun({ ...run, ...far, ...censored }))
  .filter((checked) => checked.ok)
  .map(({ run }) => run)
  .filter(({ knife }) => knife !== 'not recorded');

describe('a log', () => {
  test('written as CSV is read back equal', () => {
    fc.assert(
      fc.property(fc.array(anyRun, { maxLength: 6 }), (runs) => {
        const read = readCsv(logCsv(runs));
        expect(read.problems).toEqual([]);
        expect(read.runs).toEqual(runs);
      }),
    );
  });

  test('written as CSV holds no cell a spreadsheet takes for a formula', () => {
    fc.assert(
      fc.property(fc.array(anyRun, { maxLength: 6 }), (runs) => {
        for (const row of Papa.parse<string[]>(logCsv(runs)).data)
          for (const cell of row) expect(cell).not.toMatch(/^[=+\-@\t\r＝＋－＠]/u);
      }),
    );
  });

  test('cut into pieces anywhere reads as the whole', async () => {
    const runs = [aRun(), aRun({ knife: 'Dunlin, "the slim one"' }), aRun({ batch: '=2' })];
    const text = `${logCsv(runs)}\r\n"torn, 3\r\n\r\n`;
    const whole = readCsv(text);
    expect(whole.runs).toEqual(runs);
    for (const length of [1, 2, 3, 7, 50]) {
      const cut = text.match(new RegExp(`[^]{1,${length}}`, 'g')) ?? [];
      const parts: CsvPart[] = [];
      for await (const part of readCsvParts(cut, whole.found)) parts.push(part);
      expect(parts.flatMap((part) => part.runs)).toEqual(runs);
      expect(parts.flatMap((part) => part.lines)).toEqual(whole.lines);
      expect(parts.flatMap((part) => part.problems)).toEqual(whole.problems);
      expect(parts.at(-1)?.readTo).toBe(text.length - 1);
    }
  });
});

describe('a file from elsewhere', () => {
  const european =
    '\uFEFFMesser;Blade;Batch;Cut (mm);Edge angle;Judged by;Burr\r\n' +
    'x;Plover;coil 1;1250,5;20,5;;yes\r\n' +
    'x;Dunlin;coil 1;not much;14;Mate;no\r\n' +
    ';;;;;;\r\n' +
    'x;Curlew;coil 2;900\r\n' +
    'x;Avocet;"coil ""2""; old";880.5;17;;\r\n' +
    'x;Avocet;"coil\n2";880,5;17;;\r\n' +
    'x;Avocet;coil 2;700;17,5;;no;;\r\n';

  test('shows what was found and asks what is not plain', () => {
    const { found, preview } = readCsv(european);
    expect(found).toMatchObject({ delimiter: ';', decimal: 'comma', byteOrderMark: true });
    expect(found.headers.map(({ column }) => column)).toEqual([
      null,
      'knife',
      'batch',
      'cutMm',
      'angleDeg',
      'judge',
      'burrChecked',
    ]);
    expect(found.missing).toContain('sharpening');
    expect(found.questions).toEqual([
      'The column “Messer” is not read.',
      'Some numbers have a comma (1250,5), some a point (880.5).',
    ]);
    expect(preview[0]).toEqual(['x', 'Plover', 'coil 1', '1250,5', '20,5', '', 'yes']);
  });

  test('says of every line what became of it', () => {
    const read = readCsv(european);
    expect(read.lines).toEqual([2, 9]);
    expect(read.runs[0]).toEqual({
      knife: 'Plover',
      batch: 'coil 1',
      sharpening: 'not recorded',
      cutMm: 1250.5,
      endPoint: 'not recorded',
      checkedEvery: 'not recorded',
      startSharpness: 'not recorded',
      angleDeg: 20.5,
      burrChecked: true,
      judge: 'not recorded',
    });
    expect(read.blank).toBe(1);
    expect(read.problems).toEqual([
      { line: 3, path: 'cutMm', message: 'the cut “not much” is not a number' },
      { line: 5, path: '', message: 'the row has 4 cells, the header line 7' },
      { line: 6, path: 'cutMm', message: 'the cut “880.5” is not a number' },
      { line: 7, path: 'batch', message: 'the lot holds a character that cannot be shown' },
    ]);
  });

  test('is read as confirmed', () => {
    const read = readCsv('a,b\nPlover,"1,250"\n', { columns: ['knife', 'cuts'] });
    expect(read.found.questions).toEqual([
      '1,250 is read as 1.250: the comma could also set thousands apart.',
    ]);
    expect(read.runs[0]?.cuts).toBe(1.25);
    const point = readCsv('a,b\nPlover,"1,250"\n', { columns: ['knife', 'cuts'], decimal: 'point' });
    expect(point.problems).toEqual([
      { line: 2, path: 'cuts', message: 'the number of cuts “1,250” is not a number' },
    ]);
    expect(() => findCsv('a,b\n', { columns: ['knife'] })).toThrow(
      'columns has 1 entries, one for each of 2',
    );
    expect(() => findCsv('a,b\n', { columns: ['knife', 'knife'] })).toThrow('columns has knife twice');
  });

  test.each([
    ['two headers for one column', 'knife,blade,cuts\nPlover,Dunlin,3\n', 'knife'],
    ['tabs', 'knife\tcuts\nPlover\t3', 'knife'],
    ['bars', 'knife|cuts\nPlover|3\n', 'knife'],
    ['the line ends of old machines', 'knife,cuts\rPlover,3\r', 'knife'],
    ['blank lines before the headers', '\n\n knife , cuts \nPlover,3\n', 'knife'],
    ['a comma in every name but one delimiter', 'knife;cuts\n"Plover";3\n', 'knife'],
  ])('with %s is read', (_what, text) => {
    const read = readCsv(text);
    expect(read.problems).toEqual([]);
    expect(read.runs.map(({ knife, cuts }) => [knife, cuts])).toEqual([['Plover', 3]]);
  });

  test('with a quotation mark that is never closed names its line', () => {
    const message = 'a quotation mark is opened here and never closed; nothing beyond it was read';
    const short = readCsv('knife,cuts\nPlover,3\n"Dunlin,4\nCurlew,5\n');
    expect(short.runs).toHaveLength(1);
    expect(short.problems).toEqual([{ line: 3, path: '', message }]);
    const long = readCsv(`knife,cuts\nPlover,3\n"Dunlin,4\n${'Curlew,5\n'.repeat(300_000)}`);
    expect(long.problems).toEqual([{ line: 3, path: '', message }]);
    expect(readCsv('knife,cuts\n"Plo"ver",3\nDunlin,4\n').problems).toEqual([
      { line: 2, path: '', message: 'a quotation mark stands within a quoted cell; write it twice' },
    ]);
  });

  test.each(['', '\uFEFF', '\n\n', 'knife,cuts', 'no log at all'])(
    'that says nothing (%j) gives no run',
    (text) => {
      expect(readCsv(text)).toMatchObject({ runs: [], problems: [] });
    },
  );

  // That a million rows do not stop the page is asked in the browser; that none is lost between parts shows with fewer.
  test('of a hundred thousand rows is read part by part, each row accounted for, and reading can stop', async () => {
    const good = 'Plover,coil 1,120\n';
    const rows = 100_000;
    const found = findCsv('knife,lot,cuts\n');
    function* file(): Generator<string> {
      yield 'knife,lot,cuts\n';
      for (let i = 0; i < 100; i += 1) yield `${good.repeat(998)}Plover,coil 1,none\n\n`;
    }
    let [runs, problems, blank, lastLine] = [0, 0, 0, 0];
    for await (const part of readCsvParts(file(), found)) {
      runs += part.runs.length;
      problems += part.problems.length;
      blank += part.blank;
      lastLine = part.problems.at(-1)?.line ?? lastLine;
    }
    expect([runs, problems, blank, lastLine]).toEqual([99_800, 100, 100, rows]);
    let parts = 0;
    for await (const part of readCsvParts(file(), found)) {
      parts += part.runs.length > 0 ? 1 : 0;
      if (parts === 3) break;
    }
    expect(parts).toBe(3);
  });
});

describe('the bytes of a file', () => {
  test('are read by what they are', () => {
    expect(textOf(new TextEncoder().encode('\uFEFFé'))).toEqual({ text: '\uFEFFé', encoding: 'utf-8' });
    expect(textOf(Uint8Array.of(0xff, 0xfe, 0xe9, 0))).toEqual({ text: '\uFEFFé', encoding: 'utf-16le' });
    expect(textOf(Uint8Array.of(0xe9))).toEqual({ text: 'é', encoding: 'windows-1252' });
  });
});
