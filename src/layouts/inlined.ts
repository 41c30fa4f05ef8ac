import { createHash } from 'node:crypto';
import { minifySync, transformSync } from 'rolldown/utils';
import arrivingSource from './inline/arriving.ts?raw';
import earlySource from './inline/early.ts?raw';
import movedSource from './inline/moved.ts?raw';

/** A script that stands in the page itself, and what the content security policy knows it by. */
interface Inlined {
  script: string;
  hash: `sha256-${string}`;
}

/** A script of `inline/`, ready to stand in a page: it has to run before the first paint, so it is not fetched. */
function inlined(name: string, source: string): Inlined {
  const { code: plain } = transformSync(name, source);
  const { code, errors } = minifySync(name, plain, { module: false });
  const [error] = errors;
  if (error) throw new Error(`src/layouts/inline/${name}: ${error.message}`);
  const script = code.trim();
  return { script, hash: `sha256-${createHash('sha256').update(script).digest('base64')}` };
}

/**
 * Lays a long page out in pieces. Without it the longest task of a lesson at its first load, slowed four times, is
 * longer than the budget of 100 ms: `npm run bench -- pages`.
 */
export const arriving = inlined('arriving.ts', arrivingSource);

/** Keeps the page's own example from being taken for the visitor's while the comparison in the address is read. */
export const early = inlined('early.ts', earlySource);

/** Leads on from an old address to the one the page has now. */
export const movedOn = inlined('moved.ts', movedSource);
