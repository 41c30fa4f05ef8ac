import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { comesLive, dist, isStart } from './pages.ts';
import { expect, live, test, unfold } from './test.ts';
import { visitorLink } from './visitor.ts';

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
    for (const form of document.querySelectorAll<HTMLFormElement>('main form:not(.picture-form)'))
      form.requestSubmit();
  });

/** Resolves once nothing has been asked for in a moment. */
const settled = (page: Page, asked: readonly string[]) =>
  expect
    .poll(async () => {
      const many = asked.length;
      await page.waitForTimeout(250);
      return asked.length - many;
    })
    .toBe(0);

const notDefined = (page: Page) =>
  page.evaluate(() =>
    [...new Set([...document.querySelectorAll('main *')].map(({ localName }) => localName))].filter(
      (name) => name.startsWith('kf-') && !customElements.get(name),
    ),
  );

const paths = ['/compare/', '/lessons/how-sure/', '/explained/', '/test/'];

for (const path of paths)
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
    await settled(page, asked);
    expect(await read()).toEqual(before);

    open();
    await touch(page);
    await expect.poll(() => notDefined(page)).toEqual([]);
    await expect(page.locator('.message.unloaded')).toBeHidden();
    await expect(page.locator('main .failed:visible')).toHaveCount(0);
    expect(await read()).toEqual(before);
  });

test('what a reader at rest would have been given is not missed: only a touch says that it did not come', async ({
  page,
}) => {
  await page.goto('/lessons/forty-and-forty/', { waitUntil: 'networkidle' });
  const { asked, open } = await block(page);
  await page.mouse.wheel(0, 40);
  await expect.poll(() => asked.length).toBeGreaterThan(0);
  await settled(page, asked);
  await expect(page.locator('.message.unloaded')).toBeHidden();
  await touch(page);
  await expect(page.locator('.message.unloaded')).toBeVisible();
  await settled(page, asked);

  open();
  await touch(page);
  await live(page);
  await expect(page.locator('.message.unloaded')).toBeHidden();
});

test('what a touch has missed is not fetched by itself once the hand rests, and the next touch brings it', async ({
  page,
}) => {
  await page.goto('/lessons/forty-and-forty/', { waitUntil: 'networkidle' });
  const { asked, open } = await block(page);
  const slider = page.locator('kf-figure input[type=range]').first();
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('.message.unloaded')).toBeVisible();
  await settled(page, asked);
  open();
  // Longer than what the live half waits for a reader at rest.
  await page.waitForTimeout(1500);
  await expect(page.locator('html')).not.toHaveAttribute('data-live', 'on');
  await expect(page.locator('.message.unloaded')).toBeVisible();

  await page.keyboard.press('ArrowRight');
  await live(page);
  await expect(page.locator('.message.unloaded')).toBeHidden();
});

/** Resolves once nothing of the page has changed and nothing has come for a moment. */
const atRest = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((rest) => {
        let timer = setTimeout(rest, 80);
        const again = () => {
          clearTimeout(timer);
          timer = setTimeout(rest, 80);
        };
        new MutationObserver(again).observe(document, {
          subtree: true,
          childList: true,
          attributes: true,
          characterData: true,
        });
        new PerformanceObserver(again).observe({ type: 'resource' });
      }),
  );

/** What the page says of its comparison in some of its parts, a line a sentence. */
const spoken = (page: Page, parts: string) =>
  page.locator(`main :is(${parts})`).evaluateAll((found) => [
    ...new Set(
      (found as HTMLElement[])
        .filter((part) => part.checkVisibility({ visibilityProperty: true }))
        .flatMap((part) => part.innerText.split('\n'))
        .filter((line) => line.trim() !== ''),
    ),
  ]);
/** What comes or goes with the comparison; a text to take along is written once, with what could be had then. */
const followed = 'kf-words, kf-num, figcaption';
const everySaying = `${followed}, [data-part=text]`;

const said = /could not be (loaded|read|fetched)/;

/**
 * A figure that cannot be dragged still has its sliders, a band that no worker works out is said in its cell, and what
 * keeps a comparison is fetched again at the next change.
 */
const goesWithout = (script: string) => /\/(drag|takes-worker|keeping)[.-]/.test(script);

