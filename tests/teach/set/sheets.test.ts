import { spawnSync } from 'node:child_process';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { contextIds, judge, kindsFor } from '../../../src/exercises/index.ts';
import { makeSet, versions } from '../../../src/exercises/set/index.ts';
import { FIRST_SET, setCode } from '../../../src/teach/set/address.ts';
import { doHtml } from '../../../src/teach/set/do-html.ts';
import { setSheets } from '../../../src/teach/set/set-sheets.ts';
import { recompute } from '../../exercises/recompute.ts';

const PAGE = 'https://keenfold.example/class/';
const documentOf = (html: string): Document =>
  parseHTML(`<html><body>${html}</body></html>`).document as unknown as Document;
const questions = (html: string): (string | undefined)[] =>
  [...documentOf(html).querySelectorAll('.kit-items > li')].map(
    (item) => item.querySelector('p:not(.kit-marks)')?.textContent ?? undefined,
  );

describe('twelve mixed problems, seed 7, version B', () => {
  const set = makeSet(FIRST_SET);
  const { sheet, key } = setSheets(set, PAGE);

  test('are the set the page opens with', () => {
    expect(FIRST_SET).toMatchObject({ count: 12, seed: 7, version: 'B' });
    expect(new Set(set.items.map(({ problem }) => problem.kind)).size).toBeGreaterThan(8);
  });

  test('are the same on the sheet, in the key and on the screen', () => {
    expect(questions(sheet)).toHaveLength(12);
    expect(questions(key)).toEqual(questions(sheet));
    expect(questions(doHtml(set))).toEqual(questions(sheet));
  });

  test('have the answers of their key judged right on the screen', () => {
    const answers = [...documentOf(key).querySelectorAll('.kit-item strong')].map(
      ({ textContent }) => textContent ?? '',
    );
    expect(answers).toHaveLength(12);
    for (const [index, { problem }] of set.items.entries())
      expect(judge(problem, (answers[index] ?? '').replace(/^([A-D]): .*/, '$1')).verdict).toBe('right');
  });

  test('carry seed and address on both sheets, and a square code that says the same', () => {
    for (const [html, way] of [
      [sheet, 'do'],
      [key, 'set'],
    ] as const) {
      const page = documentOf(html);
      expect(page.querySelector('.kit-head')?.textContent).toContain('seed 7');
      expect(page.querySelector('.kit-address')?.textContent).toBe(`${PAGE}#${way}=${setCode(FIRST_SET)}`);
      expect(page.querySelector('.kit-qr path')?.getAttribute('d')).toMatch(/^M/);
    }
  });

  test('give nothing of the key away on sheet and screen', () => {
    for (const { problem, key: own } of set.items)
      for (const html of [sheet, doHtml(set)]) {
        const text = documentOf(html).body.textContent ?? '';
        for (const step of problem.steps) expect(text).not.toContain(step.text);
        for (const { idea } of own.missteps) expect(text).not.toContain(idea);
      }
  });
});

// The solver of the exercises' own tests knows the questions and none of the makers.
test.each(contextIds)('the keys of sets in %s are those of an independent solver', (context) => {
  for (let seed = 0; seed < 60; seed += 1) {
    const version = versions[seed % 3] ?? 'A';
    const set = makeSet({ context, seed, version, level: 'rising', count: 12, kinds: kindsFor(context) });
    for (const { problem } of set.items)
      expect(Math.abs(problem.answer / recompute[problem.kind](problem) - 1), problem.question).toBeLessThan(
        0.002,
      );
  }
});

test('the same set makes the same sheets in another locale and time zone', () => {
  const program = `
    import { makeSet } from './src/exercises/set/index.ts';
    import { FIRST_SET } from './src/teach/set/address.ts';
    import { setSheets } from './src/teach/set/set-sheets.ts';
    const { sheet, key } = setSheets(makeSet(FIRST_SET), '${PAGE}');
    process.stdout.write(sheet + key);`;
  const { stdout } = spawnSync(process.execPath, ['--input-type=module', '--eval', program], {
    env: { ...process.env, LC_ALL: 'ar_EG.UTF-8', TZ: 'Pacific/Apia', NODE_OPTIONS: '' },
    encoding: 'utf8',
  });
  const { sheet, key } = setSheets(makeSet(FIRST_SET), PAGE);
  expect(stdout).toBe(sheet + key);
});
