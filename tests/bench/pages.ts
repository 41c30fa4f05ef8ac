/**
 * What a page of each kind costs beside two pages of fixtures with the same lesson: one written by hand, without a plot
 * library, and one built the ordinary way, with the whole library up front and a render for each figure. Bytes of the
 * first load after brotli, script before the touch, first and largest paint, layout shift, blocking time, and the time
 * from a movement to the painted drawing; at full speed on a fast network, and slowed four times on a slow one
 * (1.6 Mbit/s, 150 ms there and back). What matters are the ratios, which are taken within this one run.
 *
 * A measurement, not a test: `npm run bench -- pages`, after a build.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { chromium } from '@playwright/test';
import type { Browser, CDPSession, Page } from '@playwright/test';
import { findBrowser } from '../site/browser.ts';
import { brotliHost } from './brotli-host.ts';
import { drag } from './drag.ts';
import { quantile } from './quantile.ts';

const loads = 5;
const movements = 60;
/** How long a reader who has scrolled reads before the first touch. */
const readMs = 3000;
const speeds = [
  { name: '1×', slowdown: 1, network: undefined },
  { name: '4×, slow network', slowdown: 4, network: { latency: 150, bytesPerSecond: 200_000 } },
] as const;

/** A page, and what in it moves a drawing: a slider, a field that takes an angle, or nothing. */
interface Subject {
  name: string;
  url: string;
  moved?: { slider: string } | { field: string };
}

/** The measuring half in the page. */
function install(): void {
  const state = {
    started: Number.NaN,
    waiting: false,
    taken: [] as number[],
    shift: 0,
    blocked: 0,
    largest: 0,
  };
  const observe = (type: string, add: (entry: PerformanceEntry) => void) => {
    new PerformanceObserver((list) => {
      list.getEntries().forEach(add);
    }).observe({ type, buffered: true });
  };
  observe('layout-shift', (entry) => (state.shift += (entry as PerformanceEntry & { value: number }).value));
  observe('longtask', ({ duration }) => (state.blocked += Math.max(0, duration - 50)));
  observe('largest-contentful-paint', ({ startTime }) => (state.largest = startTime));
  const painted = new MessageChannel();
  painted.port1.onmessage = () => {
    state.taken.push(performance.now() - state.started);
    state.started = Number.NaN;
    state.waiting = false;
  };
  // Several events before one frame: the reader waits from the first.
  addEventListener('input', () => (state.started ||= performance.now()), { capture: true });
  const observer = new MutationObserver(() => {
    if (Number.isNaN(state.started) || state.waiting) return;
    state.waiting = true;
    // A message sent in a frame comes once the frame has been painted.
    requestAnimationFrame(() => {
      painted.port2.postMessage('');
    });
  });
  addEventListener('DOMContentLoaded', () => {
    // The Compare page's drawings are out of sight of its fields, and follow after a pause: its answer is what is seen to move.
    for (const shown of document.querySelectorAll('.drawing, kf-words[of="answer"]'))
      observer.observe(shown, { childList: true, subtree: true });
  });
  Object.assign(window, { measured: state });
}
declare const measured: { taken: number[]; shift: number; blocked: number; largest: number };

async function slow(session: CDPSession, { slowdown, network }: (typeof speeds)[number]): Promise<void> {
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  if (!network) return;
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: network.latency,
    downloadThroughput: network.bytesPerSecond,
    uploadThroughput: network.bytesPerSecond,
  });
}

/** How a page stands once it has loaded and nothing has been touched. */
const standing = (page: Page) =>
  page.evaluate(() => {
    const [html] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
    const rest = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
    const bytes = (all: readonly (PerformanceResourceTiming | undefined)[]) =>
      all.reduce((sum, entry) => sum + (entry?.encodedBodySize ?? 0), 0);
    return {
      bytes: bytes([html, ...rest]),
      script: bytes(rest.filter(({ name }) => name.endsWith('.js'))),
      first: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
      largest: measured.largest,
      shift: measured.shift,
      blocked: measured.blocked,
    };
  });
type Standing = Awaited<ReturnType<typeof standing>>;

const controlOf = (page: Page, moved: NonNullable<Subject['moved']>) =>
  page.locator('slider' in moved ? moved.slider : moved.field).first();

/** The first movement, in ms to the painted drawing. */
async function touch(page: Page, moved: NonNullable<Subject['moved']>): Promise<number> {
  const control = controlOf(page, moved);
  await control.scrollIntoViewIfNeeded();
  await control.evaluate((input, typed) => {
    const field = input as HTMLInputElement;
    field.value = typed ? '14' : String(field.valueAsNumber + 2 * Number(field.step));
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }, 'field' in moved);
  await page.waitForFunction(() => measured.taken.length > 0, undefined, { timeout: 30_000 });
  const [first = Number.NaN] = await page.evaluate(() => measured.taken.splice(0));
  return first;
}

