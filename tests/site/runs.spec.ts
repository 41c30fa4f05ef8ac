import { readFileSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { decodeLink, encodeLink } from '../../src/comparison/link/codec.ts';
import { aRun } from '../runs/runs.ts';
import { expect, live, test } from './test.ts';
import { visitorComparison } from './visitor.ts';

const verdict = (page: Page) => page.locator('.runs-verdict');
const said = (page: Page) => page.locator('[data-part=said]').first();
const rows = (page: Page) => page.locator('[data-part=log] tbody tr');

async function open(page: Page, hash = ''): Promise<void> {
  await page.goto(`/test/${hash}`);
  await live(page);
}

/** Reads a text by paste, and takes it in place of the log. */
async function paste(page: Page, text: string): Promise<void> {
  await page.locator('#pasted').fill(text);
  await page.getByRole('button', { name: 'Look at it' }).click();
  await expect(page.locator('[data-part=found]')).toBeVisible();
}

const german = [
  'Messer;Lot;Schnitte;Winkel',
  ...[120, 150, 180].map((cuts) => `Dunlin;Rolle 1;${cuts};14,5`),
  ...[60, 75, 90].map((cuts) => `Plover;Rolle 1;${cuts};24,0`),
  'Plover;Rolle 1;viele;24,0',
].join('\r\n');

test('cells pasted from a spreadsheet are shown, confirmed, taken, judged, linked and undone', async ({
  page,
  browser,
}) => {
  await open(page);
  const before = await rows(page).count();
  await paste(page, german);
  await expect(page.locator('[data-part=found-said]')).toContainText(
    '4 columns with semicolons between them',
  );
  // Two headers no one can know: they are said, and set by hand.
  await expect(page.locator('[data-part=questions]')).toContainText('Messer');
  await page.getByLabel('Column 1, “Messer”, is').selectOption('knife');
  await page.getByLabel('Column 3, “Schnitte”, is').selectOption('cuts');
  await page.getByLabel('Column 4, “Winkel”, is').selectOption('angleDeg');
  await expect(page.locator('[data-part=found-said]')).toContainText('a decimal comma');
  await expect(page.locator('[data-part=found-said]')).toContainText(
    'not recorded: sharpening, end point, looked every',
  );
  await page.getByRole('button', { name: 'Put them in place of the log' }).click();
  await expect(page.locator('[data-part=import-said]')).toContainText('6 runs read, 1 problem');
  await expect(page.locator('[data-part=line-problems]')).toContainText('Line 8: cuts:');
  await expect(rows(page)).toHaveCount(6);
  await expect(verdict(page)).toContainText('a real difference: Dunlin lasts longer');
  await expect(verdict(page)).toContainText('2 is the middle');
  await expect(page.locator('[data-part=invented]')).toBeHidden();

  await expect(page).toHaveURL(/#with=/);
  const other = await (await browser.newContext()).newPage();
  await other.goto(page.url());
  await expect(verdict(other)).toContainText('2 is the middle');
  await expect(other.locator('[data-part=log] tbody tr')).toHaveCount(6);
  await other.context().close();

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(rows(page)).toHaveCount(before);
});

test('one column cannot be two things', async ({ page }) => {
  await open(page);
  await paste(page, 'knife,lot,cuts,more\nDunlin,a,12,13');
  await page.getByLabel('Column 4, “more”, is').selectOption('cuts');
  await expect(page.locator('[data-part=import-problem]')).toContainText('Two columns cannot be the same');
  await page.getByLabel('Column 4, “more”, is').selectOption('');
  await expect(page.locator('[data-part=import-problem]')).toBeEmpty();
});

test('a run is typed, changed and taken out by keyboard alone', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Empty the log' }).focus();
  await page.keyboard.press('Enter');
  await expect(verdict(page)).toContainText('no life of Dunlin and none of Plover yet');
  await page.locator('#run-knife').focus();
  await page.keyboard.press('D');
  await page.keyboard.press('Tab');
  await page.keyboard.type('12O');
  await page.keyboard.press('Enter');
  await expect(page.locator('#run-reach')).toBeFocused();
  await expect(page.locator('#run-reach-problem')).toContainText('letter O for zero');
  await page.locator('#run-reach').fill('120');
  await page.keyboard.press('Enter');
  await expect(said(page)).toContainText('Added: Dunlin');
  await expect(page.locator('#run-reach')).toBeFocused();
  await expect(verdict(page)).toContainText('Only Dunlin has runs');

  await page.getByRole('button', { name: 'Change: Dunlin, 120 cuts' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('#run-reach')).toHaveValue('120');
  await page.locator('#run-reach').fill('130');
  await page.keyboard.press('Enter');
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page).first()).toContainText('130 cuts');
  await page.getByRole('button', { name: 'Take out: Dunlin, 130 cuts' }).focus();
  await page.keyboard.press('Enter');
  await expect(rows(page)).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(rows(page)).toHaveCount(1);
});

