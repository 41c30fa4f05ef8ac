import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

const said = (page: Page) => page.locator('[data-part=said]');
const rows = (page: Page) => page.locator('[data-kept]');

async function open(page: Page): Promise<void> {
  await page.goto(`/saved/${visitorLink}`);
  await live(page);
}

test('a comparison is put in, renamed, saved, erased and taken from its file again', async ({ page }) => {
  await open(page);
  await page.getByLabel('Name', { exact: true }).fill('Blades of mine');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(rows(page)).toHaveCount(1);
  await page.reload();
  await live(page);
  const name = page.getByRole('textbox', { name: 'Name of Blades of mine' });
  await expect(name).toHaveValue('Blades of mine');
  await expect(rows(page)).toContainText('Not saved to a file yet');

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file: Blades of mine' }).click();
  const file = await (await saving).path();
  expect(JSON.parse(await readFile(file, 'utf8'))).toMatchObject({
    comparisons: [{ name: 'Blades of mine', comparison: visitorComparison }],
  });
  await expect(rows(page)).toContainText('Last saved to a file');

  await page.getByRole('button', { name: 'Copy: Blades of mine' }).click();
  await expect(rows(page)).toHaveCount(2);
  await page.getByRole('button', { name: 'Erase: Blades of mine', exact: true }).click();
  await expect(rows(page)).toHaveCount(1);
  await page.getByRole('button', { name: 'Put back' }).press('Enter');
  await expect(rows(page)).toHaveCount(2);
  await page.getByRole('button', { name: 'Erase: Blades of mine', exact: true }).click();
  await page.getByLabel('Take comparisons from files').setInputFiles({
    name: 'saved.json',
    mimeType: 'application/json',
    buffer: await readFile(file),
  });
  await expect(said(page)).toContainText('One comparison was taken');
  await expect(rows(page)).toHaveCount(2);
  await page.getByLabel('Take comparisons from files').setInputFiles({
    name: 'other.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"type":"FeatureCollection"}'),
  });
  await expect(said(page)).toContainText('no comparisons');

  await page.getByRole('link', { name: 'Open in Compare' }).first().click();
  await expect(page).toHaveURL(/\/compare\/#with=/);
});

test('without storage Saved goes on in memory and says so once', async ({ page }) => {
  await page.addInitScript(() =>
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('no', 'SecurityError');
      },
    }),
  );
  await open(page);
  const put = page.getByRole('button', { name: 'Save it' });
  await put.click();
  await expect(said(page)).toContainText('Save it to a file');
  await put.click();
  await expect(rows(page)).toHaveCount(2);
  await expect(said(page)).not.toContainText('Save it to a file');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all' }).click();
  expect((await saving).suggestedFilename()).toBe('keenfold-saved.json');
});
