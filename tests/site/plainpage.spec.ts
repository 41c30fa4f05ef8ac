import { expect, test } from '@playwright/test';
import { kindsOfPage } from './pages.ts';

test.use({ javaScriptEnabled: false });

for (const path of kindsOfPage()) {
  test(`${path} is whole without script`, async ({ page }) => {
    await page.goto(path);
    await expect(page.locator('h1')).toBeVisible();
    for (const figure of await page.locator('kf-figure').all()) {
      await expect(figure.locator('.drawing > svg').filter({ visible: true })).toHaveCount(1);
      await expect(figure.locator('figcaption')).toHaveText(/\S.{30,}\./);
      const table = figure.locator('table');
      if (!(await table.isVisible())) await figure.locator('summary', { hasText: 'numbers of this' }).click();
      await expect(table).toBeVisible();
      expect(await table.locator('tbody tr').count()).toBeGreaterThan(0);
    }
    const numbers = await page
      .locator('kf-num')
      .evaluateAll((all) =>
        (all as HTMLElement[]).map((number) => (number.checkVisibility() ? number.innerText : '(hidden)')),
      );
    expect(numbers.filter((text) => !/\S/.test(text) || text === '(hidden)')).toEqual([]);
    for (const worked of await page.locator('kf-worked').all()) {
      await expect(worked.locator('math').first()).toBeVisible();
    }
    // A message about the address has nothing to say here.
    await expect(page.locator('.message:visible')).toHaveCount(0);
  });
}
