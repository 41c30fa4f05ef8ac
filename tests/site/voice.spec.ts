import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';

/** All that the page's own voice has said. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    const place = document.getElementById('said-aloud');
    if (!place) throw new Error('the page has no voice');
    new MutationObserver(() => {
      if (place.textContent !== '') heard.push(place.textContent);
    }).observe(place, { childList: true, characterData: true, subtree: true });
  });
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
}

test('a slider moved many steps is told once, after a pause, by what it came to', async ({ page }) => {
  await page.goto('/lessons/stack-them/');
  const figure = page.locator('kf-figure').first();
  const slider = figure.locator('input[type=range]').first();
  await slider.focus();
  await live(page);
  const heard = await listen(page);
  for (let step = 0; step < 8; step += 1) await slider.press('ArrowRight');
  expect(await heard()).toEqual([]);
  await expect.poll(heard).toHaveLength(1);
  expect(await heard()).toEqual([await figure.locator('[data-part=caption]').innerText()]);
  // It is said once, and then gone.
  await expect(page.locator('#said-aloud')).toBeEmpty();
  expect(await heard()).toHaveLength(1);
  // The slider says its value itself; the number beside it must not say it again.
  await expect(figure.locator('kf-slider output').first()).toHaveAttribute('aria-live', 'off');
});

test('a number typed on the Compare page, and a choice, are told by what they come to', async ({ page }) => {
  for (const [path, change] of [
    ['/compare/', () => page.locator('[data-knife=dunlin] [data-field=angle] input').fill('17')],
    ['/argue/', () => page.locator('kf-choice[of=apex] input').last().check()],
  ] as const) {
    await page.goto(path);
    if (path === '/argue/') await page.locator('#apex > summary').click();
    await page.locator('main input').first().focus();
    await live(page);
    const heard = await listen(page);
    await change();
    await expect.poll(heard, path).toHaveLength(1);
    const [said = ''] = await heard();
    expect(await page.locator('[data-result]').innerText(), path).toContain(said.split('\n')[0]);
    expect(said, path).toMatch(/times as long|about one \w+ as long/);
  }
});
