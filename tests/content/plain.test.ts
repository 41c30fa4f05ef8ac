import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtFiles, dist } from '../site/pages.ts';
import { bladeWords } from './blade-words.ts';
import { bareNumbers, filesBelow } from './reading.ts';

if (!existsSync(dist)) throw new Error('no built site in dist: run the build first');
const pages = builtFiles('.html').filter((file) => file.startsWith('plain/'));

describe('the words of blades', () => {
  it('are found in prose and in markup, and not inside other words', () => {
    expect(bladeWords('A Knife’s edge <g class="line-steel">')).toEqual(['Knife', 'edge', 'steel']);
    expect(bladeWords('knowledge, execute, sledge, grindstones apart')).toEqual([]);
  });

  it('are found in a lesson on knives', () => {
    const [lesson] = builtFiles('.html').filter((file) => file.startsWith('lessons/forty'));
    expect(bladeWords(readFileSync(`${dist}/${lesson}`, 'utf8')).length).toBeGreaterThan(10);
  });

  it('are looked for in an index and three lessons', () => {
    expect(pages).toHaveLength(4);
  });

  it.each(pages)('stand nowhere in %s, markup and data included', (file) => {
    // The policy's hashes are letters at random.
    const html = readFileSync(`${dist}/${file}`, 'utf8').replace(/'sha256-[^']+'/g, '');
    expect(bladeWords(html)).toEqual([]);
  });
});

describe('the plain lessons', () => {
  it.each(filesBelow('content/plain', '.mdx'))('$path states no number of its own', ({ text }) => {
    expect(bareNumbers(text)).toEqual([]);
    expect(text).toMatch(/^## What this leaves out$/m);
    expect(text).toMatch(/^## Sources$/m);
    expect(text).toMatch(/<Check [^>]*context="seed-trays"/);
  });
});
