import { expect, test } from '@playwright/test';
import { isRepresentative, kindsOfPage } from './pages.ts';

test.use({ javaScriptEnabled: false });

// Lessons are made of the same elements: one of each kind is asked here, and the numbers of all in every-page.spec.ts.
for (const path of kindsOfPage().filter(isRepresentative)) {
  test(`${path} is whole without script`, async ({ page }) => {
    await page.goto(path);
    await expect(page.locator('h1')).toBeVisible();
    const figures = page.locator('kf-figure');
    await page
      .locator('details:is(.fold, .reveal)')
      .evaluateAll((folds) => folds.forEach((fold) => fold.setAttribute('open', '')));
    // The first is opened as a reader opens it, the others all at once.
    const folded = figures.first().locator('summary', { hasText: 'Details and numbers' });
    if (await folded.isVisible()) await folded.click();
    const shown = await figures.evaluateAll((all) =>
      all.map((figure, index) => {
        const table = figure.querySelector('table');
        if (index > 0) table?.closest('details')?.setAttribute('open', '');
        return {
          of: figure.getAttribute('of'),
          drawings: [...figure.querySelectorAll('.drawing > svg')].filter((svg) => svg.checkVisibility())
            .length,
          caption: figure.querySelector('figcaption')?.textContent ?? '',
          table: table?.checkVisibility() ?? false,
          rows: table?.querySelectorAll('tbody tr').length ?? 0,
        };
      }),
    );
    for (const { of, drawings, caption, table, rows } of shown) {
      expect(drawings, `drawings of ${of}`).toBe(1);
      expect(caption, `caption of ${of}`).toMatch(/\S.{30,}\./);
      // The measures of a reason stand in its picture; their table is that of all reasons, in its own fold.
      expect(table, `table of ${of}`).toBe(!of?.startsWith('reason-'));
      expect(rows, `rows of ${of}`).toBeGreaterThan(0);
    }
    const numbers = await page
      .locator('kf-num')
      .evaluateAll((all) =>
        (all as HTMLElement[]).map((number) => (number.checkVisibility() ? number.innerText : '(hidden)')),
      );
    expect(numbers.filter((text) => !/\S/.test(text) || text === '(hidden)')).toEqual([]);
    const worked = await page
      .locator('kf-worked')
      .evaluateAll((all) => all.map((one) => one.querySelector('math')?.checkVisibility() ?? false));
    expect(worked).not.toContain(false);
    // A message about the address has nothing to say here.
    await expect(page.locator('.message:visible')).toHaveCount(0);
  });
}
