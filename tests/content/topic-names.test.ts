import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { topics } from '../../src/topics/all.ts';
import { builtFiles, dist } from '../site/pages.ts';

test('every topic that a built page asks the browser to fetch is a topic of the source', () => {
  const named = builtFiles('.html').flatMap((file) =>
    [...readFileSync(`${dist}/${file}`, 'utf8').matchAll(/data-(?:topic|late)="([^"]*)"/g)].map(
      ([, name = '']) => name,
    ),
  );
  expect(named.length).toBeGreaterThan(100);
  expect([...new Set(named)].filter((name) => !Object.hasOwn(topics, name))).toEqual([]);
});
