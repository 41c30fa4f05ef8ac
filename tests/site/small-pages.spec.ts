import type { Page } from '@playwright/test';
import { inFooter, looks } from '../../src/layouts/ways.ts';
import { expect, live, test } from './test.ts';
import { comesLive } from './pages.ts';

/** Pages of the lists of links that other tests hold: they have structures of their own. */
const elsewhere = ['lessons/all/', 'plain/'];
const named = [...looks, ...inFooter].filter(({ page }) => !elsewhere.includes(page));
const phone = { width: 360, height: 740 };
const desk = { width: 1440, height: 900 };

/** How many phone screens a page may take while its folds are shut. Glossary and sources are looked up, not read through. */
const most: Readonly<Record<string, number>> = { 'words/': 11, 'sources/': 9, 'explained/ask/': 2.5 };

const others = [
  'explained/ask/',
  'comparisons/loft/',
  'comparisons/curlew-and-avocet/',
  'answers/just-add/',
  'answers/other-work/',
];
const all = [...named.map(({ page }) => page), ...others];

async function open(page: Page, path: string, size: typeof phone): Promise<void> {
  await page.setViewportSize(size);
  await page.goto(`/${path}`);
  if (comesLive(`/${path}`)) await live(page);
}

/** How much of the highest drawing is in the first screen, px. */
const drawingInSight = (page: Page): Promise<number> =>
  page.evaluate(() =>
    Math.max(
      ...[...document.querySelectorAll('main svg')]
        .map((svg) => svg.getBoundingClientRect())
        .filter(({ width, height }) => width > 100 && height > 60)
        .map(({ top, bottom }) => Math.min(bottom, innerHeight) - Math.max(top, 0)),
    ),
  );

for (const { page: path, says } of named)
  test(`the page of the link “${says}” is called that, once`, async ({ page }) => {
    await open(page, path, desk);
    await expect(page.locator('h1')).toHaveCount(1);
    await expect(page.locator('h1')).toHaveText(says);
    expect(await page.title()).toBe(`${says} · Keenfold`);
  });

for (const path of all)
  test(`/${path} opens with a drawing, has no wall of text, and stays within its height`, async ({
    page,
  }) => {
    for (const size of [desk, phone]) {
      await open(page, path, size);
      expect(await drawingInSight(page), `drawing at ${size.width} px`).toBeGreaterThan(80);
    }
    const screens = (await page.evaluate(() => document.documentElement.scrollHeight)) / phone.height;
    expect(screens).toBeLessThanOrEqual(most[path] ?? 4);

    const long = await page
      .locator('main :is(p, li:not(:has(p)), dd, figcaption)')
      .evaluateAll((parts) =>
        parts
          .map((part) => (part.textContent ?? '').trim().replace(/\s+/g, ' '))
          .filter((text) => text.split(' ').length > 60),
      );
    expect(long).toEqual([]);

    await page.setViewportSize({ width: 320, height: 740 });
    const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await wide()).toBeLessThanOrEqual(320);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    expect(await wide()).toBeLessThanOrEqual(320);
  });

for (const path of all)
  test(`/${path} begins where the header begins`, async ({ page }) => {
    for (const size of [phone, desk]) {
      await open(page, path, size);
      const left = (selector: string) =>
        page
          .locator(selector)
          .first()
          .evaluate((element) => element.getBoundingClientRect().left);
      expect(await left('main h1')).toBeCloseTo(await left('header .mark'), 0);
    }
  });
