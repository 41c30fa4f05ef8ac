/** What a picture stands on. `clear` has the light inks and no ground of its own. */
export const grounds = ['light', 'dark', 'clear'] as const;
export type Ground = (typeof grounds)[number];

export interface PictureStyle {
  /** The rules of the drawings, with every variable replaced: for the style element of an SVG that stands alone. */
  rules: string;
  /** The value of each of the site's variables on this ground, by its name: `--text`. */
  inks: ReadonlyMap<string, string>;
}

/** Rules of the drawings and their hatches; everything else of the style sheet is the page's. */
const ofDrawings = /\.(?:kf|ground|line|dot)-/;

/**
 * What of the site's style sheet a drawing needs outside the site.
 *
 * @param css the style sheet as text, of one file or of all a page has
 * @throws RangeError where a rule uses a variable that the sheet does not define
 */
export function pictureStyle(css: string, ground: Ground): PictureStyle {
  const blocks = blocksOf(css.replaceAll(/\/\*[^]*?\*\//g, ''));
  const roots = (among: readonly Block[]) => among.filter(({ head }) => head === ':root');
  const dark = blocks.filter(({ head }) => /^@media.*prefers-color-scheme: *dark/.test(head));
  const inks = new Map(
    [
      ...roots(blocks),
      ...(ground === 'dark' ? dark.flatMap(({ body }) => roots(blocksOf(body))) : []),
    ].flatMap(({ body }) =>
      [...body.matchAll(/(--[\w-]+): *([^;]+)/g)].map(([, name = '', value = '']) => [name, value.trim()]),
    ),
  );
  const rules = blocks
    .filter(({ head }) => ofDrawings.test(head) && !head.startsWith('@'))
    .map(({ head, body }) => `${head}{${inked(body, inks).replaceAll(/\s+/g, ' ').trim()}}`);
  // Browsers give references back in quotation marks, which some readers of SVG do not take.
  return { rules: rules.join('\n').replaceAll(/url\("(#[^"]+)"\)/g, 'url($1)'), inks };
}

/**
 * A piece of a style sheet or of a drawing with every variable replaced by its value.
 *
 * @throws RangeError for a variable that the sheet does not define
 */
export const inked = (text: string, inks: PictureStyle['inks']): string =>
  text.replaceAll(/var\((--[\w-]+)\)/g, (_, name: string) => {
    const value = inks.get(name);
    if (value === undefined) throw new RangeError(`the style sheet gives ${name} no value`);
    return value;
  });

interface Block {
  head: string;
  body: string;
}

/** The blocks of the outermost level; those within a block stay in its body. */
function blocksOf(css: string): Block[] {
  const blocks: Block[] = [];
  let [depth, start, open] = [0, 0, 0];
  for (let at = 0; at < css.length; at += 1) {
    const sign = css[at];
    if (sign === ';' && depth === 0) start = at + 1;
    if (sign === '{') {
      if (depth === 0) open = at;
      depth += 1;
    }
    if (sign !== '}') continue;
    depth -= 1;
    if (depth > 0) continue;
    blocks.push({
      head: css.slice(start, open).replaceAll(/\s+/g, ' ').trim(),
      body: css.slice(open + 1, at),
    });
    start = at + 1;
  }
  return blocks;
}
