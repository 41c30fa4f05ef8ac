import { placed } from './drawing.ts';
import type { Drawing } from './drawing.ts';
import { alone, leading, lines } from './frame.ts';
import type { Means } from './frame.ts';
import { wrap } from './wrap.ts';

/** A picture to be taken in at a glance: a number or none, a few words, a drawing beside them. */
export interface Card {
  headline?: string;
  /** Below the number, in small: how sure it is. */
  below?: string;
  title: string;
  drawing: Drawing;
  foot: string;
  alt: string;
}

export interface CardSize {
  width: number;
  height: number;
  margin: number;
  headline: number;
  title: number;
  foot: number;
}

/** A thumbnail is shown down to 168 px wide: its type is 8 px tall there, about what is still read. */
export const thumbnailSize: CardSize = {
  width: 1280,
  height: 720,
  margin: 48,
  headline: 190,
  title: 66,
  foot: 62,
};

/** What programs show of a link. */
export const previewSize: CardSize = {
  width: 1200,
  height: 630,
  margin: 52,
  headline: 130,
  title: 52,
  foot: 30,
};

/** A card as a picture that stands alone. */
export function cardSvg(card: Card, size: CardSize, means: Means): string {
  const { width, height, margin } = size;
  const column = width * 0.52 - margin;
  const set = (text: string, px: number, most: number) =>
    wrap(text, column, most, (line) => means.measure(line, px, true));
  const head = [
    ...(card.headline === undefined
      ? []
      : [
          {
            ...shrunk(card.headline, size.headline, column, means),
            tall: card.below === undefined ? 1.1 : 1,
          },
        ]),
    ...(card.below === undefined ? [] : [{ ...shrunk(card.below, size.foot, column, means), tall: 1.7 }]),
  ];
  const headTall = head.reduce((sum, { size: px, tall }) => sum + px * tall, 0);
  const footTop = height - margin - size.foot * leading;
  const most = Math.max(1, Math.floor((footTop - margin - headTall) / (size.title * leading)));
  const titles = set(card.title, size.title, most);
  const holds =
    head
      .map(({ text, size: px }, index) => {
        const above = head.slice(0, index).reduce((sum, line) => sum + line.size * line.tall, 0);
        return lines(means, [text], { x: margin, y: margin + above + px * 0.8, size: px, bold: true });
      })
      .join('') +
    lines(means, titles, {
      x: margin,
      y: margin + headTall + size.title * 0.9,
      size: size.title,
      bold: true,
    }) +
    lines(means, set(card.foot, size.foot, 1), {
      x: margin,
      y: height - margin - size.foot * 0.2,
      size: size.foot,
      bold: true,
      ink: 'faint',
    }) +
    placed(card.drawing, {
      x: margin + column + margin * 0.6,
      y: margin,
      width: width - column - margin * 2.6,
      height: height - 2 * margin,
    });
  return alone(means, { width, height, title: card.title, alt: card.alt, holds });
}

/** A line no wider than its column, in smaller type where it must be. */
function shrunk(
  text: string,
  size: number,
  width: number,
  { measure }: Means,
): { text: string; size: number } {
  const wide = measure(text, size, true);
  return { text, size: wide > width ? (size * width) / wide : size };
}
