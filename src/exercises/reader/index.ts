import { modeOf } from '../asks.ts';
import type { Asks, Mode } from '../asks.ts';
import { letter } from '../wording.ts';
import { amountOf } from './amount.ts';
import { choiceOf } from './choice.ts';
import { plainSigns } from './plain-signs.ts';

/** How an answer was written: `4.49`, `×4.49` or `9/4`, `449%`, `+349%`, `B`. */
export type Form = 'number' | 'times' | 'percent of' | 'percent more' | 'letter';

/** What was read. The value is a ratio, an amount, or the place of an option, as the question asks. */
export type Answer =
  { ok: true; value: number; form: Form } | { ok: false; kind: 'empty' | 'not readable'; message: string };

/**
 * Reads a typed answer as what the question asks for.
 *
 * A bare number is in what the question asks for. `×4.49`, `4.49 times` and `9/4` are ratios; `+349%` and
 * `349% more` are per cent more; `449%` is 449 per cent of it, unless the question asks for per cent more or less.
 * A single comma or point is the decimal mark; of two kinds, the last is. Groups of three digits may be set off.
 * An amount may have its unit after it. An option is given by its letter or by its text.
 *
 * @param text what was typed, up to 200 characters
 * @param asks what the question asks for
 * @param options what is chosen from, where a letter is asked for
 * @param signed whether 0 and less than 0 are answers too
 * @example readAnswer('4,49', 'times as long') // → { ok: true, value: 4.49, form: 'number' }
 * @example readAnswer('+349%', 'times as long') // → { ok: true, value: 4.49, form: 'percent more' }
 * @example readAnswer('125', '% more') // → { ok: true, value: 2.25, form: 'number' }
 * @example readAnswer('2 1/4', 'times as long') // → { ok: true, value: 2.25, form: 'times' }
 * @example readAnswer('20', '% less') // → { ok: true, value: 0.8, form: 'number' }
 * @example readAnswer('−0.5', 'times', [], true) // → { ok: true, value: -0.5, form: 'number' }
 * @example readAnswer('84 m', 'm') // → { ok: true, value: 84, form: 'number' }
 * @example readAnswer('b', 'letter', ['this', 'that']) // → { ok: true, value: 2, form: 'letter' }
 */
export function readAnswer(
  text: string,
  asks: Asks,
  options: readonly string[] = [],
  signed = false,
): Answer {
  const mode = modeOf(asks);
  const how = howTo(mode, asks, options);
  const tidy = plainSigns(text.slice(0, LONGEST + 1));
  if (tidy === '') return { ok: false, kind: 'empty', message: `Nothing is written yet. ${how}` };
  if (tidy.length > LONGEST) return unreadable(text, how);
  if (mode === 'letter') {
    const value = choiceOf(text, options);
    return value === undefined ? unreadable(text, how) : { ok: true, value, form: 'letter' };
  }
  const read = mode === 'quantity' ? quantity(tidy, asks) : ratio(tidy, mode);
  if (!read) return unreadable(text, how);
  if (read.value <= 0 && !signed) {
    return unreadable(
      text,
      mode === 'quantity'
        ? 'An amount is more than 0.'
        : 'An answer is above nothing: as a ratio it is more than 0.',
    );
  }
  return { ok: true, value: Number(read.value.toPrecision(15)), form: read.form };
}

/** The most signs that are read: with so few no number is too large to be kept. */
const LONGEST = 200;

const SHAPE = new RegExp(
  "^(?<before>x)? ?(?<sign>[+-])? ?(?<amount>[\\d.,/ ']*\\d)" +
    '(?: ?(?:(?<after>x|times|-?fold)(?: as (?:long|many|much|far|high|coarse))?' +
    '|(?<percent>%|percent|per cent)(?: ?(?:(?<more>more)|(?<less>less|fewer|smaller)|(?<of>of it|as (?:long|many|much|far|high))))?))?$',
);

interface Read {
  value: number;
  form: Form;
}

function ratio(tidy: string, mode: Mode): Read | undefined {
  const groups = SHAPE.exec(tidy)?.groups;
  const amount = groups?.['amount'];
  if (!groups || amount === undefined) return undefined;
  const { sign, before, after, percent, more, less, of } = groups;
  const size = amountOf(amount);
  if (size === undefined || (less && sign)) return undefined;

  const asTimes = Boolean(before ?? after) || (amount.includes('/') && !percent);
  const ofIt =
    Boolean(of) || (!sign && !more && !less && mode === 'times') || (mode === 'share' && !more && !less);
  const form: Form = percent ? (ofIt ? 'percent of' : 'percent more') : asTimes ? 'times' : 'number';
  const literal = sign === '-' ? -size : size;
  // Asked for per cent less, a bare number and one with a minus are both less.
  const down = sign === '-' || Boolean(less) || (mode === 'less' && !sign && !more);
  const bare = form === 'number';
  if (form === 'percent more' || (bare && (mode === 'more' || mode === 'less')))
    return { value: (100 + (down ? -size : size)) / 100, form };
  return { value: form === 'percent of' || (bare && mode === 'share') ? literal / 100 : literal, form };
}

/** A number with its unit or without. */
function quantity(tidy: string, asks: Asks): Read | undefined {
  const unit = plainSigns(asks);
  const bare = (tidy.endsWith(unit) ? tidy.slice(0, -unit.length) : tidy).trim().replace(/^\+ ?/, '');
  const size = amountOf(bare.replace(/^- ?/, ''));
  return size === undefined ? undefined : { value: bare.startsWith('-') ? -size : size, form: 'number' };
}

function howTo(mode: Mode, asks: Asks, options: readonly string[]): string {
  if (mode === 'letter') return `Write a letter from A to ${letter(options.length - 1)}.`;
  if (mode === 'quantity') return `Write an amount in ${asks} such as 4.49, 4,49 or 9/4.`;
  if (mode === 'less') return 'Write a number such as 34.9, 34,9, 34.9% or ×0.651.';
  if (mode === 'share') return 'Write a number such as 34.9, 34,9, 34.9% or 1/3.';
  return 'Write a number such as 4.49, 4,49, ×4.49, +349% or 9/4.';
}

function unreadable(text: string, why: string): Answer {
  const shown = text.trim().length > 30 ? `${[...text.trim()].slice(0, 30).join('')}…` : text.trim();
  return { ok: false, kind: 'not readable', message: `“${shown}” cannot be read as an answer. ${why}` };
}
