import { readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { builtFiles, dist } from '../site/pages.ts';

test.each(builtFiles('.html'))('%s states a strict policy and has no inline style to break it', (file) => {
  const { document } = parseHTML(readFileSync(`${dist}/${file}`, 'utf8'));
  const policies = [...document.querySelectorAll('meta[http-equiv]')]
    .filter((meta) => /^content-security-policy$/i.test(meta.getAttribute('http-equiv') ?? ''))
    .map((meta) => meta.getAttribute('content') ?? '');
  expect(policies.length).toBe(1);
  expect(policies[0]).toContain("default-src 'none'");
  expect(policies[0]).not.toMatch(/unsafe-(inline|eval)|https?:/);
  expect(document.querySelectorAll('[style]').length).toBe(0);
});
