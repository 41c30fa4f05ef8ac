import { expect, live, test, unfold } from './test.ts';

test('what it takes is fetched when it is touched, follows the question, and can be put into the comparison', async ({
  page,
}) => {
  const scripts: string[] = [];
  page.on('response', (response) => scripts.push(response.url()));
  const fetched = () => scripts.some((url) => /\/takes\.[^/]*js$/.test(url));
  await page.goto('/compare/');
  await live(page);
  const row = (name: string) => page.locator(`[data-attribute=${name}]`);
  await expect(row('angleDeg')).toContainText('out of reach: 4° comes to');
  await page.waitForLoadState('networkidle');
  expect(fetched()).toBe(false);
  await unfold(page, 'takes');

  // A multiple that is in reach by the angle alone.
  const target = page.locator('#takes-target');
  await target.fill('0,15');
  await expect(page.locator('kf-takes [data-part=asked]')).toContainText('0.15 times as long as Dunlin');
  expect(fetched()).toBe(true);
  await expect(row('angleDeg').getByRole('button')).toHaveText(/^Put \d/);
  // Bands come one by one, worked out beside the page.
  await expect(row('carbide').locator('td').nth(2)).toContainText('of the tries', { timeout: 20_000 });
  await expect(row('angleDeg').locator('td').nth(2)).toContainText('° to ');

  await target.fill('lots');
  await target.blur();
  await expect(page.locator('#takes-target-problem')).toContainText('is not readable');
  await expect(page.locator('kf-takes [data-part=asked]')).toContainText('0.15 times as long as Dunlin');
  await target.fill('0.15');
  await expect(page.locator('#takes-target-problem')).toBeEmpty();

  await row('angleDeg').getByRole('button').press('Enter');
  const said = page.locator('kf-takes [data-part=put-said]');
  await expect(said).toContainText('It now cuts 0.15 times as long as Dunlin. Undo takes it back.');
  await expect(row('angleDeg')).toContainText('as it is');
  await expect(page.locator('[data-part=invented]')).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row('angleDeg').locator('td').first()).toHaveText('24°');

  // The two of the question are never the same knife.
  await page.locator('#takes-knife').selectOption('dunlin');
  await expect(page.locator('#takes-against')).toHaveValue('plover');
  await expect(page.locator('kf-takes [data-part=asked]')).toContainText('Dunlin now cuts');
});

test('offers are typed, worked out, drawn and refused, and stay out of the comparison', async ({ page }) => {
  await page.goto('/compare/');
  await live(page);
  const address = page.url();
  await unfold(page, 'cost');
  const cost = page.locator('table.cost');
  const cell = (head: string, offer: number) =>
    cost.locator('tr', { hasText: head }).locator('td').nth(offer);
  await page.locator('#cost-regrind-edge').fill('');
  await page.locator('#cost-regrind-angle').fill('20');
  await expect(cell('What you do', 1)).toHaveText('to 20° per side');
  await expect(page.locator('#figure-price-gain figcaption')).toContainText(
    'The best of these offers is another steel',
  );
  const gain = await cell('Gain for each unit', 1).innerText();
  await page.locator('#cost-regrind-price').fill('5');
  await expect(cell('Price', 1)).toHaveText('5');
  await expect(cell('Gain for each unit', 1)).not.toHaveText(gain);
  await page.locator('#cost-regrind-price').fill('a few');
  await page.locator('#cost-regrind-price').blur();
  await expect(page.locator('#cost-regrind-price-problem')).toContainText('is not readable');
  await expect(cell('Price', 1)).toHaveText('5');
  await page.locator('#cost-regrind-price').fill('');
  await expect(page.locator('#cost-regrind-price-problem')).toBeEmpty();
  await page.locator('#cost-regrind-edge').fill('0.9');
  await expect(cell('What you do', 1)).toContainText('steel can’t be put on');
  // A list made longer by something else on the machine.
  const steels = page.locator('#cost-steel-designation');
  await steels.evaluate((select: HTMLSelectElement) => select.add(new Option('AISI X9')));
  await steels.selectOption('AISI X9');
  await expect(page.locator('#cost-steel-designation-problem')).toContainText('is not known here');
  await expect(cell('What you do', 2)).toContainText('AISI D2');
  await steels.selectOption('AISI D2');
  await expect(page.locator('#cost-steel-designation-problem')).toBeEmpty();
  await page.locator('#cost-knife').selectOption('dunlin');
  await expect(page.locator('#figure-price-gain [data-part=title]')).toContainText('Dunlin');
  expect(page.url()).toBe(address);
  await expect(page.locator('[data-part=invented]')).toBeVisible();
});

test('with a comparison of one’s own it says nothing of the loft, and covers the knives once it is opened', async ({
  page,
}) => {
  await page.goto('/compare/');
  await live(page);
  await page.locator('#plover-angle').fill('15');
  const waiting = page.locator('kf-late[data-waiting]:has(> kf-takes, > kf-cost)');
  await expect(waiting).toHaveCount(2);
  await expect(page.locator('kf-takes table')).toBeHidden();
  await page.locator('#takes > summary').click();
  await expect(page.locator('[data-attribute=angleDeg] td').first()).toHaveText('15°');
  await page.locator('#cost > summary').click();
  await expect(waiting).toHaveCount(0);
  await expect(page.locator('table.cost td', { hasText: 'to 16° per side' })).toHaveCount(1);
});
