import { expect, live, test } from './test.ts';
import { visitorLink } from './visitor.ts';

test('a question goes out without its answer open, and guesses come back as dots', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`/explained/ask/${visitorLink}`);
  await live(page);
  const answer = page.locator('.reveal kf-words[of=answer]');
  await expect(answer).toBeHidden();
  await page.getByText('Show the answer').click();
  await expect(answer).toBeVisible();

  await page.getByRole('button', { name: 'Copy the poll' }).click();
  await expect(page.locator('[data-part=copied]')).toContainText('copied');
  const poll = (await page.evaluate(() => navigator.clipboard.readText())).split('\n');
  expect(poll).toHaveLength(7);
  expect(poll.at(-1)).toContain('/explained/ask/#with=');

  const field = page.getByLabel('What came back');
  await field.fill('A 3\nB 5\n2.5\n+40 %\nherring');
  await expect(page.locator('[data-part=problems]')).toContainText('Line 5');
  const caption = page.locator('.audience-sheet figcaption');
  await expect(caption).toContainText('Of 10 guesses');
  const drawing = page.locator('.audience-sheet .drawing > svg').filter({ visible: true });
  await expect(drawing).toHaveAttribute('aria-label', (await caption.textContent()) ?? '?');
  expect(await drawing.locator('circle').count()).toBe(10);

  await page.getByLabel('What was measured').fill('1,3');
  await expect(caption).toContainText('Measured was 1.3');
  await page.getByLabel('What was measured').fill('soon');
  await expect(page.locator('[data-part=measured-problem]')).not.toBeEmpty();
  await field.fill('');
  await expect(page.locator('.audience-sheet')).toBeHidden();
});
