import { expect, live, test } from './test.ts';

test('guesses are counted as they are typed, and nothing of them is kept', async ({ page }) => {
  await page.goto('/class/tally/');
  await page.locator('#tally-before').focus();
  await live(page);
  await page.keyboard.type('1.8\n1,8\n180%\n1.96\nlots\n7');
  await expect(page.locator('[data-part="said-before"]')).toHaveText(
    '5 guesses: 1 multiplied, 3 added, 1 did something else. 1 right. Not to be read: “lots”.',
  );
  await expect(page.locator('[data-part="dots-before"] circle')).toHaveCount(5);
  const added = page.locator('tr', { hasText: 'added the percentages' }).first();
  await expect(added.locator('td').nth(1)).toHaveText('3');
  await page.locator('#tally-after').fill('2.475');
  await expect(page.locator('[data-part="said-after"]')).toContainText('1 multiplied');

  const large = page.getByRole('button', { name: 'Large, for the room' });
  await large.click();
  await expect(page.locator('#tally-after')).toBeHidden();
  await expect(page.locator('[data-part="said-after"]')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.locator('#tally-after')).toBeVisible();

  const kept = await page.evaluate(() => JSON.stringify([{ ...localStorage }, { ...sessionStorage }]));
  expect(kept).not.toContain('lots');
  expect(page.url()).not.toContain('#');
});

test('another question and a bad seed', async ({ page }) => {
  await page.goto('/class/tally/');
  await page.locator('#tally-kind').selectOption('two-routes');
  await live(page);
  // Two routes have words in the loft only.
  await expect(page.locator('[data-part="question-before"]')).toContainText('rigging loft');
  const question = await page.locator('[data-part="question-before"]').textContent();
  await page.locator('#tally-seed').fill('x');
  await expect(page.locator('#tally-say-seed')).toHaveText(/whole number/);
  await expect(page.locator('[data-part="question-before"]')).toHaveText(question ?? '');
});
