import { expect, live, test, unfold } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

test('a call made first is kept beside the answer, by keyboard alone', async ({ page }) => {
  await page.goto(`/explained/${visitorLink}`);
  await live(page);
  const field = page.locator('kf-call input');
  await field.focus();
  await page.keyboard.type('0.2');
  await page.keyboard.press('Enter');
  const said = page.locator('kf-call [data-part=said]');
  await expect(said).toContainText('Your call: ×0.200');
  await field.fill('many');
  await page.keyboard.press('Enter');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
});

test('the explained page is copied at three depths, each with the link that shows it', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`/explained/${visitorLink}`);
  await live(page);
  // Fetched when the reader comes near.
  await page.locator('kf-late:has(kf-retell)').scrollIntoViewIfNeeded();
  const lengths: number[] = [];
  for (const depth of ['one sentence', 'one paragraph', 'all of it']) {
    await page.getByLabel(depth, { exact: true }).check();
    await page.getByRole('button', { name: 'Copy it with its link' }).click();
    await expect(page.locator('kf-retell [data-part=said]')).toContainText('Copied');
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toContain('/explained/#with=');
    expect(copied).toContain(visitorComparison.knives[0]?.name ?? '?');
    const range =
      /[\d.]+ to [\d.]+ times as long/.exec((await page.locator('.lead').textContent()) ?? '')?.[0] ?? '?';
    expect(copied).toContain(range);
    lengths.push(copied.length);
  }
  expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
  await page.getByLabel('Markdown').check();
  await unfold(page);
  await expect(page.locator('kf-retell pre')).toContainText('## The answer');
});

test('the band is of the comparison in the address, and never of the example', async ({ page }) => {
  const band = page.locator('kf-words[of=band]');
  await page.goto('/explained/');
  await expect(band).toContainText('nine chances in ten that Dunlin cuts ');
  const example = (await band.textContent()) ?? '';
  // Touched, but with nothing changed, it stays as it was built.
  await page.locator('kf-call input').focus();
  await live(page);
  expect(await band.textContent()).toBe(example);
  await page.evaluate((hash) => (location.hash = hash), visitorLink);
  await expect(band).toContainText('nine chances in ten that Tern cuts ');
  await expect(band).not.toContainText('Dunlin');
});

test('a band that cannot be fetched is said, not left as the example', async ({ page }) => {
  await page.route('**/_astro/how-sure*.js', (route) =>
    route.fulfill({ status: 200, contentType: 'text/javascript', body: 'throw 0' }),
  );
  await page.goto(`/explained/${visitorLink}`);
  const band = page.locator('kf-words[of=band]');
  await expect(band.locator('.failed')).toBeVisible();
  await expect(band.getByText('Dunlin')).toBeHidden();
});
