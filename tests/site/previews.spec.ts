import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { parseHTML } from 'linkedom';
import sharp from 'sharp';
import { builtFiles, dist, pages } from './pages.ts';

const documents = pages().map((page) => ({
  page,
  document: parseHTML(readFileSync(`${dist}${page.endsWith('/') ? `${page}index.html` : page}`, 'utf8'))
    .document,
}));
const meta = (document: Document, name: string) =>
  document.querySelector(`meta[property="og:${name}"]`)?.getAttribute('content') ?? '';

test('every page says what it is to those who only have its link, with a picture that is there', () => {
  const shown = new Set<string>();
  for (const { page, document } of documents) {
    for (const name of ['title', 'description', 'image:alt'])
      expect(meta(document, name).length, `${page} ${name}`).toBeGreaterThan(3);
    const picture = meta(document, 'image');
    expect(builtFiles('.png').map((file) => `/${file}`)).toContain(picture);
    shown.add(picture);
    // Not published anywhere that the build was told of: no address is made up.
    expect(document.querySelector('link[rel=canonical]')).toBeNull();
    if (page.startsWith('/plain/')) expect(picture).toMatch(/^\/previews\/plain/);
  }
  const own = builtFiles('.png').filter((file) => file.startsWith('previews/'));
  expect([...shown].sort()).toEqual(own.map((file) => `/${file}`).sort());
});

test('every comparison’s picture says its ratio, and every lesson’s its question', () => {
  const described = (kind: RegExp) =>
    documents
      .filter(({ page }) => kind.test(page))
      .map(({ document }) => ({
        alt: meta(document, 'image:alt'),
        title: document.querySelector('h1')?.textContent ?? '?',
      }));
  const compared = described(/^\/comparisons\/./);
  expect(compared.length).toBeGreaterThan(1);
  for (const { alt } of compared) expect(alt).toMatch(/[\d.]+ times as long as/);
  const lessons = described(/^\/lessons\/[^/]+\/$/).filter(({ title }) => title.trim().endsWith('?'));
  expect(lessons.length).toBeGreaterThan(11);
  for (const { alt, title } of lessons) expect(alt).toContain(title.trim());
});

test('every picture is 1200 × 630, and neither empty nor heavy', async () => {
  for (const file of builtFiles('.png').filter((each) => each.startsWith('previews/'))) {
    const bytes = readFileSync(`${dist}/${file}`);
    const { width, height } = await sharp(bytes).metadata();
    expect({ file, width, height }).toEqual({ file, width: 1200, height: 630 });
    expect((await sharp(bytes).stats()).entropy, file).toBeGreaterThan(0.3);
    expect(bytes.length, file).toBeLessThan(100_000);
  }
});
