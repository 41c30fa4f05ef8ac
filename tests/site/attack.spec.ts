import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import type { Page } from '@playwright/test';

import { FIRST_SET, setCode } from '../../src/teach/set/address.ts';
import { encodeLink } from '../../src/comparison/link/codec.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { naughty } from '../naughty/strings.ts';
import { aRun } from '../runs/runs.ts';
import { dist, kindsOfPage, pages } from './pages.ts';
import { expect, test, unfold } from './test.ts';
import { visitorComparison } from './visitor.ts';

/** The fields of a page that take a text. */
const fields = 'main :is(input[type=text], input:not([type]), textarea)';

const built = (page: string): string => readFileSync(`${dist}${page.replace(/\/$/, '/index.html')}`, 'utf8');

/** Pages with a field of text, found in what was built. */
const withFields = pages().filter((page) => parseHTML(built(page)).document.querySelector(fields));

/** The live elements of a page that was built. */
const elementsOf = (page: string): Set<string> =>
  new Set(
    [...parseHTML(built(page)).document.querySelectorAll('main *')]
      .map(({ localName }) => localName)
      .filter((name) => name.startsWith('kf-')),
  );

/**
 * Of the lessons, of those without knives and of those on a large screen so many that every live element they are made of
 * is on one: the same element takes the same texts on all of them.
 */
function withoutAlike(found: readonly string[]): string[] {
  const known = new Map<string, Set<string>>();
  return found.filter((page) => {
    const template = /^\/(lessons|plain|screen)\//.exec(page)?.[1];
    if (template === undefined) return true;
    const elements = known.get(template) ?? new Set();
    known.set(template, elements);
    const before = elements.size;
    for (const name of elementsOf(page)) elements.add(name);
    return elements.size > before;
  });
}

/** Markup that would show itself: by running, by asking for a file, or by standing in the page. */
const markup = [
  '<script>window.struck = 1</script>',
  '<img src=x onerror="window.struck = 1" data-struck>',
  '"><svg onload="window.struck = 1" data-struck>',
  `' autofocus onfocus='window.struck = 1' data-struck='`,
  '</textarea></template></title><b data-struck>bold</b>',
  'javascript:window.struck = 1',
  '<a href="javascript:window.struck = 1" data-struck>a</a>',
  '&lt;b data-struck&gt;&#60;b data-struck&#62;',
];

