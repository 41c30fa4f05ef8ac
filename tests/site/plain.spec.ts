import { expect, live, test } from './test.ts';

const pages = ['forty-and-forty', 'less-of-a-bad-thing', 'ruler-of-ratios'].map((name) => `/plain/${name}/`);

for (const path of pages) {
  test(`${path} follows its slider without a comparison`, async ({ page }) => {
    await page.goto(path);
    const figure = page.locator('kf-figure').first();
    const caption = figure.locator('figcaption');
    const before = await caption.innerText();
    const slider = figure.locator('input[type=range]').last();
    await slider.focus();
    await live(page);
    await slider.press('ArrowRight');
    await slider.press('ArrowRight');
    await expect(caption).not.toHaveText(before);
    await expect(figure).not.toContainText('NaN');
  });
}

test('a plain page opens no comparison from its address', async ({ page }) => {
  await page.goto('/plain/forty-and-forty/#with=1.AAAA');
  await page.locator('kf-figure input[type=range]').first().focus();
  await live(page);
  await expect(page.locator('html')).not.toHaveAttribute('data-comparison', /.+/);
  await expect(page.locator('kf-num').first()).toBeVisible();
});
