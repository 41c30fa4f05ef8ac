import { parseDocument } from 'yaml';
import { comparisonsIn, readComparisons } from './files.ts';
import { documentIn, migrate } from './migrations.ts';
import { validate } from './validate.ts';
import type { ComparisonEntry } from './entry.ts';
import type { Problem } from './validate.ts';

/** A correction of a published comparison. */
export interface Revision {
  /** Year, month, day: `2026-11-25`. */
  date: string;
  changed: string;
  reason: string;
}

/** A comparison published as a page of its own. */
export interface PublishedComparison {
  /** Its address below `comparisons/`: the file's name without its ending. */
  name: string;
  entry: ComparisonEntry;
  /** What anyone who publishes it has to say about it, a paragraph an item. */
  note: string[];
  /** The newest first. */
  revisions: Revision[];
}

/**
 * Reads a comparison: a file of one comparison as Saved saves it, or the comparison's fields alone, in JSON or YAML;
 * beside them, where somebody wants them, a `note` and `revisions`.
 *
 * @param file the path of the file, whose name becomes the address
 * @param text what is in it
 * @throws Error naming the file, the field and what to do about it
 */
export function readPublished(file: string, text: string): PublishedComparison {
  const fail = failIn(file);
  const name = /([^/]+)\.(?:ya?ml|json)$/.exec(file)?.[1] ?? '';
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name))
    fail('', 'its name cannot be an address', 'Name it in small letters, digits and hyphens.');

  const parsed = parseDocument(text.replace(/^\uFEFF/, ''), { prettyErrors: true });
  const [error] = parsed.errors;
  if (error) {
    const { line, col } = error.linePos?.[0] ?? { line: 1, col: 1 };
    const [said = ''] = error.message.split(/ at line \d/);
    fail(`line ${line}, column ${col}`, said, 'Mend the file there, or save it again.');
  }
  const value: unknown = parsed.toJS();
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return fail('', 'it holds no comparison', 'Save one from Compare or from Saved and put it here.');
  const { note, revisions, ...rest } = value as Record<string, unknown>;
  return {
    name,
    entry: 'keenfold' in rest ? saved(fail, rest) : own(fail, rest),
    note: paragraphs(fail, note),
    revisions: revised(fail, revisions),
  };
}

/** Refuses a file: says in which field what is wrong, and what to do about it. */
type Fail = (field: string, what: string, fix: string) => never;

const failIn =
  (file: string): Fail =>
  (field, what, fix) => {
    throw new Error(
      `${file}: ${field === '' ? '' : `${field}: `}${/[.?!]$/.test(what) ? what : `${what}.`} ${fix}`,
    );
  };

function saved(fail: Fail, document: Record<string, unknown>): ComparisonEntry {
  const read = readComparisons(JSON.stringify(document));
  if (!read.ok) return fail('', read.message, 'Save the comparison again.');
  const stored = comparisonsIn(document) ?? [];
  const list = 'comparisons' in document ? 'comparisons' : 'lineUps';
  if (stored.length !== 1)
    return fail(list, `it holds ${stored.length} comparisons`, 'A page shows one: save that one alone.');
  const below = list === 'comparisons' ? 'comparisons.0.comparison' : 'lineUps.0.lineUp';
  return own(fail, migrate(documentIn(stored[0]), document['version'] as number), below);
}

function own(fail: Fail, comparison: unknown, below = ''): ComparisonEntry {
  const checked = validate(comparison);
  return checked.ok ? checked.entry : refuse(fail, checked.problems, below);
}

function refuse(fail: Fail, [first]: readonly Problem[], below: string): never {
  // Unreachable: what is no comparison has a problem at least.
  const { path, message } = first ?? { path: '', message: 'it holds no comparison' };
  return fail([below, path].filter(Boolean).join('.'), message, fixOf(message));
}

function paragraphs(fail: Fail, given: unknown): string[] {
  if (given === undefined) return [];
  if (typeof given !== 'string' || given.trim() === '')
    return fail('note', 'it is not text', 'Write a few sentences, or leave the note out.');
  return given
    .trim()
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.replaceAll(/\s+/g, ' '));
}

function revised(fail: Fail, given: unknown): Revision[] {
  if (given === undefined) return [];
  if (!Array.isArray(given))
    return fail('revisions', 'they are not a list', 'Begin each with a hyphen, or leave them out.');
  return given
    .map((item: unknown, index) => revision(fail, item, `revisions.${index}`))
    .sort((one, other) => (one.date < other.date ? 1 : -1));
}

function revision(fail: Fail, item: unknown, at: string): Revision {
  const { date, changed, reason, ...more } = (
    typeof item === 'object' && item !== null ? item : {}
  ) as Record<string, unknown>;
  for (const [field, given] of Object.entries({ date, changed, reason }))
    if (typeof given !== 'string' || given.trim() === '')
      fail(`${at}.${field}`, 'it is missing', 'A revision has a date, what changed, and the reason.');
  const [odd] = Object.keys(more);
  if (odd !== undefined)
    fail(`${at}.${odd}`, 'it is no part of a revision', 'Keep date, changed and reason.');
  const day = new Date(`${date as string}T00:00:00Z`);
  if (Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== date)
    fail(`${at}.date`, `“${date as string}” is no day`, 'Write year, month and day: 2026-11-25.');
  return { date, changed, reason } as Revision;
}

/** What to do about a problem of a comparison's field. */
function fixOf(message: string): string {
  if (/ is not between | is above | is none of: | is not among /.test(message))
    return 'Change it to one that is allowed.';
  if (/ is not a field /.test(message)) return 'Take it out, or mend its name.';
  if (/ is missing /.test(message))
    return 'public/comparison.schema.json has what belongs there; or save the comparison from Compare again.';
  return 'Mend it, or save the comparison from Compare again.';
}
