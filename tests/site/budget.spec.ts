import { brotliCompressSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { comesLive, isBook, isStart, kindsOfPage, lessons, oneIn } from './pages.ts';

declare global {
  interface Window {
    shifts: { value: number; what: string[] }[];
  }
}

interface Fetched {
  kind: string;
  url: string;
  /** Bytes after brotli; a font is packed already. */
  size: number;
}

/** Packed sizes by address: most scripts come to many pages, and packing takes longer than loading. */
const packed = new Map<string, number>();

function sizeOf(kind: string, url: string, body: Buffer): number {
  if (kind === 'font') return body.length;
  const size = packed.get(url) ?? brotliCompressSync(body).length;
  packed.set(url, size);
  return size;
}

function fetched(page: Page): () => Promise<Fetched[]> {
  const pending: Promise<Fetched>[] = [];
  page.on('response', (response) => {
    const kind = response.request().resourceType();
    pending.push(
      response.body().then((body) => ({
        kind,
        url: response.url(),
        size: sizeOf(kind, response.url(), body),
      })),
    );
  });
  return () => Promise.all(pending);
}

const sum = (parts: Fetched[], ...kinds: string[]): number =>
  parts.filter(({ kind }) => kinds.includes(kind)).reduce((total, { size }) => total + size, 0);

const KB = 1024;

/** Of script, once a page has been touched. */
const scriptBar = 100;

/** Notes every layout shift from the start of the page. */
const watchShifts = (page: Page): Promise<void> =>
  page
    .addInitScript(() => {
      window.shifts = [];
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as (PerformanceEntry & {
          value: number;
          sources: { node: Node | null }[];
        })[])
          window.shifts.push({
            value: entry.value,
            what: entry.sources.map(({ node }) =>
              node instanceof Element ? node.outerHTML.slice(0, 120) : String(node?.textContent),
            ),
          });
      }).observe({ type: 'layout-shift', buffered: true });
    })
    .then(() => undefined);

/** Touches the first control of the page's content; false where there is none. */
async function touch(page: Page): Promise<boolean> {
  const held = (what: string) =>
    page.locator(`main [data-own] ${what}, main [data-live] ${what}`).filter({ visible: true });
  // Where every field lies in a fold, what opens one, or a button, is the first that can be touched.
  const fields = held('input');
  const control = ((await fields.count()) > 0 ? fields : held(':is(button, summary)')).first();
  if ((await control.count()) === 0) return false;
  // Scrolling the control into view moves nothing in the page itself; the touch must not either.
  await control.focus();
  await live(page);
  await page.waitForLoadState('networkidle');
  return true;
}

const shifts = (page: Page) => page.evaluate(() => window.shifts);

for (const path of kindsOfPage()) {
  test(`${path} keeps its budget of bytes and requests, and does not move, at load and at the first touch`, async ({
    page,
  }) => {
    // A tall window is the harder one: more of the page can move.
    await page.setViewportSize({ width: 1200, height: 1600 });
    await watchShifts(page);
    const parts = fetched(page);
    await page.goto(path, { waitUntil: 'networkidle' });
    expect(await shifts(page), 'moved at load').toEqual([]);
    const before = await parts();
    const described = before.map(({ url, size }) => `${url} ${size}`).join('\n');
    expect(before.filter(({ kind }) => kind === 'document')).toHaveLength(1);
    // The Compare page is its fields: its live half comes with the page, and is counted as if touched.
    const first = before.filter(({ kind, url }) => !(comesLive(path) && kind === 'script' && !isStart(url)));
    expect(first.length, described).toBeLessThanOrEqual(6);
    expect(sum(before, 'font'), described).toBeLessThanOrEqual(60 * KB);
    if (comesLive(path))
      expect(sum(before, 'document', 'stylesheet'), described).toBeLessThanOrEqual(30 * KB);
    else {
      expect(sum(before, 'script'), described).toBeLessThanOrEqual(8 * KB);
      // Twelve lessons with their drawings, and no script.
      const bar = isBook(path) ? 150 : 30;
      expect(sum(before, 'document', 'stylesheet', 'script'), described).toBeLessThanOrEqual(bar * KB);
    }

    if (await touch(page)) expect(await shifts(page), 'moved at the first touch').toEqual([]);
    // What drags comes with a pointer near a figure, and is no part of the live half.
    expect(sum(await parts(), 'script')).toBeLessThanOrEqual(scriptBar * KB);
  });
}

// A tall window, in which more can move, was asked of every page.
for (const path of ['/', ...oneIn(4, lessons())]) {
  test(`${path} does not move in a low window either`, async ({ page }) => {
    await page.setViewportSize({ width: 1200, height: 900 });
    await watchShifts(page);
    await page.goto(path, { waitUntil: 'networkidle' });
    expect(await touch(page)).toBe(true);
    expect(await shifts(page)).toEqual([]);
  });
}

const scripts = (parts: Fetched[]): string[] =>
  parts.filter(({ kind, url }) => kind === 'script' && !isStart(url)).map(({ url }) => url);

test('a reader who has scrolled and rests finds the figures live, and as they were built', async ({
  page,
}) => {
  await watchShifts(page);
  const parts = fetched(page);
  await page.goto('/lessons/forty-and-forty/', { waitUntil: 'networkidle' });
  const drawing = page.locator('kf-figure .drawing').first();
  const built = await drawing.innerHTML();
  await page.waitForTimeout(1000);
  expect(scripts(await parts()), 'a page that is only open').toEqual([]);
  await page.mouse.wheel(0, 40);
  await live(page);
  expect(scripts(await parts())).not.toEqual([]);
  expect(await drawing.innerHTML()).toBe(built);
  expect(await shifts(page)).toEqual([]);
});

test('where the browser is asked to save data the figures wait for a touch', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'connection', { value: { saveData: true } });
  });
  const parts = fetched(page);
  await page.goto('/lessons/forty-and-forty/', { waitUntil: 'networkidle' });
  await page.mouse.wheel(0, 40);
  await page.waitForTimeout(1500);
  expect(scripts(await parts())).toEqual([]);
  expect(await touch(page)).toBe(true);
});
