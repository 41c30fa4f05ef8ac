import { expect, test } from './test.ts';
import { visitorLink } from './visitor.ts';

test('an answer covers the visitor’s knives, and is copied with its link', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`/answers/all-steel/${visitorLink}`);
  const answer = page.locator('.short-answer kf-words');
  await expect(answer).toContainText('Tern');
  await expect(answer).not.toContainText('Dunlin');
  await page.getByRole('button', { name: 'Copy the answer and its link' }).press('Enter');
  await expect(page.locator('kf-answer [data-part=said]')).toContainText('Copied');
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  // One below the other on the page, one after the other in what is copied.
  expect(copied).toContain((await answer.locator('li').allInnerTexts()).join(' '));
  expect(copied).toMatch(/ http.*\/answers\/all-steel\/#with=/);
});

test('the list leads to each answer and takes the comparison along', async ({ page }) => {
  await page.goto(`/answers/${visitorLink}`);
  const last = page.locator('.fold').last();
  await last.locator('summary').click();
  await expect(last.locator('kf-words')).toContainText('Tern');
  await last.getByRole('link').click();
  await expect(page).toHaveURL(/answers\/no-difference\/#with=/);
  await expect(page.locator('.short-answer kf-words')).toContainText('Tern');
});
