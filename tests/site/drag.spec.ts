import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';

/** Drags within the drawing of a figure, from one place to another, each given as parts of its width and height. */
async function drag(page: Page, of: string, from: [number, number], to: [number, number]): Promise<void> {
  const drawing = page.locator(`kf-figure[of="${of}"] .drawing:visible > svg`);
  await drawing.scrollIntoViewIfNeeded();
  await drawing.hover();
  await live(page);
  const box = await drawing.boundingBox();
  if (!box) throw new Error(`no drawing of ${of}`);
  const at = ([x, y]: [number, number]) => [box.x + x * box.width, box.y + y * box.height] as const;
  await page.mouse.move(...at(from));
  await page.mouse.down();
  await page.mouse.move(...at(to), { steps: 5 });
  await page.mouse.up();
}

/** Each figure that can be dragged: where, which control follows, and which way. */
const drags = [
  { path: 'forty-and-forty', of: 'growing-bars', from: [0.5, 0.5], to: [0.5, 0.4], control: 'percentage.1' },
  { path: 'less-of-a-bad-thing', of: 'less-lines', from: [0.5, 0.5], to: [0.8, 0.5], control: 'less' },
  { path: 'two-routes', of: 'two-wedges', from: [0.25, 0.3], to: [0.2, 0.3], control: 'baseline.angle' },
  { path: 'two-routes', of: 'two-routes', from: [0.4, 0.6], to: [0.6, 0.6], control: 'subject.angle' },
  { path: 'steel-fairly', of: 'worth-by-angle', from: [0.4, 0.6], to: [0.6, 0.6], control: 'subject.angle' },
  { path: 'range-race', of: 'draw-level', from: [0.4, 0.6], to: [0.6, 0.6], control: 'baseline.angle' },
  { path: 'where-it-stops', of: 'three-limits', from: [0.4, 0.6], to: [0.6, 0.6], control: 'limits.angle' },
] as const;

for (const { path, of, from, to, control } of drags)
  test(`${of} is dragged, and its slider goes along`, async ({ page }) => {
    await page.goto(`/lessons/${path}/`);
    const slider = page.locator(`kf-slider[of="${control}"] input`).first();
    const before = await slider.inputValue();
    // What drags is fetched when a pointer first comes near.
    await expect(async () => {
      await drag(page, of, [...from], [...to]);
      await expect(slider).not.toHaveValue(before, { timeout: 500 });
    }).toPass({ timeout: 20_000 });
    const after = await slider.inputValue();
    // The pointer is up: moving on changes nothing.
    await page.mouse.move(10, 10);
    await expect(slider).toHaveValue(after);
    // Without a pointer the slider does the same.
    await slider.focus();
    await page.keyboard.press('ArrowLeft');
    await expect(slider).not.toHaveValue(after);
  });
