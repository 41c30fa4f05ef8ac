import { kindsOfPage, lessons } from './pages.ts';
import { live, test, unfold } from './test.ts';
import { visitorLink } from './visitor.ts';

// What is forbidden is watched for in every test of the site, by the fixture of test.ts; what the built pages say of
// it is asked by tests/content/policy.test.ts. Lessons, home and telling are opened with a comparison elsewhere.
const opened = ['/', ...lessons(), '/telling/'];

for (const path of kindsOfPage().filter((page) => !opened.includes(page))) {
  test(`${path} keeps the policy with a line-up in its address and all of it unfolded`, async ({ page }) => {
    await page.goto(`${path}${visitorLink}`);
    if ((await page.locator('#page-line-up').count()) > 0) await live(page);
    await unfold(page);
    await page.waitForTimeout(400);
  });
}
