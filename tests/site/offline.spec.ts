import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { writeWorker } from '../../src/offline/integration.mjs';
import { builtFiles, dist, isAlone, pages } from './pages.ts';
import { headersFor, hostOf } from './static-host.ts';
import type { StaticHost } from './static-host.ts';
import { expect, live, test as site, unfold } from './test.ts';
import { visitorLink } from './visitor.ts';

/** A site of its own for each test, which can be changed and taken away. */
const test = site.extend<{ base: string; folder: string; host: StaticHost }>({
  base: ['/', { option: true }],
  folder: async ({ base }, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'keenfold-'));
    if (base === '/') cpSync(dist, folder, { recursive: true });
    else
      execFileSync('astro', ['build', '--outDir', folder], {
        env: { ...process.env, KEENFOLD_BASE: base },
        shell: process.platform === 'win32',
      });
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
  host: async ({ folder, base }, use) => {
    const host = await hostOf(folder, base);
    await use(host);
    await host.endPoint();
  },
  baseURL: async ({ host }, use) => {
    await use(host.address);
  },
});
test.use({ serviceWorkers: 'allow' });

/** Reads a page as a reader does who moves the pointer, and waits until the whole site is kept. */
async function visit(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.mouse.move(40, 40);
  await page.mouse.move(80, 80);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

test('nothing is kept before the reader does something', async ({ page }) => {
  await page.goto('.', { waitUntil: 'networkidle' });
  await page.waitForTimeout(4000);
  expect(await page.evaluate(() => caches.keys())).toEqual([]);
});

test('nothing is kept under a hand that moves, but once it rests', async ({ page }) => {
  await page.goto('.');
  for (let step = 1; step <= 10; step += 1) {
    await page.mouse.move(40 + 10 * step, 40);
    await page.waitForTimeout(500);
  }
  expect(await page.evaluate(() => caches.keys())).toEqual([]);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
});

test('a visited site opens whole without a network', async ({ page, host }) => {
  await visit(page, 'lessons/forty-and-forty/');
  await host.endPoint();
  const all = [
    ...pages().filter((page) => !isAlone(page)),
    ...['.js', '.css', '.woff2'].flatMap((kind) =>
      builtFiles(kind).filter((file) => file.startsWith('_astro/')),
    ),
  ].map((path) => new URL(path.replace(/^\//, ''), host.address).href);
  const kept = await page.evaluate(
    (addresses) =>
      Promise.all(
        addresses.map(async (address) => {
          const answer = await fetch(address);
          return [address, answer.status, (await answer.text()).length > 0];
        }),
      ),
    all,
  );
  expect(kept).toEqual(all.map((address) => [address, 200, true]));
  for (const path of ['', 'compare/', 'test/', 'explained/', 'argue/', 'class/', 'lessons/two-routes/']) {
    expect((await page.goto(path || '.'))?.status(), path).toBe(200);
    await expect(page.locator('h1')).toBeVisible();
    await unfold(page);
    const touched = page.locator('main [data-own] input, main [data-live] input').first();
    if ((await touched.count()) === 0) continue;
    await touched.focus();
    await live(page);
  }
  await page.goto(`explained/${visitorLink}`);
  await expect(page.locator('html')).toHaveAttribute('data-comparison', 'own');
  expect((await page.goto('compare'))?.url()).toMatch(/\/compare\/$/);
});

test('an address that is nowhere says so without a network too', async ({ page, context, host }) => {
  await visit(page, '.');
  await host.endPoint();
  // A page of its own: the browser's complaint about the answer 404 is no fault here.
  const nowhere = await context.newPage();
  const answer = await nowhere.goto('nowhere/');
  expect(answer?.status()).toBe(404);
  await expect(nowhere).toHaveTitle('No such page · Keenfold');
});

test('a figure alone is kept once a reader of the site has opened it, and never by a frame', async ({
  page,
  context,
  folder,
  host,
}) => {
  await visit(page, '.');
  const kept = () =>
    page.evaluate(async () => {
      const names = await caches.keys();
      const held = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return held
        .flat()
        .map(({ url }) => new URL(url).pathname)
        .filter((path) => path.startsWith('/embed/'));
    });
  expect(await kept()).toEqual([]);
  const around = '<!doctype html><html lang="en"><title>Around</title><iframe src="/embed/stack/"></iframe>';
  writeFileSync(join(folder, 'around.html'), around);
  await page.goto('around.html');
  await expect(page.frameLocator('iframe').locator('figcaption')).toBeVisible();
  expect(await kept()).toEqual([]);
  await page.goto(`embed/chain/${visitorLink}`);
  expect(await kept()).toEqual(['/embed/chain/']);

  await host.endPoint();
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-live', 'on');
  await expect(page.locator('.whose.own')).toContainText('Tern');
  const another = await context.newPage();
  expect((await another.goto('embed/stack/'))?.status()).toBe(404);
});

test('a file that is not as it was built is not kept, and nothing is half kept', async ({ page, folder }) => {
  writeFileSync(join(folder, 'words/index.html'), 'something else');
  await page.goto('.');
  await page.mouse.move(40, 40);
  await page.waitForTimeout(6000);
  expect(await page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
});

test.describe('below a path', () => {
  test.use({ base: '/below/here/' });

  test('a site works, is kept, and offers its new version without forcing it', async ({
    page,
    folder,
    host,
  }) => {
    test.slow();
    await visit(page, 'lessons/forty-and-forty/');
    await host.endPoint();
    await page.goto('compare/');
    await live(page);
    await page.goto(`bench/?x=1${visitorLink}`, { waitUntil: 'commit' });
    await expect(page).toHaveURL(`${host.address}compare/?x=1${visitorLink}`);

    const words = join(folder, 'words/index.html');
    writeFileSync(words, readFileSync(words, 'utf8').replace(/<h1[^>]*>/, '$&New: '));
    writeWorker(folder);
    await host.start();
    await page.goto('lessons/forty-and-forty/');
    await page.mouse.move(40, 40);
    await page.mouse.move(80, 80);
    const offer = page.locator('.offer');
    await expect(offer).toContainText('A newer version', { timeout: 20_000 });

    // Until it is asked for, the old version is what is read.
    await page.goto('words/');
    await expect(page.locator('h1')).not.toContainText('New: ');
    await page.mouse.move(40, 40);
    await page.mouse.move(80, 80);
    await offer.getByRole('button', { name: 'Open it' }).click();
    await expect(page.locator('h1')).toContainText('New: ');
    await expect(offer).toHaveCount(0);
  });
});

test('hosts are asked for the headers a page cannot set itself', async ({ page, folder }) => {
  const answer = await page.goto('compare/');
  const headers = answer?.headers() ?? {};
  expect(headers['content-security-policy']).toBe("frame-ancestors 'none'");
  expect(headers['x-content-type-options']).toBe('nosniff');
  expect(Object.fromEntries(headersFor(folder, '/_astro/any.js'))['Cache-Control']).toContain('immutable');
  expect(Object.fromEntries(headersFor(folder, '/compare/'))['Cache-Control']).toBeUndefined();
});
