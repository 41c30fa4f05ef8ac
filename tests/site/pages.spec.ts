import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { readdirSync } from 'node:fs';

/** Every page of the built site. */
const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) => `/${file.replace(/index\.html$/, '')}`);

/** Collects what a page must never do: break its policy, throw, or ask another origin. */
function watch(page: import('@playwright/test').Page): string[] {
  const wrongs: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') wrongs.push(message.text());
  });
  page.on('pageerror', (error) => wrongs.push(error.message));
  page.on('request', (request) => {
    if (!request.url().startsWith('http://127.0.0.1:4329/')) wrongs.push(request.url());
  });
  return wrongs;
}

for (const path of pages) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`${path} in the ${colorScheme}: axe clean, no sideways scroll, policy kept`, async ({ browser }) => {
      const page = await browser.newPage({ colorScheme, viewport: { width: 360, height: 800 } });
      const wrongs = watch(page);
      await page.goto(path);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`),
      ).toEqual([]);
      await page.setViewportSize({ width: 320, height: 800 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      expect(await page.locator('[style]').count()).toBe(0);
      expect(wrongs).toEqual([]);
      await page.close();
    });
  }
}

test('links between pages lead somewhere', async ({ page, request }) => {
  const seen = new Set<string>();
  for (const path of pages) {
    await page.goto(path);
    for (const href of await page
      .locator('a[href]')
      .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href))) {
      const [address = '', anchor] = href.split('#');
      if (seen.has(href) || !address.startsWith('http://127.0.0.1:4329/')) continue;
      seen.add(href);
      const answer = await request.get(address);
      expect(answer.status(), href).toBe(200);
      if (anchor) expect(await answer.text(), href).toContain(`id="${anchor}"`);
    }
  }
});

test('without script a lesson is whole', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/lessons/forty-and-forty/');
  await expect(page.locator('kf-figure svg[role=img]:visible').first()).toBeVisible();
  await expect(page.locator('kf-figure table').first()).toContainText('×1.96');
  await expect(page.getByText('Multiplied they make ×1.96')).toBeVisible();
  await context.close();
});

test('a slider moves drawing, prose and caption, the first touch included', async ({ page }) => {
  const wrongs = watch(page);
  await page.goto('/lessons/forty-and-forty/');
  const slider = page.locator('kf-slider[of="percentage.2"] input');
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('kf-num[of="percentages.product"]').first()).toHaveText('×2.03');
  await expect(page.locator('figcaption[data-part=caption]')).toContainText('×2.03');
  await expect(page.locator('.drawing[data-size=wide] svg')).toHaveAttribute('aria-label', /×2\.03/);
  expect(wrongs).toEqual([]);
});

test('a problem names the wrong idea and then takes the right answer', async ({ page }) => {
  await page.goto('/lessons/forty-and-forty/');
  const box = page.locator('kf-check input');
  await box.fill('0.0001');
  await page.locator('kf-check button').click();
  await expect(page.locator('kf-check [data-part=said]')).not.toBeEmpty();
  await box.fill('two');
  await page.locator('kf-check button').click();
  await expect(box).toHaveAttribute('aria-invalid', 'true');
});
