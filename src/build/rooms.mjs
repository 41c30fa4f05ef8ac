/**
 * The rooms of the source. A room may import itself and the rooms above it in this table, and nothing below it.
 * `eslint.config.mjs` makes a rule of the table, and `tests/rooms.test.ts` checks that it names every folder of `src`.
 */
import { dirname, relative, resolve, sep } from 'node:path';

/** From the room that needs no other to the pages, which need all: each folder of `src` with what it holds. */
export const rooms = {
  model: 'the factor model, pure; others import its index.ts alone',
  runs: 'the log of runs: CSV in and out, lives, curves',
  exercises: 'problem makers, the reader of answers, missteps',
  comparison: 'what a visitor enters: schema, link, storage, and its conversion for the model',
  scene: 'what the model makes of a comparison, each value computed once',
  phrases: 'wordings that several topics share',
  'figure-kit': 'what figures are drawn with',
  pictures: 'drawings saved as files: cards, sheets, pictures with their data',
  topics: 'all that one subject shows: sentences, numbers, controls, figures',
  test: 'the log, the plan and the fields of the page of runs',
  teach: 'problem sets, forms, tallies and paper tools for a class',
  components: 'the Astro components that pages are written with',
  compare: 'the fields and panels of the Compare page',
  offline: 'the copy of the site kept for use without a network',
  elements: 'the custom elements that bring a page to life',
  build: 'what the build adds to the pages',
  styles: 'style sheets and fonts',
  layouts: 'what pages of one kind have around their content',
  pages: 'the addresses of the site',
};

const order = Object.keys(rooms);

/** Rooms of which others may import one file only. */
const doors = new Map([['model', 'src/model/index.ts']]);

/**
 * @param {string} file an absolute path
 * @returns {string} the path below the repository's root, with forward slashes
 */
const fromRoot = (file) =>
  relative(resolve(import.meta.dirname, '../..'), file)
    .split(sep)
    .join('/');

/**
 * @param {string} path below the repository's root
 * @returns {string | undefined} the room it is in; undefined outside `src` and for files that lie in `src` itself
 */
function roomOf(path) {
  const [source, room, ...rest] = path.split('/');
  return source === 'src' && rest.length > 0 ? room : undefined;
}

/**
 * Why a file may not import another.
 *
 * @param {string} importer the absolute path of the file with the import
 * @param {string} source what it imports, as written there
 * @returns {string | undefined} undefined where it may
 */
export function importProblem(importer, source) {
  if (!source.startsWith('.')) return undefined;
  const target = fromRoot(resolve(dirname(importer), source.replace(/\?.*$/, '')));
  const [from, to] = [roomOf(fromRoot(importer)), roomOf(target)];
  if (from === undefined || to === undefined || from === to) return undefined;
  const unknown = [from, to].find((room) => !order.includes(room));
  if (unknown !== undefined) return `src/${unknown} is not in the table of src/build/rooms.mjs`;
  if (order.indexOf(to) > order.indexOf(from))
    return `src/${from} may not import from src/${to}, which comes after it in the table of src/build/rooms.mjs`;
  const door = doors.get(to);
  return door === undefined || door === target ? undefined : `import ${door} instead of ${target}`;
}
