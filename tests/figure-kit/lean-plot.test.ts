import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseHTML } from 'linkedom';
import { describe, expect, it, test } from 'vitest';
import { draw } from '../../src/figure-kit/draw.ts';
import { sizes } from '../../src/figure-kit/figure.ts';
import { leanPlot, plotModules } from '../../src/figure-kit/lean-plot.mjs';
import { topics } from '../../src/topics/all.ts';
import { figuresOfBrowser } from './figures-of-browser.ts';
import { base, sceneFor, scenes } from './scenes.ts';

const figures = Object.values(topics).flatMap((topic) => topic.figures ?? []);
const plot = 'node_modules/@observablehq/plot/src';
const replaced = Object.entries(plotModules);

describe('the modules of Plot that are left out', () => {
  test.each(replaced)('%s is one of this version, and %s stands for it', (name, stub) => {
    expect(existsSync(`${plot}/${name}`)).toBe(true);
    expect(existsSync(`src/figure-kit/plot-without/${stub}.mjs`)).toBe(true);
  });

  const resolveId = leanPlot().resolveId as (source: string, importer?: string) => string | null;
  const importer = `/anywhere/${plot}/marks/axis.js`;

  it('are found as other modules import them', () => {
    expect(resolveId('../time.js', importer)).toMatch(/plot-without\/dates\.mjs$/);
    expect(resolveId('d3-color', '/anywhere/node_modules/d3/dist/d3.mjs')).toMatch(/colours\.mjs$/);
    expect(resolveId('./text.js', importer)).toBeNull();
    expect(resolveId('./time.js', '/anywhere/src/runs/time.ts')).toBeNull();
    expect(resolveId('d3-color', '/anywhere/src/runs/time.ts')).toBeNull();
  });

  it('refuse what a figure must not ask for, by name', async () => {
    const { maybeCurve } = await import('../../src/figure-kit/plot-without/curves.mjs');
    const { isCategoricalScheme } = await import('../../src/figure-kit/plot-without/colour-schemes.mjs');
    expect(() => maybeCurve('basis' as never)).toThrow('Plot is built without curves');
    expect(() => isCategoricalScheme('turbo')).toThrow('Plot is built without colour schemes');
    expect(isCategoricalScheme(undefined)).toBe(false);
  });

  it('write numbers and texts as Plot’s own module does', async () => {
    const lean = await import('../../src/figure-kit/plot-without/formats.mjs');
    const whole = (await import(
      /* @vite-ignore */ pathToFileURL(resolve(plot, 'format.js')).href
    )) as typeof lean;
    for (const value of [0, 1234567.891, -0.5, NaN, 'a text', '', null, undefined, true])
      expect(lean.formatDefault(value)).toBe(whole.formatDefault(value));
  });
});

const newDocument = (): Document => parseHTML('<html><body></body></html>').document as unknown as Document;

/** The loft's knives, and two with runs of their own. */
const compared = ['the loft', 'runs of both'].map((name) => sceneFor(scenes[name] ?? base));

test('every figure looks the same as drawn with the whole of Plot', async () => {
  const browser = await figuresOfBrowser();
  expect(browser.figures.size).toBe(figures.length);
  for (const figure of figures)
    for (const scene of compared)
      for (const size of Object.values(sizes)) {
        const there = browser.draw(browser.figureOf(figure.id), scene, size, newDocument(), 'x');
        expect(there.outerHTML, figure.id).toBe(draw(figure, scene, size, newDocument(), 'x').outerHTML);
      }
});
