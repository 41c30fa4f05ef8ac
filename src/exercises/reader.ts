import type { Asks } from './problem.ts';

/** How an answer was written: `4.49`, `×4.49` or `9/4`, `449 %`, `+349 %`. */
export type Form = 'number' | 'times' | 'percent of' | 'percent more';

/** What was read. The value is a ratio, whatever the question asks for. */
export type Answer =
  { ok: true; value: number; form: Form } | { ok: false; kind: 'empty' | 'not readable'; message: string };

/**
 * Reads a typed answer as a ratio.
 *
 * A bare number is in what the question asks for. `×4.49`, `4.49 times` and `9/4` are ratios; `+349 %` and
 * `349 % more` are per cent more; `449 %` is 449 per cent of it, unless the question asks for per cent more.
 * A single comma or point is the decimal mark; of two kinds, the last is. Groups of three digits may be set off.
 *
 * @param text what was typed, up to 100 characters
 * @param asks what the question asks for
 * @example readAnswer('4,49', 'times as long') // → { ok: true, value: 4.49, form: 'number' }
 * @example readAnswer('+349 %', 'times as long') // → { ok: true, value: 4.49, form: 'percent more' }
 * @example readAnswer('125', '% more') // → { ok: true, value: 2.25, form: 'number' }
 * @example readAnswer('2 1/4', 'times as long') // → { ok: true, value: 2.25, form: 'times' }
 */
export function readAnswer(text: string, asks: Asks): Answer {
  const tidy = tidied(text.slice(0, LONGEST + 1));
  if (tidy === '') return { ok: false, kind: 'empty', message: `Nothing is written yet. ${HOW}` };
  const match = tidy.length > LONGEST ? null : SHAPE.exec(tidy);
  const amount = match?.groups?.['amount'];
  if (!match?.groups || amount === undefined) return unreadable(text, HOW);
  const { sign, before, after, percent, more, less, of } = match.groups;

  const size = amountOf(amount);
  if (size === undefined || (less && sign)) return unreadable(text, HOW);
  const signed = sign === '-' || less ? -size : size;

  const ratio = Boolean(before ?? after) || (amount.includes('/') && !percent);
  const ofIt = Boolean(of) || (!sign && !more && !less && asks !== '% more');
  const form: Form = percent ? (ofIt ? 'percent of' : 'percent more') : ratio ? 'times' : 'number';
  const inPercent = form === 'percent more' || (form === 'number' && asks === '% more');
  const value = inPercent ? (100 + signed) / 100 : form === 'percent of' ? signed / 100 : signed;

  if (!Number.isFinite(value)) return unreadable(text, 'That is larger than any number kept here.');
  if (value <= 0) return unreadable(text, 'An answer is above nothing: as a ratio it is more than 0.');
  return { ok: true, value: Number(value.toPrecision(15)), form };
}

const LONGEST = 100;
const HOW = 'Write a number such as 4.49, 4,49, ×4.49, +349 % or 9/4.';

const SHAPE = new RegExp(
  "^(?<before>x)? ?(?<sign>[+-])? ?(?<amount>[\\d.,/ ']*\\d)" +
    '(?: ?(?:(?<after>x|times|-?fold)(?: as (?:long|many|much))?' +
    '|(?<percent>%|percent|per cent)(?: ?(?:(?<more>more)|(?<less>less|fewer)|(?<of>of it|as (?:long|many|much))))?))?$',
);

const vulgar: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Plain signs for the many that look alike; what cannot be seen is dropped. */
function tidied(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign] ?? ''}`)
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\p{Cf}/gu, '')
    .replace(/[−‐‑‒–—]/g, '-')
    .replace(/[×✕✖·*]/g, 'x')
    .replace(/[⁄∕]/g, '/')
    .replace(/[’‘ʼ]/g, "'")
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .trim();
}

/** `4.49`, `9/4` or `2 1/4`. */
function amountOf(text: string): number | undefined {
  const [top, bottom, ...rest] = text.split('/');
  if (top === undefined || rest.length > 0) return undefined;
  if (bottom === undefined) return decimal(top);
  const under = decimal(bottom);
  if (under === undefined || under === 0) return undefined;
  const mixed = /^(\d+) (\d+)$/.exec(top);
  if (!mixed) {
    const over = decimal(top);
    return over === undefined ? undefined : over / under;
  }
  const [whole, over] = [Number(mixed[1]), Number(mixed[2])];
  return over < under ? whole + over / under : undefined;
}

/** Digits with one decimal mark, whichever it is, and the groups before it set off or not. */
function decimal(text: string): number | undefined {
  if (/^(\d+|\d*[.,]\d+)$/.test(text)) return Number(text.replace(',', '.'));
  const grouped =
    /^\d{1,3}(?:(?<mark>[ '])\d{3}(?:\k<mark>\d{3})*(?:[.,]\d+)?|(?:,\d{3})+\.\d+|(?:\.\d{3})+,\d+)$/.test(
      text,
    );
  if (!grouped) return undefined;
  const last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
  const digits = (part: string): string => part.replace(/\D/g, '');
  return Number(last < 0 ? digits(text) : `${digits(text.slice(0, last))}.${text.slice(last + 1)}`);
}

function unreadable(text: string, why: string): Answer {
  const shown = text.trim().length > 30 ? `${[...text.trim()].slice(0, 30).join('')}…` : text.trim();
  return { ok: false, kind: 'not readable', message: `“${shown}” cannot be read as an answer. ${why}` };
}
