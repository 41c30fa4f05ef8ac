import { contextIds, kindsFor, levels } from '../../exercises/index.ts';
import type { ContextId, Kind } from '../../exercises/index.ts';
import { versions } from '../../exercises/set/index.ts';
import type { SetRequest } from '../../exercises/set/index.ts';

/** A letter for each kind. A letter once given is never given to another kind: it stands on printed sheets. */
const LETTERS: Record<Kind, string> = {
  'times-or-more': 'a',
  'multiply-or-add': 'b',
  'fair-pair': 'c',
  'forward-chain': 'd',
  'equivalent-change': 'e',
  'missing-factor': 'f',
  'reverse-base': 'g',
  undo: 'h',
  'inverse-proportion': 'i',
  'even-up': 'j',
  'grit-by-scale': 'k',
  'two-routes': 'l',
  'rounding-bands': 'm',
  'mean-growth': 'n',
  'share-of-factor': 'o',
  'range-product': 'p',
};

const FORM = '1';
const MOST = 40;

/**
 * The settings of a set as a short plain code: form, context, level, number, version, seed, kinds and two signs
 * by which a slip of the pen is noticed.
 *
 * @example setCode({ seed: 7, version: 'B', count: 12, level: 'rising', context: 'tides', kinds: ['undo'] }) // → '1.tides.r.12.b.7.h.2k'
 */
export function setCode(request: Required<SetRequest>): string {
  const { context, count, kinds, level, seed, version } = request;
  const body = [
    FORM,
    context,
    level === 'rising' ? 'r' : level,
    count,
    version.toLowerCase(),
    seed,
    kinds.map((kind) => LETTERS[kind]).join(''),
  ].join('.');
  return `${body}.${signs(body)}`;
}

export type SetCodeRead = { ok: true; request: Required<SetRequest> } | { ok: false; why: string };

/**
 * Reads a code that `setCode` wrote, in capitals or not; says what is wrong with one that it did not.
 *
 * @example readSetCode('1.tides.r.12.b.7.h.2k').ok // → true
 * @example readSetCode('1.tides.r.12.b.8.h.2k') // → { ok: false, why: 'one of its signs is not as it was written.' }
 */
export function readSetCode(text: string): SetCodeRead {
  const code = text.trim().toLowerCase();
  const parts = code.split('.');
  if (parts[0] !== FORM && /^\d+$/.test(parts[0] ?? ''))
    return wrong(`it is of form ${String(parts[0])}, and this page reads form ${FORM}.`);
  if (parts.length !== 8) return wrong('it is not whole.');
  const [, contextPart, levelPart, countPart, versionPart, seedPart, kindsPart, signsPart] = parts;
  if (signs(parts.slice(0, -1).join('.')) !== signsPart)
    return wrong('one of its signs is not as it was written.');

  const context = contextIds.find((each) => each === contextPart);
  const level = levelPart === 'r' ? 'rising' : levels.find((each) => String(each) === levelPart);
  const version = versions.find((each) => each.toLowerCase() === versionPart);
  const count = whole(countPart, 1, MOST);
  const seed = whole(seedPart, 0, 0xffffffff);
  if (!context || !level || !version || count === undefined || seed === undefined)
    return wrong('it asks for something there is not.');
  const kinds = kindsOf(kindsPart ?? '', context);
  if (!kinds) return wrong('it asks for kinds of problems there are not.');
  return { ok: true, request: { context, level, version, count, seed, kinds } };
}

const wrong = (why: string): SetCodeRead => ({ ok: false, why });

function whole(text: string | undefined, least: number, most: number): number | undefined {
  const value = /^\d{1,10}$/.test(text ?? '') ? Number(text) : NaN;
  return value >= least && value <= most ? value : undefined;
}

function kindsOf(letters: string, context: ContextId): Kind[] | undefined {
  const allowed = kindsFor(context);
  const kinds = [...letters].map((sign) => allowed.find((kind) => LETTERS[kind] === sign));
  const found = kinds.filter((kind) => kind !== undefined);
  return found.length === kinds.length && kinds.length > 0 && new Set(found).size === found.length
    ? found
    : undefined;
}

/** The largest below 36², which is what two signs can tell apart. */
const LARGEST_PRIME = 1291;

/** Two signs that change with every one of the text: a remainder of it, read as a number to the base 31. */
function signs(text: string): string {
  let sum = 0;
  for (const sign of text) sum = (sum * 31 + sign.charCodeAt(0)) % LARGEST_PRIME;
  return sum.toString(36).padStart(2, '0');
}

/** The settings a fresh page opens with: twelve mixed problems, without script too. */
export const FIRST_SET: Required<SetRequest> = {
  context: 'seed-trays',
  level: 'rising',
  count: 12,
  version: 'B',
  seed: 7,
  kinds: kindsFor('seed-trays'),
};
