import { placed } from './drawing.ts';
import type { Drawing } from './drawing.ts';
import { alone, inkOf, leading, lines } from './frame.ts';
import type { Means } from './frame.ts';
import { wrap } from './wrap.ts';

/** A figure's sheet: what its title block says, and what stands below it. */
export interface Sheet {
  drawing: Drawing;
  title: string;
  /** The rest of the title block, each with its heading: `Units: degrees`. */
  facts: readonly string[];
  caption: string;
  /** Whose it is and where it came from. */
  credit: string;
}

/** A sheet's size, px. Without a height it is as tall as what it holds. */
export interface SheetSize {
  width: number;
  height?: number;
  margin: number;
  /** Sizes of type. */
  title: number;
  caption: number;
  small: number;
}

/** As on the page, and the two shapes of a screen. */
export const sheetSizes = {
  'as drawn': { width: 672, margin: 16, title: 16, caption: 14, small: 11.5 },
  '1920 × 1080': { width: 1920, height: 1080, margin: 56, title: 44, caption: 30, small: 22 },
  '1080 × 1920': { width: 1080, height: 1920, margin: 56, title: 46, caption: 36, small: 26 },
} as const satisfies Record<string, SheetSize>;

/** A figure as a picture that stands alone: title, drawing, title block, caption and credit. */
export function sheetSvg(
  sheet: Sheet,
  size: SheetSize,
  means: Means,
): { svg: string; width: number; height: number } {
  const { width, margin, title, caption, small } = size;
  const inner = width - 2 * margin;
  const set = (text: string, px: number, bold: boolean, most: number) =>
    wrap(text, inner, most, (line) => means.measure(line, px, bold));
  const heads = set(sheet.title, title, true, 3);
  const facts = set(sheet.facts.join(' · '), small, false, 4);
  const captions = set(sheet.caption, caption, false, 8);
  const credits = set(sheet.credit, small, false, 2);

  const tall = (texts: readonly string[], px: number) => texts.length * px * leading;
  const gap = caption * 0.7;
  const below = tall(facts, small) + tall(captions, caption) + tall(credits, small) + 3 * gap;
  const above = Math.ceil(margin + tall(heads, title) + gap * 0.5);
  const natural = (inner / sheet.drawing.width) * sheet.drawing.height;
  const height = Math.ceil(size.height ?? above + natural + below + margin);
  const room = size.height === undefined ? natural : Math.max(1, height - above - below - margin);

  let y = above + room + gap;
  const put = (texts: readonly string[], px: number, more: { bold?: boolean; ink?: string } = {}) => {
    const text = lines(means, texts, { x: margin, y: y + px * 0.95, size: px, ...more });
    y += tall(texts, px) + gap;
    return text;
  };
  const holds =
    lines(means, heads, { x: margin, y: margin + title * 0.95, size: title, bold: true }) +
    placed(sheet.drawing, { x: margin, y: above, width: inner, height: room }) +
    `<path d="M${margin} ${(y - gap * 0.4).toFixed(1)}h${inner}" stroke="${inkOf(means, 'line')}" stroke-width="${(small / 12).toFixed(2)}" fill="none"></path>` +
    put(facts, small, { ink: 'faint' }) +
    put(captions, caption) +
    put(credits, small, { ink: 'faint' });
  return {
    svg: alone(means, { width, height, title: sheet.title, alt: sheet.caption, holds }),
    width,
    height,
  };
}
