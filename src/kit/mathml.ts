import { escaped } from './escape.ts';

/**
 * A formula of a problem's working as MathML. It knows the few commands the working is written with, so that a page
 * can set a new key without carrying a typesetter.
 *
 * @throws RangeError for a command it does not know, or a brace that is not closed
 * @example mathml('\\frac{1}{2} = 0.5') // → '<math><mfrac><mrow><mn>1</mn></mrow><mrow><mn>2</mn></mrow></mfrac><mo>=</mo><mn>0.5</mn></math>'
 */
export function mathml(tex: string): string {
  const [html, rest] = row(tex, '');
  if (rest !== '') throw new RangeError(`formula "${tex}" has a brace too many`);
  return `<math>${html}</math>`;
}

const NAMED: Record<string, string> = {
  '\\times': '<mo>×</mo>',
  '\\approx': '<mo>≈</mo>',
  '\\varphi': '<mi>φ</mi>',
  '\\quad': '<mspace width="1em"></mspace>',
  '\\qquad': '<mspace width="2em"></mspace>',
  '\\square': '<mo>□</mo>',
  '-': '<mo>−</mo>',
  ':': '<mo>:</mo>',
};

/** A name of a function is set upright, and takes what follows it as its argument. */
const FUNCTIONS = ['\\arctan', '\\tan', '\\sin', '\\log'];
const APPLIED = '<mo>&#x2061;</mo>';

const TOKEN = /^(?:\d+(?:\.\d+)?(\^\\circ)?|\\[a-zA-Z]+|[a-zA-Z]|[-+=(),:−])/;

/** What stands up to the sign that closes it, and what is left after that sign. */
function row(tex: string, closing: '' | '}' | ']'): [html: string, rest: string] {
  let html = '';
  let left = tex.trimStart();
  while (left !== '' && !(closing !== '' && left.startsWith(closing))) {
    const [part, rest] = atom(left);
    html += part;
    left = rest.trimStart();
  }
  if (closing === '') return [html, left];
  if (left === '') throw new RangeError(`formula "${tex}" lacks a ${closing}`);
  return [html, left.slice(1)];
}

function group(tex: string): [html: string, rest: string] {
  const left = tex.trimStart();
  if (!left.startsWith('{')) throw new RangeError(`formula "${tex}" lacks a {`);
  const [html, rest] = row(left.slice(1), '}');
  return [`<mrow>${html}</mrow>`, rest];
}

function atom(tex: string): [html: string, rest: string] {
  const [token, degrees] = TOKEN.exec(tex) ?? [];
  if (token === undefined) throw new RangeError(`formula has "${tex}", which is not known`);
  const rest = tex.slice(token.length);
  const named = NAMED[token];
  if (named !== undefined) return [named, rest];
  if (FUNCTIONS.includes(token)) return applied(token, rest);
  switch (token) {
    case '\\frac': {
      const [above, after] = group(rest);
      const [below, left] = group(after);
      return [`<mfrac>${above}${below}</mfrac>`, left];
    }
    case '\\sqrt': {
      if (!rest.startsWith('[')) {
        const [root, left] = group(rest);
        return [`<msqrt>${root}</msqrt>`, left];
      }
      const [degree, after] = row(rest.slice(1), ']');
      const [root, left] = group(after);
      return [`<mroot>${root}<mrow>${degree}</mrow></mroot>`, left];
    }
    case '\\text': {
      const end = rest.indexOf('}');
      if (!rest.startsWith('{') || end < 0) throw new RangeError(`formula "${tex}" lacks a brace`);
      return [`<mtext>${escaped(rest.slice(1, end))}</mtext>`, rest.slice(end + 1)];
    }
  }
  if (token.startsWith('\\')) throw new RangeError(`formula has ${token}, which is not known`);
  if (/^\d/.test(token)) return [`<mn>${degrees ? token.replace(degrees, '°') : token}</mn>`, rest];
  return [/^[a-zA-Z]/.test(token) ? `<mi>${token}</mi>` : `<mo>${token}</mo>`, rest];
}

function applied(token: string, rest: string): [html: string, rest: string] {
  const name = `<mi>${token.slice(1)}</mi>`;
  if (!rest.startsWith('_')) return [`${name}${APPLIED}`, rest];
  const [base, left] = group(rest.slice(1));
  return [`<msub>${name}${base}</msub>${APPLIED}`, left];
}
