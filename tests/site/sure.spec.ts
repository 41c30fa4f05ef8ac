import type { Page } from '@playwright/test';
import { expect, live, test } from './test.ts';
import { visitorLineUp } from './visitor.ts';
import { encodeLink } from '../../src/lineup/link.ts';
import type { LineUpEntry } from '../../src/lineup/schema.ts';

const band = (page: Page) => page.locator('kf-words[of=band]');
const headline = (page: Page) => page.locator('kf-words[of=answer-band]');
const dots = (page: Page) =>
  page.locator('kf-figure[of=quantile-dots] .drawing[data-size=wide] .kf-chance circle');

test('the band comes with another line-up, never with the example’s numbers, and the dots can be chosen', async ({
  page,
}) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto('/bench/');
  await live(page);
  await page.waitForLoadState('networkidle');
  await expect(band(page)).toContainText('Dunlin against Plover');
  await expect(dots(page)).toHaveCount(50);
  // What is shown of the example was built, so nothing of the topic is fetched for it.
  expect(fetched.filter((url) => /quantile|sure/.test(url))).toEqual([]);
  await page.getByLabel('How many dots').selectOption('20');
  await expect(dots(page)).toHaveCount(20);
  await page.getByLabel('How many dots').selectOption('100');
  await expect(dots(page)).toHaveCount(100);

  const before = (await band(page).textContent()) ?? '';
  await page.locator('[data-knife=dunlin] [data-field=angle] input').fill('13');
  await expect(band(page)).not.toHaveText(before);
  await expect(headline(page)).toContainText('nine samples of ten');
  await expect(dots(page)).toHaveCount(100);
});

/** Two knives with a degree between them, and a gauge that is a degree off either way. */
const alike: LineUpEntry = {
  ...visitorLineUp,
  knives: visitorLineUp.knives.map((knife, index) => ({
    ...knife,
    angle: { deg: { value: 19 + index, plusMinus: 1.5 } },
    edgeMm: { value: 0.42, plusMinus: 0.03 },
    grind: { form: 'flat', spineMm: 2.2, heightMm: 21 },
    finish: { scale: 'JIS', grit: 1000 },
  })),
};

test('two knives whose bands overlap are said not to be told apart', async ({ page }) => {
  await page.goto(`/bench/${encodeLink(alike)}`);
  await live(page);
  await expect(band(page)).toContainText('The model does not tell Tern and Knot apart');
  await expect(headline(page)).toContainText('does not tell Tern and Knot apart');
  await expect(band(page)).not.toContainText('Dunlin');
  await expect(page.locator('kf-figure[of=quantile-dots] [data-part=caption]')).toContainText('Tern');
  await expect(page.locator('kf-words[of=band-matters]')).toContainText('Most of the spread between Tern');
});
