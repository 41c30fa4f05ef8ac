import { readFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { frameRules } from '../../src/build/headers/integration.mjs';
import { frameSnippet } from '../../src/phrases/frame-snippet.ts';
import { takenOver } from '../../src/components/content/homes.ts';
import { topics } from '../../src/topics/all.ts';
import { dist, isAlone, pages } from '../site/pages.ts';
import { headersFor } from '../site/static-host.ts';

const figures = Object.values(topics).flatMap((topic) => (topic.figures ?? []).map(({ id }) => id));
const packed = (file: string): number => brotliCompressSync(readFileSync(file)).length;

describe.each(figures)('the figure %s alone', (id) => {
  const file = `${dist}/embed/${id}/index.html`;
  const { document } = parseHTML(readFileSync(file, 'utf8'));

  test('is one figure, whole, with its comparison, and no way on but one to the page that explains it', () => {
    const found = [...document.querySelectorAll('kf-figure')];
    expect(found.map((figure) => figure.getAttribute('of'))).toEqual([id]);
    expect(document.querySelectorAll('.drawing > svg').length).toBe(2);
    expect(document.querySelector('figcaption')?.textContent).toMatch(/\S.{30,}\./);
    expect(document.querySelectorAll('tbody tr').length).toBeGreaterThan(0);
    expect(document.querySelectorAll('header, footer, nav, .skip').length).toBe(0);
    expect(document.getElementById('page-comparison')?.textContent).toContain('"knives"');
    const ways = [...document.querySelectorAll('a')];
    expect(ways.length).toBe(1);
    const [back] = ways;
    expect(back?.getAttribute('href')).toBe(`/${back?.getAttribute('data-page')}`);
    // A page that may not be framed cannot open in the frame.
    expect(back?.getAttribute('target')).toBe('_blank');
    const home = readFileSync(`${dist}${back?.getAttribute('href')}index.html`, 'utf8');
    expect(parseHTML(home).document.getElementById(`figure-${takenOver[id] ?? id}`)).not.toBeNull();
  });

  test('has the sliders it has there', () => {
    const home = readFileSync(`${dist}${document.querySelector('a')?.getAttribute('href')}index.html`, 'utf8');
    const names = (all: Document) =>
      [...all.querySelectorAll(`kf-figure[of="${id}"] kf-slider`)].map((slider) => slider.getAttribute('of'));
    expect(names(document)).toEqual(names(parseHTML(home).document));
  });

  test('is under 30 KB before it is touched', () => {
    const parts = [...document.querySelectorAll('link[rel=stylesheet], link[rel=modulepreload], script[src]')]
      .map((part) => part.getAttribute('href') ?? part.getAttribute('src') ?? '')
      .map((address) => packed(`${dist}${address}`));
    expect(parts.length).toBeGreaterThan(1);
    // No font is waited for: what preloads one would block.
    expect(document.querySelectorAll('link[rel=preload]').length).toBe(0);
    expect(parts.reduce((sum, size) => sum + size, packed(file))).toBeLessThan(30 * 1024);
  });

  test('offers a frame with a title, fetched when it is near', () => {
    const text = document.querySelector('[data-part="text"]')?.textContent ?? '';
    const frame = parseHTML(text).document.querySelector('iframe');
    expect(frame?.getAttribute('src')).toContain(`/embed/${id}/`);
    expect(frame?.getAttribute('title')).toBe(document.querySelector('h1')?.textContent?.trim());
    expect(frame?.getAttribute('loading')).toBe('lazy');
  });
});

test('figures alone may be framed, and no other page', () => {
  const policy = (path: string) =>
    headersFor(dist, path).filter(([name, value]) => /frame/i.test(name) || /frame/.test(value));
  for (const page of [...pages(), '/index.html'])
    expect(policy(page), page).toEqual(
      isAlone(page)
        ? []
        : [
            ['Content-Security-Policy', "frame-ancestors 'none'"],
            ['X-Frame-Options', 'DENY'],
          ],
    );
  // A page of a folder to come is kept out too.
  expect(frameRules(['newly/made/', 'embed/chain/', ''])).toContain('\n/newly/*\n  Content-Security-Policy');
  expect(frameRules(['embed/chain/'])).not.toContain('embed');
});

test('the frame’s HTML says what was meant, whatever is in a name', () => {
  const title = `"><script>alert('x')</script> & Sons`;
  const address = 'https://here.example/embed/chain/?a=1&b="#with=2.AbC-_';
  const { document } = parseHTML(`<html><body>${frameSnippet(address, title, 640)}</body></html>`);
  expect(document.querySelectorAll('body *').length).toBe(1);
  expect(document.querySelector('iframe')?.getAttribute('title')).toBe(title);
  expect(document.querySelector('iframe')?.getAttribute('src')).toBe(address);
});
