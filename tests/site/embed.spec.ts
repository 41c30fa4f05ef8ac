import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as plain } from '@playwright/test';
import { bringAxe, violations } from './axe.ts';
import { dist } from './pages.ts';
import { hostOf } from './static-host.ts';
import { expect, live, test, unfold } from './test.ts';
import { visitorLink } from './visitor.ts';

for (const id of ['chain', 'growing-bars', 'two-wedges'])
  test(`${id} alone has no violation that axe can find, and needs no sideways scroll at 320 px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 320, height: 800 });
    await page.goto(`/embed/${id}/`);
    await unfold(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await bringAxe(page);
    expect(await violations(page, { rules: 'all' })).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await violations(page, { rules: ['color-contrast'], of: 'one of each look' })).toEqual([]);
  });

test('a figure of a page leads to the figure alone with its comparison, and that to what to paste', async ({
  page,
}) => {
  await page.goto(`/lessons/two-routes/${visitorLink}`);
  await live(page);
  await page.getByText('Details and numbers').first().click();
  await page.getByRole('link', { name: 'This figure alone' }).first().click();
  await expect(page).toHaveURL(/\/embed\/two-wedges\/#with=/);
  await expect(page.locator('.whose.own')).toContainText('Tern');
  await page.getByText('Put this figure on a page').click();
  await expect(page.locator('[data-part="text"]')).toContainText(
    /\/embed\/two-wedges\/#with=\d+\..*loading="lazy"/,
  );
  await expect(page.getByRole('link', { name: /Keenfold/ })).toHaveAttribute(
    'href',
    /\/lessons\/two-routes\/#with=/,
  );
});

declare global {
  interface Window {
    heard: { origin: string; data: unknown }[];
  }
}

plain(
  'in a frame of another site a figure lives and says how tall it is; other pages refuse',
  async ({ page }) => {
    const folder = mkdtempSync(join(tmpdir(), 'keenfold-around-'));
    const site = await hostOf(dist);
    const frame = (path: string) =>
      `<iframe src="${site.address}${path}" title="${path}" width="600" height="300"></iframe>`;
    writeFileSync(
      join(folder, 'index.html'),
      `<!doctype html><html lang="en"><title>Around</title><link rel="icon" href="data:,"><body><script>heard = []; addEventListener('message', ({ data, origin }) => heard.push({ data, origin }))</script>${frame(`embed/growing-bars/${visitorLink}`)}${frame('compare/')}</body></html>`,
    );
    writeFileSync(join(folder, '_headers'), '');
    writeFileSync(join(folder, '404.html'), '');
    const around = await hostOf(folder);
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    try {
      await page.goto(around.address);
      const figure = page.frameLocator('iframe').first();
      await expect(figure.locator('html')).toHaveAttribute('data-live', 'on');
      await expect(figure.locator('html')).toHaveAttribute('data-framed', '');
      await expect(figure.locator('.snippet')).toBeHidden();
      await expect(figure.locator('.whose.own')).toContainText('Tern');

      const heights = () =>
        page.evaluate(() => window.heard.map(({ data }) => (data as { heightPx: number }).heightPx));
      await expect.poll(async () => (await heights()).length).toBeGreaterThan(0);
      const tall = await figure
        .locator('body')
        .evaluate((body) => Math.ceil(body.getBoundingClientRect().height));
      expect((await heights()).at(-1)).toBe(tall);
      expect(tall).toBeGreaterThan(300);
      const [first] = await page.evaluate(() => window.heard);
      expect(Object.keys(first?.data as object).sort()).toEqual(['heightPx', 'keenfold']);
      // It follows what is opened in it, and listens to nobody.
      await figure.getByText('Details and numbers').click();
      await expect.poll(async () => ((await heights()).at(-1) ?? 0) > tall).toBe(true);
      const caption = figure.locator('figcaption');
      const before = await caption.innerText();
      await figure.locator('input[type=range]').first().press('ArrowRight');
      await expect(caption).not.toHaveText(before);

      const frames = page.frames().map((each) => each.url());
      expect(frames.some((url) => url.startsWith(`${site.address}compare/`))).toBe(false);
      expect(complaints.filter((text) => !/frame-ancestors|X-Frame-Options/i.test(text))).toEqual([]);
      expect(complaints.some((text) => /frame-ancestors/.test(text))).toBe(true);
    } finally {
      await site.endPoint();
      await around.endPoint();
      rmSync(folder, { recursive: true, force: true });
    }
  },
);
