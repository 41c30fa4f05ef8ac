import { expect, test } from './test.ts';

const page1 = '/lessons/forty-and-forty/';

test('a wrong idea is named with its step, tried again, and only then answered', async ({ page }) => {
  await page.goto(page1);
  const check = page.locator('kf-check').first();
  const said = check.locator('[data-part=said]');
  const box = check.getByRole('textbox').first();
  // The sum of the percentages, the commonest wrong idea: read off the question.
  const question = await check.locator('label').first().innerText();
  const sum = [...question.matchAll(/(\d+)%/g)].reduce((total, [, per]) => total + Number(per), 0);
  await box.fill(`+${sum}%`);
  await box.press('Enter');
  await expect(said).toContainText('added');
  await expect(said).toContainText('Try again');
  await expect(check.locator('[data-part=step] math')).toBeVisible();
  await expect(check.locator('details')).not.toHaveAttribute('open', /.*/);
  await box.press('Enter');
  await expect(said).toContainText('The answer is');
  await expect(check.locator('details')).toHaveAttribute('open', /.*/);
  const key = /The answer is ([\d.]+) times/.exec(await said.innerText())?.[1] ?? '';
  await box.fill(key);
  await box.press('Enter');
  await expect(said).toHaveAttribute('data-verdict', 'right');
});

test('what cannot be read is not called wrong', async ({ page }) => {
  await page.goto(page1);
  const check = page.locator('kf-check').first();
  await check.getByRole('textbox').first().fill('rather a lot');
  await check.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(check.locator('[data-part=said]')).toHaveAttribute('data-verdict', 'not readable');
  await expect(check.getByRole('textbox').first()).toHaveAttribute('aria-invalid', 'true');
});

test('there is always one more, and a step up, by the keyboard alone', async ({ page }) => {
  await page.goto(page1);
  const check = page.locator('kf-check').first();
  const question = check.locator('form[data-part=question]');
  const asked = new Set([await question.innerText()]);
  const kinds = new Set<string>();
  for (let count = 0; count < 8; count += 1) {
    const before = await question.innerText();
    await check.getByRole('button', { name: 'One more' }).press('Enter');
    await expect(question).not.toHaveText(before);
    await expect(question.locator('input').first()).toBeFocused();
    asked.add(await question.innerText());
    kinds.add((await check.getAttribute('kind')) ?? '');
  }
  expect(asked.size).toBe(9);
  expect([...kinds].sort()).toEqual(['forward-chain', 'multiply-or-add']);
  await check.getByRole('button', { name: 'A step up' }).press('Enter');
  await expect(check.locator('[data-part=level]')).toHaveText('2');
  await check.getByRole('button', { name: 'A step up' }).press('Enter');
  await expect(check.locator('[data-part=level]')).toHaveText('3');
  await expect(check.getByRole('button', { name: 'A step up' })).toBeDisabled();
});

test('the working can be filled in, each step judged by itself', async ({ page }) => {
  await page.goto(page1);
  const check = page.locator('kf-check').first();
  await check.locator('summary').click();
  const results = await check
    .locator('details math')
    .first()
    .locator('mo')
    .evaluateAll((signs) =>
      signs
        .filter(({ textContent }) => textContent === '=' || textContent === '≈')
        .map(({ nextElementSibling }) => nextElementSibling?.textContent ?? ''),
    );
  await check.getByRole('button', { name: 'Work it step by step myself' }).click();
  const step = check.locator('form[data-step="0"]');
  await expect(step.locator('math')).toContainText('□');
  await step.locator('input').first().fill('77');
  await step.getByRole('button').click();
  await expect(step.locator('input').first()).toHaveAttribute('aria-invalid', 'true');
  for (const [index, result] of results.entries()) await step.locator('input').nth(index).fill(result);
  await step.getByRole('button').click();
  await expect(step.locator('math')).not.toContainText('□');
  await expect(step.locator('[data-part=step-said]')).toContainText('Yes');
  await expect(check.locator('form[data-step="1"] input')).toBeFocused();
});

test('a choice is made among its options', async ({ page }) => {
  await page.goto(page1);
  const check = page.locator('kf-check').first();
  await check.evaluate((element) => {
    element.setAttribute('kinds', 'fair-pair');
  });
  await check.getByRole('button', { name: 'One more' }).click();
  await expect(check.getByRole('radio')).toHaveCount(4);
  await check.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(check.locator('[data-part=said]')).toHaveAttribute('data-verdict', 'not readable');
  await check.getByRole('radio').first().check();
  await check.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(check.locator('[data-part=said]')).toHaveAttribute('data-verdict', /right|misstep/);
});
