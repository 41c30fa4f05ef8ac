import { readFileSync } from 'node:fs';
import { expect, live, test } from './test.ts';

test('the set maker shows what its form asks for, and keeps it in the address', async ({ page }) => {
  await page.goto('/class/');
  const before = await page.locator('[data-part="sheet"] .kit-items').textContent();
  await page.locator('#kit-seed').fill('4294967295');
  await live(page);
  await expect(page.locator('[data-part="sheet"] .kit-items')).not.toHaveText(before ?? '');
  await page.locator('#kit-count').fill('5');
  await expect(page.locator('[data-part="sheet"] .kit-item')).toHaveCount(5);
  await expect(page.locator('[data-part="key"] .kit-item')).toHaveCount(5);
  expect(new URL(page.url()).hash).toMatch(/^#set=1\.seed-trays\.r\.5\.b\.4294967295\./);
  await expect(page.locator('[data-part="key"] .kit-address')).toHaveText(page.url());

  const described = await page.locator('[data-part="sheet"]').textContent();
  await page.goto('about:blank');
  await page.goBack();
  await live(page);
  await expect(page.locator('[data-part="sheet"]')).toHaveText(described ?? '');
  await expect(page.locator('#kit-seed')).toHaveValue('4294967295');
});

test('a field that asks for what there is not has a message, and the last set stays', async ({ page }) => {
  await page.goto('/class/');
  await page.locator('#kit-count').fill('3');
  await expect(page.locator('[data-part="sheet"] .kit-item')).toHaveCount(3);
  for (const [id, typed] of [
    ['count', '41'],
    ['seed', '-1'],
  ]) {
    await page.locator(`#kit-${id}`).fill(typed ?? '');
    await expect(page.locator(`#kit-${id}-problem`)).toHaveText(/whole number from/);
    await expect(page.locator('[data-part="sheet"] .kit-item')).toHaveCount(3);
  }
});

test('a damaged address is said to be one', async ({ page }) => {
  await page.goto('/class/#set=1.tides.r.12.b.8.h.2k');
  await expect(page.locator('[data-part="say-address"]')).toHaveText(/could not be opened/);
  await expect(page.locator('[data-part="sheet"] .kit-item')).toHaveCount(12);
});

test('a set is done on the screen from its address alone, by keyboard, and its key is not on the page', async ({
  page,
}) => {
  await page.goto('/class/');
  await page.locator('#kit-version').focus();
  await live(page);
  const questions = await page
    .locator('[data-part="sheet"] .kit-item > p:not(.kit-marks, .kit-answer)')
    .allTextContents();
  const answers = await page.locator('[data-part="key"] .kit-item strong').allTextContents();
  await page.locator('[data-part="do-it"]').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-part="do"] .kit-item')).toHaveCount(12);
  expect(await page.locator('[data-part="do"] form > p').allTextContents()).toEqual(questions);
  await expect(page.locator('[data-part="key"]')).toBeHidden();
  await expect(page.locator('[data-part="sheet"]')).toBeHidden();

  await page.locator('#kit-do-1').focus();
  for (const [index, answer] of answers.entries()) {
    await page.keyboard.type(answer.replace(/^([A-D]): .*/, '$1'));
    await page.keyboard.press('Enter');
    await expect(page.locator(`#kit-said-${index + 1}`)).toHaveAttribute('data-verdict', 'right');
    if (index + 1 < answers.length) await page.locator(`#kit-do-${index + 2}`).focus();
  }
  await expect(page.locator('[data-part="score"]')).toHaveText('12 of 12 right.');
});

test('what is carried away is what is shown', async ({ page }) => {
  await page.goto('/class/');
  await page.locator('#kit-count').fill('2');
  await expect(page.locator('[data-part="sheet"] .kit-item')).toHaveCount(2);
  const question = await page
    .locator('[data-part="sheet"] .kit-item > p:not(.kit-marks)')
    .first()
    .textContent();
  for (const [does, ending] of [
    ['markdown-sheet', '-sheet.md'],
    ['markdown-key', '-key.md'],
    ['csv', '.csv'],
    ['qti', '-qti.zip'],
  ]) {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator(`[data-does="${does}"]`).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(new RegExp(`^set-1\\.seed-trays\\..*${ending}$`));
    const bytes = readFileSync(await download.path());
    if (does === 'qti') expect(bytes.subarray(0, 2).toString()).toBe('PK');
    else expect(bytes.toString()).toContain(question);
  }
});
