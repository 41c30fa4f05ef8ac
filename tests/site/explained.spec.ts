import type { Page } from '@playwright/test';
import { aRun } from '../runs/runs.ts';
import { expect, live, test, unfold } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

const path = '/explained/';
const reveal = (page: Page) => page.locator('kf-guess-strip .reveal');

/** Guesses with one tap, and waits for what it says. */
async function guess(page: Page, value: number): Promise<void> {
  await page.locator(`kf-guess-strip button[value="${value}"]`).click();
  await expect(reveal(page)).toHaveAttribute('open', '');
  await expect(page.locator('kf-guess-strip [data-part=verdict]')).toContainText(`Your guess, ${value},`);
}

const bottomOf = (page: Page, selector: string): Promise<number> =>
  page.locator(selector).evaluate((element) => element.getBoundingClientRect().bottom + scrollY);
const heightOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight);

test('question, edges, measures and guess come first, and nothing of the answer with them', async ({
  page,
}) => {
  await page.goto(path);
  await expect(page.locator('h1')).toHaveText('How many times as long should Dunlin cut as Plover?');
  await expect(page.locator('.meta .tag')).toHaveText('Invented knives');
  const order = await page
    .locator('main :is(.meta, h1, kf-figure[of=edges], .measures, .chips, .range-line)')
    .evaluateAll((all) => all.map((one) => one.getAttribute('of') ?? one.className ?? one.localName));
  expect(order).toEqual(['meta', '', 'edges', 'measures', 'chips', 'range-line']);
  expect(await page.locator('main').innerText()).not.toMatch(/5 to 30|the middle|×/);
  const told = await page.evaluate(() =>
    [
      document.title,
      ...[...document.querySelectorAll('meta[content]')].map((meta) => meta.getAttribute('content')),
    ].join(' '),
  );
  expect(told).not.toMatch(/5 to 30|×\d/);
});

test('after a guess the answer stands in the order in which it is told', async ({ page }) => {
  await page.goto(path);
  await guess(page, 5);
  await expect(page.locator('.range-line')).toHaveText(
    'Dunlin should cut about 5 to 30 times as long as Plover.',
  );
  await expect(page.locator('.middle')).toContainText('10 is the middle.');
  await expect(page.locator('kf-figure[of=ruler]')).toContainText('you: 5');
  const headings = (await page.locator('.reveal h2').allInnerTexts()).slice(1);
  expect(headings).toEqual([
    'The three biggest reasons',
    'Why not just add?',
    'How sure?',
    'Take it with you',
  ]);
  const pictures = await page
    .locator('.reveal kf-figure:visible')
    .evaluateAll((all) => all.map((one) => one.getAttribute('of')));
  expect(pictures).toEqual(['ruler', 'reason-1', 'reason-2', 'reason-3', 'gains-added', 'ways']);
  await expect(page.locator('.fold:visible > summary :is(h2, h3)')).toHaveText([
    'What the small marks mean',
    'All seven reasons',
    'Is Dunlin better at everything?',
    'Geometry or steel?',
    'What this doesn’t say',
  ]);
  await expect(page.locator('.others li')).toHaveCount(2);
});

test('the guess is made by keyboard alone, and stands when the page is opened again', async ({ page }) => {
  await page.goto(`${path}${visitorLink}`);
  await live(page);
  await page.locator('kf-guess-strip .chips button').first().focus();
  for (let steps = 0; steps < 6; steps += 1) await page.keyboard.press('Tab');
  await page.keyboard.type('0.2');
  await page.keyboard.press('Enter');
  await expect(page.locator('kf-guess-strip [data-part=verdict]')).toContainText(
    'Your guess, 0.2, is below the range.',
  );
  await expect(page.locator('.range-line')).toContainText('Tern should cut about');
  await page.reload();
  await expect(page.locator('kf-guess-strip [data-part=verdict]')).toContainText('Your guess, 0.2,');
  await page.getByRole('button', { name: 'Change my guess' }).press('Enter');
  await page.locator('kf-guess-strip input[type=text]').fill('many');
  await page.keyboard.press('Enter');
  await expect(page.locator('kf-guess-strip input[type=text]')).toHaveAttribute('aria-invalid', 'true');
});

test('the answer is near, and the page short', async ({ page }) => {
  const screen = 740;
  await page.setViewportSize({ width: 360, height: screen });
  await page.goto(path);
  expect(await heightOf(page)).toBeLessThanOrEqual(2 * screen);
  await guess(page, 5);
  await expect(page.locator('kf-figure[of=ruler]')).toContainText('you: 5');
  expect(await bottomOf(page, '.range-line')).toBeLessThanOrEqual(1.5 * screen);
  expect(await heightOf(page)).toBeLessThanOrEqual(5.5 * screen);
});

test('beside the answer the scene stays in sight where there is room', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto(path);
  await guess(page, 5);
  await page.locator('.taken').scrollIntoViewIfNeeded();
  await expect(page.locator('h1')).toBeInViewport();
  await expect(page.locator('.measures')).toBeInViewport();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1440);
});

