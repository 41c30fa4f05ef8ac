import { expect, test } from './test.ts';
import { visitorLink } from './visitor.ts';

test('an answer covers the visitor’s knives, and is copied with its link', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`/answers/all-steel/${visitorLink}`);
  const answer = page.locator('.lead kf-words');
  await expect(answer).toContainText('Tern');
  await expect(answer).not.toContainText('Dunlin');
  await page.getByRole('button', { name: 'Copy the answer and its link' }).press('Enter');
  await expect(page.locator('kf-answer [data-part=said]')).toContainText('Copied');
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain((await answer.innerText()).trim());
  expect(copied).toMatch(/ http.*\/answers\/all-steel\/#with=/);
});

test('the list leads to each answer and takes the comparison along', async ({ page }) => {
  await page.goto(`/answers/${visitorLink}`);
  await expect(page.locator('kf-words').last()).toContainText('Tern');
  await page.locator('h2 a').last().click();
  await expect(page).toHaveURL(/answers\/no-difference\/#with=/);
  await expect(page.locator('.lead kf-words')).toContainText('Tern');
});
