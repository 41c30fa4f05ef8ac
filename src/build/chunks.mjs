/**
 * Which modules of the browser's scripts are put into one file. The bundler divides all others by what uses them, so that
 * a page fetches no more than it shows. The budgets of bytes are in `tests/site/budget.spec.ts`.
 */

/** Each file with the folders (with a slash at the end) and files it is made of, and the modules a tool adds to it. */
export const chunks = [
  {
    // The script that every page starts with. All that it imports is named here: what the live half imports too would
    // otherwise be put there, and every page would fetch the live half at once.
    name: 'start',
    of: ['src/elements/start/', 'src/topics/index.ts', 'src/offline/saves-data.ts'],
    added: ['vite/preload-helper', 'rolldown/runtime'],
  },
  // The live half of every page with all it imports: in one piece it packs better.
  { name: 'live', of: ['src/elements/page/live.ts'] },
  { name: 'plot', of: ['node_modules/@observablehq/plot/'] },
  // The element of a figure, which comes to a page without what draws where all its figures come late.
  {
    name: 'figure-element',
    of: ['src/elements/figure/figure.ts', 'src/elements/figure/draw-at-hand.ts', 'src/figure-kit/figure.ts'],
  },
  // What every drawing needs.
  { name: 'figure', of: ['src/figure-kit/'] },
];

/** The same as the bundler takes it: where two rules fit a module, the first one holds. */
export const groups = chunks.map(({ name, of, added = [] }, index) => ({
  name,
  /** @param {string} id */
  test: (id) => [...of, ...added].some((place) => id.replaceAll('\\', '/').includes(place)),
  priority: chunks.length - index,
}));
