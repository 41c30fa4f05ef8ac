import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { parseHTML } from 'linkedom';
import { builtFiles, dist, isAlone, pages } from './pages.ts';

const files = new Set(builtFiles('').map((file) => `/${file.replace(/(^|\/)index\.html$/, '$1')}`));
const documents = new Map(
  pages().map((page) => [
    page,
    parseHTML(readFileSync(`${dist}${page.endsWith('/') ? `${page}index.html` : page}`, 'utf8')).document,
  ]),
);
// A fragment with an equals sign in it carries something, and leads nowhere.
const here = 'https://here.example';

for (const [page, document] of documents) {
  test(`${page} leads and refers only to what is there`, () => {
    const astray: string[] = [];
    const referred = [...document.querySelectorAll('[href], [src]')].map(
      (element) => element.getAttribute('href') ?? element.getAttribute('src') ?? '',
    );
    expect(referred.length).toBeGreaterThan(isAlone(page) ? 3 : 5);
    for (const reference of referred) {
      const { origin, pathname, hash } = new URL(reference, here + page);
      if (origin !== here) continue;
      const there = documents.get(pathname);
      if (!files.has(pathname)) astray.push(reference);
      else if (hash.length > 1 && !hash.includes('=') && !there?.getElementById(hash.slice(1)))
        astray.push(reference);
    }
    expect(astray).toEqual([]);
  });

  test(`${page} names by id only what is there, and nothing twice`, () => {
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    for (const name of ['for', 'list', 'aria-labelledby', 'aria-describedby', 'aria-controls']) {
      for (const element of document.querySelectorAll(`[${name}]`)) {
        for (const id of (element.getAttribute(name) ?? '').split(/\s+/)) expect(ids, name).toContain(id);
      }
    }
    for (const [, id = ''] of document.toString().matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
  });
}
