import { expect, test } from '@playwright/test';
import type { Page } from '@playwright/test';
import { decodeLink } from '../../src/comparison/link/codec.ts';

const answer = (page: Page) => page.locator('.answer-line');
const problem = (page: Page, knife: string, name: string) => page.locator(`#${knife}-${name}-problem`);
/** Opens a fold of the page. */
const unfold = (page: Page, id: string) => page.locator(`#${id} > summary`).click();
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
  await expect(page.locator('kf-figure[of=edges] .drawing[data-size=wide] svg')).toContainText(
    '13° per side',
  );
  await expect.poll(() => carried(page)?.knives[1]?.angle).toEqual({ deg: 13 });

  const other = await (await browser.newContext()).newPage();
  await other.goto(page.url());
  await expect(answer(other)).toHaveText(at13);
  await other.goto(page.url().replace('/compare/', '/explained/'));
  await other.getByText('Show the answer without a guess').click();
  await expect(other.locator('main')).toContainText(at13);
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
    await expect(problem(page, 'dunlin', name)).toHaveText(message);
    await expect(problem(page, 'dunlin', name)).toContainText('Until then the answer keeps');
    await expect(page.locator('[data-part=kept]')).toBeVisible();
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
  await expect(place.locator('input')).toHaveValue('');
  await expect(place.locator('input')).toHaveAttribute('placeholder', 'not known');
  await unfold(page, 'sure');
  await expect(page.locator('kf-words[of=notes]')).toContainText('edge angle of Dunlin isn’t known');
  await expect(page.locator('kf-words[of=notes]')).toContainText('12–28° per side');
});

test('what nobody measured of the section may stay empty, and travels so in the link', async ({ page }) => {
  await open(page);
  const notes = page.locator('kf-words[of=notes]');
  const clear = async (name: string, said: string) => {
    const input = field(page, 'dunlin', name).locator('input');
    await input.fill('');
    await page.keyboard.press('Tab');
    await expect(input).toHaveAttribute('placeholder', 'not known');
    await expect(notes).toContainText(said);
  };
  for (const fold of ['sure', 'more', 'work']) await unfold(page, fold);
  await clear('spine', 'thickness at the spine of Dunlin isn’t known');
  await clear('grindHeight', 'Not known of Dunlin: thickness at the spine and height of the grind.');
  await unfold(page, 'caliper');
  await field(page, 'dunlin', 'angleWay').locator('select').selectOption('width');
  await clear(
    'bevelThickness',
    'Not known of Dunlin: edge angle, thickness at the spine and height of the grind.',
  );
  const depth = page.locator('[data-field=contactDepth] input');
  await depth.fill('');
  await page.keyboard.press('Tab');
  await expect(depth).toHaveValue('not known (2–30)');
  await expect(notes).toContainText('isn’t known. We use 16 mm, the middle of 2 to 30 mm.');
  // The address follows after a pause.
  await expect.poll(() => carried(page)?.contactDepthMm).toEqual({ unknown: true, low: 2, high: 30 });
  await page.reload();
  for (const fold of ['sure', 'work']) await unfold(page, fold);
  await expect(field(page, 'dunlin', 'bevelThickness').locator('input')).toHaveValue('');
  await expect(notes).toContainText('thickness at the spine and height of the grind');
  await expect(depth).toHaveValue('not known (2–30)');
});

test('an angle that looks included is asked about, from a field and from a link', async ({ page }) => {
  await open(page);
  await field(page, 'dunlin', 'angle').locator('input').fill('38');
  const question = page.locator('.says > [data-knife=dunlin] [data-part=question]');
  await expect(question).toBeVisible();
  await expect(page).toHaveURL(/#with=/);
  await page.reload();
  await expect(question).toBeVisible();
  await question.getByRole('button', { name: 'It’s both sides: use 19°' }).click();
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
  const names = page.locator('[data-row=name] .cell');
  await expect(names).toHaveCount(3);
  await expect(page.locator('select[data-role=subject]')).toHaveValue('knife-3');
  await names.last().getByRole('button', { name: 'Remove Knife 3' }).click();
  await expect(names).toHaveCount(2);
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
  await page.locator('.share > summary').click();
  await page.getByRole('link', { name: 'See it explained' }).click();
  await expect(page).toHaveURL(/\/explained\/#with=/);
  await page.waitForSelector('html[data-live=on]');
  await page.locator('.skip').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
  await expect(page).toHaveURL(/#with=/);
  await page.getByText('Show the answer without a guess').click();
  await page.getByRole('link', { name: 'Open in Compare' }).click();
  await expect(answer(page)).toHaveText(at13);
});
