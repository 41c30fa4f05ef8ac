import type { Page } from '@playwright/test';
import { comesLive } from './pages.ts';
import { expect, live, test } from './test.ts';

test.use({ scriptsMayFail: true });

/** Keeps every script from the page until it is opened again. */
async function block(page: Page): Promise<{ asked: string[]; open: () => void }> {
  const asked: string[] = [];
  let blocked = true;
  await page.route('**/_astro/*.js', (route) => {
    if (!blocked) return route.continue();
    asked.push(route.request().url());
    return route.abort();
  });
  return { asked, open: () => (blocked = false) };
}

/** Touches and presses all that waits for it, and sends what there is to send. */
const touch = (page: Page) =>
  page.evaluate(() => {
    const touched = 'main :is(input, select, summary, kf-figure, [data-live])';
    for (const element of document.querySelectorAll(touched))
      for (const name of ['pointerover', 'focusin'])
        element.dispatchEvent(new Event(name, { bubbles: true }));
    for (const button of document.querySelectorAll<HTMLElement>('[data-does=fill]')) button.click();
    for (const form of document.querySelectorAll<HTMLFormElement>('main form')) form.requestSubmit();
  });

const notDefined = (page: Page) =>
  page.evaluate(() =>
    [...new Set([...document.querySelectorAll('main *')].map(({ localName }) => localName))].filter(
      (name) => name.startsWith('kf-') && !customElements.get(name),
    ),
  );

for (const path of ['/bench/', '/lessons/how-sure/', '/telling/', '/runs/'])
  test(`${path}: where no further script comes the page stays and says so, and the next touch asks again`, async ({
    page,
  }) => {
    await page.goto(path);
    if (comesLive(path)) await live(page);
    const read = () => page.locator('main kf-words:not([data-late])').allInnerTexts();
    const before = await read();
    expect(before.length).toBeGreaterThan(1);
    const { asked, open } = await block(page);
    await touch(page);
    await expect(page.locator('.message.unloaded')).toBeVisible();
    await expect(page.locator('.message.failed')).toBeHidden();
    // Nothing asks again by itself: what was asked for stays what it is.
    const settled = async () => {
      const many = asked.length;
      await page.waitForTimeout(250);
      return asked.length - many;
    };
    await expect.poll(settled).toBe(0);
    expect(await read()).toEqual(before);

    open();
    await touch(page);
    await expect.poll(() => notDefined(page)).toEqual([]);
    await expect(page.locator('.message.unloaded')).toBeHidden();
    await expect(page.locator('main .failed:visible')).toHaveCount(0);
    expect(await read()).toEqual(before);
  });
