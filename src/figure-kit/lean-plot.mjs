/**
 * Leaves out of the browser's Plot what none of our figures uses: maps, colour schemes, dates, bent curves, legends, tips,
 * panels, markers, sums, rarer symbols and scales of steps. Their modules are replaced by those in
 * `plot-without`, which refuse. With the whole of Plot a page would have 36 KB (brotli) of script more than the budget lets
 * it: `npx playwright test budget` fails without this.
 */
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const without = (name) => fileURLToPath(new URL(`plot-without/${name}.mjs`, import.meta.url));

/** Modules of Plot, below its `src`, and what stands for each. */
export const plotModules = {
  'curve.js': 'curves',
  'facet.js': 'facets',
  'format.js': 'formats',
  'interactions/pointer.js': 'tips',
  'legends.js': 'legends',
  'marker.js': 'markers',
  'marks/tip.js': 'tips',
  'projection.js': 'maps',
  'scales/diverging.js': 'diverging',
  'scales/schemes.js': 'colour-schemes',
  'scales/temporal.js': 'dates',
  'time.js': 'dates',
  'transforms/bin.js': 'bins',
  'transforms/exclusiveFacets.js': 'facets',
  'transforms/group.js': 'groups',
  'transforms/interval.js': 'intervals',
  'transforms/stack.js': 'stacks',
};

/** Packages that other modules of Plot and d3 import, and what stands for each. */
const packages = {
  'd3-color': 'colours',
  'd3-geo': 'maps',
  'd3-interpolate': 'between',
  'd3-scale': 'scales',
  'd3-shape': 'shapes',
  'd3-time-format': 'dates',
};

const plot = join('@observablehq', 'plot', 'src');

/** @returns {import('vite').Plugin} */
export function leanPlot() {
  return {
    name: 'lean-plot',
    enforce: 'pre',
    applyToEnvironment: ({ name }) => name === 'client',
    resolveId(source, importer) {
      if (!importer?.includes('node_modules')) return null;
      if (Object.hasOwn(packages, source)) return without(packages[source]);
      const at = importer.indexOf(plot);
      if (at < 0 || !source.startsWith('.')) return null;
      const root = importer.slice(0, at + plot.length);
      const name = relative(root, join(dirname(importer), source)).replaceAll('\\', '/');
      return Object.hasOwn(plotModules, name) ? without(plotModules[name]) : null;
    },
  };
}
