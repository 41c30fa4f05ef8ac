import type { Page } from '@playwright/test';
import { encodeLink } from '../../src/comparison/link/codec.ts';
import { comesLive } from './pages.ts';
import { expect, live, test } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

const angle = (page: Page) => page.locator('[data-field=angle] input').first();

/** Types an angle and waits until the address has it, and with it what is kept. */
async function type(page: Page, text: string): Promise<void> {
  const before = page.url();
  await angle(page).fill(text);
  await angle(page).press('Tab');
  await expect.poll(() => page.url()).not.toBe(before);
}

test('of two tabs of the Compare page the later change is kept, and each tab holds on to its own', async ({
  page,
  context,
}) => {
  await page.goto(`/compare/${visitorLink}`);
  await live(page);
  await type(page, '17');
  const other = await context.newPage();
  await other.goto('/compare/');
  await live(other);
  await expect(angle(other)).toHaveValue('17');
  await type(other, '16');
  await type(page, '18');
  await expect(angle(other)).toHaveValue('16');
  await other.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(angle(other)).toHaveValue('17');
  await other.getByRole('button', { name: 'Redo', exact: true }).click();
  await expect(angle(other)).toHaveValue('16');
  // What was undone and done again is the later change.
  const third = await context.newPage();
  await expect
    .poll(async () => {
      await third.goto('/compare/');
      await live(third);
      return angle(third).inputValue();
    })
    .toBe('16');
  await page.reload();
  await live(page);
  await expect(angle(page)).toHaveValue('18');
});

test('what two tabs put into Saved is all kept, and each tab shows it', async ({ page, context }) => {
  const other = await context.newPage();
  for (const tab of [page, other]) {
    await tab.goto(`/saved/${visitorLink}`);
    await live(tab);
  }
  for (const [tab, name] of [
    [page, 'From the first'],
    [other, 'From the second'],
    [page, 'From the first again'],
  ] as const) {
    await tab.getByLabel('Name', { exact: true }).fill(name);
    await tab.getByRole('button', { name: 'Save it' }).click();
  }
  for (const tab of [page, other]) {
    await expect(tab.locator('[data-kept]')).toHaveCount(3);
    for (const name of ['From the first', 'From the second', 'From the first again'])
      await expect(tab.getByRole('textbox', { name: `Name of ${name}`, exact: true })).toHaveCount(1);
  }
});

const secondLink = encodeLink({
  ...visitorComparison,
  knives: visitorComparison.knives.map((knife) => ({ ...knife, name: `${knife.name} 2nd` })),
});

for (const path of ['/lessons/how-sure/', '/explained/', '/compare/'])
  test(`${path}: back and forward show what the address carries`, async ({ page }) => {
    await page.goto(path);
    if (comesLive(path)) await live(page);
    const read = () => page.locator('main').innerText();
    /** Without the parts that are fetched when the reader comes near. */
    const said = () => page.locator('kf-words:not(kf-late *, [data-late])').allInnerTexts();
    const demo = await said();
    expect(demo.length).toBeGreaterThan(1);
    const names = visitorComparison.knives.map(({ name }) => name);
    const shows = async (texts: readonly string[], not: string) => {
      for (const text of texts) await expect.poll(read).toContain(text);
      await expect.poll(read).not.toContain(not);
    };
    const open = (link: string) => page.evaluate((hash) => (location.hash = hash), link);
    await open(visitorLink);
    await live(page);
    await shows(names.slice(0, 1), '2nd');
    await open(secondLink);
    await shows(['Tern 2nd'], 'no such text');
    await page.goBack();
    await shows(names.slice(0, 1), '2nd');
    await page.goForward();
    await shows(['Tern 2nd'], 'no such text');
    await page.goBack();
    await page.goBack();
    await shows([], 'Tern');
    await expect.poll(said).toEqual(demo);
    await expect(page.locator('html')).not.toHaveAttribute('data-comparison', 'own');
    expect(
      await page
        .locator('a[data-carries]')
        .evaluateAll(
          (links) => links.filter((link) => (link as HTMLAnchorElement).hash.startsWith('#with=')).length,
        ),
    ).toBe(0);
  });

for (const path of ['/compare/', '/test/'])
  test(`${path}: an address gone to meanwhile is not written over, nor what was kept by a link that is looked at`, async ({
    page,
  }) => {
    await page.goto(path);
    await live(page);
    const bare = page.url();
    const kept = () => page.evaluate(() => localStorage.getItem('keenfold.line-up'));
    await page.evaluate((hash) => (location.hash = hash), visitorLink);
    await expect(page.locator('html')).toHaveAttribute('data-comparison', 'own');
    await page.goBack();
    await expect(page.locator('html')).not.toHaveAttribute('data-comparison', 'own');
    // Longer than the pause after which the address follows a change.
    await page.waitForTimeout(600);
    expect(page.url()).toBe(bare);
    expect(await kept()).toBeNull();

    // The address changes while the last change still waits to be written into it.
    const name = page
      .locator(path === '/compare/' ? '[data-field=name] input' : '[data-field=ratio] input')
      .first();
    await page.goForward();
    await expect(page.locator('html')).toHaveAttribute('data-comparison', 'own');
    await name.evaluate((input: HTMLInputElement, hash) => {
      input.value = '2';
      input.dispatchEvent(new Event('input', { bubbles: true }));
      // As `location.hash = …` before its event has been told.
      history.pushState(null, '', hash);
    }, secondLink);
    await page.waitForTimeout(600);
    expect(new URL(page.url()).hash).toBe(secondLink);
  });

for (const path of ['/compare/', '/test/'])
  test(`${path}: opened by a link and then by its bare address, it shows what it shows without a link`, async ({
    page,
  }) => {
    await page.goto(path + visitorLink);
    await live(page);
    await expect(page.locator('html')).toHaveAttribute('data-comparison', 'own');
    await page.evaluate(() => (location.hash = ''));
    await expect(page.locator('html')).not.toHaveAttribute('data-comparison', 'own');
    await live(page);
    await expect(page.locator('main')).not.toContainText('Tern');
  });
