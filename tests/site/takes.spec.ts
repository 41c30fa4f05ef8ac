import { expect, live, test } from './test.ts';

test('what it takes is fetched when it is touched, follows the question, and can be put into the line-up', async ({
  page,
}) => {
  const scripts: string[] = [];
  page.on('response', (response) => scripts.push(response.url()));
  const fetched = () => scripts.some((url) => /\/takes\.[^/]*js$/.test(url));
  await page.goto('/bench/');
  await live(page);
  const row = (name: string) => page.locator(`[data-attribute=${name}]`);
  await expect(row('angleDeg')).toContainText('not in reach: at 4° it comes to');
  await page.waitForLoadState('networkidle');
  expect(fetched()).toBe(false);

  // A multiple that is in reach by the angle alone.
  const target = page.locator('#takes-target');
  await target.fill('0,15');
  await expect(page.locator('[data-part=asked]')).toContainText('0.150 times as long as Dunlin');
  expect(fetched()).toBe(true);
  await expect(row('angleDeg').getByRole('button')).toHaveText(/^Put \d/);
  // Bands come one by one, worked out beside the page.
  await expect(row('carbide').locator('td').nth(2)).toContainText('of the tries', { timeout: 20_000 });
  await expect(row('angleDeg').locator('td').nth(2)).toContainText('° to ');

  await target.fill('lots');
  await target.blur();
  await expect(page.locator('#takes-target-problem')).toContainText('is not readable');
  await expect(page.locator('[data-part=asked]')).toContainText('0.150 times as long as Dunlin');
  await target.fill('0.15');
  await expect(page.locator('#takes-target-problem')).toBeEmpty();

  await row('angleDeg').getByRole('button').press('Enter');
  const said = page.locator('[data-part=put-said]');
  await expect(said).toContainText('It now cuts ×0.150 as long as Dunlin. Undo takes it back.');
  await expect(row('angleDeg')).toContainText('as it is');
  await expect(page.locator('[data-part=invented]')).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row('angleDeg').locator('td').first()).toHaveText('24°');

  // The two of the question are never the same knife.
  await page.getByLabel('Which knife changes').selectOption('dunlin');
  await expect(page.getByLabel('Against which')).toHaveValue('plover');
  await expect(page.locator('[data-part=asked]')).toContainText('Dunlin now cuts');
});

test('with a line-up of one’s own it says nothing of the loft, and speaks of the knives when one comes near', async ({
  page,
}) => {
  await page.goto('/bench/');
  await live(page);
  await page.locator('#plover-angle').fill('15');
  await expect(page.locator('kf-late[data-waiting]')).toHaveCount(1);
  await expect(page.locator('kf-takes table')).toBeHidden();
  await page.locator('#takes-title').scrollIntoViewIfNeeded();
  await expect(page.locator('[data-attribute=angleDeg] td').first()).toHaveText('15°');
  await expect(page.locator('kf-late[data-waiting]')).toHaveCount(0);
});
