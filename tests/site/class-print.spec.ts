import { pdfPages } from './pdf.ts';
import { expect, test } from './test.ts';

test.describe('printed', () => {
  for (const format of ['A4', 'Letter'])
    for (const large of [false, true])
      test(`the key has pages of its own on ${format}${large ? ', in large print' : ''}`, async ({
        page,
      }) => {
        await page.goto('/class/');
        if (large) {
          await page.locator('[name="large"]').check();
          await expect(page.locator('body')).toHaveClass(/kit-large/);
        }
        const pages = await pdfPages(await page.pdf({ format }));
        const first = pages.findIndex((text) => text.includes('Key, version B'));
        expect(first).toBeGreaterThan(1);
        const [sheet, key] = [pages.slice(0, first).join('\n'), pages.slice(first).join('\n')];
        expect(pages[0]).toContain('Problems, version B');
        for (const part of [sheet, key]) {
          expect(part).toMatch(/seed\s+7/);
          expect(part.replace(/\s/g, '')).toContain('/class/#');
          for (let number = 1; number <= 12; number += 1)
            expect(part).toMatch(new RegExp(`(^|\\n) *${number}\\. `));
        }
        expect(sheet).not.toContain('(step ');
        expect(sheet.match(/Answer/g)).toHaveLength(12);
        expect(key.match(/\(step /g)?.length).toBeGreaterThan(36);
        expect(key).toContain('Follow-through');
        expect(sheet).not.toContain('Make a set');
        // Nothing but the sheets: no page is empty, and none holds the site's footer.
        for (const text of pages) expect(text.trim().length).toBeGreaterThan(40);
        expect(pages.join('')).not.toContain('Factor model no.');
      });
});

test('without script the fixed set and its key are printed whole', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await page.goto('/class/');
  await expect(page.locator('.kit-form')).toBeHidden();
  await expect(page.locator('[data-part="sheet"] .kit-item')).toHaveCount(12);
  await expect(page.locator('[data-part="key"] .kit-item')).toHaveCount(12);
  await context.close();
});
