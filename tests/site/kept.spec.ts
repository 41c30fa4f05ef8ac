import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { visitorLink } from './visitor.ts';

const at = { compare: '/compare/', saved: '/saved/', test: '/test/' };

const angle = (page: Page) => page.locator('[data-field=angle] input').first();
const message = (page: Page) => page.locator('#kept-message');
const button = (page: Page, name: string) => message(page).getByRole('button', { name, exact: true });
const kept = (page: Page) => page.evaluate(() => localStorage.getItem('keenfold.line-up'));
const inSaved = (page: Page) =>
  page.evaluate(() => {
    const { items } = JSON.parse(localStorage.getItem('keenfold.drawer') ?? '{"items":[]}') as {
      items: { name: string; comparison: { knives: { angle: { deg: number } }[] } }[];
    };
    return items.map(({ name, comparison }) => `${name}, ${comparison.knives[0]?.angle.deg}°`);
  });

/** The name in Saved with the day of the browser's own calendar. */
const named = (page: Page, mark: string) =>
  page.evaluate(
    (text) =>
      `${text}, ${new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })}`,
    mark,
  );

async function open(page: Page, address: string): Promise<void> {
  // An address that differs in its fragment alone would not be loaded.
  await page.goto('/class/');
  await page.goto(address);
  await live(page);
}

/** Types an angle and waits until the address has it, and with it what is kept. */
async function type(page: Page, text: string): Promise<void> {
  const before = await page.evaluate(() => location.href);
  await angle(page).fill(text);
  await angle(page).press('Tab');
  await expect.poll(() => page.evaluate(() => location.href)).not.toBe(before);
}

for (const [what, link] of [
  ['a link', visitorLink],
  ['a damaged link', visitorLink.slice(0, 90)],
] as const)
  test(`one’s own comparison is in Saved once ${what} was opened and changed, and Undo brings it back`, async ({
    page,
  }) => {
    await open(page, at.compare);
    await type(page, '17');
    const own = await kept(page);
    await open(page, `${at.compare}${link}`);
    expect(await kept(page)).toBe(own);
    await expect(message(page)).toBeHidden();

    await type(page, '13');
    const name = await named(page, 'Kept before a link was opened');
    await expect(message(page)).toContainText(
      `The comparison kept here before is in Saved now, as “${name}”.`,
    );
    const put = await inSaved(page);
    expect(put).toHaveLength(1);
    expect(put[0]).toContain(name);
    expect(put[0]).toMatch(/, 17°$/);
    // What is made of the link from here on is one comparison.
    await type(page, '12');
    expect(await inSaved(page)).toEqual(put);

    await button(page, 'Undo').press('Enter');
    await expect(angle(page)).toHaveValue('17');
    await expect(button(page, 'Redo')).toBeFocused();
    expect((await kept(page))?.split(' ')[0]).toBe(own?.split(' ')[0]);
    expect(await inSaved(page)).toEqual([]);
    await button(page, 'Redo').press('Enter');
    await expect(angle(page)).toHaveValue('12');
    await expect.poll(() => inSaved(page)).toEqual(put);
    await button(page, 'Undo').click();
    await expect(angle(page)).toHaveValue('17');
    await open(page, at.compare);
    await expect(angle(page)).toHaveValue('17');
  });

test('a page loaded again, and the page of runs come to from it, go on with the same comparison', async ({
  page,
}) => {
  await open(page, `${at.compare}${visitorLink}`);
  await type(page, '17');
  await page.reload();
  await live(page);
  await type(page, '16');
  await open(page, `${at.test}${await page.evaluate(() => location.hash)}`);
  const before = await kept(page);
  await page.locator('[data-field=ratio] input').fill('1.4');
  await page.locator('[data-field=ratio] input').press('Tab');
  await expect.poll(() => kept(page)).not.toBe(before);
  await expect(message(page)).toBeHidden();
  expect(await inSaved(page)).toEqual([]);
});

test('the page of runs keeps what is kept of another origin as well', async ({ page }) => {
  await open(page, at.compare);
  await type(page, '17');
  await open(page, `${at.test}${visitorLink}`);
  await page.locator('[data-field=ratio] input').fill('1.4');
  await page.locator('[data-field=ratio] input').press('Tab');
  await expect(message(page)).toContainText('is in Saved now');
  expect((await inSaved(page))[0]).toMatch(/, 17°$/);
});

test('of two tabs each notices the other, and neither writes over what the other kept', async ({
  page,
  context,
}) => {
  await open(page, at.compare);
  await type(page, '17');
  const other = await context.newPage();
  await open(other, at.compare);
  await expect(angle(other)).toHaveValue('17');

  await type(page, '16');
  await expect(message(other)).toContainText('Another tab changed your comparison.');
  await expect(angle(other)).toHaveValue('17');
  await button(other, 'Show it here').click();
  await expect(angle(other)).toHaveValue('16');
  await expect(message(other)).toBeHidden();

  await type(other, '15');
  await expect(message(page)).toContainText('Another tab changed your comparison.');
  await type(page, '14');
  const name = await named(page, 'Changed in another tab');
  await expect(message(page)).toContainText(`The other tab’s version is in Saved now, as “${name}”.`);
  expect((await inSaved(page)).map((item) => item.replace(/.*, /, ''))).toEqual(['15°']);

  // Each tab writes only when its own visitor changes something.
  const rested = await kept(page);
  await page.waitForTimeout(1000);
  expect(await kept(page)).toBe(rested);
  await type(other, '13');
  await type(page, '12');
  await type(other, '11');
  expect((await inSaved(page)).map((item) => item.replace(/.*, /, '')).sort()).toEqual(['12°', '13°']);
  await other.close();
});

test('where there is no room in Saved, nothing is written over, and the comparison is offered as a file', async ({
  page,
}) => {
  await open(page, at.compare);
  await type(page, '17');
  const own = await kept(page);
  await page.addInitScript(() => {
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = function (key, value) {
      if (key === 'keenfold.drawer') throw new DOMException('no', 'QuotaExceededError');
      setItem.call(this, key, value);
    };
  });
  await open(page, `${at.compare}${visitorLink}`);
  await type(page, '13');
  await expect(message(page)).toContainText('This comparison isn’t kept here: there’s no room for it.');
  expect(await kept(page)).toBe(own);
  await type(page, '12');
  expect(await kept(page)).toBe(own);
  const saving = page.waitForEvent('download');
  await button(page, 'Save as a file').click();
  expect(readFileSync(await (await saving).path(), 'utf8')).toContain('"deg": 12');
  await open(page, at.saved);
  await expect(page.locator('[data-kept]')).toHaveCount(0);
});

test('what is kept and cannot be read is laid aside before a link’s comparison is kept in its place', async ({
  page,
}) => {
  await page.goto('/class/');
  await page.evaluate(() => localStorage.setItem('keenfold.line-up', '#with=99.damaged'));
  await open(page, `${at.compare}${visitorLink}`);
  await type(page, '13');
  await expect(message(page)).toContainText('Saved has it as it was found.');
  await open(page, at.saved);
  const saving = page.waitForEvent('download');
  await page.locator('[data-act=aside-file]').click();
  expect(readFileSync(await (await saving).path(), 'utf8')).toBe('#with=99.damaged');
});
