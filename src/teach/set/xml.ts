import { escaped } from '../check/html.ts';

/**
 * An XML element. What it holds is XML; its attributes are text.
 *
 * @example tag('a', { href: 'x&y' }, '1') // → '<a href="x&amp;y">1</a>'
 * @example tag('br') // → '<br/>'
 */
export function tag(name: string, attributes: Record<string, string> = {}, holds = ''): string {
  const head = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escaped(value)}"`)
    .join('');
  return holds === '' ? `<${name}${head}/>` : `<${name}${head}>${holds}</${name}>`;
}

/** A whole XML file. */
export const xmlFile = (root: string): string => `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`;
