import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { parseHTML } from 'linkedom';
import { moved } from '../../src/build/moved.mjs';
import { dist } from './pages.ts';
import { hostOf } from './static-host.ts';
import type { StaticHost } from './static-host.ts';
import { expect, test } from './test.ts';
import { visitorLink } from './visitor.ts';

const all = Object.entries(moved).map(([old, { to }]) => ({ old, to }));

/** Opens an old address with a query and a comparison, and waits until the new one shows it. */
async function expectCarriedOn(page: Page, old: string, to: string): Promise<void> {
  // The page leaves at once: there is no load of its own to wait for.
  await page.goto(`${old}?x=1${visitorLink}`, { waitUntil: 'commit' });
  await expect(page).toHaveURL(`${to}?x=1${visitorLink}`);
  await expect(page.locator('html')).toHaveAttribute('data-comparison', 'own');
}

for (const { old, to } of all)
  test(`/${old} leads on to /${to} with query and comparison`, async ({ page }) => {
    await page.goto('/words/');
    await expectCarriedOn(page, old, to);
    await expect(page.locator('h1')).toBeVisible();
    // The old address is no step of the way back.
    await page.goBack();
    await expect(page).toHaveURL(/\/words\/$/);
  });

test('a place in a page is carried on as well', async ({ page }) => {
  await page.goto('/bench/#work', { waitUntil: 'commit' });
  await expect(page).toHaveURL(/\/compare\/#work$/);
  await expect(page.locator('#work')).toBeInViewport();
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  for (const { old, to } of all)
    test(`/${old} says where the page is now`, async ({ page }) => {
      await page.goto(`/${old}`);
      await expect(page.locator('main')).toContainText('This page is now at');
      await page.locator('main').getByRole('link').click();
      await expect(page).toHaveURL(new RegExp(`/${to}$`));
    });
});

test.describe('without a network', () => {
  const kept = test.extend<{ base: string; host: StaticHost }>({
    base: ['/', { option: true }],
    host: async ({ base }, use) => {
      const host = await hostOf(dist, base);
      await use(host);
      await host.endPoint();
    },
    baseURL: async ({ host }, use) => {
      await use(host.address);
    },
  });
  kept.use({ serviceWorkers: 'allow' });

  kept('old addresses lead on in a site that was visited', async ({ page, host }) => {
    await page.goto('.');
    await page.mouse.move(40, 40);
    await page.mouse.move(80, 80);
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    await host.endPoint();
    for (const { old, to } of all) await expectCarriedOn(page, old, to);
    // A slash that was left out costs neither the query nor the comparison.
    await page.goto(`bench?x=1${visitorLink}`, { waitUntil: 'commit' });
    await expect(page).toHaveURL(`compare/?x=1${visitorLink}`);
  });
});

test('search engines are told of the new addresses alone', () => {
  const map = readFileSync(`${dist}/sitemap.xml`, 'utf8');
  for (const { old, to } of all) {
    const { document } = parseHTML(readFileSync(`${dist}/${old}index.html`, 'utf8'));
    expect(document.querySelector('meta[name=robots]')?.getAttribute('content'), old).toBe('noindex');
    // A refresh would lose the query and the fragment.
    expect(document.querySelector('meta[http-equiv=refresh i]'), old).toBeNull();
    expect(map).not.toContain(`/${old}<`);
    expect(map).toContain(`/${to}<`);
  }
});
