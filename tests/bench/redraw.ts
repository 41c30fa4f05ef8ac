/**
 * How long a figure takes to answer: from a slider's event to the changed drawing, at full speed and slowed four
 * times, and how long the very first touch takes, which also fetches and starts the live half of the page.
 * Every time is taken only once the drawing has changed: a page that draws nothing measures fast. Beside each stands
 * what part it is of 20,000 samples drawn and plotted the plain way on the same machine in the same run.
 *
 * A measurement, not a test: `npm run bench -- redraw` on a quiet machine, after a build; `npm run bench -- redraw /compare/`
 * measures that page alone.
 */
import { existsSync, readdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import type { Browser, Page } from '@playwright/test';
import { findBrowser } from '../site/browser.ts';
import { brotliHost } from './brotli-host.ts';
import { drag } from './drag.ts';
import { plainSamples } from './plain-samples.ts';
import { quantile } from './quantile.ts';

const dist = 'dist';
const slowdowns = [1, 4];
const movements = 60;

/** The measuring half in the page: what moves is timed from its input event to the change of the figure's drawing. */
function install(): void {
  const state = { started: Number.NaN, taken: [] as number[] };
  // A first touch is said again by the page once its live half is there: it began when it was said first.
  const said = ({ isTrusted }: Event) => {
    if (isTrusted || Number.isNaN(state.started)) state.started = performance.now();
  };
  addEventListener('input', said, { capture: true });
  const observer = new MutationObserver(() => {
    if (Number.isNaN(state.started)) return;
    state.taken.push(performance.now() - state.started);
    state.started = Number.NaN;
  });
  Object.assign(window, {
    redraw: {
      state,
      watch: (of: string) => {
        const figure = document.querySelector(`kf-figure[of="${of}"]`);
        for (const drawing of figure?.querySelectorAll('.drawing') ?? [])
          if (drawing.checkVisibility()) observer.observe(drawing, { childList: true, subtree: true });
      },
    },
  });
}

interface Redraw {
  state: { started: number; taken: number[] };
  watch: (of: string) => void;
}
declare const redraw: Redraw;

async function open(browser: Browser): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1200, height: 1400 } });
  await page.addInitScript(install);
  return page;
}

async function measure(browser: Browser, path: string, of: string, slider: string, slowdown: number) {
  // A context of its own: nothing is cached, as for a first visitor.
  const page = await open(browser);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.goto(path, { waitUntil: 'networkidle' });
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details.more'))
      (details as HTMLDetailsElement).open = true;
  });
  await page.locator(slider).scrollIntoViewIfNeeded();
  const drawing = () => page.locator(`kf-figure[of="${of}"]`).evaluate((figure) => figure.innerHTML);
  const before = await drawing();
  await page.evaluate((name) => redraw.watch(name), of);

  // The first touch: one movement on a page that has loaded nothing of its live half.
  await page.locator(slider).evaluate((input) => {
    const range = input as HTMLInputElement;
    range.focus();
    range.value = String(range.valueAsNumber + 2 * Number(range.step));
    range.dispatchEvent(new Event('input', { bubbles: true }));
  });
  await page.waitForFunction(() => redraw.state.taken.length > 0, undefined, { timeout: 15_000 });
  if ((await drawing()) === before) throw new Error(`figure ${of} did not change at the first touch`);
  const [first = Number.NaN] = await page.evaluate(() => redraw.state.taken.splice(0));

  await page.waitForTimeout(800);
  await drag(page, slider, movements);
  const taken = await page.evaluate(() => redraw.state.taken.splice(0));
  const drawnAt = async (end: 'Home' | 'End') => {
    await page.locator(slider).press(end);
    await page.waitForTimeout(400);
    return drawing();
  };
  // A slider of few steps has few places to go, and a movement within a step changes nothing.
  if ((await drawnAt('Home')) === (await drawnAt('End')) || taken.length < movements / 6)
    throw new Error(`figure ${of} changed only ${taken.length} times in ${movements} movements`);
  await page.close();
  return { first, p50: quantile(taken, 0.5), p95: quantile(taken, 0.95), redraws: taken.length };
}

if (!existsSync(dist)) throw new Error('no built site in dist: run the build first');
const { origin, close } = await brotliHost(dist);
const executablePath = findBrowser();
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ['--no-sandbox', '--disable-background-networking'],
});

const named = process.argv.slice(2);
const paths = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) => `/${file.replaceAll('\\', '/').replace(/index\.html$/, '')}`)
  // Figures alone and lessons on a large screen are the lessons' own; they are measured where they are named.
  .filter((path) => (named.length === 0 ? !/^\/(embed|screen)\//.test(path) : named.includes(path)))
  .sort();

const rows: Record<string, string | number>[] = [];
try {
  const plain = new Map<number, number>();
  for (const slowdown of slowdowns) plain.set(slowdown, await plainSamples(browser, slowdown));
  for (const [slowdown, ms] of plain)
    console.log(`20,000 samples the plain way at ${slowdown}×: ${ms.toFixed(0)} ms`);
  for (const path of paths) {
    const page = await open(browser);
    await page.goto(`${origin}${path}`);
    // Each figure is moved by the first slider on its own sheet.
    const figures = await page.locator('kf-figure:has(input[type="range"])').evaluateAll((all) =>
      all.map((figure) => ({
        of: figure.getAttribute('of') ?? '',
        slider: `#${figure.querySelector('input[type="range"]')?.id ?? ''}`,
      })),
    );
    await page.close();
    for (const { of, slider } of figures) {
      for (const slowdown of slowdowns) {
        const { first, p50, p95, redraws } = await measure(browser, `${origin}${path}`, of, slider, slowdown);
        const ms = (value: number) => Number(value.toFixed(1));
        rows.push({
          page: path,
          figure: of,
          'CPU slowed': `${slowdown}×`,
          'first touch, ms': ms(first),
          'p50, ms': ms(p50),
          'p95, ms': ms(p95),
          'p95 of the plain way': `×${(p95 / (plain.get(slowdown) ?? Number.NaN)).toFixed(2)}`,
          redraws,
        });
      }
    }
  }
} finally {
  await browser.close();
  close();
}
if (rows.length === 0) throw new Error('no figure with a slider was found: nothing was measured');
console.table(rows);
