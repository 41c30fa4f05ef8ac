import { readFile } from 'node:fs/promises';
import { expect, live, test } from './test.ts';
import { visitorLink } from './visitor.ts';

test('a prediction is sealed, and its file opens the seal, offline too', async ({ page, context }) => {
  await page.goto(`/seal/${visitorLink}`);
  await live(page);
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Seal this prediction' }).click();
  const seal = (await page.locator('output[data-part=seal]').textContent()) ?? '';
  expect(seal).toMatch(/^(?:\w{4}-){5}\w{4}$/);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).click();
  const text = await readFile(await (await saving).path(), 'utf8');

  await page.getByText('Check a seal').click();
  const checked = page.locator('[data-part=checked]');
  const check = async (content: string, posted: string) => {
    await page.getByLabel('as it was posted').fill(posted);
    await page
      .getByLabel('said to open it')
      .setInputFiles({ name: 'seal.json', mimeType: 'application/json', buffer: Buffer.from(content) });
    await page.getByRole('button', { name: 'Check the two' }).click();
  };
  await check(text, seal.toLowerCase());
  await expect(checked).toContainText('belong together, to the last digit');
  await expect(checked).toContainText('Tern');
  await check(text.replace('0.41', '0.42'), seal);
  await expect(checked).toContainText('do not belong together');
});
