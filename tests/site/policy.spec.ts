import { readFileSync } from 'node:fs';
import { dist, kindsOfPage, lessons } from './pages.ts';
import { live, test, unfold } from './test.ts';
import { visitorLink } from './visitor.ts';

// What is forbidden is watched for in every test of the site, by the fixture of test.ts; what the built pages say of
// it is asked by tests/content/policy.test.ts. Lessons, home and the explanation are opened with a comparison elsewhere, and
// every-page.spec.ts opens all pages without one: of those that no comparison changes there is no more to ask.
const opened = ['/', ...lessons(), '/explained/'];
const follows = (path: string): boolean =>
  readFileSync(`${dist}${path.replace(/\/$/, '/index.html')}`, 'utf8').includes('id="page-comparison"');

for (const path of kindsOfPage().filter((page) => !opened.includes(page) && follows(page))) {
  test(`${path} keeps the policy with a comparison in its address and all of it unfolded`, async ({
    page,
  }) => {
    await page.goto(`${path}${visitorLink}`);
    await live(page);
    await unfold(page);
    await page.waitForTimeout(400);
  });
}
