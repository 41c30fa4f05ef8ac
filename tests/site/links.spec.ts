import { expect, test } from '@playwright/test';
import { readdirSync } from 'node:fs';

/** Every page of the built site. */
const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) => `/${file.replace(/index\.html$/, '')}`);

test('links between pages lead somewhere', async ({ page, request }) => {
  const seen = new Set<string>();
  for (const path of pages) {
    await page.goto(path);
    for (const href of await page
      .locator('a[href]')
      .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href))) {
      const [address = '', anchor] = href.split('#');
      if (seen.has(href) || !address.startsWith('http://127.0.0.1:4329/')) continue;
      seen.add(href);
      const answer = await request.get(address);
      expect(answer.status(), href).toBe(200);
      if (anchor) expect(await answer.text(), href).toContain(`id="${anchor}"`);
    }
  }
});
