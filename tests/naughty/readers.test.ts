import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readGuesses } from '../../src/elements/page/read-guesses.ts';
import { readAnswer } from '../../src/exercises/index.ts';
import type { Asks } from '../../src/exercises/index.ts';
import { csvCell } from '../../src/exercises/set/csv.ts';
import { readProgress, writeProgress } from '../../src/teach/check/progress.ts';
import { lastStorage } from '../../src/comparison/saved/last.ts';
import { decodeLink, encodeLink } from '../../src/comparison/link/codec.ts';
import { readNumber, readQuantity } from '../../src/comparison/read.ts';
import { validate } from '../../src/comparison/validate.ts';
import { logCsv } from '../../src/runs/csv-out.ts';
import { readCsv } from '../../src/runs/csv.ts';
import { validateRun } from '../../src/runs/log.ts';
import { guarded } from '../../src/runs/spreadsheet.ts';
import { textOf } from '../../src/runs/text.ts';
import { loft } from '../comparison/entries.ts';
import { aRun } from '../runs/runs.ts';
import { forEveryNaughty, naughty } from './strings.ts';

/** A sentence a reader can use: some words, and nothing of the program showing through. */
function isSaid(message: string): void {
  expect(message).toMatch(/\p{L}{2,} /u);
  expect(message).not.toMatch(/\[object|=> |Error|Invalid|Expected/);
  expect(message.length).toBeLessThan(500);
}

test('the list is there, whole', () => {
  // Counted in its release 1.0.0.
  expect(naughty).toHaveLength(461);
});

describe('fields', () => {
  test.each([{}, { unit: 'mm' as const }, { what: 'edge angle', unit: '°' as const, low: 4, high: 45 }])(
    'a number as %j is read finite, or refused in words',
    (expected) => {
      forEveryNaughty((text) => {
        const read = readNumber(text, expected);
        if (read.ok) expect(read.value).toSatisfy(Number.isFinite);
        else isSaid(read.message);
      });
    },
  );

  test('a quantity is read finite, or refused in words', () => {
    forEveryNaughty((text) => {
      const read = readQuantity(text, { unit: '°', low: 4, high: 45 });
      if (!read.ok) isSaid(read.message);
      else
        for (const value of typeof read.value === 'number' ? [read.value] : Object.values(read.value))
          if (typeof value === 'number') expect(value).toSatisfy(Number.isFinite);
    });
  });

  test.each<Asks>(['times as long', '% more', '% less', '%', 'm', 'letter'])(
    'an answer asked as “%s” is read above nothing, or refused in words',
    (asks) => {
      forEveryNaughty((text) => {
        const read = readAnswer(text, asks, ['this', 'that']);
        if (read.ok) expect(read.value > 0 && Number.isFinite(read.value)).toBe(true);
        else isSaid(read.message);
      });
    },
  );

  test('guesses are finite, and a line is never both counted and complained of', () => {
    forEveryNaughty((text) => {
      const { guesses, problems } = readGuesses(text, []);
      for (const { ratio, count } of guesses) expect(ratio > 0 && Number.isFinite(ratio * count)).toBe(true);
      if (guesses.length === 0 && text.split(/[\r\n;]/).some((line) => line.trim() !== ''))
        expect(problems).not.toEqual([]);
    });
  });
});

describe('links and storage', () => {
  test.each(['', '#with=', '#with=1.', '#with=2.', '#with=9'])(
    '“%s” with any of it is refused in words',
    (opening) => {
      forEveryNaughty((text) => {
        const read = decodeLink(opening + text);
        expect(read.ok).toBe(false);
        if (!read.ok) isSaid(read.why);
      });
    },
  );

  test('a knife of that name goes into a link and comes back, or is refused in words', () => {
    forEveryNaughty((text) => {
      const [first, ...others] = loft().knives;
      const checked = validate({ ...loft(), title: text, knives: [{ ...first, name: text }, ...others] });
      if (!checked.ok) {
        for (const { message } of checked.problems) isSaid(message);
        return;
      }
      const read = decodeLink(encodeLink(checked.entry));
      expect(read.ok && read.entry).toEqual(checked.entry);
      expect(checked.entry.title).toBe(text);
    }, 50);
  });

  test('no member of that name is let into a comparison', () => {
    for (const text of naughty) {
      const given = { ...loft(), [text]: text };
      expect(validate(given).ok).toBe(false);
    }
  });

  test('what was kept is refused in words', () => {
    forEveryNaughty((text) => {
      const found = lastStorage(() => ({ getItem: () => text, setItem: () => undefined })).look();
      if (found.is === 'unreadable') isSaid(found.why);
      else expect(found.is).toBe('nothing');
    });
  });

  test('progress that cannot be read is none', () => {
    forEveryNaughty((text) => {
      expect(JSON.parse(writeProgress(readProgress(text)))).toMatchObject({ right: {}, notes: [] });
      const about = JSON.stringify({ right: { [text]: 1, other: text }, notes: [text, { page: text }] });
      expect(Object.entries(readProgress(about).right)).toEqual([[text, 1]]);
    });
  });
});

describe('logs of runs', () => {
  test('a run of that knife is taken whole or refused in words', () => {
    forEveryNaughty((text) => {
      for (const field of [
        'knife',
        'batch',
        'endPoint',
        'judge',
        'cuts',
        'angleDeg',
        'burrChecked',
        'series',
        'cycles',
      ]) {
        const checked = validateRun({ ...aRun(), [field]: text });
        if (!checked.ok) for (const { message } of checked.problems) isSaid(message);
      }
    });
  });

  test('a log comes back equal, and no cell of it is a formula', () => {
    forEveryNaughty((text) => {
      const checked = validateRun(aRun({ knife: text, judge: text }));
      if (!checked.ok) return;
      const written = logCsv([checked.run]);
      expect(readCsv(written)).toMatchObject({ runs: [checked.run], problems: [] });
      const cells = Papa.parse<string[]>(written, { delimiter: ',' }).data.flat();
      expect(cells).toContain(guarded(checked.run.knife));
      for (const cell of cells) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
    });
  });

  test('every row of a file ends as a run, a problem or a blank', () => {
    forEveryNaughty((text) => {
      const read = readCsv(`knife;cuts\nTern;12\n${text}\nKnot;14`);
      expect(read.runs.length + read.problems.length + read.blank).toBeGreaterThanOrEqual(2);
      expect(read.runs[0]).toMatchObject({ knife: 'Tern', cuts: 12 });
      for (const { message } of read.problems) isSaid(message);
      readCsv(text);
    });
  });

  test('a cell of a set of problems is no formula and stays one cell', () => {
    forEveryNaughty((text) => {
      const cell = csvCell(text);
      expect(cell).not.toMatch(/^"?[=+\-@\t]/);
      expect(cell.startsWith('"') || !/[",\r\n]/.test(cell)).toBe(true);
    });
  });

  test('any bytes are text', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(typeof textOf(bytes).text).toBe('string');
      }),
    );
    for (const text of naughty)
      expect(textOf(Buffer.from(text)).text.replace(/^\uFEFF/, '')).toBe(text.replace(/^\uFEFF/, ''));
  });
});
