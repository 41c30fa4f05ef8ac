import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { sceneOf } from '../../src/scene/scene.ts';
import { cardSvg, previewSize, thumbnailSize } from '../../src/pictures/card.ts';
import type { Card } from '../../src/pictures/card.ts';
import { withoutWords } from '../../src/pictures/drawing.ts';
import type { Drawing } from '../../src/pictures/drawing.ts';
import { sheetSizes, sheetSvg } from '../../src/pictures/sheet.ts';
import { pictureStyle } from '../../src/pictures/style.ts';
import { guessed } from '../../src/pictures/wrap.ts';
import { drawingCss } from '../../src/build/previews/drawing-css.ts';
import { draw } from '../../src/figure-kit/draw.ts';
import { sizes } from '../../src/figure-kit/figure.ts';
import { everything } from '../../src/topics/all.ts';
import { loft } from '../comparison/entries.ts';

const scene = sceneOf(loft());
const style = pictureStyle(drawingCss(), 'light');
const means = { style, ground: 'light', measure: guessed, face: 'data:font/woff2;base64,AA' } as const;

function drawing(name: string): Drawing {
  const { document } = parseHTML('<html><body></body></html>');
  const svg = draw(everything.figure(name), scene, sizes.wide, document as unknown as Document, 'test');
  return { svg: svg.outerHTML, width: 640, height: Number(svg.getAttribute('height')) };
}

/** Parsed as XML, which forgives nothing. */
const parsed = (svg: string) => {
  const { document } = parseHTML('<html></html>');
  const view = document.defaultView as unknown as { DOMParser: typeof DOMParser };
  return new view.DOMParser().parseFromString(svg, 'image/svg+xml');
};

const sheet = {
  drawing: drawing('chain'),
  title: 'One & <two>',
  facts: ['Units: mm', 'Scale: to scale'],
  caption: 'A caption, with “quotes” & signs.',
  credit: 'Keenfold, factor model no. 2',
};

describe('a sheet', () => {
  it.each(Object.entries(sheetSizes))(
    '%s holds title, facts, caption and credit inside its frame',
    (_name, size) => {
      const { svg, width, height } = sheetSvg(sheet, size, means);
      const document = parsed(svg);
      const words = [...document.querySelectorAll('text')].map(({ textContent }) => textContent);
      for (const text of [sheet.title, 'Units: mm · Scale: to scale', sheet.caption, sheet.credit])
        expect(words).toContain(text);
      for (const text of document.querySelectorAll('text[textLength]')) {
        const [x, y, long] = ['x', 'y', 'textLength'].map((name) => Number(text.getAttribute(name)));
        expect((x ?? 0) + (long ?? 0)).toBeLessThanOrEqual(width);
        expect(y).toBeLessThan(height);
      }
      expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
      expect(svg).not.toMatch(/var\(|NaN|undefined/);
    },
  );

  it('has its name and its alt text, its face and what its drawing refers to', () => {
    const { svg } = sheetSvg(sheet, sheetSizes['as drawn'], means);
    expect(svg).toContain(
      '<title>One &amp; &lt;two&gt;</title><desc>A caption, with “quotes” &amp; signs.</desc>',
    );
    expect(svg).toContain("@font-face{font-family:'Plex';src:url(data:font/woff2;base64,AA)");
    for (const [, id] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(svg).toContain(`id="${id}"`);
    expect(svg).not.toMatch(/href|https?:(?!\/\/www\.w3\.org\/2000\/svg)/);
  });

  it('has no ground where none is wanted', () => {
    const ground = /<\/defs><rect /;
    expect(sheetSvg(sheet, sheetSizes['as drawn'], means).svg).toMatch(ground);
    expect(sheetSvg(sheet, sheetSizes['as drawn'], { ...means, ground: 'clear' }).svg).not.toMatch(ground);
  });
});

describe('a card', () => {
  const card: Card = {
    headline: '×12.5',
    title: 'Dunlin against Plover',
    drawing: drawing('chain'),
    foot: 'Keenfold',
    alt: 'It says.',
  };
  const sizesOfType = (svg: string) =>
    [...parsed(svg).querySelectorAll('text')].map((text) => Number(text.getAttribute('font-size')));

  it('as a thumbnail has no word less than 8 px tall when it is 168 px wide', () => {
    const svg = cardSvg({ ...card, drawing: withoutWords(card.drawing) }, thumbnailSize, means);
    expect(sizesOfType(svg).length).toBeGreaterThan(2);
    expect(Math.min(...sizesOfType(svg)) * (168 / thumbnailSize.width)).toBeGreaterThanOrEqual(8);
  });

  it('keeps a long title off its foot, and a long headline in its column', () => {
    const svg = cardSvg(
      {
        ...card,
        headline: '×0.00000123456789',
        below: 'where the close reading has ×12.5, sure only to between ×8.09 and ×26.7',
        title: 'word '.repeat(90),
      },
      previewSize,
      means,
    );
    const texts = [...parsed(svg).querySelectorAll('text[textLength]')];
    const foot = texts.find(({ textContent }) => textContent === 'Keenfold');
    const others = texts.filter((text) => text !== foot).map((text) => Number(text.getAttribute('y')));
    expect(Math.max(...others)).toBeLessThan(Number(foot?.getAttribute('y')) - previewSize.foot);
    for (const text of texts)
      expect(Number(text.getAttribute('textLength'))).toBeLessThan(previewSize.width * 0.52);
  });

  it('has what is said of its number below it and above its title', () => {
    const svg = cardSvg({ ...card, below: 'between ×8.09 and ×26.7' }, previewSize, means);
    const yOf = (start: string) =>
      Number(
        [...parsed(svg).querySelectorAll('text')]
          .find(({ textContent }) => textContent.startsWith(start))
          ?.getAttribute('y'),
      );
    const [number, below, title] = [yOf('×12.5'), yOf('between'), yOf('Dunlin')];
    expect(below - number).toBeGreaterThan(previewSize.foot * 0.9);
    expect(title - below).toBeGreaterThan(previewSize.title * 0.9);
  });
});
