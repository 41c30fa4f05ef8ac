import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import type { Scene } from '../../src/scene/scene.ts';
import { draw } from '../../src/figure-kit/draw.ts';
import { sizes } from '../../src/figure-kit/figure.ts';
import type { Figure } from '../../src/figure-kit/figure.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { topics } from '../../src/topics/all.ts';
import { figuresOfBrowser } from './figures-of-browser.ts';
import { base, changed, sceneFor, scenes } from './scenes.ts';

const figures = Object.values(topics).flatMap((topic) => topic.figures ?? []);

const browser = await figuresOfBrowser();

const newDocument = (): Document => parseHTML('<html><body></body></html>').document as unknown as Document;

function expectClean(svg: SVGSVGElement, figure: Figure, scene: Scene, width: number): void {
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.getAttribute('aria-label')).toBe(figure.caption(scene));
  expect(svg.querySelectorAll('style, [style]')).toHaveLength(0);
  expect(svg.querySelectorAll('[aria-label], [aria-description]')).toHaveLength(0);
  expect(svg.outerHTML).not.toMatch(/NaN|undefined|Infinity|\[object/);
  expect(svg.querySelectorAll('path, rect, line, circle, text').length).toBeGreaterThan(0);
  expect(Number(svg.getAttribute('width'))).toBe(width);
  const ids = new Set([...svg.querySelectorAll('[id]')].map(({ id }) => id));
  const used = [...svg.outerHTML.matchAll(/url\(#([^)]+)\)/g)].map(([, id = '']) => id);
  expect(used.filter((id) => !ids.has(id) && !id.startsWith('hatch-'))).toEqual([]);
}

describe.each(figures.map((figure) => [figure.id, figure] as const))('figure %s', (_id, figure) => {
  it('draws whole and clean, wide as it is built and narrow as a browser draws it', () => {
    const document = newDocument();
    for (const entry of Object.values(scenes)) {
      const scene = sceneFor(entry);
      const wide = draw(figure, scene, sizes.wide, document, 'x');
      expectClean(wide, figure, scene, sizes.wide.width);
      const narrow = browser.draw(browser.figureOf(figure.id), scene, sizes.narrow, document, 'x');
      expectClean(narrow, figure, scene, sizes.narrow.width);
    }
  });

  it('shares no id with a second drawing of it on the page', () => {
    const ids = [1, 2].flatMap((copy) =>
      [...draw(figure, sceneFor(base), sizes.wide, newDocument(), `x-${copy}`).querySelectorAll('[id]')].map(
        ({ id }) => id,
      ),
    );
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(Object.entries(scenes))(
    'says its result of %s in a caption, a title and a table without holes',
    (_what, entry) => {
      const scene = sceneFor(entry);
      const { columns, rows } = figure.table(scene);
      const said = [figure.title(scene), figure.caption(scene), figure.reading(scene), ...columns];
      // An empty sentence leaves two blanks, or one at an end.
      expect(figure.caption(scene)).not.toMatch(/^ | $| {2}/);
      for (const text of said) {
        expect(text).toMatch(/\S/);
        expect(text).not.toMatch(/NaN|undefined|Infinity|\bnull\b/);
      }
      for (const row of rows) {
        expect(row).toHaveLength(columns.length);
        expect(row[0]).toMatch(/\S/);
        for (const cell of row) expect(cell).not.toMatch(/NaN|undefined|Infinity|\bnull\b/);
      }
    },
  );

  it('draws something else of another comparison', () => {
    const drawing = (entry: ComparisonEntry): string =>
      draw(figure, sceneFor(entry), sizes.wide, newDocument(), 'x').outerHTML;
    expect(drawing(changed)).not.toBe(drawing(scenes['equal knives'] ?? base));
  });
});
