import type { Locator, Page } from '@playwright/test';
import papaparse from 'papaparse';
import sharp from 'sharp';
import { sceneOf } from '../../src/scene/scene.ts';
import { unguarded } from '../../src/runs/spreadsheet.ts';
import { everything } from '../../src/topics/all.ts';
import { menuOf, saved } from './standing-alone.ts';
import { expect, live, test } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

const scene = sceneOf(visitorComparison);
const ruler = everything.figure('ruler');

/** Opens the explained page with a visitor's comparison, and the menu of its ruler, by keyboard. */
async function menu(page: Page): Promise<Locator> {
  await page.goto(`/explained/${visitorLink}`);
  await live(page);
  await page.getByText('Show the answer without a guess').click();
  return menuOf(page.locator('#figure-ruler'));
}

test('the numbers of a figure come back equal, and are those of the model', async ({ page }) => {
  const picture = await menu(page);
  const { columns, rows } = ruler.table(scene);
  const json = JSON.parse((await saved(picture, 'Numbers as JSON')).toString()) as Record<string, unknown>;
  expect(json).toMatchObject({
    keenfold: 'figure',
    figure: 'ruler',
    title: ruler.title(scene),
    columns,
    rows,
  });
  const csv = (await saved(picture, 'Numbers as CSV')).toString().replace(/^\uFEFF/, '');
  const read = papaparse.parse<string[]>(csv, { skipEmptyLines: true });
  expect(read.errors).toEqual([]);
  expect(read.data.map((row) => row.map(unguarded))).toEqual([columns, ...rows]);
  await expect(picture.locator('[data-part=said]')).toContainText('Saved as');
});

test('every shape of picture has its size and its ground', async ({ page }) => {
  const picture = await menu(page);
  const shape = picture.getByLabel('Shape');
  const ground = picture.getByLabel('Ground');
  const corner = async (png: Buffer) => [
    ...(await sharp(png).ensureAlpha().extract({ left: 2, top: 2, width: 1, height: 1 }).raw().toBuffer()),
  ];
  const sizes: Record<string, [number, number | undefined]> = {
    'as drawn': [1344, undefined],
    '1920 × 1080': [1920, 1080],
    '1080 × 1920': [1080, 1920],
    thumbnail: [1280, 720],
  };
  for (const [name, [width, height]] of Object.entries(sizes)) {
    await shape.selectOption(name);
    const png = await saved(picture, 'Save as PNG');
    const found = await sharp(png).metadata();
    expect([found.width, height && found.height]).toEqual([width, height]);
    // The light sheet of the style sheet, #fffefa.
    expect(await corner(png)).toEqual([255, 254, 250, 255]);
    expect((await sharp(png).stats()).entropy).toBeGreaterThan(0.3);
  }
  await shape.selectOption('as drawn');
  await ground.selectOption('dark');
  expect(await corner(await saved(picture, 'Save as PNG'))).toEqual([0x12, 0x26, 0x3c, 255]);
  await ground.selectOption('clear');
  expect((await corner(await saved(picture, 'Save as PNG')))[3]).toBe(0);
});
