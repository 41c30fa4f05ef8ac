import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Lock {
  packages: Record<string, { version?: string; devDependencies?: Record<string, string> }>;
}

// Lessons set their formulas through rehype-katex, the rest of the site by itself: both have to look alike.
test('all formulas are set by one copy of KaTeX, of the version that is pinned', () => {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as Lock;
  const copies = Object.keys(packages).filter((path) => path.endsWith('node_modules/katex'));
  expect(copies).toEqual(['node_modules/katex']);
  expect(packages['node_modules/katex']?.version).toBe(packages['']?.devDependencies?.['katex']);
});
