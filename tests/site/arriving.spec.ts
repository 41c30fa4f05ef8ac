import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from '@playwright/test';
import { dist } from './pages.ts';
import { expect, test } from './test.ts';
import { visitorLink } from './visitor.ts';

declare global {
  interface Window {
    /** How many parts of the page were laid out at each frame. */
    laidOut: number[];
    shift: number;
  }
}

test.use({ viewport: { width: 1200, height: 1600 } });

/** While the page is being read nothing is a last or an only child yet. */
const parts =
  'main > :first-child > *, main > :nth-child(n + 2), kf-figure .sheet > *, kf-figure figure > *, kf-worked li';

/** Counts, frame by frame, what of the page is there. */
async function watch(page: Page): Promise<void> {
  await page.addInitScript((all) => {
    window.laidOut = [];
    window.shift = 0;
    const count = () => {
      const there = [...document.querySelectorAll(all)].filter(
        (part) => getComputedStyle(part).display !== 'none',
      );
      if (there.length > 0 && there.length !== window.laidOut.at(-1)) window.laidOut.push(there.length);
      requestAnimationFrame(count);
    };
    requestAnimationFrame(count);
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        window.shift += (entry as PerformanceEntry & { value: number }).value;
    }).observe({ type: 'layout-shift', buffered: true });
  }, parts);
}

for (const path of ['/', '/explained/', '/lessons/forty-and-forty/', `/explained/${visitorLink}`])
  test(`${path.slice(0, 40)} comes in pieces, from its top, and nothing that is there moves`, async ({
    page,
  }) => {
    await watch(page);
    await page.goto(path);
    await expect(page.locator('footer.site')).toBeVisible();
    const laidOut = await page.evaluate(() => window.laidOut);
    expect(laidOut.length).toBeGreaterThan(1);
    expect(laidOut).toEqual(laidOut.toSorted((a, b) => a - b));
    await expect(page.locator('[data-here], [data-arriving]')).toHaveCount(0);
    expect(await page.evaluate(() => window.shift)).toBe(0);
  });

test('while a page is still being read only its head is laid out', async ({ browser }) => {
  // A host that sends a page by half, and keeps the rest until the connection ends.
  const host = createServer(({ url = '' }, answer) => {
    const whole = readFileSync(`${dist}${url.endsWith('/') ? `${url}index.html` : url}`);
    answer.setHeader('content-type', url.endsWith('.css') ? 'text/css' : 'text/html');
    if (url.endsWith('/')) answer.write(whole.subarray(0, whole.length / 2));
    else answer.end(whole);
  });
  await new Promise<void>((listening) => host.listen(0, listening));
  const page = await browser.newPage();
  try {
    await page.addInitScript(() => {
      window.requestAnimationFrame = () => 0;
    });
    const { port } = host.address() as AddressInfo;
    await page.goto(`http://localhost:${port}/lessons/forty-and-forty/`, { waitUntil: 'commit' });
    await expect(page.locator('main > article > h2').first()).toBeAttached();
    await expect.poll(() => page.evaluate(() => document.styleSheets.length)).toBeGreaterThan(0);
    expect(await page.evaluate(() => document.readyState)).toBe('loading');
    const there = await page
      .locator('main > article > *')
      .evaluateAll((all) => all.map((part) => getComputedStyle(part).display !== 'none'));
    expect(there.length).toBeGreaterThan(5);
    expect(there).toEqual(there.map(() => false));
    await expect(page.locator('header.site')).toBeVisible();
  } finally {
    await page.close();
    host.closeAllConnections();
    host.close();
  }
});

test('a page opened at a place, or come back to, is there at once', async ({ page }) => {
  await watch(page);
  await page.goto('/lessons/forty-and-forty/#sources');
  expect((await page.evaluate(() => window.laidOut)).length).toBe(1);
  await expect(page.locator('#sources')).toBeInViewport();
  await page.goto('/words/');
  await page.goBack();
  await page.reload();
  expect((await page.evaluate(() => window.laidOut)).length).toBe(1);
});

test('where no frame is ever painted, the page is there all the same', async ({ page }) => {
  await page.addInitScript(() => {
    window.requestAnimationFrame = () => 0;
  });
  await page.goto('/lessons/forty-and-forty/');
  await expect(page.locator('footer.site')).toBeVisible();
});

test('paper has all of it before the screen has', async ({ page }) => {
  await page.goto('/words/');
  await page.addInitScript(() => {
    window.requestAnimationFrame = () => 0;
    window.setTimeout = (() => 0) as unknown as typeof setTimeout;
  });
  await page.emulateMedia({ media: 'print' });
  // What opens a page in these tests waits for the whole of it.
  await page.evaluate(() => location.assign('/lessons/forty-and-forty/'));
  await page.waitForURL('**/forty-and-forty/');
  await expect(page.locator('html')).toHaveAttribute('data-arriving', '');
  await expect(page.locator('#sources')).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await expect(page.locator('#sources')).toBeHidden();
});
