import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { sceneOf } from '../../src/scene/scene.ts';
import { everything } from '../../src/topics/all.ts';
import { builtFiles, dist, isAlone } from './pages.ts';
import { apart, asAlone, asOnPage, menuOf, openAlone, saved } from './standing-alone.ts';
import { expect, live, test } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

// On screens of one dot a pixel Plot sets lines on half pixels; at build there is no screen.
test.use({ deviceScaleFactor: 2, colorScheme: 'light' });

// A page goes on without a face that comes late; what is compared waits for it.
test.beforeEach(({ page }) =>
  page.route('**/*.css', async (route) => {
    const response = await route.fetch();
    const css = (await response.text()).replace('font-display:optional', 'font-display:block');
    await route.fulfill({ response, body: css });
  }),
);

/** Glyphs a fraction of a dot aside come to a tenth of an ink in a square or two of a thousand; a hair line is in more. */
function expectAlike({ most, share }: { most: number; share: number }, figure: string): void {
  expect.soft(most, `${figure}: the square that differs most`).toBeLessThan(32);
  expect.soft(share, `${figure}: squares that differ`).toBeLessThan(0.0025);
}

/** The comparison finds it out where one mark is missing, the faintest as well. */
async function expectMarkMissed(
  alone: Page,
  before: Awaited<ReturnType<typeof asOnPage>>,
  figure: string,
): Promise<void> {
  await alone.evaluate(() =>
    document.querySelector('.kf-plot > .kf-grid, .kf-plot > g:last-of-type')?.remove(),
  );
  const { most, share } = apart(before, await asAlone(alone));
  expect.soft(most >= 32 || share >= 0.0025, `${figure} without a mark: ${most}, ${share}`).toBe(true);
}

/** In the embedded face every word is as wide as it was measured, to half a pixel. */
async function expectWordsInPlace(alone: Page, figure: string): Promise<void> {
  const strayed = await alone.locator('svg [textLength]').evaluateAll((parts) =>
    (parts as SVGTextContentElement[]).flatMap((part) => {
      const asked = Number(part.getAttribute('textLength'));
      part.removeAttribute('textLength');
      const own = part.getComputedTextLength();
      return Math.abs(own - asked) > 0.5 ? [`${part.textContent ?? ''}: ${own} for ${asked}`] : [];
    }),
  );
  expect.soft(strayed, figure).toEqual([]);
}

test('a visitor’s own figure as an SVG that stands alone looks as it does on the page', async ({
  page,
  context,
}) => {
  const scene = sceneOf(visitorComparison);
  await page.goto(`/explained/${visitorLink}`);
  await live(page);
  await page.getByText('Show the answer without a guess').click();
  const sheet = page.locator('#figure-ruler');
  const svg = (await saved(await menuOf(sheet), 'Save as SVG')).toString();
  expect(svg.match(/(?:href|src)="(?!data:)|url\((?!#|data:)|var\(/g) ?? []).toEqual([]);
  const caption = everything.figure('ruler').caption(scene).replaceAll('&', '&amp;');
  expect(svg).toContain(`<desc>${caption}</desc>`);
  const before = await asOnPage(sheet);
  const alone = await context.newPage();
  await openAlone(alone, svg);
  expectAlike(apart(before, await asAlone(alone)), 'ruler');
  await expectWordsInPlace(alone, 'ruler');
  await alone.close();
});

/** Every figure the built pages have, and a page it stands on: alone where it does, otherwise the first. */
function figures(): [figure: string, path: string][] {
  const found = new Map<string, string>();
  for (const file of builtFiles('index.html')) {
    const path = `/${file.replace(/index\.html$/, '')}`;
    for (const [, figure = ''] of readFileSync(`${dist}/${file}`, 'utf8').matchAll(/id="figure-([\w-]+)"/g))
      if (!found.has(figure) || isAlone(path)) found.set(figure, path);
  }
  if (!found.has('chain')) throw new Error('the built pages have no figures: run the build first');
  return [...found];
}

/** As many figures as one test looks at: the tests run beside each other. */
const many = 8;
const all = figures();
for (let first = 0; first < all.length; first += many) {
  const batch = all.slice(first, first + many);
  test(`standing alone as on the page: ${batch.map(([figure]) => figure).join(', ')}`, async ({
    page,
    context,
  }) => {
    const alone = await context.newPage();
    for (const [figure, path] of batch) {
      await page.goto(path);
      const sheet = page.locator(`#figure-${figure}`);
      await sheet.evaluate((element) => {
        for (
          let fold = element.closest('details');
          fold;
          fold = fold.parentElement?.closest('details') ?? null
        )
          fold.open = true;
      });
      const svg = (await saved(await menuOf(sheet), 'Save as SVG')).toString();
      const before = await asOnPage(sheet);
      await openAlone(alone, svg);
      expectAlike(apart(before, await asAlone(alone)), figure);
      // How well the comparison sees is tried on a few figures of different kinds: the first of each test.
      if (figure === batch[0]?.[0]) await expectMarkMissed(alone, before, figure);
      await expectWordsInPlace(alone, figure);
    }
    await alone.close();
  });
}
