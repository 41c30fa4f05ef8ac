import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

/** Every key under which the site keeps something, read from its source. */
const keys = [
  ...new Set(
    readdirSync('src', { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .flatMap((file) => [...readFileSync(`src/${file}`, 'utf8').matchAll(/'(keenfold\.[a-z.-]+)'/g)])
      .map(([, key = '']) => key),
  ),
];

const angle = (page: Page) => page.locator('[data-field=angle] input').first();
const said = (page: Page) => page.locator('[data-part=said]').first();

/** Pages that read what is kept. */
const reads = ['/compare/', '/test/', '/saved/', '/lessons/'];

const damaged: Record<string, string> = {
  'half a link': visitorLink.slice(0, 90),
  'a link of a later version': visitorLink.replace(/^#with=\d+/, '#with=99'),
  'other JSON':
    '{"items":[null,7,{"id":1},{"id":"__proto__","version":1}],"right":[1],"notes":{"x":1},"__proto__":{"y":1}}',
  'no text': '\u0000\ud800"{[',
};

test('the keys are found', () => {
  expect(keys).toEqual(expect.arrayContaining(['keenfold.line-up', 'keenfold.drawer', 'keenfold.progress']));
});

for (const [what, value] of Object.entries(damaged))
  test(`kept under every key, ${what} is told where it matters, and the pages go on`, async ({ page }) => {
    await page.goto('/class/');
    await page.evaluate(
      ([names, text]) => {
        for (const name of names) localStorage.setItem(name, text);
      },
      [keys, value] as const,
    );
    for (const path of reads) {
      await page.goto(path);
      if (path !== '/lessons/') await live(page);
      if (path === '/compare/' || path === '/test/')
        await expect(said(page), path).toContainText('cannot be read');
    }
    await expect(page.locator('[data-part=kept]')).toContainText('Nothing yet');
    await page.goto('/saved/');
    await live(page);
    await page.getByRole('button', { name: 'Save it' }).click();
    await expect(page.locator('[data-kept]')).toHaveCount(1);
    // What could not be read stays, whole or as the parts it has.
    const left = await page.evaluate(
      (names) => names.filter((name) => name.includes('drawer')).map((name) => localStorage.getItem(name)),
      keys,
    );
    expect(left.some((text) => text?.includes(value) || text?.includes('__proto__'))).toBe(true);
    await page.goto('/compare/');
    await live(page);
    await angle(page).fill('17');
    await angle(page).press('Tab');
    await expect(page).toHaveURL(/#with=/);
    await page.goto('/compare/');
    await live(page);
    await expect(angle(page)).toHaveValue('17');
  });

test('comparisons kept by the first version are read', async ({ page }) => {
  await page.goto('/class/');
  const [link = ''] = readFileSync('tests/comparison/link/links/v1.txt', 'utf8').split('\n');
  await page.evaluate(
    ([old, comparison]) => {
      localStorage.setItem('keenfold.line-up', old);
      localStorage.setItem(
        'keenfold.drawer',
        JSON.stringify({
          items: [{ id: '1', name: 'An old one', kept: '', saved: null, version: 1, comparison }],
        }),
      );
    },
    [link, visitorComparison] as const,
  );
  await page.goto('/compare/');
  await live(page);
  await expect(page.locator('html')).toHaveAttribute('data-comparison', 'own');
  await page.goto('/saved/');
  await live(page);
  await expect(page.getByRole('textbox', { name: 'Name of An old one' })).toHaveValue('An old one');
});

for (const [what, name] of [
  ['denied', 'SecurityError'],
  ['full', 'QuotaExceededError'],
] as const)
  test(`where storage is ${what} Compare says so once, and its address and the file of Saved keep it`, async ({
    page,
  }) => {
    await page.addInitScript((error) => {
      Storage.prototype.setItem = () => {
        throw new DOMException('no', error);
      };
      if (error === 'SecurityError')
        Object.defineProperty(window, 'localStorage', {
          get() {
            throw new DOMException('no', error);
          },
        });
    }, name);
    await page.goto('/compare/');
    await live(page);
    await angle(page).fill('17');
    await angle(page).press('Tab');
    const message = page.locator('#kept-message');
    if (name === 'SecurityError') await expect(said(page)).toContainText('copy its link to keep it');
    await expect(message).toContainText('copy its link to keep it');
    await message.evaluate((place) => place.toggleAttribute('hidden', true));
    // Asked of the page: what the browser tells of it may lag behind.
    const address = () => page.evaluate(() => location.href);
    await expect.poll(address).toContain('#with=');
    const before = await address();
    await angle(page).fill('16');
    await angle(page).press('Tab');
    await expect.poll(address).not.toBe(before);
    await expect(message).toBeHidden();
    await page.reload();
    await live(page);
    await expect(angle(page)).toHaveValue('16');
    await page.goto(`/saved/${new URL(page.url()).hash}`);
    await live(page);
    await page.getByRole('button', { name: 'Save it' }).click();
    await expect(said(page)).toContainText('Save it to a file');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save all' }).click();
    expect(readFileSync(await (await saving).path(), 'utf8')).toContain('"deg": 16');
  });

test('a comparison kept last that cannot be read is kept aside, and Saved saves and erases it', async ({
  page,
}) => {
  const later = visitorLink.replace(/^#with=\d+/, '#with=99');
  await page.goto('/class/');
  await page.evaluate((text) => localStorage.setItem('keenfold.line-up', text), later);
  await page.goto('/compare/');
  await live(page);
  await expect(said(page)).toContainText('It is kept aside: Saved gives it to you as a file.');
  await angle(page).fill('17');
  await angle(page).press('Tab');
  await expect.poll(() => page.evaluate(() => localStorage.getItem('keenfold.line-up'))).not.toBe(later);

  await page.goto('/saved/');
  await live(page);
  const section = page.getByRole('region', { name: 'Kept aside' });
  const saving = page.waitForEvent('download');
  await section.getByRole('button', { name: 'Save' }).press('Enter');
  expect(readFileSync(await (await saving).path(), 'utf8')).toBe(later);
  await section.getByRole('button', { name: 'Erase' }).press('Enter');
  await expect(section).toBeHidden();
  await expect(page.getByRole('heading', { name: 'What is saved here' })).toBeFocused();
  await page.reload();
  await live(page);
  await expect(page.locator('[data-part=state]')).toContainText('Nothing is saved here yet');
  await expect(section).toBeHidden();
});

test('comparisons of Saved that cannot be read are saved as they were found, and erased', async ({
  page,
}) => {
  await page.goto('/class/');
  for (const [stored, found] of [
    ['{"items":[{"id":"1","version":99}]}', '{"id":"1","version":99}'],
    ['{"items":[', '{"items":['],
  ] as const) {
    await page.evaluate((text) => localStorage.setItem('keenfold.drawer', text), stored);
    await page.goto('/saved/');
    await live(page);
    const section = page.getByRole('region', { name: 'Kept aside' });
    const saving = page.waitForEvent('download');
    await section.getByRole('button', { name: 'Save' }).click();
    expect(readFileSync(await (await saving).path(), 'utf8')).toBe(found);
    await section.getByRole('button', { name: 'Erase' }).click();
    await expect(section).toBeHidden();
    await page.reload();
    await live(page);
    await expect(page.locator('[data-part=state]')).toHaveText('Nothing is saved here yet.');
    await expect(section).toBeHidden();
  }
});
