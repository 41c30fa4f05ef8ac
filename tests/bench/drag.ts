import type { Page } from '@playwright/test';

/** Drags a slider to and fro, as a hand does: the browser then hands its events over just before each frame. */
export async function drag(page: Page, slider: string, times: number): Promise<void> {
  const box = await page.locator(slider).boundingBox();
  if (!box) throw new Error(`the slider ${slider} is not on the page`);
  const y = box.y + box.height / 2;
  const at = (share: number) => box.x + 10 + share * (box.width - 20);
  await page.mouse.move(at(0.5), y);
  await page.mouse.down();
  for (let step = 1; step <= times; step += 1) {
    await page.mouse.move(at(0.5 + 0.4 * Math.sin(step / 3)), y);
    await page.waitForTimeout(40);
  }
  await page.mouse.up();
}
