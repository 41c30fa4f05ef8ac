import { expect, live, test } from './test.ts';
import { visitorLink } from './visitor.ts';

test('a comparison in the address goes along through header, list, neighbours and footer, by key and in a new tab', async ({
  page,
  context,
}) => {
  await page.goto(`/compare/${visitorLink}`);
  await live(page);
  const learn = page.locator('header.site').getByRole('link', { name: 'Learn' });
  await expect(learn).toHaveAttribute('href', /lessons\/#with=/);
  // Pages that show no comparison are left alone.
  for (const name of ['Words', 'Sources', 'Teach'])
    await expect(page.locator('header.site').getByRole('link', { name })).toHaveAttribute('href', /\/$/);

  await learn.focus();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/lessons\/#with=/);
  const lesson = page.locator('.course a').nth(3);
  // The address may change before the page's script has run.
  await expect(lesson).toHaveAttribute('href', /#with=/);
  await lesson.focus();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/lessons\/two-routes\/#with=/);
  await expect(page.locator('.whose.own').first()).toContainText('Tern');

  // What the visitor changes on the way goes along as well.
  const next = page.locator('a[rel=next]');
  await expect(next).toHaveAttribute('href', /#with=/);
  const before = await next.getAttribute('href');
  const slider = page.locator('main input[type=range]').first();
  await slider.focus();
  await slider.press('ArrowRight');
  await expect(next).not.toHaveAttribute('href', before ?? '');

  const opened = context.waitForEvent('page');
  await next.click({ modifiers: ['ControlOrMeta'] });
  const tab = await opened;
  await expect(tab.locator('.whose.own').first()).toContainText('Tern');
  await expect(tab).toHaveURL(/\/lessons\/what-a-grit-is\/#with=/);
  await tab.close();

  await page.locator('footer').getByRole('link', { name: 'Argue with it' }).click();
  await expect(page).toHaveURL(/\/argue\/#with=/);
  await expect(page.locator('.whose.own').first()).toContainText('Tern');
});

test('without a comparison of a visitor no way on carries one, and knives kept on this machine count as theirs', async ({
  page,
}) => {
  await page.goto('/lessons/two-routes/');
  await page.locator('main input[type=range]').first().focus();
  await live(page);
  await page.keyboard.press('ArrowRight');
  await page.waitForTimeout(500);
  expect(await page.locator('[data-carries][href*="#with="]').count()).toBe(0);

  await page.goto('/compare/');
  await live(page);
  const sealed = page.locator('footer').getByRole('link', { name: 'Seal a prediction' });
  await expect(sealed).toHaveAttribute('href', '/seal/');
  await page.locator('[data-field="name"] input').first().fill('Whimbrel');
  await expect(sealed).toHaveAttribute('href', /\/seal\/#with=/);
  await page.goto('/');
  await page.goto('/compare/');
  await expect(sealed).toHaveAttribute('href', /\/seal\/#with=/);
  await sealed.click();
  await expect(page.locator('main')).toContainText('Whimbrel');
});
