import { expect, test } from './test.ts';
import { visitorLink } from './visitor.ts';

test('a published comparison leads from its list to a page that stays its own, and on to the Compare page', async ({
  page,
}) => {
  await page.goto('/comparisons/');
  await page.getByRole('link', { name: 'Curlew and Avocet, ground alike and cut' }).click();
  await expect(page).toHaveURL(/\/comparisons\/curlew-and-avocet\/$/);
  const main = page.locator('main');
  for (const part of [
    'Invented',
    'is the middle',
    'by a 90% interval',
    'Measured over predicted',
    'It arrived late',
  ])
    await expect(main).toContainText(part);
  const before = await main.textContent();
  // Another comparison in the address, and a touch, change nothing.
  await page.goto(`/comparisons/curlew-and-avocet/${visitorLink}`);
  await page.getByText('Details and numbers').first().click();
  expect(await main.textContent()).toBe(before);

  await page.getByRole('link', { name: 'Open these knives in Compare' }).click();
  await expect(page.locator('.answer-line')).toContainText('Curlew should cut');
});
