import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { makeSet, setCsv, setMarkdown } from '../../src/exercises/set/index.ts';
import { FIRST_SET, setCode } from '../../src/teach/set/address.ts';
import { decodeLink } from '../../src/comparison/link/codec.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { headlineRange } from '../../src/phrases/headline.ts';
import { hostOf } from '../site/static-host.ts';
import type { StaticHost } from '../site/static-host.ts';
import { visitorLink } from '../site/visitor.ts';
import { findFirefox } from './find.ts';
import { startFirefox } from './firefox.ts';
import type { Firefox } from './firefox.ts';
import { keys, newTab } from './tab.ts';
import type { Tab } from './tab.ts';

let firefox: Firefox;
let host: StaticHost;
let tab: Tab;

beforeAll(async () => {
  if (!existsSync('dist')) throw new Error('no built site in dist: run the build first');
  host = await hostOf('dist');
  firefox = await startFirefox(findFirefox() ?? 'firefox');
  tab = await newTab(firefox.bidi, new URL(host.address).origin);
});
afterEach(() => {
  expect(tab.complaints).toEqual([]);
});
afterAll(async () => {
  await firefox.close();
  await host.endPoint();
});

/** Opens a page from nowhere: one that differs in its fragment only would not be loaded anew. */
async function open(path: string): Promise<void> {
  await tab.open('about:blank');
  await tab.open(`${host.address}${path}`);
}
const live = 'document.documentElement.dataset.live === "on"';

/** What Node makes of the comparison in a link: the answer as a page writes it. */
function answerOf(link: string): string {
  const opened = decodeLink(link.slice(link.indexOf('#')));
  if (!opened.ok) throw new Error(opened.why);
  return headlineRange(sceneOf(opened.entry));
}

test('an angle typed on the Compare page moves answer and drawing, and its link shows the same anew', async () => {
  await open('compare/');
  await tab.until(live);
  const before = await tab.text('.answer-line');
  await tab.type('[data-knife=dunlin] [data-field=angle] input', '13');
  await tab.until(`!document.querySelector('.answer-line').textContent.includes(${JSON.stringify(before)})`);
  await tab.until(
    `document.querySelector('kf-figure[of=edges] .drawing[data-size=wide] svg').textContent.includes('13° per side')`,
  );
  await tab.until(`location.hash.startsWith('#with=')`);
  const answer = await tab.text('.answer-line');
  const link = await tab.read('location.href');
  expect(answer).toContain(answerOf(link));
  await tab.open('about:blank');
  await tab.open(link);
  await tab.until(live);
  // The answer takes samples, so it comes a moment after the page is live.
  await tab.until(`document.querySelector('.answer-line').textContent === ${JSON.stringify(answer)}`);
});

test('a lesson opened with a link covers its knives, and a slider moves them by keyboard', async () => {
  await open(`lessons/behind-the-edge/${visitorLink}`);
  await tab.until(live);
  const captions = (which: string) =>
    tab.read(
      `[...document.querySelectorAll('figcaption')].filter((one) => ${which}).map((one) => one.textContent).join()`,
    );
  // What is out of view is drawn after what is in it, and not shown before.
  expect(await captions('one.checkVisibility({ visibilityProperty: true })')).not.toMatch(/Plover|Dunlin/);
  await tab.until(`document.querySelector('[data-stale]') === null`);
  const all = await captions('true');
  expect(all).toContain('Tern');
  expect(all).not.toMatch(/Plover|Dunlin/);
  const drawing = `[...document.querySelectorAll('main .drawing')].map((one) => one.innerHTML).join()`;
  const before = await tab.read(drawing);
  await tab.read(`String(document.querySelector('main input[type=range]').focus())`);
  await tab.press(keys.end);
  await tab.until(`${drawing} !== ${JSON.stringify(before)}`);
  expect(await tab.text('main')).not.toMatch(/NaN|undefined|Infinity/);
});

test('the explained page of a link says the ratio Node finds', async () => {
  await open(`explained/${visitorLink}`);
  await tab.until(live);
  await tab.read(`String(document.querySelector('kf-guess-strip .reveal > summary').click())`);
  await tab.until(`document.querySelector('kf-guess-strip .reveal').textContent.includes('Tern should cut')`);
  expect(await tab.text('kf-guess-strip .reveal')).toContain(answerOf(visitorLink));
});

test('cells of a spreadsheet are pasted, taken and judged', async () => {
  await open('test/');
  await tab.until(live);
  const cells = [
    'knife,lot,cuts',
    ...[120, 150, 180].map((cuts) => `Dunlin,roll 1,${cuts}`),
    ...[60, 75, 90].map((cuts) => `Plover,roll 1,${cuts}`),
  ].join('\n');
  await tab.click('#pasted');
  await tab.read(`String(document.querySelector('#pasted').setRangeText(${JSON.stringify(cells)}))`);
  const button = (name: string) =>
    `[...document.querySelectorAll('button')].find((one) => one.textContent.trim() === ${JSON.stringify(name)})`;
  await tab.read(`String(${button('Look at it')}.focus())`);
  await tab.press(keys.enter);
  await tab.until(`document.querySelector('[data-part=found]').checkVisibility()`);
  await tab.read(`String(${button('Put them in place of the log')}.focus())`);
  await tab.press(keys.enter);
  await tab.until(`document.querySelectorAll('[data-part=log] tbody tr').length === 6`);
  await tab.until(`document.querySelector('.runs-verdict').textContent.includes('2 is the middle')`);
});

test('a set of problems has the same bytes as in Node, sheet, key and table', async () => {
  const request = { ...FIRST_SET, seed: 20_260_101, count: 12 };
  const set = makeSet(request);
  const code = setCode(request);
  await open(`class/#set=${code}`);
  await tab.until(`document.querySelectorAll('[data-part=sheet] .kit-item').length === 12`);
  await tab.until(`document.querySelector('#kit-seed').value === '20260101'`);
  for (const [does, name, bytes] of [
    ['markdown-sheet', `set-${code}-sheet.md`, setMarkdown(set)],
    ['markdown-key', `set-${code}-key.md`, setMarkdown(set, 'key')],
    ['csv', `set-${code}.csv`, setCsv(set)],
  ] as const) {
    await tab.click(`[data-does="${does}"]`);
    const there = () => readdirSync(firefox.downloads).some((file) => file === name);
    await expect.poll(there, { timeout: 10_000 }).toBe(true);
    const saved = () => readFileSync(join(firefox.downloads, name), 'utf8');
    await expect.poll(saved, { timeout: 10_000 }).toBe(bytes);
  }
});
