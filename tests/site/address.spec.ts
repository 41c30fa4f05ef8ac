import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { lessons, oneIn } from './pages.ts';
import { visitorComparison, visitorLink } from './visitor.ts';

declare global {
  interface Window {
    seen: string[];
  }
}

/** The parts of a page that follow the comparison, each with what it says at this moment, if it can be seen. */
const saying = `() => {
  const parts = document.querySelectorAll(
    'kf-num, kf-words, [data-part="caption"], [data-part="title"], [data-part="givens"], [data-part="say"], kf-figure tbody, kf-slider output, .drawing > svg',
  );
  return [...parts].map((part, index) => {
    const shown = part.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    const text = part.matches('svg') ? (part.getAttribute('aria-label') ?? '') : (part.textContent ?? '');
    return shown ? index + '|' + text.trim().replace(/\\s+/g, ' ') : '';
  });
}`;

const read = (page: Page): Promise<string[]> => page.evaluate(`(${saying})()`);

/** Notes after every frame what the page has just shown, as long as anything of it changes and a while after. */
const watch = (page: Page): Promise<void> =>
  page
    .addInitScript(
      `window.seen = [];
      const saying = ${saying};
      const { port1, port2 } = new MessageChannel();
      const note = () => { for (const text of saying()) if (text && !window.seen.includes(text)) window.seen.push(text); };
      port1.onmessage = note;
      let changed = performance.now();
      new MutationObserver(() => { changed = performance.now(); })
        .observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
      const frame = () => {
        if (performance.now() - changed < 300) port2.postMessage(0);
        requestAnimationFrame(frame);
      };
      requestAnimationFrame(frame);`,
    )
    .then(() => undefined);

// What follows a comparison is hidden by one script until it does, whatever the page shows.
const paths = ['/', ...oneIn(2, lessons()), '/explained/'];

for (const path of paths) {
  test(`${path} opened with a comparison never shows the example's numbers`, async ({ page }) => {
    await page.goto(path);
    const demo = await read(page);

    await watch(page);
    // A slow network, so that there is a while in which the wrong numbers could be seen.
    await page.route('**/_astro/live*.js', async (route) => {
      await new Promise((done) => setTimeout(done, 300));
      await route.continue();
    });
    await page.goto('about:blank');
    await page.goto(`${path}${visitorLink}`);
    await live(page);
    await page.waitForTimeout(700);
    const own = await read(page);
    const seen = new Set(await page.evaluate(() => window.seen));

    const changed = demo.filter((text, index) => text !== '' && own[index] !== '' && own[index] !== text);
    expect(changed.length, 'parts that differ between example and visitor').toBeGreaterThan(1);
    expect(changed.filter((text) => seen.has(text))).toEqual([]);
    expect(own.filter((text) => text !== '').every((text) => seen.has(text))).toBe(true);
  });
}

test("shows the visitor's own knives by name, and says whose they are", async ({ page }) => {
  const [lesson = ''] = lessons();
  await page.goto(`${lesson}${visitorLink}`);
  await live(page);
  await expect(page.locator('.whose.own').first()).toContainText('Tern');
  await expect(page.locator('.whose.demo')).toBeHidden();
});

test('says so where the live half cannot be fetched, and then shows its own example', async ({ page }) => {
  await page.route('**/_astro/live*.js', (route) =>
    route.fulfill({ status: 200, contentType: 'text/javascript', body: 'throw 0' }),
  );
  const [lesson = ''] = lessons();
  await page.goto(`${lesson}${visitorLink}`);
  await expect(page.locator('.message.failed')).toBeVisible();
  await expect(page.locator('kf-num').first()).toBeVisible();
});

const damaged: [how: string, fragment: string, message: RegExp][] = [
  ['cut short', visitorLink.slice(0, -40), /missing/],
  ['cut to its opening', '#with=', /ends before/],
  [
    'altered',
    visitorLink.slice(0, 60) + (visitorLink[60] === 'A' ? 'B' : 'A') + visitorLink.slice(61),
    /altered/,
  ],
  ['nonsense', '#with=herring', /does not begin like/],
  ['of a version to come', visitorLink.replace(/#with=\d+\./, '#with=99.'), /version 99/],
  ['far too long', `#with=1.${'A'.repeat(100_000)}`, /longer than any/],
];
for (const [how, fragment, message] of damaged) {
  test(`a link ${how} is explained, and the page goes on`, async ({ page }) => {
    const [lesson = ''] = lessons();
    await page.goto(lesson);
    const demo = await read(page);
    await page.goto('about:blank');
    await page.goto(`${lesson}${fragment}`);
    await expect(page.locator('#address-message')).toContainText(message);
    await expect(page.locator('#address-message')).toBeVisible();
    await expect.poll(() => read(page)).toEqual(demo);
    // What the visitor was sent is still in the address, to be looked at or repaired.
    expect(new URL(page.url()).hash).toBe(fragment);
  });
}

test('a comparison put into the address of an open page is shown', async ({ page }) => {
  const [lesson = ''] = lessons();
  await page.goto(lesson);
  const demo = await read(page);
  await page.evaluate((hash) => (location.hash = hash), visitorLink);
  await live(page);
  await expect.poll(async () => (await read(page)).join() !== demo.join()).toBe(true);
  await expect(page.locator('.whose.own').first()).toContainText(visitorComparison.knives[0]?.name ?? '?');
  // A bad one after a good one is explained, and the good one stays.
  // Parts that are worked out late come one after the other.
  await expect(page.locator('[data-stale=yes]')).toHaveCount(0);
  let own = await read(page);
  await expect
    .poll(
      async () => {
        const before = own;
        own = await read(page);
        return own.join() === before.join();
      },
      { intervals: [1000] },
    )
    .toBe(true);
  await page.evaluate(() => (location.hash = '#with=1.AAAA'));
  await expect(page.locator('#address-message')).toBeVisible();
  expect(await read(page)).toEqual(own);
  await page.evaluate((hash) => (location.hash = hash), visitorLink);
  await expect(page.locator('#address-message')).toBeHidden();
});
