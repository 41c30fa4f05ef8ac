import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it, test } from 'vitest';
import { leanPlot, plotModules } from '../../src/figure-kit/lean-plot.mjs';

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
