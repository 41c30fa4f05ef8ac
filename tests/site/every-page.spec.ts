import type { Page } from '@playwright/test';
import { bringAxe, violations } from './axe.ts';
import { expectWholeOnPaper } from './paper.ts';
import { expect, live, test, unfold } from './test.ts';
import { comesLive, isBook, isRepresentative, kindsOfPage } from './pages.ts';

const [wide, narrow] = [1440, 360];

/** Everything once; after that what depends on room asked of the other width, and what depends on colours in every look. */
const room = ['target-size', 'scrollable-region-focusable', 'css-orientation-lock'];
const colours = ['color-contrast', 'link-in-text-block'];

const first = { colorScheme: 'light', forcedColors: 'none', width: wide, asked: [{ rules: 'all' }] } as const;
const inColours = { rules: colours, of: 'one of each look' } as const;
const lightNarrow = {
  colorScheme: 'light',
  forcedColors: 'none',
  width: narrow,
  asked: [{ rules: room }, inColours],
} as const;
const dark = { colorScheme: 'dark', forcedColors: 'none', asked: [inColours] } as const;
const forced = { colorScheme: 'dark', forcedColors: 'active', asked: [inColours] } as const;
/** Dark and forced colours, one wide and the other narrow. */
const darkOrForced = [
  [
    { ...dark, width: wide },
    { ...forced, width: narrow },
  ],
  [
    { ...dark, width: narrow },
    { ...forced, width: wide },
  ],
] as const;

/**
 * Pages of one template have the same rules of style: one of them is asked in every look, the others in the first, with
 * every rule, and in one more look. Which look has which width, and which look the others have, takes turns. The book is
 * the lessons once more: the first look does.
 */
const looksOf = (path: string, index: number) => {
  if (isBook(path)) return [first];
  if (isRepresentative(path)) return [first, lightNarrow, ...(darkOrForced[index % 2] ?? [])];
  const others = [lightNarrow, ...darkOrForced.flat()];
  return [first, ...others.filter((_, look) => look === index % others.length)];
};

async function expectRoomAndNames(page: Page): Promise<void> {
  await page.setViewportSize({ width: 320, height: 800 });
  const { scrollWidth, clientWidth } = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return { scrollWidth, clientWidth };
  });
  expect(scrollWidth).toBeLessThanOrEqual(clientWidth);

  const figures = await page.locator('kf-figure').evaluateAll((elements) =>
    elements.map((element) => ({
      of: element.getAttribute('of'),
      folded: element.querySelectorAll('.drawing').length === 1 && element.closest('.fold') !== null,
      drawings: [...element.querySelectorAll('.drawing > svg')].map((svg) => ({
        role: svg.getAttribute('role'),
        name: svg.getAttribute('aria-label') ?? '',
      })),
      caption: element.querySelector('figcaption')?.textContent ?? '',
      columns: element.querySelectorAll('table thead th[scope="col"]').length,
      rows: element.querySelectorAll('table tbody th[scope="row"]').length,
    })),
  );
  for (const { of, folded, drawings, caption, columns, rows } of figures) {
    // In a fold that is shut at first one size is enough: the other is drawn where it is opened.
    expect(drawings.length, `drawings of ${of}`).toBe(folded ? 1 : 2);
    for (const { role, name } of drawings) {
      expect(role).toBe('img');
      // A name that states the result is the caption's whole sentence.
      expect(name, `name of ${of}`).toBe(caption);
      expect(name).toMatch(/^\S.{30,}\.$/);
    }
    expect(columns, `columns of ${of}`).toBeGreaterThan(1);
    expect(rows, `rows of ${of}`).toBeGreaterThan(0);
  }
  const nameless = await page
    .locator('svg:not([aria-hidden="true"])')
    .evaluateAll(
      (all) =>
        all.filter((svg) => svg.getAttribute('role') !== 'img' || !svg.getAttribute('aria-label')).length,
    );
  expect(nameless).toBe(0);
}

