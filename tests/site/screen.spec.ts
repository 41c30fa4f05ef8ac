import { bringAxe, violations } from './axe.ts';
import { expect, live, test } from './test.ts';
import { visitorLink } from './visitor.ts';

const said = '[data-part="said"]';

test('steps by key, remote and button, keeps the step and the comparison in the address, and Back leaves', async ({
  page,
}) => {
  await page.goto(`/lessons/two-routes/${visitorLink}`);
  await live(page);
  await page.getByRole('link', { name: 'Show on a large screen' }).click();
  await expect(page).toHaveURL(/\/screen\/two-routes\/#with=/);
  const status = page.locator('.bar').locator(said);
  await expect(status).toHaveText('Step 1 of 9');
  await live(page);
  await expect(page.locator('.whose.own').first()).toContainText('Tern');

  await page.keyboard.press('ArrowRight');
  await expect(status).toHaveText('Step 2 of 9');
  await expect(page.locator('.step:visible')).toHaveCount(1);
  await expect(page.locator('.step:visible kf-call')).toBeVisible();
  await expect(page.locator('.step:visible')).toBeFocused();
  const link = new URL(page.url());
  expect(link.search).toBe('?step=2');
  expect(link.hash).toMatch(/^#with=\d+\..{50}/);

  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.locator('.step:visible kf-figure svg').first()).toBeVisible();
  // On a slider the arrows are the slider's; what a remote sends counts even there.
  const slider = page.locator('.step:visible input[type=range]').first();
  await slider.focus();
  const before = await slider.inputValue();
  await page.keyboard.press('ArrowRight');
  expect(await slider.inputValue()).not.toBe(before);
  await expect(status).toHaveText('Step 3 of 9');
  await page.keyboard.press('PageDown');
  await expect(status).toHaveText('Step 4 of 9');
  await page.keyboard.press('PageUp');
  await expect(status).toHaveText('Step 3 of 9');

  // Kept over a reload; the address of the step is a link like any other.
  await page.reload();
  await expect(status).toHaveText('Step 3 of 9');
  await expect(page.locator('.step:visible figcaption')).toContainText('Tern');
  await page.locator('main').click({ position: { x: 2, y: 2 } });
  await page.keyboard.press('End');
  await expect(page.locator('.step:visible h2')).toHaveText('To take away');
  await expect(page.getByRole('button', { name: 'Next' })).toBeDisabled();
  await expect(page.getByRole('link', { name: 'Next lesson' })).toHaveAttribute(
    'href',
    /\/screen\/what-a-grit-is\/#with=/,
  );
  await page.goBack();
  await expect(page).toHaveURL(/\/lessons\/two-routes\//);
});

test('on paper every step has the speaker’s hints, and the screen has none of them', async ({ page }) => {
  await page.goto('/screen/forty-and-forty/?step=999');
  const status = page.locator('.bar').locator(said);
  await expect(status).toHaveText(/Step (\d+) of \1/);
  await expect(page.locator('.hints:visible')).toHaveCount(0);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.step:visible')).toHaveCount(
    await page.locator('.step:not([data-own])').count(),
  );
  expect(await page.locator('.hints:visible').count()).toBeGreaterThan(1);
  await expect(page.locator('.bar')).toBeHidden();
});

for (const name of ['forty-and-forty', 'stack-them', 'where-it-stops'])
  test(`${name} on a large screen has no violation that axe can find, nor sideways scroll at 320 px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 320, height: 800 });
    await page.goto(`/screen/${name}/`);
    await bringAxe(page);
    const status = page.locator('.bar').locator(said);
    await expect(status).toHaveText(/^Step 1 of /);
    const count = Number(/of (\d+)/.exec(await status.innerText())?.[1]);
    for (let step = 1; step <= count; step += 1) {
      await expect(status).toHaveText(`Step ${step} of ${count}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      expect(await violations(page, { rules: 'all' }), `step ${step}`).toEqual([]);
      await page.emulateMedia({ colorScheme: step % 2 ? 'dark' : 'light' });
      expect(
        await violations(page, { rules: ['color-contrast'], of: 'one of each look' }),
        `step ${step}`,
      ).toEqual([]);
      if (step < count) await page.getByRole('button', { name: 'Next' }).click();
    }
  });

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('all the steps stand one below the other', async ({ page }) => {
    await page.goto('/screen/two-routes/');
    const steps = page.locator('.step:not([data-own])');
    expect(await steps.count()).toBeGreaterThan(5);
    for (const step of await steps.all()) await expect(step).toBeVisible();
    await expect(page.getByRole('button', { name: 'Next' })).toBeHidden();
  });
});
