import { pdfPages } from './pdf.ts';
import { expect, test } from './test.ts';

test('counts typed into the table show which idea moved, and nothing of them is kept', async ({ page }) => {
  await page.goto('/class/forms/');
  const row = page.locator('.kit-counts tr', { hasText: 'added the percentages' }).first();
  const right = page.locator('.kit-counts tr', { hasText: 'right' }).first();
  // The first count is typed before the live half is there.
  await row.locator('input[data-form="before"]').fill('15');
  await right.locator('input[data-form="before"]').fill('5');
  await row.locator('input[data-form="after"]').fill('4');
  await right.locator('input[data-form="after"]').fill('12');
  const said = page.locator('[data-part="said"]');
  await expect(said).toContainText('Right answers: 25% before, 75% after.');
  await expect(said).toContainText('“added the percentages”. It was given up: from 75% to 25%');
  await expect(page.locator('[data-part="picture"] .kit-ring')).not.toHaveCount(0);
  await right.locator('input[data-form="after"]').fill('a dozen');
  await expect(said).toContainText('counts as empty');
  await right.locator('input[data-form="after"]').fill('12');

  const large = page.getByRole('button', { name: 'Result large' });
  await large.click();
  await expect(large).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-part="before"]')).toBeHidden();
  await expect(said).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(large).toHaveAttribute('aria-pressed', 'false');
  await expect(page.locator('[data-part="before"]')).toBeVisible();

  expect(new URL(page.url()).hash).toBe('');
  expect(
    await page.evaluate(() => JSON.stringify([{ ...localStorage }, { ...sessionStorage }])),
  ).not.toContain('15');
});

test('the settings go into the address and come back, and a bad one gets a message', async ({ page }) => {
  await page.goto('/class/forms/');
  await page.locator('#forms-count').fill('3');
  await expect(page.locator('[data-part="after"] .kit-item')).toHaveCount(3);
  await page.locator('#forms-seed').fill('41');
  await expect(page.locator('[data-part="before"] header')).toContainText('seed 41');
  const described = await page.locator('[data-part="before"]').textContent();
  await page.locator('#forms-count').fill('9');
  await expect(page.locator('#forms-count-problem')).toHaveText('Write a whole number from 1 to 8.');
  await expect(page.locator('[data-part="before"]')).toHaveText(described ?? '');
  expect(new URL(page.url()).hash).toBe('#forms=seed-trays.3.41');
  await page.goto('about:blank');
  await page.goto('/class/forms/#forms=seed-trays.3.41');
  await expect(page.locator('[data-part="before"]')).toHaveText(described ?? '');
});

test('each form and the key print on pages of their own', async ({ page }) => {
  await page.goto('/class/forms/');
  const pages = await pdfPages(await page.pdf({ format: 'A4' }));
  const at = (title: string): number => pages.findIndex((text) => text.includes(title));
  const [first, second, key] = [at('Form 1, before'), at('Form 2, after'), at('Key of both forms')];
  expect([first, first < second, second < key]).toEqual([0, true, true]);
  expect(pages.slice(0, key).join('')).not.toContain('added the percentages');
  for (let number = 1; number <= 6; number += 1)
    expect(pages.slice(first, second).join('\n')).toMatch(new RegExp(`(^|\\n) *${number}\\. `));
});
