import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { dist, isMoved, pages } from './pages.ts';

test('the site map names every page but the one for missing pages and those that have moved', () => {
  const map = readFileSync(`${dist}/sitemap.xml`, 'utf8');
  const named = [...map.matchAll(/<loc>(.*?)<\/loc>/g)].map(([, address = '']) => new URL(address).pathname);
  expect(named.sort()).toEqual(
    pages()
      .filter((path) => path !== '/404.html' && !isMoved(path))
      .sort(),
  );
  expect(readFileSync(`${dist}/robots.txt`, 'utf8')).toMatch(/^Sitemap: https:\/\/.+\/sitemap\.xml$/m);
});