const nameOf = (address: string) => address.replace(/^.*\//, '');
const textOf = (script: string) => readFileSync(`${dist}/_astro/${nameOf(script)}`, 'utf8');
const namedIn = (text: string, how: RegExp) => [...text.matchAll(how)].map(([, name = '']) => name);

/** A script and all that come with it. */
function withAll(name: string, found = new Set<string>()): Set<string> {
  if (found.has(name)) return found;
  found.add(name);
  for (const other of namedIn(textOf(name), /(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g))
    withAll(other, found);
  return found;
}

/**
 * So many scripts that every fetch misses one of its own, with as few other fetches as can be; and the one that most
 * fetches miss at once. With `EVERY_SCRIPT=1` all.
 */
function oneOfEach(scripts: readonly string[]): string[] {
  const others = scripts.filter((each) => !isStart(each));
  if (process.env['EVERY_SCRIPT']) return others;
  const fetched = new Set(
    scripts.flatMap((script) => namedIn(textOf(script), /import\(\s*["'`]\.\/([^"'`]+)["'`]/g)),
  );
  const bringing = others
    .filter((script) => fetched.has(nameOf(script)))
    .map((script) => ({ script, all: withAll(nameOf(script)) }));
  const missing = others
    .map((script) => ({
      script,
      fetches: bringing.filter(({ all }) => all.has(nameOf(script))).map((each) => each.script),
    }))
    .sort((one, two) => one.fetches.length - two.fetches.length);
  const missed = new Set<string>();
  const few = missing.filter(({ fetches }, index) => {
    const more = fetches.some((each) => !missed.has(each)) || index === missing.length - 1;
    if (more) for (const each of fetches) missed.add(each);
    return more;
  });
  return few.map(({ script }) => script);
}

/**
 * Scripts already kept from another page, which would be told of in the same words there: each is kept from the first page
 * that fetches it. With `EVERY_SCRIPT=1` from all.
 */
const tried = new Set<string>();

test.describe('one script', () => {
  // One after the other, in one process, so that each page leaves out what those before it have tried.
  test.describe.configure({ mode: 'default' });

  for (const path of paths)
    test(`${path}: a script that does not come is missed alone, and comes at the next touch`, async ({
      page,
      context,
    }) => {
      test.slow();
      const devtools = await context.newCDPSession(page);
      await devtools.send('Network.enable');
      // By interception the browser would keep nothing of what it fetched.
      const keepAway = (urls: string[]) => devtools.send('Network.setBlockedURLs', { urls });
      const scripts: string[] = [];
      page.on('request', (request) => {
        const url = request.url();
        if (/\/_astro\/.*\.js$/.test(url) && !scripts.includes(url)) scripts.push(url);
      });
      const open = async () => {
        await page.goto('about:blank');
        await page.goto(`${path}${visitorLink}`);
        await atRest(page);
        await unfold(page);
        await touch(page);
        await atRest(page);
      };

      await page.goto(path);
      await unfold(page);
      const example = await spoken(page, everySaying);
      await open();
      await live(page);
      await atRest(page);
      const own = await spoken(page, everySaying);
      const ownFollowed = await spoken(page, followed);
      const others = example.filter((line) => !own.includes(line));
      expect(others.length).toBeGreaterThan(1);
      expect(scripts.length).toBeGreaterThan(20);

      for (const script of oneOfEach(scripts)) {
        const about = nameOf(script);
        if (tried.has(about) && !process.env['EVERY_SCRIPT']) continue;
        tried.add(about);
        await keepAway([script]);
        await open();
        const without = await page.locator('body').innerText();
        expect.soft(without, about).not.toMatch(/\bNaN\b|undefined|Infinity/);
        if (!goesWithout(script)) expect.soft(without, about).toMatch(said);
        const wholly = await page.locator('.message.failed').isVisible();
        const shown = await spoken(page, everySaying);
        const wrong = wholly ? own.filter((line) => !example.includes(line)) : others;
        expect
          .soft(
            shown.filter((line) => wrong.includes(line)),
            about,
          )
          .toEqual([]);

        await keepAway([]);
        await touch(page);
        await expect.soft.poll(() => spoken(page, followed), about).toEqual(ownFollowed);
        await expect.soft.poll(() => notDefined(page), about).toEqual([]);
        await expect.soft(page.locator('body'), about).not.toContainText(said, { useInnerText: true });
      }
    });
});
