import { expect, test } from 'vitest';
import { columnOf } from '../../src/runs/columns.ts';
import { findCsv } from '../../src/runs/csv-found.ts';
import { readCsv } from '../../src/runs/csv.ts';
import { inMm, lengthUnitOf } from '../../src/runs/length-units.ts';
import { readLog } from '../../src/runs/read-log.ts';
import { textPieces } from '../../src/runs/text.ts';

const most = { mostRuns: 50, mostProblems: 5 };
const rows = Array.from({ length: 60_000 }, (_, i) => `Plover,coil é,${i % 100 === 7 ? 'none' : 100 + i}`);
const log = `knife,lot,cuts\n${rows.join('\n')}\n\n`;

test('every row of a long log is counted, though few are held', async () => {
  const shares: number[] = [];
  const tell = (_tally: unknown, share: number) => shares.push(share) > 0;
  const read = await readLog(new Blob([log]), findCsv(log), { ...most, tell });
  expect(read?.tally).toEqual({ rows: 60_000, runs: 59_400, problems: 600, blank: 1 });
  expect(read?.runs).toHaveLength(50);
  expect(read?.problems.map(({ line }) => line)).toEqual([9, 109, 209, 309, 409]);
  expect(read?.oldLetters).toBe(false);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares.at(-1)).toBe(1);
  expect(await readLog(log, findCsv(log), most)).toEqual(read);
});

test('reading ends where it is told to', async () => {
  let described = 0;
  expect(await readLog(log, findCsv(log), { ...most, tell: () => (described += 1) < 2 })).toBeNull();
  expect(described).toBe(2);
});

test('one old letter far into a file has the whole read as an older spreadsheet wrote it', async () => {
  const bytes = new TextEncoder().encode(`knife,cuts\n${'Plover,3\n'.repeat(40_000)}Caf_,4\n`);
  bytes[bytes.lastIndexOf('_'.charCodeAt(0))] = 0xe9;
  const read = await readLog(new Blob([bytes]), findCsv('knife,cuts\n'), { ...most, mostRuns: 1e6 });
  expect(read).toMatchObject({ tally: { rows: 40_001, runs: 40_001 }, oldLetters: true });
  expect(read?.runs.at(-1)?.knife).toBe('Café');
});

test.each([1, 2, 3, 7])('letters cut in two every %i bytes come back whole', async (size) => {
  const text = '\uFEFFé € 𝄞 knife';
  const wide = new Uint8Array([0xff, 0xfe, ...Buffer.from('é € 𝄞', 'utf16le')]);
  const whole = async (file: Blob) => {
    let read = '';
    for await (const piece of textPieces(file, size)) read += piece;
    return read;
  };
  expect(await whole(new Blob([text]))).toBe(text);
  expect(await whole(new Blob([wide]))).toBe('\uFEFFé € 𝄞');
});

test('lengths in another unit are found by their header, and kept in mm', () => {
  // The inch is exactly 25.4 mm (international yard and pound agreement, 1959).
  const read = readCsv('knife,Cut (in),checked every,series\nPlover,1.1,1,0@9 10@5\n');
  expect(read.found.lengthUnit).toBe('in');
  expect(read.runs[0]).toMatchObject({
    cutMm: 27.94,
    checkedEvery: 25.4,
    series: [
      { cut: 0, sharpness: 9 },
      { cut: 254, sharpness: 5 },
    ],
  });
  const counted = readCsv('knife,cuts,checked every\nPlover,40,5\n', { lengthUnit: 'm' });
  expect(counted.runs[0]).toMatchObject({ cuts: 40, checkedEvery: 5 });
  expect(readCsv('knife,cut mm\nPlover,40\n', { lengthUnit: 'm' }).runs[0]?.cutMm).toBe(40_000);
  expect(readCsv('knife,Cut (cm)\nPlover,a few\n').problems).toEqual([
    { line: 2, path: 'cutMm', message: 'the cut “a few” is not a number' },
  ]);
});

test.each([
  ['Cut (cm)', 'cm', 'cutMm'],
  ['length_m', 'm', 'cutMm'],
  ['Material cut [inches]', 'in', 'cutMm'],
  ['cutMm', null, 'cutMm'],
  ['cuts', null, 'cuts'],
  ['angle', null, 'angleDeg'],
  ['Forces', null, 'series'],
])('the header %j is in %s', (header, unit, column) => {
  expect(lengthUnitOf(header)).toBe(unit);
  expect(columnOf(header)).toBe(column);
  if (unit === null) expect(inMm(header)).toBe(header);
});

test('quotation marks are found where they stand around cells, not within', () => {
  expect(findCsv('knife;cuts\n"Plover";3\n').quoted).toBe(true);
  expect(findCsv('knife,cuts\nthe 5" one,3\n').quoted).toBe(false);
});