test('the plan follows its fields, and a bad number leaves the last good one', async ({ page }) => {
  await open(page);
  const needed = page.locator('kf-words[of=runs-needed]');
  await page.locator('#plan-cv').fill('20');
  await page.locator('#plan-ratio').fill('1,2');
  // Exact power of the t test within three batches at CV 20% and ratio 1.2, for six pairs at once: 31 a knife.
  await expect(needed).toContainText('takes 31 sharpenings of each');
  await expect(page.locator('[data-part=sheet] tbody tr')).toHaveCount(132);
  await page.locator('#plan-ratio').fill('0');
  await page.keyboard.press('Tab');
  await expect(page.locator('[data-field=ratio] .problem')).toContainText('not between 1.01 and 20');
  await expect(needed).toContainText('takes 31 sharpenings of each');
  await expect(page.locator('kf-figure[of=plan-curve] .drawing:visible svg')).toHaveAttribute(
    'aria-label',
    /31 sharpenings/,
  );
});

test('the sheet shows codes, its key apart; each prints on its own', async ({ page }) => {
  await open(page);
  await page.evaluate(() => (window.print = () => undefined));
  const cells = await page.locator('[data-part=sheet] tbody td:nth-child(3)').allTextContents();
  expect(cells.length).toBeGreaterThan(10);
  for (const cell of cells) expect(cell).toMatch(/^[A-Z]{2}\d{2}$/);
  await page.getByRole('button', { name: 'Close the log' }).click();
  await page.emulateMedia({ media: 'print' });
  await page.getByRole('button', { name: 'Print the sheet', includeHidden: true }).dispatchEvent('click');
  await expect(page.locator('[data-part=sheet]')).toBeVisible();
  await expect(page.locator('[data-part=key]')).toBeHidden();
  await expect(page.locator('[data-part=log]')).toBeHidden();
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.getByRole('button', { name: 'Print the key', includeHidden: true }).dispatchEvent('click');
  await expect(page.locator('[data-part=key]')).toBeVisible();
  await expect(page.locator('[data-part=sheet]')).toBeHidden();
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  for (const part of ['log', 'sheet', 'key']) await expect(page.locator(`[data-part=${part}]`)).toBeVisible();
});

test('the key opens when the log is closed, and gives coded runs their knives', async ({ page }) => {
  await open(page);
  const log = page.locator('kf-words[of=runs-entered]');
  const key = page.locator('[data-part=key]');
  const printKey = page.getByRole('button', { name: 'Print the key' });
  await expect(key).toBeHidden();
  await expect(printKey).toBeDisabled();
  await expect(page.locator('[data-part=key-shut]')).toContainText('It opens when the log is closed');
  await expect(page.locator('[data-part=key-shut]')).toContainText('not from intent');

  await page.getByRole('button', { name: 'Empty the log' }).click();
  const code = await page.locator('[data-part=sheet] tbody td:nth-child(3)').first().textContent();
  await page.locator('#run-knife').selectOption(code);
  await page.locator('#run-reach').fill('120');
  await page.locator('#run-reach').press('Enter');
  await expect(log).toContainText(`Runs under ${code} get their knives when the log is closed`);
  // The next run is of the same code until another is chosen.
  await expect(page.locator('#run-knife')).toHaveValue(code ?? '');

  await page.getByRole('button', { name: 'Close the log' }).focus();
  await page.keyboard.press('Enter');
  await expect(said(page)).toContainText('1 of its runs had codes');
  await expect(page.locator('[data-part=key-open] summary')).toBeFocused();
  await expect(key).toBeVisible();
  await expect(printKey).toBeEnabled();
  const knife = key
    .locator('tbody tr', { hasText: code ?? '?' })
    .locator('td')
    .nth(1);
  await expect(rows(page).locator('th')).toHaveText((await knife.textContent()) ?? '?');
  await expect(rows(page).getByRole('button')).toHaveCount(0);
  await expect(page.locator('#run-reach')).toHaveJSProperty('readOnly', true);
  for (const name of ['Add this run', 'Empty the log', 'Another order'])
    await expect(page.getByRole('button', { name })).toBeDisabled();
  await expect(page.locator('#plan-seed')).toHaveJSProperty('readOnly', true);

  // It stays closed in its link.
  await expect
    .poll(() => {
      const read = decodeLink(new URL(page.url()).hash);
      return read.ok && read.entry.plan?.closed;
    })
    .toBe(true);
  await page.reload();
  await live(page);
  await expect(log).toContainText('The log is closed');
  await page.getByRole('button', { name: 'Open the log again' }).click();
  await expect(log).toContainText('opened again after its key was seen');
  await expect(key).toBeHidden();
  await expect(page.locator('#run-reach')).toHaveJSProperty('readOnly', false);
  await expect(rows(page).getByRole('button')).toHaveCount(2);
});