test('without script the answer is in a fold', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await page.goto(path);
  await expect(page.locator('.range-line')).toBeHidden();
  await expect(page.locator('kf-guess-strip > form')).toBeHidden();
  await page.getByText('Show the answer without a guess').click();
  await expect(page.locator('.range-line')).toHaveText(
    'Dunlin should cut about 5 to 30 times as long as Plover.',
  );
  await context.close();
});

test('the explained page is copied at three depths, each with the link that shows it', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`${path}${visitorLink}`);
  await live(page);
  await guess(page, 2);
  // Fetched when the reader comes near.
  await page.locator('kf-late:has(kf-retell)').scrollIntoViewIfNeeded();
  const copy = page.getByRole('button', { name: 'Copy answer and link' });
  const read = () => page.evaluate(() => navigator.clipboard.readText());
  const range =
    /[\d.]+ to [\d.]+ times as long/.exec((await page.locator('.range-line').textContent()) ?? '')?.[0] ??
    '?';
  // One button is enough: it copies the answer in one sentence.
  await copy.click();
  await expect(page.locator('kf-retell [data-part=said]')).toContainText('Copied');
  expect(await read()).toContain(range);
  await page.getByText('Choose how much').click();
  const lengths: number[] = [];
  for (const depth of ['one sentence', 'one paragraph', 'all of it']) {
    await page.getByLabel(depth, { exact: true }).check();
    await copy.click();
    await expect(page.locator('kf-retell [data-part=said]')).toContainText('Copied');
    const copied = await read();
    expect(copied).toContain('/explained/#with=');
    expect(copied).toContain(visitorComparison.knives[0]?.name ?? '?');
    expect(copied).toContain(range);
    lengths.push(copied.length);
  }
  expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
  await page.getByLabel('Markdown').check();
  await expect(page.locator('kf-retell pre')).toContainText('## The answer');
});

test('everything is of the comparison in the address, and never of the example', async ({ page }) => {
  await page.goto(path);
  await guess(page, 5);
  await page.evaluate((hash) => (location.hash = hash), visitorLink);
  await expect(page.locator('h1')).toHaveText('How many times as long should Tern cut as Knot?');
  // Another comparison waits for its own guess.
  await expect(reveal(page)).not.toHaveAttribute('open', '');
  await expect(page.locator('.meta .tag')).toHaveText(visitorComparison.title);
  await guess(page, 2);
  await unfold(page);
  await expect(page.locator('kf-words[of=explained-chances]')).toContainText('nine chances in ten');
  await page.locator('kf-late:has(kf-retell)').scrollIntoViewIfNeeded();
  // Not the drawing of the other width, which nobody sees.
  await expect.poll(() => page.locator('main').innerText()).not.toMatch(/Dunlin|Plover|Invented/);
});

test('runs that come along open a fold of their own', async ({ page }) => {
  const { encodeLink } = await import('../../src/comparison/link/codec.ts');
  const run = aRun({ knife: 'tern', cuts: 100 });
  await page.goto(`${path}${encodeLink({ ...visitorComparison, runs: [run, run] })}`);
  await live(page);
  await guess(page, 2);
  const fold = page.locator('#tested');
  await expect(fold.locator('summary')).toContainText('2 of Tern, 0 of Knot');
  await fold.locator('summary').click();
  await expect(fold).toContainText('2 measured runs go along with this comparison');
});

test('a work without a slicing estimate says what counts instead', async ({ page }) => {
  const { encodeLink } = await import('../../src/comparison/link/codec.ts');
  await page.goto(`${path}${encodeLink({ ...visitorComparison, work: 'prying' })}`);
  await live(page);
  await guess(page, 2);
  await expect(page.locator('.range-line')).toContainText('the side load');
  await expect(page.locator('.middle')).toContainText('There’s no slicing estimate');
  for (const hidden of ['kf-figure[of=ruler]', 'kf-figure[of=gains-added]', 'kf-figure[of=ways]', '#marks'])
    await expect(page.locator(hidden)).toBeHidden();
});

test('percentages alone have a page: question, guess, answer and why', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/explained/percentages/');
  await expect(page.locator('h1')).toHaveText('What do +40%, +30% and +15% make together?');
  expect(await page.locator('main').innerText()).not.toContain('109%');
  await page.locator('kf-guess-strip input[type=text]').fill('+85%');
  await page.keyboard.press('Enter');
  await expect(page.locator('kf-guess-strip [data-part=verdict]')).toHaveText(
    'Your guess, 1.85, is the sum, the answer most people give.',
  );
  await expect(page.locator('.range-line')).toHaveText('2.1 times as long: 109% more, not 85%.');
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await expect(page.locator('kf-copy-link [data-part=said]')).toHaveText('The link is copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain(
    '/explained/percentages/#with=',
  );
  const { encodeLink } = await import('../../src/comparison/link/codec.ts');
  await page.goto('about:blank');
  await page.goto(`/explained/percentages/${encodeLink({ ...visitorComparison, faceValues: [50, 20] })}`);
  await expect(page.locator('h1')).toHaveText('What do +50% and +20% make together?');
});
