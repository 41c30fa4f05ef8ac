import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { visitorLink } from './visitor.ts';

/** A phone, a tablet and a desk. */
const screens = [
  { width: 360, height: 740, mostScreens: 4 },
  { width: 800, height: 1000, mostScreens: 4 },
  { width: 1440, height: 900, mostScreens: 2 },
] as const;

const mostControls = 36;

async function open(page: Page, address = '/compare/'): Promise<void> {
  await page.goto(address);
  await live(page);
}

/** Whether the answer, in large beside the fields or in the bar, lies within the window and nothing covers it. */
const answerInSight = (page: Page) =>
  page.evaluate(() => {
    const shown = [...document.querySelectorAll<HTMLElement>('.answer-line, .answer-bar')].find(
      (part) => part.getClientRects().length > 0,
    );
    if (!shown) return false;
    const { left, top, right, bottom } = shown.getBoundingClientRect();
    if (top < 0 || left < 0 || bottom > innerHeight || right > innerWidth) return false;
    const there = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return there !== null && shown.contains(there);
  });

/** Whether what has the focus is seen: within the window, and not below the bar. */
const focusInSight = (page: Page) =>
  page.evaluate(() => {
    const { activeElement } = document;
    if (!activeElement || activeElement === document.body) return true;
    const { left, top, right, bottom } = activeElement.getBoundingClientRect();
    const there = document.elementFromPoint(
      (left + right) / 2,
      (Math.max(0, top) + Math.min(innerHeight, bottom)) / 2,
    );
    return there !== null && (activeElement.contains(there) || there.contains(activeElement));
  });

for (const { width, height, mostScreens } of screens)
  test(`at ${width} the page is short, entry begins on its first screen and the answer stays in sight`, async ({
    page,
  }) => {
    test.slow();
    await page.setViewportSize({ width, height });
    await open(page);
    const tall = await page.evaluate(() => document.documentElement.scrollHeight);
    expect(tall).toBeLessThanOrEqual(mostScreens * height);

    const controls = page.locator('main :is(a, button, input, select, textarea, summary):visible');
    expect(await controls.count()).toBeLessThanOrEqual(mostControls);

    const first = await page.locator('#plover-angle').boundingBox();
    expect((first?.y ?? height) + (first?.height ?? 0)).toBeLessThanOrEqual(height);

    // Every field of the page, those of the folds as well, one after another with the keyboard.
    await page.locator('#more > summary').click();
    await page.locator('#work > summary').click();
    const fields = page.locator('.entry > [data-own] :is(input, select):visible');
    const count = await fields.count();
    expect(count).toBeGreaterThan(20);
    for (let index = 0; index < count; index += 1) {
      await fields.nth(index).focus();
      expect(await answerInSight(page), `answer beside field ${index}`).toBe(true);
      expect(await focusInSight(page), `field ${index}`).toBe(true);
    }
  });

test('on a phone the bar opens to the answer with its ruler and edges, and closes', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await open(page, `/compare/${visitorLink}`);
  const bar = page.locator('.answer-bar');
  await expect(bar).toContainText('Tern: about');
  await expect(page.locator('.answer-line')).toBeHidden();
  await bar.click();
  await expect(bar).toHaveAttribute('aria-expanded', 'true');
  await expect(page.locator('.answer-line')).toContainText('Tern should cut about');
  for (const of of ['ruler', 'edges']) {
    const drawing = page.locator(`.answer kf-figure[of=${of}] .drawing:visible svg`);
    await drawing.scrollIntoViewIfNeeded();
    await expect(drawing).toBeVisible();
  }
  await page.keyboard.press('Escape');
  await expect(page.locator('.answer-line')).toBeHidden();
});

