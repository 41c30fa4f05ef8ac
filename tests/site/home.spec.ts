import type { Page } from '@playwright/test';
import { expect, test } from './test.ts';

const heightOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight);
const bottomOf = (page: Page, selector: string): Promise<number> =>
  page.locator(selector).evaluate((element) => element.getBoundingClientRect().bottom + scrollY);

for (const { width, height } of [
  { width: 360, height: 740 },
  { width: 800, height: 1000 },
  { width: 1440, height: 900 },
])
  test(`the picture and the guess are on the first screen at ${width} × ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await page.goto('/');
    expect(await bottomOf(page, '.standing .drawing:visible')).toBeLessThanOrEqual(height);
    expect(await bottomOf(page, '.chips')).toBeLessThanOrEqual(height);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    if (width === 360) expect(await heightOf(page)).toBeLessThanOrEqual(3 * height);
  });

test('what this is, the question, both edges and the guess come in this order, then three ways in', async ({
  page,
}) => {
  await page.goto('/');
  const order = await page
    .locator('main :is(.head > .what, h1, kf-figure[of=edges-standing], .chips, .door, .also)')
    .evaluateAll((all) => all.map((one) => one.getAttribute('of') ?? (one.className || one.localName)));
  expect(order).toEqual(['what', 'h1', 'edges-standing', 'chips', 'door', 'door', 'door', 'also']);
  await expect(page.locator('h1')).toHaveText('How many times as long should Dunlin cut as Plover?');
  await expect(page.locator('.door b')).toHaveText(['Compare your knives', 'Learn why', 'Teach with it']);
  await expect(page.locator('.also')).toHaveText(
    /^Cut with both already\? Test the estimate. Plover and Dunlin are invented\.$/,
  );
  expect((await page.locator('main').innerText()).match(/invented/gi)).toHaveLength(1);
});

test('nothing of the answer shows before a guess, nor in what is said of the page', async ({ page }) => {
  await page.goto('/');
  expect(await page.locator('main').innerText()).not.toMatch(/5 to 30|the middle|×/);
  const told = await page.evaluate(() =>
    [
      document.title,
      ...[...document.querySelectorAll('meta[content]')].map((meta) => meta.getAttribute('content')),
      // What lies in the shut fold is told nobody.
      ...[...document.querySelectorAll('[alt], [aria-label]')]
        .filter((one) => !one.closest('.reveal'))
        .map((one) => `${one.getAttribute('alt') ?? ''} ${one.getAttribute('aria-label') ?? ''}`),
    ].join(' '),
  );
  expect(told).not.toMatch(/5 to 30|×\d|if all multiply/);
});

test('a guess by keyboard alone shows range, factors and guess on one ruler', async ({ page }) => {
  await page.goto('/');
  await page.locator('.chips button').first().focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('.range-line')).toHaveText(
    'Dunlin should cut about 5 to 30 times as long as Plover.',
  );
  await expect(page.locator('.verdict')).toHaveText('Your guess, 3, is below the range.');
  const ruler = page.locator('kf-figure[of=ruler] .drawing:visible');
  await expect(ruler).toContainText('you: 3');
  await expect(ruler).toContainText('16, if all multiply');
  await page.getByRole('link', { name: 'See it explained' }).click();
  await expect(page).toHaveURL(/\/explained\/#with=/);
  // The same guess of the same knives stands there.
  await expect(page.locator('.verdict')).toHaveText('Your guess, 3, is below the range.');
});

test('the measures stand below the drawing once there is an answer beside it', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto('/');
  await expect(page.locator('.under')).toBeHidden();
  await page.locator('.chips button').first().click();
  await expect(page.locator('.under')).toBeVisible();
  const [drawing, table] = await Promise.all([
    page.locator('.standing').boundingBox(),
    page.locator('.under').boundingBox(),
  ]);
  expect(table?.y).toBeGreaterThanOrEqual((drawing?.y ?? 0) + (drawing?.height ?? Infinity));
});

test('without script the answer is in a fold', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await page.goto('/');
  await expect(page.locator('.range-line')).toBeHidden();
  await page.getByText('Show the answer without a guess').click();
  await expect(page.locator('.range-line')).toHaveText(
    'Dunlin should cut about 5 to 30 times as long as Plover.',
  );
  await context.close();
});
