import { pdfPages } from './pdf.ts';
import { expect, live, test, unfold } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';
import { bandBehind } from '../../src/topics/band/words.ts';
import { encodeLink } from '../../src/comparison/link/codec.ts';
import { comparisonMarkdown } from '../../src/compare/sheet/markdown.ts';
import { sceneOf } from '../../src/scene/scene.ts';

test('the comparison is copied as Markdown, and its sheet is reached from Compare and the explanation', async ({
  page,
  context,
  baseURL,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`/compare/${visitorLink}`);
  await live(page);
  await page.locator('summary', { hasText: 'Share' }).click();
  await page.getByRole('link', { name: 'Print one page' }).click();
  await expect(page).toHaveURL(/\/sheet\/#with=/);
  await live(page);
  await expect(page.locator('h1')).toHaveText('One page to print');
  await expect(page.locator('[data-part=title]').first()).toHaveText(visitorComparison.title);
  await expect(page.locator('[data-part=invented]')).toBeHidden();
  await expect(page.getByRole('img', { name: 'A code that opens this comparison' })).toBeVisible();
  await page.getByRole('button', { name: 'Copy as Markdown' }).press('Enter');
  await expect(page.locator('[data-part=said]')).toContainText('Copied');
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  const scene = sceneOf(visitorComparison);
  const band = bandBehind(scene, 'more');
  expect(band.join(' ')).toMatch(/nine chances in ten/);
  expect(copied).toBe(comparisonMarkdown(scene, new URL(`/compare/${visitorLink}`, baseURL).href, band));
  await page.goto('/explained/');
  await unfold(page);
  await expect(page.locator('main').getByRole('link', { name: 'Print one page' })).toBeVisible();
});

test('the sheet is one page of A4 and of Letter with two knives and with eight, its words selectable', async ({
  page,
}) => {
  const [first, second] = visitorComparison.knives;
  if (!first || !second) throw new Error('the visitor has two knives');
  const eight = [
    first,
    second,
    ...Array.from({ length: 6 }, (_, index) => ({
      ...first,
      id: `more-${index}`,
      name: `Tern no. ${index + 3}`,
    })),
  ];
  // What browsers leave about a page of their own accord.
  const margin = { top: '10mm', right: '10mm', bottom: '10mm', left: '10mm' };
  for (const entry of [visitorComparison, { ...visitorComparison, knives: eight }]) {
    await page.goto('about:blank');
    await page.goto(`/sheet/${encodeLink(entry)}`);
    await live(page);
    for (const format of ['A4', 'Letter']) {
      const pages = await pdfPages(await page.pdf({ format, margin }));
      expect(pages.length, `${format}, ${entry.knives.length} knives`).toBe(1);
      for (const words of [
        visitorComparison.title,
        'Tern',
        'Knot',
        'Quick sum',
        'is the middle',
        'not a measurement',
      ])
        expect(pages[0]).toContain(words);
    }
  }
});
