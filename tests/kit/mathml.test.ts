import katex from 'katex';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { kinds } from '../../src/exercises/index.ts';
import { mathml } from '../../src/kit/mathml.ts';
import { problems } from '../exercises/seeds.ts';

/** What is read of a formula, sign by sign, and the order of its fractions, roots and bases. */
function read(html: string): { text: string; shape: string[] } {
  const { document } = parseHTML(`<html><body>${html}</body></html>`);
  for (const note of document.querySelectorAll('annotation')) note.remove();
  return {
    text: (document.body.textContent ?? '').replace(/[\s\u2061]/g, '').replaceAll('∘', '°'),
    shape: [...document.querySelectorAll('mfrac, msqrt, mroot, msub')].map(
      ({ localName, textContent }) =>
        `${localName} ${String(textContent)
          .replace(/[\s\u2061]/g, '')
          .replaceAll('∘', '°')}`,
    ),
  };
}

describe('a formula', () => {
  // KaTeX, which sets the formulas of the lessons, is the other reader of the same TeX.
  test.each(kinds)('of %s reads as KaTeX reads it', (kind) => {
    const formulas = new Set(problems(kind, 300).flatMap(({ steps }) => steps.map(({ tex }) => tex)));
    expect(formulas.size).toBeGreaterThan(1);
    for (const tex of formulas) {
      const other = katex.renderToString(tex, { output: 'mathml', displayMode: true });
      expect(read(mathml(tex)), tex).toEqual(read(other));
    }
  });

  test.each(['\\frac{1}', '\\frac{1}{2', '\\sqrt[3{2}', '\\unknown{1}', '1 & 2', '\\text{A', '1}'])(
    '%s is refused',
    (tex) => {
      expect(() => mathml(tex)).toThrow(RangeError);
    },
  );
});
