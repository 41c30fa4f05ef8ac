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
  await expect(answer).toContainText('Tern');
  await expect(page.locator('.measures thead')).toContainText('Tern');
  await page.getByText('Are you the one asking?').click();

  await page.getByRole('button', { name: 'Copy the poll' }).click();
  await expect(page.locator('[data-part=copied]')).toContainText('copied');
  const poll = (await page.evaluate(() => navigator.clipboard.readText())).split('\n');
  expect(poll).toHaveLength(7);
  expect(poll.at(-1)).toContain('/explained/ask/#with=');

  const field = page.getByLabel('What came back');
  await field.fill('A 3\nB 5\n2.5\n+40%\nherring');
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

test('an option or a number opens the answer and says where it lies, by pointer and by keyboard', async ({
  page,
}) => {
  await page.goto('/explained/ask/');
  await page.getByText('Choose one').hover();
  await live(page);
  const answer = page.locator('.reveal kf-words[of=answer]');
  const verdict = page.locator('[data-part=verdict]');
  await expect(answer).toBeHidden();

  // Arrow keys pass one option after the other: none of them is a guess yet.
  const options = page.getByRole('radio');
  await expect(options).toHaveCount(5);
  await options.first().focus();
  await page.keyboard.press('Space');
  await expect(answer).toBeVisible();
  await page.reload();
  await page.getByText('Choose one').hover();
  await live(page);
  await options.first().focus();
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('ArrowDown');
  await expect(options.nth(3)).toBeChecked();
  await expect(answer).toBeHidden();
  await page.getByRole('button', { name: 'Save my guess' }).press('Enter');
  await expect(answer).toBeVisible();
  await expect(verdict).toHaveText(/^You chose D\. /);

  await page.getByText(/^C · /).click();
  await expect(verdict).toHaveText(/^You chose C\. /);

  // A number takes the option's place, and stands on the ruler.
  await page.getByLabel('Your own number').fill('much');
  await page.getByLabel('Your own number').press('Enter');
  await expect(page.locator('#own-guess-problem')).not.toBeEmpty();
  await page.getByLabel('Your own number').fill('2,5');
  await page.getByLabel('Your own number').press('Enter');
  await expect(verdict).toContainText('Your guess, 2.5, is below the range.');
  await expect(page.locator('input[type=radio]:checked')).toHaveCount(0);
  await expect(page.locator('kf-figure[of=ruler] .drawing > svg').filter({ visible: true })).toContainText(
    'you: 2.5',
  );
  await options.last().check();
  await expect(verdict).toHaveText(/^You chose E\. /);
  await expect(
    page.locator('kf-figure[of=ruler] .drawing > svg').filter({ visible: true }),
  ).not.toContainText('you:');
});

test('without script the question has its options, and its answer in a fold', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ javaScriptEnabled: false, ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await page.goto('/explained/ask/');
  await expect(page.getByRole('radio')).toHaveCount(5);
  const answer = page.locator('.reveal kf-words[of=answer]');
  await expect(answer).toBeHidden();
  await page.getByText('Show the answer').click();
  await expect(answer).toContainText('Dunlin should cut');
  await context.close();
});
