import { readdirSync } from 'node:fs';
import { moved } from '../../src/build/moved.mjs';

/** Where the built site lies. */
export const dist = 'dist';

/** The files of the built site, below `dist`. */
export const builtFiles = (ending: string): string[] =>
  readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith(ending) && !file.startsWith('.'))
    .sort();

let known: string[] | undefined;

/** The address of every built page. A build that left none is a mistake, not a pass. */
export function pages(): string[] {
  if (known) return known;
  const found = builtFiles('.html').map((file) => `/${file.replace(/index\.html$/, '')}`);
  if (!found.includes('/')) throw new Error('no built site in dist: run the build first');
  return (known = found);
}

/** The old address of a page that has moved: it leads on at once, and has a test of its own. */
export const isMoved = (page: string): boolean => page.slice(1) in moved;

/**
 * One page of every kind: of the short answers, which differ only in their words, and of the comparisons, which differ
 * only in their comparison, the first. For tests of what a layout does, which would say the same twelve times.
 */
export function kindsOfPage(): string[] {
  const all = pages();
  // Figures alone and lessons on a large screen have tests of their own.
  const others = /^\/(embed|screen)\//;
  const alike = [/^\/answers\/./, /^\/comparisons\/./];
  return all.filter((page) => {
    if (others.test(page) || isMoved(page)) return false;
    const kind = alike.find((pattern) => pattern.test(page));
    return kind === undefined || all.find((other) => kind.test(other)) === page;
  });
}

/** Folders whose pages are all made by one template, out of the same elements. */
const templates = [/^\/lessons\/(?!all\/)./, /^\/plain\/./];

/**
 * Whether a page stands for all that its template makes, as the first lesson does for the lessons: for what takes long to
 * ask and depends on the elements rather than on the text. A page with a template of its own stands for itself.
 */
export const isRepresentative = (page: string): boolean => {
  const template = templates.find((pattern) => pattern.test(page));
  return template === undefined || kindsOfPage().find((other) => template.test(other)) === page;
};

/** A figure alone, for a frame. */
export const isAlone = (page: string): boolean => page.startsWith('/embed/');

/** The course as one still page, for reading and paper. */
export const isBook = (page: string): boolean => page === '/lessons/all/';

export const lessons = (): string[] =>
  pages().filter((page) => /^\/lessons\/.+\/$/.test(page) && !isBook(page));

/** Some of many pages that differ in their content only, spread over all of them, the first among them. */
export const oneIn = (many: number, all: readonly string[]): string[] =>
  all.filter((_path, index) => index % many === 0);

/** The tool among the pages: its allowance of script is its own. */
export const isComparePage = (page: string): boolean => page === '/compare/';

/** Pages whose live half is their content, and comes with them: the Compare page's fields, Saved's list, the log of runs. */
export const comesLive = (page: string): boolean =>
  isComparePage(page) || page === '/saved/' || page === '/test/';

/** Whether a script is of those every page runs before it is touched. */
export const isStart = (url: string): boolean => /\/_astro\/(Boot|start)\./.test(url);