test('an edge dragged by its shoulder or its flank changes the field, and one step undoes it', async ({
  page,
}) => {
  await open(page);
  const angle = page.locator('#plover-angle');
  const thickness = page.locator('#plover-edge');
  const drawing = page.locator('kf-figure[of=edges] .drawing[data-size=wide]');
  await drawing.hover();
  const shoulder = drawing.locator('.kf-handle circle').first();
  // Moved a little until what drags has come.
  await expect(async () => {
    await shoulder.hover();
    await page.mouse.move(10, 10);
    await shoulder.hover();
    await expect(drawing).toHaveAttribute('data-handle', '', { timeout: 500 });
  }).toPass();
  const at = await shoulder.evaluate((dot) => {
    const { x, y, width, height } = dot.getBoundingClientRect();
    return { x: x + width / 2, y: y + height / 2 };
  });
  await page.mouse.down();
  await page.mouse.move(at.x, at.y - 12, { steps: 6 });
  await page.mouse.up();
  await expect(thickness).not.toHaveValue('0.6 ± 0.03');
  await expect(thickness).toHaveValue(/^\d(\.\d{1,2})? ± 0\.03$/);
  await expect(angle).toHaveValue('24 ± 1');
  await page.locator('[data-act=undo]').click();
  await expect(thickness).toHaveValue('0.6 ± 0.03');
});

test('a bar of the ruler dragged by its end changes the angle it stands for', async ({ page }) => {
  await open(page);
  const drawing = page.locator('kf-figure[of=ruler] .drawing[data-size=wide]');
  await drawing.hover();
  const bar = drawing.locator('rect[fill*=geometry]').first();
  let end = { x: 0, y: 0 };
  // What draws and what drags have to come first.
  await expect(async () => {
    end = await bar.evaluate((element) => {
      const { right, top, height } = element.getBoundingClientRect();
      return { x: right - 2, y: top + height / 2 };
    });
    await page.mouse.move(end.x - 8, end.y);
    await page.mouse.move(end.x, end.y);
    expect(await drawing.getAttribute('data-handle')).toBe('');
  }).toPass();
  await page.mouse.down();
  await page.mouse.move(end.x + 25, end.y, { steps: 5 });
  await page.mouse.up();
  await expect(page.locator('#dunlin-angle')).toHaveValue(/^\d+(\.5)? ± 1$/);
  await expect(page.locator('#dunlin-angle')).not.toHaveValue('14 ± 1');
  await page.locator('[data-act=undo]').click();
  await expect(page.locator('#dunlin-angle')).toHaveValue('14 ± 1');
});

test('started empty it asks for the first number, and answers once something is known of both', async ({
  page,
}) => {
  await open(page);
  await page.getByRole('button', { name: 'start empty' }).click();
  const line = page.locator('.answer-line');
  await expect(line).toHaveText('Type the edge angle of Knife A to begin.');
  await expect(page.locator('#knife-a-angle')).toBeFocused();
  await expect(page.locator('.answer kf-figure').first()).toBeHidden();
  await page.keyboard.type('20');
  await expect(line).toHaveText('Now type the edge angle of Knife B.');
  await page.locator('#knife-b-angle').fill('15');
  await expect(line).toContainText('Knife B should cut about');
  // A grit typed beside a scale that was chosen before it.
  await page.locator('#knife-b-finishScale').selectOption('um');
  await page.locator('#knife-b-finish').fill('25');
  await page.keyboard.press('Tab');
  await expect(page.locator('#knife-b-finishScale')).toHaveValue('um');
  await page.locator('#knife-a-finish').fill('400');
  await page.keyboard.press('Tab');
  await expect(page.locator('#knife-a-finishScale')).toHaveValue('FEPA-P');
  await page.getByRole('button', { name: 'see the example' }).click();
  await expect(line).toContainText('Dunlin should cut about 5 to 30 times');
});

test('of eight knives the two that are asked about stand side by side, and all are ranked', async ({
  page,
}) => {
  await open(page);
  for (let knives = 3; knives <= 8; knives += 1)
    await page.getByRole('button', { name: 'Add a knife' }).click();
  await expect(page.getByRole('button', { name: 'Add a knife' })).toBeDisabled();
  await expect(page.locator('[data-row=angle] .cell:visible')).toHaveCount(2);
  await expect(page.locator('.all-against dt')).toHaveCount(7);
  await page.locator('select[data-role=subject]').selectOption('dunlin');
  await expect(page.locator('#dunlin-angle')).toBeVisible();
  await expect(page.locator('#knife-8-angle')).toBeHidden();
});

test('a place in a fold can be led to, from the address too', async ({ page }) => {
  await open(page, '/compare/#composition');
  await expect(page.locator('kf-composition')).toBeVisible();
  await page.locator('.share > summary').click();
  await page.getByRole('button', { name: 'Save a picture' }).click();
  await expect(page.locator('#figure-ruler .details')).toHaveAttribute('open', '');
});
