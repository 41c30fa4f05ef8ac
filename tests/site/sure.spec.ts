import type { Locator, Page } from '@playwright/test';
import { expect, live, test, unfold } from './test.ts';
import { visitorComparison, visitorLink } from './visitor.ts';
import { encodeLink } from '../../src/comparison/link/codec.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';

const band = (page: Page) => page.locator('kf-words[of=band]');
const answer = (page: Page) => page.locator('.answer-line');
const dots = (page: Page) => page.locator('kf-figure[of=quantile-dots] .drawing:visible .kf-chance circle');

test('the band comes with another comparison, never with the example’s numbers, and the dots can be chosen', async ({
  page,
}) => {
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.goto('/compare/');
  await live(page);
  await page.waitForLoadState('networkidle');
  await unfold(page, 'sure');
  await expect(band(page)).toContainText('nine chances in ten that Dunlin cuts');
  await expect(dots(page)).toHaveCount(50);
  // What is shown of the example was built, so nothing of the topic is fetched for it.
  expect(fetched.filter((url) => /\/(quantile|how-sure)\b/.test(url))).toEqual([]);
  await page.getByLabel('How many dots').selectOption('20');
  await expect(dots(page)).toHaveCount(20);
  await page.getByLabel('How many dots').selectOption('100');
  await expect(dots(page)).toHaveCount(100);

  const before = (await band(page).textContent()) ?? '';
  await page.locator('[data-knife=dunlin] [data-field=angle] input').fill('13');
  await expect(band(page)).not.toHaveText(before);
  await expect(dots(page)).toHaveCount(100);
});

/** Two knives with a degree between them, and a gauge that is a degree off either way. */
const alike: ComparisonEntry = {
  ...visitorComparison,
  knives: visitorComparison.knives.map((knife, index) => ({
    ...knife,
    angle: { deg: { value: 19 + index, plusMinus: 1.5 } },
    edgeMm: { value: 0.42, plusMinus: 0.03 },
    grind: { form: 'flat', spineMm: 2.2, heightMm: 21 },
    finish: { scale: 'JIS', grit: 1000 },
  })),
};

for (const path of ['/lessons/forty-and-forty/', '/lessons/where-it-stops/', '/embed/chain/'])
  test(`${path} says the visitor’s whole ratio with its band, as Compare does`, async ({ page }) => {
    await page.goto(`/compare/${visitorLink}`);
    await expect(answer(page)).toContainText('Tern');
    const [span = 'none'] =
      /[\d.]+ to [\d.]+ times as long as Knot/.exec((await answer(page).textContent()) ?? '') ?? [];
    await page.goto(`${path}${visitorLink}`);
    const whole = page.locator('kf-words[of=whole-band]');
    await expect(whole).toContainText('Tern should cut');
    await expect(whole).toContainText(span);
    await expect(whole).not.toContainText('Dunlin');
  });

test('two knives whose bands overlap are said not to be distinguished', async ({ page }) => {
  await page.goto(`/compare/${encodeLink(alike)}`);
  await live(page);
  await unfold(page, 'sure');
  await expect(band(page)).toContainText('By the model Tern and Knot can’t be told apart');
  await expect(band(page)).not.toContainText('Dunlin');
  await expect(page.locator('kf-figure[of=quantile-dots] [data-part=caption]')).toContainText('Tern');
  await expect(page.locator('kf-figure[of=what-matters] [data-part=caption]')).toContainText(
    'The largest part of the doubt about Tern',
  );
});

test('the fields of the assumptions: exact ones leave no band, a cleared one widens it, a bad one says why', async ({
  page,
}) => {
  await page.goto('/compare/');
  await live(page);
  await unfold(page);
  const ofKnife = (knife: string, name: string) =>
    page.locator(`[data-knife=${knife}] [data-field=${name}] :is(input, select)`);
  const ofAll = (name: string) => page.locator(`.work [data-field=${name}]`);
  for (const [knife, angle, edge, hrc] of [
    ['plover', '24', '0.6', '57'],
    ['dunlin', '14', '0.25', '61'],
  ] as const) {
    await ofKnife(knife, 'angle').fill(angle);
    await ofKnife(knife, 'edge').fill(edge);
    await ofKnife(knife, 'hrc').fill(hrc);
  }
  await ofKnife('dunlin', 'steel').selectOption('volume');
  await ofKnife('dunlin', 'carbideCrC').fill('13');
  const exact = { friction: '0.25', angleExponent: '1.3', thicknessExponent: '0.5', finishExponent: '0.3' };
  for (const [name, text] of Object.entries(exact)) await ofAll(name).locator('input').fill(text);
  const structure = {
    lifeExponent: '1.5',
    wedgingShare: '0.35',
    limitPower: '1.5',
    structureWeights: '1 : 0 : 0',
  };
  for (const [name, text] of Object.entries(structure)) await ofAll(name).locator('input').fill(text);
  await ofAll('residualCv').locator('input').fill('0');
  await page.keyboard.press('Tab');
  await expect(band(page)).toContainText('Nothing about Dunlin and Plover is left uncertain');
  await expect(page.locator('#sure > summary')).toContainText('nothing is left uncertain');
  // The loft at the middle settings, all multiplied: 16.06 with its own grinds; own calculation.
  await expect(band(page)).toContainText('no range: 16.');
  await expect(page.locator('kf-figure[of=what-matters] [data-part=caption]')).toContainText(
    'nothing widens the range',
  );

  // Cleared with the keyboard alone: it says that it is not known, and only that makes the band.
  await ofAll('finishExponent').locator('input').focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Delete');
  await page.keyboard.press('Tab');
  await expect(ofAll('finishExponent').locator('input')).toHaveValue('not known (0–0.7)');
  await expect(band(page)).toContainText('Left open for all knives: what finish is worth.');
  await expect(page.locator('kf-figure[of=what-matters] [data-part=caption]')).toContainText(
    'what finish is worth',
  );
  await ofKnife('dunlin', 'carbideCrC').fill('');
  await page.keyboard.press('Tab');
  await expect(ofKnife('dunlin', 'carbideCrC')).toHaveValue('');
  await expect(page.locator('kf-words[of=notes]').first()).toContainText(
    'The carbide volume of Dunlin isn’t known.',
  );
  await ofAll('gaugeAngle').locator('input').fill('2');
  await expect(page.locator('kf-figure[of=what-matters] table')).toContainText('common error of the angle');

  const before = (await band(page).textContent()) ?? '';
  for (const [name, text, message] of [
    ['gaugeAngle', '25', /not between 0° and 20°/],
    ['residualCv', '140', /140% is not between 0% and 100%/],
    ['thicknessExponent', 'half', /not readable/],
  ] as const) {
    await ofAll(name).locator('input').fill(text);
    await page.keyboard.press('Tab');
    await expect(ofAll(name).locator('.problem')).toHaveText(message);
  }
  await expect(band(page)).toHaveText(before);
});