/** From the Big List of Naughty Strings: one of each kind that a field of text can choke on. */
const listed = naughty.filter((text) => /\u202e|\u0338|\ufeff|\u200b|%s|\$\{|\.\.\/|١|Ω|👾|田/u.test(text));

const strings = [
  ...markup,
  ...listed.filter((_, index) => index % Math.ceil(listed.length / 8) === 0),
  '\u0000\u0001\u001b[31m',
  '\ud800 \udfff x \ud83d',
  '\u202eright to left\u202c \u2066isolated',
  'z\u0300\u0301\u0302\u0303\u0304\u0305\u0306\u0307\u0308'.repeat(20),
  'n'.repeat(10_000),
  '👩‍👩‍👧‍👦'.repeat(40),
  '__proto__',
  'constructor',
  'hasOwnProperty',
  '=HYPERLINK("http://example.org";"x")',
  "+1+cmd|' /C calc'!A0",
  '1e309',
  '-1e309',
  '1e-320',
  '-0',
  '0',
  '-1',
  '3O',
  '١٢',
  '12',
  '９９',
  '9'.repeat(60),
  '0x1F',
  '1,234',
  '1.2.3',
  '5–3',
  '22 ± 1e308',
  '1/0',
  '0/0',
  '½',
  '∞',
  '',
  ' \t ',
];

/** What a number that went wrong looks like. */
const senseless = ['NaN', 'Infinity', '-Infinity', 'undefined', 'null', '[object Object]'];

/**
 * Puts every text in every field, a different one in each at a time, and sends their forms; then what is no number
 * into the fields that take numbers. Gives what was seen of `senseless`, outside the quotation marks in which a
 * message repeats what was typed, what came to stand as markup, and what the page shows before and after the last.
 */
async function strike(page: Page, which: string) {
  return page.evaluate(
    async ([selector, texts, words]) => {
      type Field = HTMLInputElement | HTMLTextAreaElement;
      const all = () => [...document.querySelectorAll<Field>(selector)];
      const settle = async () => {
        for (let frame = 0; frame < 3; frame += 1)
          await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      };
      const type = (field: Field, text: string) => {
        field.value = text;
        for (const name of ['input', 'change']) field.dispatchEvent(new Event(name, { bubbles: true }));
      };
      const send = () => {
        for (const form of new Set(all().map((field) => field.form))) form?.requestSubmit();
      };
      const seen: string[] = [];
      const look = (when: string) => {
        const text = document.querySelector('main')?.innerText.replaceAll(/“[^”]*”/g, '') ?? '';
        const found = /.{0,40}(?:NaN|undefined|Infinity|\[object).{0,40}/.exec(text);
        if (found) seen.push(`${when}: ${found[0]}`);
      };
      const shown = () =>
        [...document.querySelectorAll<HTMLElement>('main :is(kf-figure, kf-num, kf-words, kf-answer)')].map(
          ({ innerText }) => innerText,
        );
      /** What a page shows once nothing of it comes late. Only where fields write into the comparison does anything. */
      const results = async () => {
        let last = shown();
        if (!document.getElementById('page-comparison')) return last;
        for (let waits = 0; waits < 20; waits += 1) {
          await new Promise((done) => setTimeout(done, 800));
          const now = shown();
          if (now.join() === last.join()) break;
          last = now;
        }
        return last;
      };

      const first = new Map(all().map((field) => [field, field.value]));
      for (const round of texts.keys()) {
        for (const [index, field] of all().entries())
          type(field, texts[(round + index) % texts.length] ?? '');
        send();
        if (round % 8 > 0) continue;
        await settle();
        look(`round ${round}`);
      }
      for (const [field, text] of first) if (field.isConnected) type(field, text);
      await settle();
      look('back at the first texts');

      const before = await results();
      for (const field of first.keys()) if (field.isConnected) type(field, 'no number');
      send();
      await settle();
      const numbers = all().filter((field) => field.getAttribute('aria-invalid') === 'true');
      for (const [field, text] of first) if (field.isConnected && !numbers.includes(field)) type(field, text);
      for (const word of words) {
        for (const field of numbers) if (field.isConnected) type(field, word);
        send();
        await settle();
        look(word);
      }
      return {
        seen,
        struck: [
          ...('struck' in window ? ['a script ran'] : []),
          ...[...document.querySelectorAll('[data-struck], [src=x]')].map(({ outerHTML }) => outerHTML),
        ],
        before,
        after: await results(),
      };
    },
    [which, strings, senseless] as const,
  );
}

/** Touches every field, presses what brings more of them, and waits for what is fetched then. */
async function bringAll(page: Page): Promise<void> {
  await page.evaluate(async (selector) => {
    const holders = new Set<string>();
    for (const field of document.querySelectorAll(selector)) {
      field.dispatchEvent(new Event('focusin', { bubbles: true }));
      for (let up = field.parentElement; up; up = up.parentElement)
        if (up.localName.startsWith('kf-') && up.localName !== 'kf-late') holders.add(up.localName);
    }
    await Promise.all([...holders].map((name) => customElements.whenDefined(name)));
    const more = '[data-does=fill], [data-does=blanks], [data-act=put]';
    for (const button of document.querySelectorAll<HTMLElement>(more)) button.click();
  }, fields);
}

const struck: { path: string; which: string }[] = [
  ...withoutAlike(withFields).map((path) => ({ path, which: fields })),
  // Its fields come with the set in the address, and go when the form asks for another.
  { path: `/class/#do=${setCode(FIRST_SET)}`, which: 'main [data-part=do] input' },
];

for (const { path, which } of struck)
  test(`${path}: nothing typed runs, becomes markup or comes out as no number`, async ({ page }) => {
    const opened: string[] = [];
    page.on('dialog', (dialog) => {
      opened.push(dialog.message());
      void dialog.dismiss();
    });
    await page.goto(path);
    await bringAll(page);
    await expect(page.locator(which).first()).toBeAttached();
    const { before, after, ...found } = await strike(page, which);
    expect(found).toMatchObject({ seen: [], struck: [] });
    expect(after).toEqual(before);
    expect(opened).toEqual([]);
  });

/** A comparison with markup wherever a text of the visitor's goes. */
const [script = '', image = '', drawing = ''] = markup;
const struckComparison: ComparisonEntry = {
  ...visitorComparison,
  title: image,
  knives: visitorComparison.knives.map((knife, index) => ({ ...knife, name: [image, script][index] ?? '' })),
  runs: ['tern', 'knot'].flatMap((knife, index) =>
    [80, 90, 110].map((cuts, sharpening) =>
      aRun({
        knife,
        batch: drawing,
        sharpening: String(sharpening),
        cuts: cuts + index * 40,
        endPoint: drawing,
        judge: image,
      }),
    ),
  ),
  corrections: [{ date: '2026-11-25', reason: image, changed: [script, drawing] }],
};

/** Pages that show a comparison of their address; of the lessons, whose elements are the same, one. The percentages alone name no knife. */
const withComparison = kindsOfPage().filter(
  (page) =>
    built(page).includes('id="page-comparison"') &&
    !/^\/(lessons|answers|class|explained\/percentages)\//.test(page),
);

test('names that are markup stay text on every page that a link opens', async ({ page }) => {
  for (const path of [...withComparison, '/lessons/how-sure/', '/embed/opened/']) {
    await page.goto(path + encodeLink(struckComparison));
    await expect(page.locator('html'), path).toHaveAttribute('data-comparison', 'own');
    await unfold(page);
    await expect(page.locator('main'), path).toContainText(image);
    await expect(page.locator('[data-struck], [src=x]'), path).toHaveCount(0);
    expect(await page.evaluate(() => 'struck' in window), path).toBe(false);
  }
});
