import { hatches } from '../figure-kit/hatches.ts';
import { inked } from './style.ts';
import type { Ground, PictureStyle } from './style.ts';
import type { Measure } from './wrap.ts';

/** What every picture needs besides what it shows. */
export interface Means {
  style: PictureStyle;
  ground: Ground;
  measure: Measure;
  /** The site's face as a `data:` address, so that the words look and run the same wherever the picture goes. */
  face?: string;
}

/** A text in XML. */
export const xml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const family = "'Plex', 'IBM Plex Sans', Arial, sans-serif";

/** An ink of the ground the picture stands on. */
export const inkOf = ({ style }: Means, name: string): string =>
  style.inks.get(`--${name}`) ?? 'currentColor';

/** Lines of text, the first on its baseline at `y`. Each keeps its measured width in whatever face it is drawn. */
export function lines(
  means: Means,
  texts: readonly string[],
  {
    x,
    y,
    size,
    bold = false,
    ink = 'text',
    anchor = 'start',
  }: {
    x: number;
    y: number;
    size: number;
    bold?: boolean;
    ink?: string;
    anchor?: 'start' | 'end' | 'middle';
  },
): string {
  return texts
    .map(
      (text, index) =>
        `<text x="${x}" y="${(y + index * size * leading).toFixed(1)}" font-size="${size}" font-weight="${bold ? 600 : 400}" ` +
        `fill="${inkOf(means, ink)}" text-anchor="${anchor}"${kept(means, text, size, bold)}>${xml(text)}</text>`,
    )
    .join('');
}

const kept = ({ measure, face }: Means, text: string, size: number, bold: boolean): string =>
  face === undefined || text === ''
    ? ''
    : ` textLength="${measure(text, size, bold).toFixed(2)}" lengthAdjust="spacingAndGlyphs"`;

/** From one baseline to the next, in sizes of the type. */
export const leading = 1.3;

/** An SVG that stands alone: its style, its face, its hatches, its ground, and a name for those who do not see it. */
export function alone(
  means: Means,
  {
    width,
    height,
    title,
    alt,
    holds,
  }: { width: number; height: number; title: string; alt: string; holds: string },
): string {
  const { style, ground, face } = means;
  const embedded =
    face === undefined
      ? ''
      : `@font-face{font-family:'Plex';src:url(${face}) format('woff2');font-weight:400 700}`;
  const paper =
    ground === 'clear'
      ? ''
      : `<rect width="${width}" height="${height}" fill="${inkOf(means, 'sheet')}"></rect>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" ` +
    `role="img" font-family="${family}"><title>${xml(title)}</title><desc>${xml(alt)}</desc>` +
    `<style>${xml(embedded + style.rules).replaceAll('&quot;', '"')}</style>${hatches()}${paper}${inked(holds, style.inks)}</svg>`
  );
}
