import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { decodeLink } from '../../src/comparison/link/codec.ts';

const answer = (page: Page) => page.locator('.live-answer p:not(.failed)');
const field = (page: Page, knife: string, name: string) =>
  page.locator(`[data-knife=${knife}] [data-field=${name}]`);

/** The comparison in the address. */
const carried = (page: Page) => {
  const read = decodeLink(new URL(page.url()).hash);
  return read.ok ? read.entry : undefined;
};

async function open(page: Page): Promise<void> {
  await page.goto('/compare/');
  await page.waitForSelector('html[data-live=on]');
}

test('an angle typed moves the answer, the drawing and the table, and its link shows the same elsewhere', async ({
  page,
  browser,
}) => {
  await open(page);
  const before = await answer(page).textContent();
  await field(page, 'dunlin', 'angle').locator('input').fill('22');
  await expect(answer(page)).not.toHaveText(before ?? '');
  const at22 = await answer(page).textContent();
  await field(page, 'dunlin', 'angle').locator('input').fill('13');
  await expect(answer(page)).not.toHaveText(at22 ?? '');
  const at13 = (await answer(page).textContent()) ?? '';
  await expect(page.locator('kf-figure[of=sections] .drawing[data-size=wide] svg')).toHaveAttribute(
    'aria-label',
    /13\.0°/,
  );
  await expect(page).toHaveURL(/#with=/);

  const other = await (await browser.newContext()).newPage();
  await other.goto(page.url());
  await expect(answer(other)).toHaveText(at13);
  await other.goto(page.url().replace('/compare/', '/explained/'));
  await expect(other.locator('.lead')).toHaveText(at13);
  await other.context().close();

  await page.reload();
  await expect(answer(page)).toHaveText(at13);
});

const bad: [name: string, text: string, message: RegExp][] = [
  ['angle', '0', /not between 4° and 45°/],
  ['angle', '95', /not between 4° and 45°/],
  ['angle', '3O', /letter O for zero/],
  ['angle', '25–20', /runs backwards/],
  ['edge', '9', /not between|thicker|at most/],
  ['hrc', 'NaN', /not readable/],
  ['name', 'x'.repeat(10_000), /at most 80/],
];
for (const [name, text, message] of bad) {
  test(`${name} “${text.slice(0, 12)}” gets a message at its field and the last good answer stays`, async ({
    page,
  }) => {
    await open(page);
    const before = (await answer(page).textContent()) ?? '';
    const place = field(page, 'dunlin', name);
    await place.locator('input').fill(text);
    await page.keyboard.press('Tab');
    await expect(place.locator('.problem')).toHaveText(message);
    await expect(answer(page)).toHaveText(before);
    expect(await page.locator('kf-words, kf-num').allTextContents()).not.toContainEqual(
      expect.stringContaining('NaN'),
    );
  });
}

test('an empty angle is not known: a stated range, never a silent value', async ({ page }) => {
  await open(page);
  const place = field(page, 'dunlin', 'angle');
  await place.locator('input').fill('');
  await page.keyboard.press('Tab');
  await expect(place.locator('input')).toHaveValue(/not known \(12–28\)/);
  await expect(page.locator('kf-words[of=notes]')).toContainText('edge angle of Dunlin is not known');
});

test('what nobody measured of the section may stay empty, and travels so in the link', async ({ page }) => {
  await open(page);
  const notes = page.locator('kf-words[of=notes]');
  const clear = async (name: string, shown: RegExp, said: string) => {
    const input = field(page, 'dunlin', name).locator('input');
    await input.fill('');
    await page.keyboard.press('Tab');
    await expect(input).toHaveValue(shown);
    await expect(notes).toContainText(said);
  };
  await clear('spine', /not known \(1.5–5\)/, 'thickness at the spine of Dunlin is not known');
  await clear('grindHeight', /not known \(8–40\)/, 'height of the grind of Dunlin is not known');
  await field(page, 'dunlin', 'angleWay').locator('select').selectOption('width');
  await clear('bevelThickness', /not known \(0.15–0.9\)/, 'edge angle of Dunlin is not known');
  const depth = page.locator('[data-field=contactDepth] input');
  await depth.fill('');
  await page.keyboard.press('Tab');
  await expect(depth).toHaveValue('not known (2–30)');
  await expect(notes).toContainText('is not known: 16.0 mm, the middle of 2.00–30.0 mm, stands in');
  // The address follows after a pause.
  await expect.poll(() => carried(page)?.contactDepthMm).toEqual({ unknown: true, low: 2, high: 30 });
  await page.reload();
  await expect(field(page, 'dunlin', 'bevelThickness').locator('input')).toHaveValue('not known (0.15–0.9)');
  await expect(notes).toContainText('height of the grind of Dunlin is not known');
  await expect(depth).toHaveValue('not known (2–30)');
});

test('an angle that looks included is asked about, from a field and from a link', async ({ page }) => {
  await open(page);
  await field(page, 'dunlin', 'angle').locator('input').fill('38');
  const question = page.locator('[data-knife=dunlin] [data-part=question]');
  await expect(question).toBeVisible();
  await expect(page).toHaveURL(/#with=/);
  await page.reload();
  await expect(question).toBeVisible();
  await question.getByRole('button', { name: 'It is included' }).click();
  await expect(field(page, 'dunlin', 'angle').locator('input')).toHaveValue('19');
  await expect(question).toBeHidden();
});

test('undo and redo, adding and removing a knife', async ({ page }) => {
  await open(page);
  const before = (await answer(page).textContent()) ?? '';
  await field(page, 'dunlin', 'hrc').locator('input').fill('64');
  await page.keyboard.press('Tab');
  await expect(answer(page)).not.toHaveText(before);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(answer(page)).toHaveText(before);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(answer(page)).not.toHaveText(before);
  await page.getByRole('button', { name: 'Add a knife' }).click();
  await expect(page.locator('[data-knife]')).toHaveCount(3);
  await page.locator('[data-knife]').last().getByRole('button', { name: 'Remove' }).click();
  await expect(page.locator('[data-knife]')).toHaveCount(2);
});

test('a damaged link says what is wrong, and the page goes on', async ({ page }) => {
  await open(page);
  await field(page, 'dunlin', 'angle').locator('input').fill('13');
  await expect(page).toHaveURL(/#with=/);
  const link = page.url();
  for (const damaged of [link.slice(0, -9), '/compare/#with=1.!!', '/compare/#with=']) {
    await page.goto('about:blank');
    await page.goto(damaged);
    await expect(page.locator('#address-message')).toContainText('could not be opened');
    await expect(answer(page)).toBeVisible();
  }
});

test('links of a page and steps within it keep the comparison', async ({ page }) => {
  await open(page);
  await field(page, 'dunlin', 'angle').locator('input').fill('13');
  await expect(page).toHaveURL(/#with=/);
  const at13 = (await answer(page).textContent()) ?? '';
  await page.getByRole('link', { name: 'as an explanation for others' }).click();
  await expect(page).toHaveURL(/\/explained\/#with=/);
  await page.waitForSelector('html[data-live=on]');
  await page.locator('.skip').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
  await expect(page).toHaveURL(/#with=/);
  await page.getByRole('link', { name: 'Open these knives in Compare' }).click();
  await expect(answer(page)).toHaveText(at13);
});
