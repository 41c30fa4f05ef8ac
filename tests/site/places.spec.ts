import type { Browser } from '@playwright/test';
import { expect, live, test, unfold } from './test.ts';
import { visitorLink } from './visitor.ts';

/** What a link shows to a reader with this language, in this zone, on this day. */
async function shown(
  browser: Browser,
  baseURL: string | undefined,
  [locale, timezoneId, year]: readonly [string, string, number],
): Promise<string[]> {
  const context = await browser.newContext({
    ...(baseURL === undefined ? {} : { baseURL }),
    locale,
    timezoneId,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(Date.UTC(year, 0, 1, 23, 30)));
  const texts: string[] = [];
  for (const path of ['/explained/', '/compare/', '/test/']) {
    await page.goto(path + visitorLink);
    await live(page);
    await unfold(page);
    const main = page.locator('main');
    await expect(main).toContainText('Tern');
    const read = () => page.locator('main :is(kf-words, kf-num, kf-figure):not(kf-late *)').allInnerTexts();
    // The band and what else comes late follow the rest.
    let last: string[] = [];
    await expect
      .poll(
        async () => {
          const before = last;
          last = await read();
          return last.length > 0 && last.join() === before.join();
        },
        { intervals: [500] },
      )
      .toBe(true);
    texts.push(...last);
  }
  await context.close();
  return texts;
}

test('a link says the same in any language, zone and year', async ({ browser, baseURL }) => {
  const here = await shown(browser, baseURL, ['en-GB', 'Europe/London', 2026]);
  expect(here.join()).toContain('×');
  for (const place of [
    ['de-DE', 'Asia/Kolkata', 1970],
    ['ar-EG', 'Pacific/Auckland', 2100],
  ] as const)
    expect(await shown(browser, baseURL, place), place.join()).toEqual(here);
});
