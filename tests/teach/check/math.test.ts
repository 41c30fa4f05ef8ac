import katex from 'katex';
import { parseHTML } from 'linkedom';
import { describe, expect, test } from 'vitest';
import { smallMath } from '../../../src/teach/check/math.ts';
import { blanksOf, kinds } from '../../../src/exercises/index.ts';
import { problems } from '../../exercises/seeds.ts';

/** What stands on the page, part by part: the outermost names and texts, without what only groups. */
function parts(html: string): string {
  const { document } = parseHTML(`<body>${html}</body>`);
  for (const note of document.querySelectorAll('annotation')) note.remove();
  const described = (node: Element): string => {
    const inner = [...node.children].map(described).join('');
    const name = node.localName;
    if (name === 'mspace') return `[${node.getAttribute('width')}]`;
    if (['math', 'semantics', 'mrow', 'span'].includes(name)) return inner;
    return `<${name}>${node.children.length ? inner : (node.textContent ?? '').trim()}</${name}>`;
  };
  const [math] = document.querySelectorAll('math');
  if (!math) throw new Error('there is no formula');
  return (
    described(math)
      // KaTeX puts an invisible sign between a function and its argument.
      .replaceAll('<mo>\u2061</mo>', '')
      .replaceAll(/<mi>□<\/mi>|<mo>□<\/mo>/g, '□')
      .replaceAll('\u00a0', ' ')
  );
}

describe('the formulas of problems', () => {
  // KaTeX is the typesetter of all the other formulas of the site.
  test.each(kinds)('%s are set as KaTeX sets them, with results and without', (kind) => {
    // Of formulas that differ in their digits only, one is set.
    const ofEachShape = new Map<string, string>();
    for (const problem of problems(kind, 90))
      for (const { tex } of [...problem.steps, ...blanksOf(problem)])
        ofEachShape.set(tex.replaceAll(/\d+/g, '0'), tex);
    for (const tex of ofEachShape.values()) {
      const other = katex.renderToString(tex, { output: 'mathml', displayMode: true, strict: 'error' });
      expect(parts(smallMath(tex)), tex).toBe(parts(other));
    }
  });

  test('take no command they do not know', () => {
    expect(() => smallMath('\\int 2')).toThrow(/\\int/);
  });

  test('keep text from being read as HTML', () => {
    expect(smallMath('\\text{a <b> & c}')).toContain('a &lt;b&gt; &amp; c');
  });
});