/** Marks every control that can be seen, and gives the marks of those the Tab key is to stop at. */
const markControls = (page: Page): Promise<number[]> =>
  page.evaluate(() => {
    const shown = [
      ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, summary, [tabindex]'),
    ].filter((element) => element.checkVisibility() && !element.matches(':disabled, [tabindex="-1"]'));
    shown.forEach((element, index) => (element.dataset['reach'] = String(index)));
    // Of a group of radio buttons only the chosen one is a stop; the arrows reach the others.
    return shown.flatMap((element, index) =>
      element instanceof HTMLInputElement && element.type === 'radio' && !element.checked ? [] : [index],
    );
  });

/** Walks through the page by the Tab key; gives the marks of the controls it never came to. */
async function missedByTab(page: Page, reach: readonly number[]): Promise<number[]> {
  const reached = await page.evaluateHandle(() => {
    const seen = new Set([0]);
    document.addEventListener('focusin', ({ target }) => {
      if (target instanceof HTMLElement && target.dataset['reach']) seen.add(Number(target.dataset['reach']));
    });
    return seen;
  });
  const missed = async (): Promise<number[]> => {
    const seen = await reached.evaluate((marks) => [...marks]);
    return reach.filter((index) => !seen.includes(index));
  };
  // What is touched may bring more stops along, as the forms of pictures do: the way is longer than it was counted.
  for (let step = 0; step < 3 * reach.length + 5; step += 1) {
    if (step > reach.length && step % 10 === 0 && (await missed()).length === 0) break;
    await page.keyboard.press('Tab');
  }
  return missed();
}

/** The marks of controls that the Tab key would pass over: without a place in its order, or not to be focused. */
const passedOver = (page: Page, reach: readonly number[]): Promise<number[]> =>
  page.evaluate(
    (marks) =>
      marks.filter((mark) => {
        const control = document.querySelector<HTMLElement>(`[data-reach="${mark}"]`);
        control?.focus({ preventScroll: true });
        return !control || control.tabIndex < 0 || document.activeElement !== control;
      }),
    reach,
  );

/** Asks axe of the page in each look; what is drawn is gone afterwards. */
async function expectNoViolations(page: Page, looks: ReturnType<typeof looksOf>): Promise<void> {
  await bringAxe(page);
  for (const { colorScheme, forcedColors, width, asked } of looks) {
    await page.emulateMedia({ colorScheme, forcedColors });
    await page.setViewportSize({ width, height: 900 });
    for (const each of asked)
      expect(
        await violations(page, each),
        `${colorScheme}, forced colours ${forcedColors}, ${width} px`,
      ).toEqual([]);
    // To a reader a drawing is one image, with a name; what is within need not be walked again.
    await page.evaluate(() => {
      for (const svg of document.querySelectorAll('.drawing > svg')) svg.replaceChildren();
    });
  }
}

/** The link that skips to the content is the first stop, and the stop after it is within the content. */
async function expectSkip(page: Page): Promise<void> {
  await expect(page.locator('.skip')).toBeFocused();
  await expect(page.locator('.skip')).toBeInViewport();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  const outside = await page.evaluate(
    () =>
      Boolean(document.querySelector('main :is(a[href], button, input, select, summary)')) &&
      Boolean(document.activeElement?.closest('header, .skip')),
  );
  expect(outside).toBe(false);
}

for (const [index, path] of kindsOfPage().entries())
  test(`${path} has no violation that axe can find, needs no sideways scroll, names its drawings, gives their numbers as tables, and lets the keyboard skip to the content and reach every control, and prints whole`, async ({
    page,
  }) => {
    await page.goto(path);
    // A live half that comes by itself may still be putting controls in place.
    if (comesLive(path)) await live(page);
    await expectWholeOnPaper(page);
    await unfold(page);
    await expectRoomAndNames(page);
    await expectNoViolations(page, looksOf(path, index));

    await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });
    await page.setViewportSize({ width: wide, height: 900 });
    // Controls of one template are made by the same elements: that the Tab key comes to all of them, and is caught by
    // none, is tried on one page of each; of the others it is asked that each control is a stop.
    await page.keyboard.press('Tab');
    const reach = await markControls(page);
    if (isRepresentative(path) && !isBook(path)) {
      expect(await missedByTab(page, reach)).toEqual([]);
      await page.locator('.skip').focus();
      await expectSkip(page);
    } else {
      await expectSkip(page);
      expect(await passedOver(page, reach)).toEqual([]);
    }
  });
