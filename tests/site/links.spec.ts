import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { parseHTML } from 'linkedom';
import { builtFiles, dist, isAlone, isMoved, pages } from './pages.ts';

const files = new Set(builtFiles('').map((file) => `/${file.replace(/(^|\/)index\.html$/, '$1')}`));
const documents = new Map(
  pages().map((page) => [
    page,
    parseHTML(readFileSync(`${dist}${page.endsWith('/') ? `${page}index.html` : page}`, 'utf8')).document,
  ]),
);
// A fragment with an equals sign in it carries something, and leads nowhere.
const here = 'https://here.example';

test('every page leads and refers only to what is there', () => {
  const astray: string[] = [];
  for (const [page, document] of documents) {
    const referred = [...document.querySelectorAll('[href], [src]')].map(
      (element) => element.getAttribute('href') ?? element.getAttribute('src') ?? '',
    );
    expect(referred.length, page).toBeGreaterThan(isAlone(page) || isMoved(page) ? 3 : 5);
    for (const reference of referred) {
      const { origin, pathname, hash } = new URL(reference, here + page);
      if (origin !== here) continue;
      const there = documents.get(pathname);
      const isThere = hash.length < 2 || hash.includes('=') || there?.getElementById(hash.slice(1));
      if (!files.has(pathname) || !isThere) astray.push(`${page}: ${reference}`);
    }
  }
  expect(astray).toEqual([]);
});

test('every page names by id only what is there, and nothing twice', () => {
  const naming = ['for', 'list', 'aria-labelledby', 'aria-describedby', 'aria-controls'];
  for (const [page, document] of documents) {
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    const known = new Set(ids);
    expect(known.size, `${page}: ids`).toBe(ids.length);
    const named = naming.flatMap((name) =>
      [...document.querySelectorAll(`[${name}]`)].flatMap((element) =>
        (element.getAttribute(name) ?? '').split(/\s+/),
      ),
    );
    const drawn = [...document.toString().matchAll(/url\(#([^)]+)\)/g)].map(([, id = '']) => id);
    expect(
      [...named, ...drawn].filter((id) => !known.has(id)),
      page,
    ).toEqual([]);
  }
});
