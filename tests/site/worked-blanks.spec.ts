import { expect, live, test } from './test.ts';

const lesson = '/lessons/forty-and-forty/';
const fill = 'Fill in the steps yourself';

test('the steps of a worked example are filled in by keyboard, shown one by one, and shown whole', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  const scripts: string[] = [];
  page.on('request', (request) => scripts.push(request.url()));
  await page.goto(lesson);
  const worked = page.locator('kf-worked').first();
  const whole = await worked.locator('ol').innerText();
  const button = worked.getByRole('button', { name: fill });
  await button.focus();
  await live(page);
  // What asks is fetched when it is asked for.
  expect(scripts.filter((url) => url.includes('worked-blanks'))).toEqual([]);
  await page.keyboard.press('Enter');
  const first = worked.getByRole('textbox', { name: 'Result 1 of step 1' });
  await expect(first).toBeFocused();
  expect(scripts.filter((url) => url.includes('worked-blanks'))).toHaveLength(1);
  const open = worked.locator('li[data-blank=open]');
  await expect(open).toHaveCount(1);
  await expect(worked.locator('li:visible')).toHaveCount(1);
  await expect(open.locator('math:visible')).toContainText('□');
  const results = (index: number): Promise<string[]> =>
    worked
      .locator('ol > li')
      .nth(index)
      .locator('> .formula mo')
      .evaluateAll((signs) =>
        signs
          .filter(({ textContent }) => textContent === '=' || textContent === '≈')
          .map(({ nextElementSibling }) => nextElementSibling?.textContent ?? ''),
      );
  const [one = '', two = ''] = await results(0);

  await page.keyboard.type('0');
  await page.keyboard.press('Enter');
  await expect(first).toHaveAttribute('aria-invalid', 'true');
  await expect(open.getByRole('status').first()).toContainText('Not yet');
  await expect(open.getByRole('status').nth(1)).toContainText('Nothing is written yet');
  await expect(first).toBeFocused();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(one.replace('.', ','));
  await page.keyboard.press('Tab');
  await page.keyboard.type(`${two} times`);
  await page.keyboard.press('Enter');
  const step1 = worked.locator('ol > li').first();
  await expect(step1.getByRole('status').first()).toHaveText(`Yes: ${one}.`);
  await expect(step1.locator('math:visible')).toHaveCount(1);
  await expect(step1.locator('math:visible')).not.toContainText('□');
  await expect(worked.getByRole('textbox', { name: 'Result of step 2' })).toBeFocused();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);

  // On paper it is whole, whatever is open.
  await page.emulateMedia({ media: 'print' });
  await expect(worked.locator('li:visible')).toHaveCount(4);
  await expect(worked.locator('math:visible')).toHaveCount(4);
  await expect(worked.getByText('□').filter({ visible: true })).toHaveCount(0);
  await page.emulateMedia({ media: 'screen' });
  await worked.getByRole('textbox', { name: 'Result of step 2' }).focus();

  for (const step of [2, 3, 4]) {
    const box = worked.getByRole('textbox', { name: `Result of step ${step}` });
    await expect(box).toBeFocused();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await expect(worked.getByRole('button', { name: 'Show this step' })).toBeFocused();
    await page.keyboard.press('Enter');
  }
  await expect(worked.locator('.fill').getByRole('status')).toContainText('1 of 4 you found yourself');
  await expect(worked.getByRole('button', { name: 'Show it whole' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(worked.getByRole('button', { name: fill })).toBeFocused();
  expect(await worked.locator('ol').innerText()).toBe(whole);

  // Other numbers, and the steps begin again with them.
  await page.keyboard.press('Enter');
  await expect(first).toBeFocused();
  await first.fill('7');
  const slider = page.locator('main input[type=range]').first();
  await slider.focus();
  await page.keyboard.press('ArrowRight');
  await expect(worked.locator('.fill').getByRole('status')).toContainText('begin again');
  await expect(first).toHaveValue('');
  const [changed = ''] = await results(0);
  expect(changed).not.toBe(one);
  await first.fill(changed);
  await first.press('Enter');
  await expect(open.getByRole('status').first()).toHaveText(`Yes: ${changed}.`);
});
