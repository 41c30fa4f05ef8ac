import type { Locator, Page } from '@playwright/test';
import { crc32, deflateRaw, toBase64Url } from '../../src/comparison/link/bytes.ts';
import { expect, live, test, unfold } from './test.ts';
import { visitorLink, visitorComparison } from './visitor.ts';

const megabytes = 2_000_000;

/** Pastes as a reader does, from the clipboard. */
async function paste(page: Page, field: Locator, text: string): Promise<void> {
  await page.evaluate((all) => navigator.clipboard.writeText(all), text);
  await field.focus();
  await page.keyboard.press('Control+V');
}

/** A link that unpacks to far more than any comparison, with a head that says otherwise. */
function bomb(): string {
  const packed = deflateRaw(new Uint8Array(6_000_000));
  const bytes = new Uint8Array(6 + packed.length);
  const head = new DataView(bytes.buffer);
  head.setUint32(0, crc32(packed));
  head.setUint16(4, packed.length);
  bytes.set(packed, 6);
  return `#with=2.${toBase64Url(bytes)}`;
}

/** Bytes that are no text, the same in every run: a linear congruential generator (Knuth). */
function noise(length: number): Buffer {
  let state = 20_261_126n;
  return Buffer.from(
    Array.from({ length }, () => {
      state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
      return Number(state >> 56n);
    }),
  );
}

const nested = '{"keenfold":"line-ups","version":1,"lineUps":['.repeat(2000);
const comparisonText = JSON.stringify(visitorComparison);

/** Files that are none of this site's. */
const files: Record<string, Buffer> = {
  'noise.json': noise(50_000),
  'empty.json': Buffer.alloc(0),
  'bomb.txt': Buffer.from(bomb()),
  'drawing.svg': Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" onload="window.struck = 1"><script>window.struck = 1</script></svg>',
  ),
  'prototype.json': Buffer.from(
    `{"keenfold":"line-ups","version":1,"__proto__":{"struck":1},"lineUps":[{"name":"x","lineUp":{"__proto__":{"struck":1},"constructor":{"prototype":{"struck":1}},${comparisonText.slice(1)}}]}`,
  ),
  'deep.json': Buffer.from(nested),
};

const unharmed = (page: Page) =>
  page.evaluate(() =>
    'struck' in window ? 'a script ran' : 'struck' in {} ? 'every object has it' : 'unharmed',
  );

test.beforeEach(async ({ context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
});

for (const [path, name] of [
  ['/class/tally/', 'before'],
  ['/explained/ask/', 'guesses'],
] as const)
  test(`${path}: two megabytes pasted are kept out, and the guesses there stay`, async ({ page }) => {
    await page.goto(path);
    await unfold(page);
    const field = page.locator(`textarea[name=${name}]`);
    await field.focus();
    await live(page);
    await field.fill('1.5\n2');
    await paste(page, field, '1.4\n'.repeat(megabytes / 4));
    await expect(page.locator('main')).toContainText('2,000,000 characters is too long for this field');
    await expect(field).toHaveValue('1.5\n2');
    await paste(page, field, '\n3');
    await expect(field).toHaveValue(/3/);
    await expect(page.locator('main')).not.toContainText('too long for this field');
  });

test('a long text in a field of one line is refused at the field', async ({ page }) => {
  await page.goto(`/compare/${visitorLink}`);
  await live(page);
  const answer = page.locator('.answer-line');
  await expect.poll(() => answer.innerText()).toContain('Tern');
  const before = await answer.innerText();
  const name = page.locator('[data-knife="tern"] [data-field="name"]');
  await paste(page, name.locator('input'), 'n'.repeat(megabytes / 10));
  await expect(page.locator('#tern-name-problem')).toContainText(/20000\d characters/);
  await unfold(page, 'corrections');
  const published = page.locator('#published');
  for (const text of [nested, bomb(), `#with=2.${'A'.repeat(megabytes / 10)}`]) {
    await published.evaluate((field: HTMLInputElement, typed) => {
      field.value = typed;
      field.form?.requestSubmit();
    }, text);
    await expect(page.locator('#published-problem')).not.toBeEmpty();
    await page.locator('#published-problem').evaluate((said) => said.replaceChildren());
  }
  expect(await answer.innerText()).toBe(before);
});

test('a link that unpacks to millions of bytes is refused', async ({ page }) => {
  await page.goto(`/explained/${bomb()}`);
  await expect(page.locator('#address-message')).toContainText('more than any comparison');
});

test('Saved refuses files that are none of its own, one by one, and takes no prototype', async ({ page }) => {
  await page.goto(`/saved/${visitorLink}`);
  await live(page);
  await page.getByRole('button', { name: 'Save it' }).click();
  for (const [name, buffer] of Object.entries(files)) {
    await page
      .getByLabel('Take comparisons from files')
      .setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
    await expect(page.locator('[data-part=said]'), name).toContainText(
      /not JSON|no comparisons|cannot be read/,
    );
    await page.locator('[data-part=said]').evaluate((said) => said.replaceChildren());
  }
  await expect(page.locator('[data-kept]')).toHaveCount(1);
  expect(await unharmed(page)).toBe('unharmed');
});

test('the page of runs says what is wrong with files and texts dropped on it, and its log stays', async ({
  page,
}) => {
  await page.goto('/test/');
  await live(page);
  const log = await page.locator('[data-part=log]').first().innerText();
  for (const [name, buffer] of Object.entries(files)) {
    const dropped = await page.evaluateHandle(
      ([file, bytes]) => {
        const data = new DataTransfer();
        data.items.add(new File([Uint8Array.from(bytes)], file));
        return data;
      },
      [name, [...buffer]] as const,
    );
    await page.locator('[data-part=import]').dispatchEvent('drop', { dataTransfer: dropped });
    await expect(page.locator('[data-part=import-problem]'), name).not.toBeEmpty();
    await page.locator('[data-part=import-problem]').evaluate((said) => said.replaceChildren());
  }
  await paste(page, page.locator('#pasted'), '\u0000\ufffd;'.repeat(megabytes / 3));
  await expect(page.locator('[data-part=import-problem]')).toContainText('columns, more than any log has');
  await expect(page.locator('#pasted')).toHaveValue('');
  expect(await page.locator('[data-part=log]').first().innerText()).toBe(log);
  expect(await unharmed(page)).toBe('unharmed');
});

test('a seal is opened by no file but its own', async ({ page }) => {
  await page.goto('/seal/');
  await unfold(page);
  await page.locator('input[name=posted]').focus();
  await live(page);
  await page.locator('input[name=posted]').fill('A'.repeat(26));
  const check = page.locator('form').filter({ has: page.locator('input[type=file]') });
  const checked = page.locator('[data-part=checked]');
  for (const [name, buffer] of Object.entries(files)) {
    await check.locator('input[type=file]').setInputFiles({ name, mimeType: 'application/json', buffer });
    await check.getByRole('button', { name: 'Check' }).click();
    await expect(checked, name).toHaveAttribute('data-verdict', 'wrong');
    await expect(checked, name).not.toBeEmpty();
    await checked.evaluate((said) => said.replaceChildren());
  }
  expect(await unharmed(page)).toBe('unharmed');
});