/** The movements that follow the first, in ms to the painted drawing. */
async function move(page: Page, moved: NonNullable<Subject['moved']>): Promise<number[]> {
  const control = controlOf(page, moved);
  await page.waitForTimeout(1000);
  await page.evaluate(() => measured.taken.splice(0));
  if ('slider' in moved) await drag(page, moved.slider, movements);
  else
    for (let step = 0; step < movements; step += 1) {
      await control.fill(String(14 + (step % 12) / 2));
      await page.waitForTimeout(40);
    }
  const rest = await page.evaluate(() => measured.taken.splice(0));
  if (rest.length < movements / 3) throw new Error(`${page.url()} answered only ${rest.length} movements`);
  return rest;
}

/** Opens the page as a first visitor does, in a context of its own where nothing is cached. */
async function opened(browser: Browser, url: string, speed: (typeof speeds)[number]): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1200, height: 1400 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.addInitScript(install);
  await slow(await context.newCDPSession(page), speed);
  await page.goto(url, { waitUntil: 'networkidle' });
  return page;
}

async function measure(browser: Browser, { url, moved }: Subject, speed: (typeof speeds)[number]) {
  const stood: Standing[] = [];
  let atOnce: number | undefined;
  let rest: number[] | undefined;
  for (let load = 1; load <= loads; load += 1) {
    const page = await opened(browser, url, speed);
    stood.push(await standing(page));
    if (load === loads && moved) {
      atOnce = await touch(page, moved);
      rest = await move(page, moved);
    }
    await page.context().close();
  }
  let havingRead: number | undefined;
  if (moved) {
    const page = await opened(browser, url, speed);
    await page.mouse.wheel(0, 40);
    await page.waitForTimeout(readMs);
    havingRead = await touch(page, moved);
    await page.context().close();
  }
  const middle = (of: keyof Standing) =>
    quantile(
      stood.map((one) => one[of]),
      0.5,
    );
  return {
    'first load, KB': middle('bytes') / 1024,
    'script before touch, KB': middle('script') / 1024,
    'first paint, ms': middle('first'),
    'largest paint, ms': middle('largest'),
    'layout shift': middle('shift'),
    'blocked, ms': middle('blocked'),
    'first touch, at once, ms': atOnce,
    'first touch, having read, ms': havingRead,
    'moved p50, ms': rest && quantile(rest, 0.5),
    'moved p95, ms': rest && quantile(rest, 0.95),
  };
}

if (!existsSync('dist')) throw new Error('no built site in dist: run the build first');
const ordinaryOut = resolve('test-results/bench-ordinary');
const built = spawnSync(
  'astro',
  ['build', '--root', 'tests/bench/fixtures/ordinary', '--outDir', ordinaryOut, '--silent'],
  { stdio: 'inherit', shell: process.platform === 'win32' },
);
if (built.status !== 0) throw new Error('the ordinary page of the fixtures could not be built');

const hosts = await Promise.all(['dist', 'tests/bench/fixtures', ordinaryOut].map(brotliHost));
const [site = '', fixtures = '', ordinary = ''] = hosts.map(({ origin }) => origin);
const subjects: Subject[] = [
  { name: 'by hand', url: `${fixtures}/by-hand.html`, moved: { slider: '#first' } },
  { name: 'the ordinary way', url: `${ordinary}/`, moved: { slider: '#first' } },
  { name: 'home', url: `${site}/`, moved: { slider: 'kf-figure input[type=range] >> nth=0' } },
  {
    name: 'lesson',
    url: `${site}/lessons/forty-and-forty/`,
    moved: { slider: 'kf-figure input[type=range] >> nth=0' },
  },
  {
    name: 'compare',
    url: `${site}/compare/`,
    moved: { field: '[data-knife=dunlin] [data-field=angle] input' },
  },
  { name: 'explained', url: `${site}/explained/` },
];
const executablePath = findBrowser();
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ['--no-sandbox', '--disable-background-networking'],
});

const short = (value: number): string =>
  value >= 99.5 || Number.isInteger(value) ? value.toFixed(0) : value.toPrecision(2);
try {
  for (const speed of speeds) {
    const table: Record<string, Record<string, string>> = {};
    let hand: Record<string, number | undefined> = {};
    for (const subject of subjects) {
      const values: Record<string, number | undefined> = await measure(browser, subject, speed);
      if (subject.name === 'by hand') hand = values;
      table[subject.name] = Object.fromEntries(
        Object.entries(values).map(([what, value]) => {
          if (value === undefined) return [what, '–'];
          const beside = hand[what];
          const ratio = beside && subject.name !== 'by hand' ? ` (×${short(value / beside)})` : '';
          return [what, `${short(value)}${ratio}`];
        }),
      );
    }
    console.log(`\nPages at ${speed.name}; in brackets beside the page written by hand`);
    // A page a column: more is measured than there are pages.
    const [columns = {}] = Object.values(table);
    console.table(
      Object.fromEntries(
        Object.keys(columns).map((what) => [
          what,
          Object.fromEntries(Object.entries(table).map(([name, row]) => [name, row[what] ?? '–'])),
        ]),
      ),
    );
  }
} finally {
  await browser.close();
  hosts.forEach(({ close }) => {
    close();
  });
}
