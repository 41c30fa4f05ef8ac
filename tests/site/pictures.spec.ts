import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';
import papaparse from 'papaparse';
import sharp from 'sharp';
import { sceneOf } from '../../src/lineup/scene.ts';
import { unguarded } from '../../src/runs/spreadsheet.ts';
import { everything } from '../../src/topics/all.ts';
import { expect, live, test } from './test.ts';
import { visitorLink, visitorLineUp } from './visitor.ts';

const scene = sceneOf(visitorLineUp);
const chain = everything.figure('chain');

/** Opens the telling with a visitor's line-up, and the menu of its chain, by keyboard. */
async function menu(page: Page): Promise<Locator> {
  await page.goto(`/telling/${visitorLink}`);
  await live(page);
  const picture = page.locator('kf-figure[of=chain] kf-picture');
  await picture.locator('summary').press('Enter');
  await expect(picture.getByRole('button', { name: 'Save as PNG' })).toBeVisible();
  return picture;
}

async function saved(picture: Locator, button: string): Promise<Buffer> {
  const saving = picture.page().waitForEvent('download');
  await picture.getByRole('button', { name: button }).press('Enter');
  return readFile(await (await saving).path());
}

test('the numbers of a figure come back equal, and are those of the model', async ({ page }) => {
  const picture = await menu(page);
  const { columns, rows } = chain.table(scene);
  const json = JSON.parse((await saved(picture, 'Numbers as JSON')).toString()) as Record<string, unknown>;
  expect(json).toMatchObject({
    keenfold: 'figure',
    figure: 'chain',
    title: chain.title(scene),
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

test('an SVG that stands alone looks as the figure does on the page, and its words keep their places', async ({
  page,
  context,
}) => {
  await page.emulateMedia({ colorScheme: 'light' });
  const picture = await menu(page);
  const svg = (await saved(picture, 'Save as SVG')).toString();
  expect(svg.match(/(?:href|src)="(?!data:)|url\((?!#|data:)|var\(/g) ?? []).toEqual([]);
  expect(svg).toContain(`<desc>${chain.caption(scene).replaceAll('&', '&amp;')}</desc>`);

  // The page's drawing in its own size, on whole pixels, with nothing over it.
  const onPage = page.locator('kf-figure[of=chain] .drawing[data-size=wide] svg');
  await onPage.evaluate((drawing: SVGSVGElement) => {
    document.body.replaceChildren(...document.querySelectorAll('svg.hatches'), drawing);
    Object.assign(drawing.style, {
      position: 'absolute',
      left: '0',
      top: '0',
      width: '640px',
      background: 'var(--sheet)',
    });
  });
  const drawn = page.locator('body > svg.kf-plot');
  const before = await drawn.screenshot();

  const other = await context.newPage();
  await other.setContent(`<!doctype html><body style="margin:0">${svg}</body>`);
  await other.evaluate(() => document.fonts.ready);
  const inner = other.locator('svg svg.kf-plot');
  const box = await inner.evaluate((drawing: SVGSVGElement) => ({
    x: drawing.x.baseVal.value,
    y: drawing.y.baseVal.value,
    width: drawing.width.baseVal.value,
    height: drawing.height.baseVal.value,
  }));
  const after = await other.screenshot({ clip: box });

  const raw = (png: Buffer) => sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const [one, two] = [await raw(before), await raw(after)];
  expect({ width: two.info.width, height: two.info.height }).toEqual({
    width: one.info.width,
    height: one.info.height,
  });
  let apart = 0;
  for (let at = 0; at < one.data.length; at += 3) {
    const most = Math.max(
      ...[0, 1, 2].map((ink) => Math.abs((one.data[at + ink] ?? 0) - (two.data[at + ink] ?? 0))),
    );
    if (most > 40) apart += 1;
  }
  // Where a glyph falls on a fraction of a pixel its rim may differ: five pixels in a thousand, each by a sixth of the range.
  expect(apart / (one.data.length / 3)).toBeLessThan(0.005);

  // In the embedded face every word is as wide as it was measured, to half a pixel.
  const strayed = await other.locator('svg [textLength]').evaluateAll((parts) =>
    (parts as SVGTextContentElement[]).flatMap((part) => {
      const asked = Number(part.getAttribute('textLength'));
      part.removeAttribute('textLength');
      const own = part.getComputedTextLength();
      return Math.abs(own - asked) > 0.5 ? [`${part.textContent ?? ''}: ${own} for ${asked}`] : [];
    }),
  );
  expect(strayed).toEqual([]);
  await other.close();
});
