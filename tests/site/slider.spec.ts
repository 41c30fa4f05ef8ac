import type { Locator, Page } from '@playwright/test';
import { expect, live, test, unfold } from './test.ts';
import { lessons, oneIn } from './pages.ts';

declare global {
  interface Window {
    /** Whether a drawing is another than when it was last looked at, and what on the page makes no sense. */
    look: () => { moved: boolean; senseless: string[] };
  }
}

const drawing = (page: Page, of = '.drawing'): Promise<string> =>
  page.locator('main').evaluate(
    (main, selector) =>
      [...main.querySelectorAll(selector)]
        .filter((part) => part.checkVisibility())
        .map(({ innerHTML }) => innerHTML)
        .join(),
    of,
  );
const texts = (page: Page, selector: string): Promise<string> =>
  page
    .locator(selector)
    .allTextContents()
    .then((all) => all.join('|'));

/** Resolves once nothing in the page has changed for a while: drawings first, what is read after them. */
const settled = (page: Page): Promise<void> =>
  page.locator('main').evaluate(
    (main) =>
      new Promise<void>((done) => {
        const observer = new MutationObserver(wait);
        let timer: ReturnType<typeof setTimeout>;
        function wait(): void {
          clearTimeout(timer);
          timer = setTimeout(() => {
            observer.disconnect();
            done();
          }, 120);
        }
        observer.observe(main, { childList: true, subtree: true, characterData: true, attributes: true });
        wait();
      }),
  );

/** What drawings and text are at this moment, kept in the page: of many sliders it would be much to hand over. */
const watchEnds = (page: Page): Promise<void> =>
  page.locator('main').evaluate((main) => {
    const drawn = () =>
      [...main.querySelectorAll('.drawing')]
        .filter((part) => part.checkVisibility())
        .map(({ innerHTML }) => innerHTML)
        .join();
    const holes = /.{0,40}(NaN|undefined|Infinity|\bnull\b).{0,20}/g;
    /** What no reader should see, with what stands around it; the code that is shown as code may hold it. */
    const senseless = (): string[] => {
      if (!main.textContent.match(holes)) return [];
      const copy = main.cloneNode(true) as HTMLElement;
      for (const code of copy.querySelectorAll('.code')) code.remove();
      return copy.textContent.match(holes) ?? [];
    };
    let before = drawn();
    window.look = () => {
      const now = drawn();
      const found = { moved: now !== before, senseless: [...senseless(), ...(now.match(holes) ?? [])] };
      before = now;
      return found;
    };
  });

/** A slider moved by keyboard: all that stands on the page follows it, and comes back with it. */
async function expectFollowed(page: Page, slider: Locator): Promise<void> {
  // What was built stands in other digits than the browser's: moved there and back, all of it is the browser's.
  for (const key of ['ArrowRight', 'ArrowLeft']) {
    await slider.press(key);
    await settled(page);
    await page.waitForTimeout(400);
  }
  const parts = {
    // One that comes late is as it was built until it is wanted, in other digits than the browser's.
    drawing: () => drawing(page, 'kf-figure:not([data-late]) .drawing'),
    prose: () => texts(page, 'main > :not(kf-figure) kf-num, main p kf-num, main kf-words'),
    caption: () => texts(page, '[data-part="caption"]'),
    table: () => texts(page, '[data-part="table"]'),
    value: () => texts(page, 'kf-slider output'),
  };
  const before = Object.fromEntries(
    await Promise.all(Object.entries(parts).map(async ([name, part]) => [name, await part()] as const)),
  );
  const value = await slider.inputValue();
  for (let press = 0; press < 4; press += 1) await slider.press('ArrowRight');
  expect(await slider.inputValue()).not.toBe(value);
  for (const [name, part] of Object.entries(parts))
    await expect.poll(part, { message: `${name} follows` }).not.toBe(before[name]);
  for (let press = 0; press < 4; press += 1) await slider.press('ArrowLeft');
  for (const [name, part] of Object.entries(parts))
    await expect.poll(part, { message: `${name} comes back` }).toBe(before[name]);
}

/** Every slider at both of its ends: a drawing is another, and nothing on the page makes no sense. */
async function expectEnds(page: Page, sliders: readonly Locator[]): Promise<void> {
  await watchEnds(page);
  for (const each of sliders) {
    const start = await each.inputValue();
    let moved = false;
    for (const key of ['End', 'Home']) {
      await page.evaluate(() => window.look());
      await each.press(key);
      await settled(page);
      const found = await page.evaluate(() => window.look());
      // At one end the drawing may be what it was: where both ends are refused, or the slider stood there.
      moved ||= found.moved;
      expect(found.senseless).toEqual([]);
    }
    expect(moved, `${(await each.getAttribute('id')) ?? ''} changes a drawing`).toBe(true);
    await each.fill(start);
  }
}

const withSliders = lessons();

for (const path of withSliders)
  test(`${path}: every slider moves a drawing, never making it senseless`, async ({ page }) => {
    test.slow();
    await page.goto(path);
    await unfold(page);
    const sliders = await page.locator('main input[type="range"]').all();
    expect(sliders.length).toBeGreaterThan(0);
    await sliders[0]?.focus();
    await live(page);
    await expectEnds(page, sliders);
  });

// What follows, and what waits for the live half, is the work of the same elements, whatever the page shows: some
// lessons.
for (const path of oneIn(4, withSliders))
  test(`${path}: a slider moves drawing, prose, caption and table, by keyboard`, async ({ page }) => {
    await page.goto(path);
    await unfold(page);
    const slider = page.locator('main input[type="range"]').first();
    await slider.focus();
    await live(page);
    await expectFollowed(page, slider);
  });

for (const path of oneIn(4, withSliders))
  test(`${path}: a first movement made before the live half is there is not lost`, async ({ page }) => {
    await page.route('**/_astro/live*.js', async (route) => {
      await new Promise((done) => setTimeout(done, 800));
      await route.continue();
    });
    await page.goto(path);
    const before = await drawing(page);
    const slider = page.locator('main input[type="range"]').first();
    const target = await slider.getAttribute('max');
    await slider.fill(target ?? '');
    await expect(page.locator('html')).not.toHaveAttribute('data-live', 'on');
    await live(page);
    await expect(slider).toHaveValue(target ?? '');
    await expect.poll(() => drawing(page)).not.toBe(before);
  });

test('an answer sent before its script is there is judged, and does not leave the page', async ({ page }) => {
  await page.route('**/_astro/check*.js', async (route) => {
    await new Promise((done) => setTimeout(done, 800));
    await route.continue();
  });
  await page.goto('/lessons/forty-and-forty/');
  const input = page.locator('kf-check input').first();
  await input.fill('3');
  await input.press('Enter');
  await expect(page.locator('kf-check [data-part="said"]').first()).toHaveText(/\S/);
  await expect(input).toHaveValue('3');
  expect(new URL(page.url()).search).toBe('');
});
