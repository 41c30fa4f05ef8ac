import { expect, test } from './test.ts';

const key = 'keenfold.progress';

test('the course says what each lesson answers, and begins with nothing done', async ({ page }) => {
  await page.goto('/lessons/');
  expect(await page.locator('ol.course > li').count()).toBeGreaterThan(5);
  await expect(page.locator('[data-part=kept]')).toContainText('Nothing yet');
  await expect(page.getByRole('button', { name: 'Erase it' })).toBeDisabled();
});

test('what was answered is noted, what tripped one up comes back the day after, and all can be erased', async ({
  page,
}) => {
  await page.clock.install({ time: new Date(2026, 2, 2, 12) });
  await page.goto('/lessons/forty-and-forty/');
  const check = page.locator('kf-check').first();
  const said = check.locator('[data-part=said]');
  const box = check.getByRole('textbox').first();
  const question = await check.locator('label').first().innerText();
  const percents = [...question.matchAll(/(\d+)%/g)].map(([, percent]) => Number(percent));
  await box.fill(`+${percents.reduce((total, percent) => total + percent, 0)}%`);
  await box.press('Enter');
  await expect(said).toHaveAttribute('data-verdict', 'misstep');
  await box.fill(String(percents.reduce((total, percent) => total * (1 + percent / 100), 1)));
  await box.press('Enter');
  await expect(said).toHaveAttribute('data-verdict', 'right');

  await page.goto('/lessons/');
  await expect(page.locator('[data-part=kept]')).toContainText('1 problem answered rightly, in 1 lesson');
  await expect(page.locator('ol.course > li').first()).toContainText('✓ 1 answered rightly');
  await expect(page.locator('[data-part=again]')).toBeHidden();

  await page.clock.setSystemTime(new Date(2026, 2, 3, 8));
  await page.reload();
  const again = page.locator('[data-part=again]');
  await expect(again).toContainText('added the percentages');
  await again.getByRole('link').click();
  await expect(page).toHaveURL(/forty-and-forty\/#check-/);
  await expect(page.locator('kf-check').first()).toBeInViewport();

  await page.goto('/lessons/');
  await page.getByRole('button', { name: 'Erase it' }).press('Enter');
  await expect(page.locator('[data-part=kept]')).toHaveText('It is erased.');
  expect(await page.evaluate((name) => localStorage.getItem(name), key)).toBeNull();
});

test('a browser that denies storage is told of it, and the checks go on', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await page.goto('/lessons/');
  await expect(page.locator('[data-part=kept]')).toContainText('lets the page keep nothing');
  await page.goto('/lessons/forty-and-forty/');
  const check = page.locator('kf-check').first();
  await check.getByRole('textbox').first().fill('0.001');
  await check.getByRole('textbox').first().press('Enter');
  await expect(check.locator('[data-part=said]')).toContainText('Try again');
});

test('each lesson leads to its neighbours', async ({ page }) => {
  await page.goto('/lessons/forty-and-forty/');
  await expect(page.locator('a[rel=prev]')).toHaveCount(0);
  await page.locator('a[rel=next]').click();
  await expect(page).toHaveURL(/less-of-a-bad-thing/);
  await page.locator('a[rel=prev]').click();
  await expect(page).toHaveURL(/forty-and-forty/);
});