test('runs too many for a link come back after a reload, and in their file', async ({ page }) => {
  await open(page);
  const many = Array.from(
    { length: 1500 },
    (_, index) =>
      `${index % 2 ? 'Dunlin' : 'Plover'},lot ${index % 7},s${(index * 7919) % 1013}.${index},${100 + ((index * 104_729) % 503)}`,
  );
  await paste(page, ['knife,lot,sharpening,cuts', ...many].join('\n'));
  await page.getByRole('button', { name: 'Put them in place of the log' }).click();
  await expect(page.locator('[data-part=import-said]')).toContainText('1,500 runs read');
  await expect(page.locator('[data-part=more-text]')).toContainText('The first 100 of 1500');
  await expect(page).toHaveURL(/#with=/);
  await expect(verdict(page)).toContainText('as good as equal');
  const described = await verdict(page).textContent();
  await page.reload();
  await live(page);
  await expect(verdict(page)).toHaveText(described ?? '?');
  await expect(page.locator('#address-message')).toBeHidden();

  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as file' }).click(),
  ]);
  const text = readFileSync(await saved.path(), 'utf8');
  await page.getByRole('button', { name: 'Empty the log' }).click();
  await page
    .locator('#log-file')
    .setInputFiles({ name: 'saved.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(page.locator('[data-part=import-said]')).toContainText('1500 runs');
  await expect(verdict(page)).toHaveText(described ?? '?');
});

test('a million rows are read without the page standing still, and can be stopped', async ({
  page,
}, info) => {
  await open(page);
  const log = (many: number) =>
    `knife,lot,sharpening,cuts\n${Array.from({ length: many }, (_, index) => `Dunlin,coil ${index % 9},${index},${100 + (index % 97)}\n`).join('')}`;
  const path = info.outputPath('long.csv');
  writeFileSync(path, log(1_000_000));
  await page.locator('#log-file').setInputFiles(path);
  const [worker] = await Promise.all([
    page.waitForEvent('worker'),
    page.getByRole('button', { name: 'Add these runs' }).click(),
  ]);
  expect(new URL(worker.url()).origin).toBe(new URL(page.url()).origin);
  await expect(page.locator('[data-part=progress-said]')).toContainText(/\d,\d{3} rows read/);
  // The page goes on answering meanwhile.
  await page.getByLabel('Knife looked at').selectOption('curlew');
  await expect(verdict(page)).toContainText('Curlew lasted');
  await page.getByRole('button', { name: 'Stop reading' }).click();
  await expect(page.locator('[data-part=import-said]')).toContainText('Stopped. Nothing was taken.');

  await page
    .locator('#log-file')
    .setInputFiles({ name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(log(3000)) });
  await page.getByRole('button', { name: 'Add these runs' }).click();
  await expect(page.locator('[data-part=import-said]')).toContainText('3,000 runs read');
  await expect(page.locator('[data-part=import-said]')).toContainText(
    'Nothing was taken: a comparison carries at most 2,000',
  );

  // Pasted, such a text never enters the field, which would stand still with it.
  await page.locator('#pasted').focus();
  await page.evaluate((text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    const paste = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
    document.querySelector('#pasted')?.dispatchEvent(paste);
  }, log(20_000));
  await expect(page.locator('[data-part=found-said]')).toContainText('too long to show in the field');
  await expect(page.locator('#pasted')).toHaveValue('');
  await page.getByRole('button', { name: 'Add these runs' }).click();
  await expect(page.locator('[data-part=import-said]')).toContainText('20,000 runs read');
});

test('what was published and is corrected is said number by number, and stays in the comparison', async ({
  page,
}) => {
  await open(page);
  await paste(
    page,
    [
      'knife,sharpening,cuts',
      ...[120, 150, 180, 140, 160].map((cuts, i) => `Dunlin,${i},${cuts}`),
      ...[60, 75, 90, 70, 80].map((cuts, i) => `Plover,${i},${cuts}`),
    ].join('\n'),
  );
  await page.getByRole('button', { name: 'Put them in place of the log' }).click();
  // Two knives by five runs: a verdict, an interval, the squared picture.
  await expect(verdict(page)).toContainText('a real difference: Dunlin lasts longer');
  await expect(verdict(page)).toContainText('times as long as Plover');
  await expect(page.locator('kf-figure[of=squared] .drawing:visible svg')).toHaveAttribute(
    'aria-label',
    /Measured over predicted/,
  );
  await expect(page).toHaveURL(/#with=/);
  const published = page.url();

  await page.getByRole('button', { name: 'Change: Dunlin, 120 cuts' }).click();
  await expect(page.locator('#run-reach')).toHaveValue('120');
  await page.locator('#run-reach').fill('125');
  await page.locator('#run-reach').press('Enter');
  await page.locator('#published').fill('no link');
  await page.getByRole('button', { name: 'What changed?' }).click();
  await expect(page.locator('#published-problem')).toContainText('no link of a comparison');
  await page.locator('#published').fill(published);
  await page.locator('#published').press('Enter');
  const changed = page.locator('[data-part=changed] li');
  await expect(changed.first()).toHaveText(
    'Dunlin, sharpening 0, until the end point, cuts: 120 before, 125 now.',
  );
  await expect(changed.nth(1)).toContainText('by the runs, times as long: 2 before, 2.02 now.');
  await page.getByRole('button', { name: 'Keep them' }).click();
  await expect(page.locator('#corrected-on-problem')).toContainText('is no day');
  await page.locator('#corrected-on').fill('2026-11-25');
  await page.locator('#corrected-why').fill('A slip of the pen.');
  await page.getByRole('button', { name: 'Keep them' }).click();
  const history = page.locator('[data-part=history] li');
  await expect(history).toContainText('2026-11-25: A slip of the pen. Dunlin, sharpening 0');
  await expect(rows(page)).toHaveCount(10);
});

test('the figures are numbered as they are read, with readings in the log and without, and with script off', async ({
  page,
  browser,
  baseURL,
}) => {
  const numbers = (shown: Page) =>
    shown.locator('.details [data-part="number"]').filter({ visible: true }).allInnerTexts();
  const upTo = (last: number) => Array.from({ length: last }, (_, index) => `Figure ${index + 1}`);
  const without = await browser.newContext({ javaScriptEnabled: false, ...(baseURL ? { baseURL } : {}) });
  const still = await without.newPage();
  await still.goto('/test/');
  expect(await numbers(still)).toEqual(upTo(3));
  await without.close();

  const runs = ['tern', 'knot'].map((knife, index) => {
    const { cuts: _cuts, ...run } = aRun({ knife, sharpening: '1' });
    return {
      ...run,
      series: [0, 10, 30, 100].map((cut) => ({ cut, sharpness: 90 - (index + 1) * 0.2 * cut })),
    };
  });
  await open(page, encodeLink({ ...visitorComparison, runs }));
  await expect.poll(() => numbers(page)).toEqual(upTo(7));
  const regions = page.getByRole('region', { name: /^Numbers of figure/, includeHidden: true });
  expect(await regions.evaluateAll((all) => all.map((region) => region.ariaLabel))).toEqual(
    upTo(7).map((name) => `Numbers of ${name.toLowerCase()}`),
  );
  await page.emulateMedia({ media: 'print' });
  expect(await numbers(page)).toEqual(upTo(7));
  await page.emulateMedia({ media: 'screen' });
  await page.locator('[data-act=empty]').click();
  await expect.poll(() => numbers(page)).toEqual(upTo(3));
});
