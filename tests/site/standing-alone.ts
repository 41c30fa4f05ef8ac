import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import sharp from 'sharp';
import { expect } from './test.ts';

/** The menu of a figure's sheet, opened by keyboard. */
export async function menuOf(sheet: Locator): Promise<Locator> {
  const picture = sheet.locator('kf-picture');
  await sheet.locator('.details').evaluate((details: HTMLDetailsElement) => (details.open = true));
  // A figure of another comparison than the page's own is not there until it is drawn.
  await expect(picture.locator('summary')).toBeVisible();
  await picture.locator('summary').press('Enter');
  await expect(picture.getByRole('button', { name: 'Save as PNG' })).toBeVisible();
  return picture;
}

/** What a button of a figure's menu saves. */
export async function saved(picture: Locator, button: string): Promise<Buffer> {
  const saving = picture.page().waitForEvent('download');
  await picture.getByRole('button', { name: button }).press('Enter');
  return readFile(await (await saving).path());
}

type Clip = Record<'x' | 'y' | 'width' | 'height', number>;

/** Dots to a side of the squares that are compared. */
const side = 4;

interface Squares {
  across: number;
  down: number;
  /** The mean of each square's red, green and blue, 0 to 255. */
  inks: Float64Array;
}

/** What a part of a page shows, as means of squares. */
async function squares(page: Page, clip: Clip): Promise<Squares> {
  const png = await page.screenshot({ clip });
  const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const [across, down] = [Math.floor(info.width / side), Math.floor(info.height / side)];
  const inks = new Float64Array(across * down * 3);
  for (let y = 0; y < down * side; y += 1)
    for (let x = 0; x < across * side; x += 1) {
      const at = (Math.floor(y / side) * across + Math.floor(x / side)) * 3;
      const dot = (y * info.width + x) * 3;
      for (let ink = 0; ink < 3; ink += 1)
        inks[at + ink] = (inks[at + ink] ?? 0) + (data[dot + ink] ?? 0) / side ** 2;
    }
  return { across, down, inks };
}

/** A figure's wide drawing as its page has it, in its own size, on whole pixels, with nothing over it. */
export async function asOnPage(sheet: Locator): Promise<Squares> {
  const drawing = sheet.locator('.drawing[data-size=wide]');
  const clip = await drawing.evaluate((holder: HTMLElement) => {
    Object.assign(holder.style, {
      position: 'fixed',
      left: '0',
      top: '0',
      width: '640px',
      background: 'var(--sheet)',
      zIndex: '9',
    });
    const { x, y, width, height } = (holder.firstElementChild ?? holder).getBoundingClientRect();
    return { x, y, width, height };
  });
  return squares(sheet.page(), clip);
}

/** Opens an SVG by itself, as a file is opened. */
export async function openAlone(page: Page, svg: string): Promise<void> {
  await page.goto(`data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`);
  await page.evaluate(() => document.fonts.ready);
}

/** The drawing in the SVG that stands open. */
export async function asAlone(page: Page): Promise<Squares> {
  const clip = await page.locator('svg svg.kf-plot').evaluate((drawing: SVGSVGElement) => ({
    x: drawing.x.baseVal.value,
    y: drawing.y.baseVal.value,
    width: drawing.width.baseVal.value,
    height: drawing.height.baseVal.value,
  }));
  return squares(page, clip);
}

/**
 * Where two pictures differ, told by the means of squares: a glyph a fraction of a dot aside moves ink within a square
 * and hardly changes its mean, a missing hair line does. Unequal sizes are all apart.
 *
 * @returns the greatest difference of an ink, 0 to 255, and the share of squares in which one differs by more than 8
 */
export function apart(a: Squares, b: Squares): { most: number; share: number } {
  if (a.across !== b.across || a.down !== b.down) return { most: 255, share: 1 };
  let [most, many] = [0, 0];
  for (let at = 0; at < a.inks.length; at += 3) {
    const far = Math.max(
      ...[0, 1, 2].map((ink) => Math.abs((a.inks[at + ink] ?? 0) - (b.inks[at + ink] ?? 0))),
    );
    most = Math.max(most, far);
    if (far > 8) many += 1;
  }
  return { most, share: many / (a.across * a.down) };
}