const plusMinusOf = async (said: Locator): Promise<number> =>
  Number(/± ([\d.]+)% by volume/.exec((await said.textContent()) ?? '')?.[1]);

test('carbide from composition: typed by keyboard, drawn, put into the comparison with its ±, and undone', async ({
  page,
}) => {
  await page.goto('/compare/');
  await live(page);
  // Led to from where the steel is chosen.
  await page.getByRole('link', { name: 'from its composition' }).click();
  const part = page.locator('kf-composition');
  const said = part.locator('[data-part=said]');
  await expect(said).toContainText('with the temperature not known');
  const open = (await said.textContent()) ?? '';
  await part.getByRole('textbox', { name: 'Hardened from' }).focus();
  await page.keyboard.type('1050');
  await page.keyboard.press('Tab');
  await expect(said).toContainText('hardened from 1050 °C');
  await expect(said).not.toHaveText(open);
  const drawing = part.locator('.drawing[data-size=wide] svg');
  await expect(drawing).toHaveAttribute('aria-label', /hardened from 1050 °C/);
  await expect(part.locator('table')).toContainText('from 1050 °C');

  // What cannot be used is said at its field; the last good drawing stays, and nothing is taken.
  const take = part.getByRole('button', { name: 'Take it as the carbide of Dunlin' });
  const carbide = page.locator('[data-knife=dunlin] [data-field=steel] select');
  await part.getByRole('textbox', { name: 'Chromium' }).fill('40');
  await take.click();
  await expect(page.locator('#composition-chromium-problem')).toHaveText(/not between 0% and 18%/);
  await expect(drawing).toHaveAttribute('aria-label', /hardened from 1050 °C/);
  await expect(carbide).toHaveValue('AISI D2');

  // Emptied, it is not known: no refusal, a wider ±, and the sentence and the drawing name it.
  await part.getByRole('textbox', { name: 'Chromium' }).fill('12');
  await expect(page.locator('#composition-chromium-problem')).toHaveText('');
  const known = await plusMinusOf(said);
  await part.getByRole('textbox', { name: 'Chromium' }).fill('');
  await page.keyboard.press('Tab');
  await expect(page.locator('#composition-chromium-problem')).toHaveText('');
  await expect(said).toContainText('Not known, which widens the ±: chromium from 0 to 17%.');
  expect(await plusMinusOf(said)).toBeGreaterThan(known);
  await expect(drawing).toHaveAttribute('aria-label', /Of chromium, not known, the middle is drawn/);
  await take.click();
  const put = page.locator('[data-knife=dunlin] [data-field=carbideCrC] input');
  await expect(put).toHaveValue(/^\d.* ± \d/);
  expect(Number((await put.inputValue()).split('±')[1])).toBeGreaterThan(known);
  await page.getByRole('button', { name: 'Undo' }).click();

  await part.getByLabel('Begin with').selectOption('AISI 52100');
  await expect(part.getByRole('textbox', { name: 'Chromium' })).toHaveValue('1.45');
  await expect(part.getByRole('textbox', { name: 'Hardened from' })).toHaveValue('');
  await expect(drawing).toHaveAttribute('aria-label', /Fe3C/);
  await take.focus();
  await page.keyboard.press('Enter');
  await expect(part.locator('[data-part=put-said]')).toContainText('The carbide of Dunlin is now');
  await expect(carbide).toHaveValue('volume');
  await expect(page.locator('[data-knife=dunlin] [data-field=carbideFe3C] input')).toHaveValue(/^\d.* ± \d/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(carbide).toHaveValue('AISI D2');
});

test('the steel of the loft is worked out without script', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL: baseURL ?? '' });
  const page = await context.newPage();
  await page.goto('/compare/');
  for (const fold of ['more', 'composition']) await page.locator(`#${fold} > summary`).click();
  const part = page.locator('#composition');
  await expect(part.locator('noscript p')).toBeVisible();
  await expect(part.locator('[data-part=said]')).toContainText('Carbide with the temperature not known');
  await expect(part.locator('.drawing[data-size=wide] svg')).toBeVisible();
  await expect(part.locator('input').first()).toBeHidden();
  await context.close();
});
