import { live, test, unfold, expect } from './test.ts';
import { kindsOfPage } from './pages.ts';
import { visitorLink } from './visitor.ts';

// What is forbidden is watched for in every test of the site, by the fixture of test.ts.
for (const path of kindsOfPage()) {
  test(`${path} keeps the policy, untouched, touched and with a line-up in its address`, async ({ page }) => {
    const answer = await page.goto(path);
    expect(answer?.status()).toBe(path === '/404.html' ? answer?.status() : 200);
    const policy = await page.locator('meta[http-equiv="content-security-policy" i]').getAttribute('content');
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe-(inline|eval)|https?:/);
    expect(await page.locator('[style]').count()).toBe(0);

    await unfold(page);
    const sliders = page.locator('main input[type="range"]');
    if ((await sliders.count()) > 0) {
      await sliders.first().focus();
      await live(page);
      for (const slider of await sliders.all()) {
        await slider.press('ArrowRight');
      }
    }
    await page.goto('about:blank');
    await page.goto(`${path}${visitorLink}`);
    if ((await page.locator('#page-line-up').count()) > 0) await live(page);
    await page.waitForTimeout(400);
  });
}
