import { escaped } from './html.ts';

const signs: Record<string, string> = {
  '\\times': '<mo>×</mo>',
  '\\approx': '<mo>≈</mo>',
  '\\square': '<mi>□</mi>',
  '\\varphi': '<mi>φ</mi>',
  '\\circ': '<mo>∘</mo>',
  '\\quad': '<mspace width="1em"></mspace>',
  '\\qquad': '<mspace width="2em"></mspace>',
};
const functions = ['sin', 'tan', 'arctan', 'log'];

/**
 * The MathML of a formula in the little TeX that problems are written in, so that a page can set the formulas of a
 * problem drawn there and then without carrying a typesetter.
 *
 * @param tex sums, fractions, roots, logarithms, angles and plain text; see the tests for all there is
 * @throws RangeError for a command outside it
 * @example smallMath('n = 2') // → '<math display="block"><mrow><mi>n</mi><mo>=</mo><mn>2</mn></mrow></math>'
 */
export function smallMath(tex: string): string {
  const parts = tex.match(/\\text\{[^}]*\}|\\[a-z]+|\d[\d.]*|[^\s]/g) ?? [];
  let at = 0;

  const next = (): string => parts[at++] ?? '';
  const taken = (sign: string): boolean => {
    if (parts[at] !== sign) return false;
    at += 1;
    return true;
  };
  const until = (end: string): string => {
    let row = '';
    while (at < parts.length && parts[at] !== end) row += withMarks();
    at += 1;
    return `<mrow>${row}</mrow>`;
  };
  const argument = (): string => (taken('{') ? until('}') : one());

  /** One part with what is set below and above it. */
  const withMarks = (): string => {
    const base = one();
    if (taken('_')) return `<msub>${base}${argument()}</msub>`;
    if (taken('^')) return `<msup>${base}${argument()}</msup>`;
    return base;
  };

  const one = (): string => {
    const part = next();
    if (part === '{') return until('}');
    if (part === '\\frac') return `<mfrac>${argument()}${argument()}</mfrac>`;
    if (part === '\\sqrt') {
      if (!taken('[')) return `<msqrt>${argument()}</msqrt>`;
      const degree = until(']');
      return `<mroot>${argument()}${degree}</mroot>`;
    }
    if (part.startsWith('\\text{')) return `<mtext>${escaped(part.slice(6, -1))}</mtext>`;
    if (functions.includes(part.slice(1))) return `<mi>${part.slice(1)}</mi>`;
    if (part.startsWith('\\')) {
      const sign = signs[part];
      if (sign === undefined) throw new RangeError(`command ${part} is not in the TeX of problems: ${tex}`);
      return sign;
    }
    if (/^\d/.test(part)) return `<mn>${part}</mn>`;
    if (/^[a-z]$/i.test(part)) return `<mi>${part}</mi>`;
    return `<mo>${part === '-' ? '−' : escaped(part)}</mo>`;
  };

  let row = '';
  while (at < parts.length) row += withMarks();
  return `<math display="block"><mrow>${row}</mrow></math>`;
}
