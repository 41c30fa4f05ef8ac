import { readFileSync } from 'node:fs';

/** The style sheets of the site that a drawing needs where it stands alone, as text. */
export const drawingCss = (): string =>
  ['colours', 'plot'].map((name) => readFileSync(`src/styles/${name}.css`, 'utf8')).join('\n');
