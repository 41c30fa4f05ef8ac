import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { HtmlValidate } from 'html-validate';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { plainEntry } from '../../src/comparison/plain-entry.ts';
import { validate } from '../../src/comparison/validate.ts';
import { builtFiles, dist } from '../site/pages.ts';

if (!existsSync(dist)) throw new Error('no built site in dist: run the build first');
const pages = builtFiles('.html').map((file) => ({ file, html: readFileSync(`${dist}/${file}`, 'utf8') }));

const validator = new HtmlValidate({
  extends: ['html-validate:recommended'],
  rules: {
    // Matters of taste that the build decides.
    'doctype-style': 'off',
    'void-style': 'off',
    'attr-quotes': 'off',
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'no-trailing-whitespace': 'off',
    'no-inline-style': 'error',
    'long-title': 'off',
    // A scrolling region must take the focus, or the keyboard cannot scroll it.
    'prefer-native-element': 'off',
    // Sources and glossary anchors hold digits and years by design; MathML is not in the validator's element list.
    'valid-id': ['error', { relaxed: true }],
    // Plain, unbroken spaces in telephone numbers: there are none here, only measures.
    'tel-non-breaking': 'off',
    // The site is served with no third party; its own files need no integrity.
    'require-sri': 'off',
  },
});

describe.each(pages)('the built page $file', ({ file, html }) => {
  it('is valid HTML', async () => {
    const report = await validator.validateString(html, file);
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line, column }) => `${ruleId}: ${message} (${line}:${column})`),
      ),
    ).toEqual([]);
  });

  it('has no inline style, and no number that is none', () => {
    const { document } = parseHTML(html);
    expect(document.querySelectorAll('[style], style').length).toBe(0);
    // Script and the code that is shown cover numbers that are none; the page's own words must not.
    for (const part of document.querySelectorAll('script, pre')) part.remove();
    expect(document.body.textContent).not.toMatch(/\bNaN\b|\bundefined\b|Infinity|\[object/);
    expect([...document.querySelectorAll('svg *')].filter((part) => /NaN/.test(part.outerHTML)).length).toBe(0);
  });

  it('has one title, one first heading, a language and a description', () => {
    const { document } = parseHTML(html);
    expect(document.querySelectorAll('title').length).toBe(1);
    expect(document.querySelectorAll('h1').length).toBe(1);
    expect(document.documentElement.getAttribute('lang')).toBe('en');
    expect(document.querySelector('meta[name="description"]')?.getAttribute('content')?.length).toBeGreaterThan(20);
  });

  // The live half begins with it and does not judge it once more.
  it('was built with a comparison the model can compute, if with one', () => {
    const { document } = parseHTML(html);
    const text = document.getElementById('page-comparison')?.textContent;
    const percentages = document.getElementById('page-percentages')?.textContent;
    const entry: unknown = text
      ? JSON.parse(text)
      : plainEntry(percentages ? (JSON.parse(percentages) as number[]) : []);
    expect(validate(entry)).toEqual({ ok: true, entry });
  });

  it('names no other site in its links', () => {
    const { document } = parseHTML(html);
    const away = [...document.querySelectorAll('[src], link[href]:not([rel=canonical])')].filter((part) =>
      /^(https?:)?\/\//.test(part.getAttribute('src') ?? part.getAttribute('href') ?? ''),
    );
    expect(away.map((part) => part.outerHTML)).toEqual([]);
  });
});

// Workers are built apart.
const scripts = readdirSync(`${dist}/_astro`).filter((file) => /(?<!-worker-[\w-]{8})\.js$/.test(file));

it.each(scripts)('the script %s says first that it is read whole', (file) => {
  expect(readFileSync(`${dist}/_astro/${file}`, 'utf8')).toMatch(/^\/\/# allFunctionsCalledOnLoad\n/);
});
