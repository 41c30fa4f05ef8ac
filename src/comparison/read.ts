import type { Quantity } from '../model/index.ts';

/** A unit a person may write behind a number. A thou is a thousandth of an inch. */
export type Unit = 'mm' | 'thou' | '°' | 'HRC' | 'µm' | '%';

/** What a field expects. */
export interface Expected {
  /** What the number is, for the messages: `edge angle`. */
  what?: string;
  /** The unit of a bare number, and of the result. Behind a length, `mm` and `thou` are converted into it. */
  unit?: Unit;
  /** The allowed range, ends included; −1e6 to 1e6 where none is given. */
  low?: number;
  high?: number;
  /** Where given, an empty field, `?` and `not known` stand for this range. */
  unknown?: { low: number; high: number };
}

export type Refused = {
  ok: false;
  kind: 'empty' | 'not readable' | 'out of range' | 'reversed';
  message: string;
};
export type ReadNumber = { ok: true; value: number } | Refused;
export type ReadWindow = { ok: true; low: number; high: number } | Refused;
export type ReadQuantity = { ok: true; value: Quantity } | Refused;

const refused = (kind: Refused['kind'], message: string): Refused => ({ ok: false, kind, message });

const mmPerThou = 0.0254;
const longestText = 80;

const sign = '[+−-]?';
const digits = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+−-]?\d+)?`;
const aNumber = `${sign}${digits}`;
const oneNumber = new RegExp(`^${aNumber}$`);
const withPlusMinus = new RegExp(
  `^(${aNumber})(?:±|\\+/-|\\+-)(${digits})(?:\\((uniform|triangular|normal)\\))?$`,
);
const aRange = new RegExp(`^(${aNumber})(?:–|—|-|to)(${aNumber})$`);
const notKnown = /^(?:not ?known|unknown|\?)(.*)$/i;
const unitBehind = /(mm|thou|°|hrc|[µμ]m|vol ?%|%)$/i;

/** The text as messages quote it: whole if short. */
const quoted = (text: string): string => `“${text.length > 24 ? `${text.slice(0, 24)}…` : text}”`;

/** Numbers as messages and fields write them: no trailing zeros, a true minus sign. */
const written = (value: number, figures = 10): string =>
  String(Number(value.toPrecision(figures))).replaceAll('-', '−');

/** Sums and differences of decimals, without the dust of the last binary digit. */
const clean = (value: number): number => Number(value.toPrecision(12));

function unitNamed(text: string): Unit {
  const small = text.toLowerCase();
  if (small === 'mm' || small === 'thou' || small === '°') return small;
  if (small === 'hrc') return 'HRC';
  return small.endsWith('%') ? '%' : 'µm';
}

/** What a number in `from` is multiplied by to be one in `to`; null where the two do not go together. */
function conversion(from: Unit, to: Unit | undefined): number | null {
  if (from === to) return 1;
  if (from === 'thou' && to === 'mm') return mmPerThou;
  if (from === 'mm' && to === 'thou') return 1 / mmPerThou;
  // Without a known unit a length could be meant in either; only a unit with one meaning is dropped.
  return to === undefined && from !== 'mm' && from !== 'thou' ? 1 : null;
}

interface Prepared {
  ok: true;
  /** Without spaces and unit. */
  text: string;
  scale: number;
}

function prepared(typed: string, expected: Expected): Prepared | Refused {
  const what = expected.what ?? 'the number';
  if (typed.length > longestText) {
    return refused('not readable', `${what}: ${typed.length} characters are too many for a number`);
  }
  const text = typed.trim();
  if (text === '') return refused('empty', `${what} is empty`);
  // Taking spaces out would make one number of two.
  if (/[\d.,]\s+[\d.,]/.test(text)) {
    return refused('not readable', `${what}: ${quoted(text)} is not readable: a space between digits`);
  }
  const unit = unitBehind.exec(text)?.[1];
  if (unit === undefined) return { ok: true, text: text.replaceAll(/\s/g, ''), scale: 1 };
  const scale = conversion(unitNamed(unit), expected.unit);
  if (scale === null) {
    const here = expected.unit ? `${expected.unit} is expected` : 'type the number without a unit';
    return refused('not readable', `${what}: ${quoted(text)} is in ${unit}; ${here}`);
  }
  const units = new RegExp(`${unit.replaceAll(/\s/g, '')}`, 'gi');
  return { ok: true, text: text.replaceAll(/\s/g, '').replaceAll(units, ''), scale };
}

/** Why a text is no number, with the likely slip where there is one. */
function unreadable(text: string, what: string): Refused {
  const hint = /\d[oO]|[oO]\d/.test(text)
    ? 'letter O for zero?'
    : /\d[lI]|[lI]\d/.test(text)
      ? 'a letter for the digit one?'
      : /\d[.,]\d+[.,]/.test(text)
        ? 'more than one decimal sign'
        : 'a number is expected, like 0.5 or 0,5';
  return refused('not readable', `${what}: ${quoted(text)} is not readable: ${hint}`);
}

function valueOf(text: string, scale: number, expected: Expected): ReadNumber {
  const what = expected.what ?? 'the number';
  if (!oneNumber.test(text)) return unreadable(text, what);
  if (/^[+−-]?[1-9]\d{0,2},\d{3}$/.test(text)) {
    const [whole, rest] = text.split(',') as [string, string];
    return refused(
      'not readable',
      `${what}: ${quoted(text)} could be ${whole}${rest} or ${whole}.${rest}; write it that way`,
    );
  }
  const value = Number(text.replace(',', '.').replaceAll('−', '-'));
  if (!Number.isFinite(value))
    return refused('out of range', `${what}: ${quoted(text)} is more than any number here`);
  return inRange(scale === 1 ? value : clean(value * scale), expected);
}

function inRange(
  value: number,
  { what = 'the number', unit = undefined, low = -1e6, high = 1e6 }: Expected,
): ReadNumber {
  if (value >= low && value <= high) return { ok: true, value: value === 0 ? 0 : value };
  const behind = unit === undefined ? '' : unit === '°' || unit === '%' ? unit : ` ${unit}`;
  return refused(
    'out of range',
    `${what} ${written(value)}${behind} is not between ${written(low)}${behind} and ${written(high)}${behind}`,
  );
}

/**
 * Reads one number as people type it: `0,5`, `0.5`, `−3`, `22°`, `20 thou`.
 *
 * @param text What was typed, of any length.
 * @param expected The unit and range of the field. The result is in that unit.
 * @example
 * readNumber('0,5') // → { ok: true, value: 0.5 }
 * readNumber('20 thou', { unit: 'mm' }) // → { ok: true, value: 0.508 }
 */
export function readNumber(text: string, expected: Expected = {}): ReadNumber {
  const ready = prepared(text, expected);
  return ready.ok ? valueOf(ready.text, ready.scale, expected) : ready;
}

/**
 * Reads a quantity: a number, `22 ± 1`, a range `20–24` (its middle ± half of it), or `not known`.
 *
 * `not known (12–28)` carries its own range; `22 ± 1 (normal)` its shape. The ends of a ± may lie outside the allowed range,
 * its value may not.
 *
 * @param text What was typed, of any length.
 * @param expected The unit and range of the field, and the range that stands for not known where that is allowed.
 * @example
 * readQuantity('22 ± 1') // → { ok: true, value: { value: 22, plusMinus: 1 } }
 * readQuantity('20–24') // → { ok: true, value: { value: 22, plusMinus: 2 } }
 * readQuantity('?', { unknown: { low: 54, high: 64 } }) // → { ok: true, value: { unknown: true, low: 54, high: 64 } }
 */
export function readQuantity(text: string, expected: Expected = {}): ReadQuantity {
  const ready = prepared(text, expected);
  if (!ready.ok) {
    return ready.kind === 'empty' && expected.unknown
      ? { ok: true, value: { unknown: true, ...expected.unknown } }
      : ready;
  }
  const { scale } = ready;
  const unknown = notKnown.exec(ready.text);
  if (unknown) return readUnknown(unknown[1] ?? '', scale, expected);

  const around = withPlusMinus.exec(ready.text);
  if (around) return readAround(around, scale, expected);

  const range = aRange.exec(ready.text);
  if (range) {
    const ends = readRange(range, scale, expected);
    if (!ends.ok) return ends;
    const { low, high } = ends;
    if (low === high) return { ok: true, value: low };
    return { ok: true, value: { value: clean((low + high) / 2), plusMinus: clean((high - low) / 2) } };
  }
  return valueOf(ready.text, scale, expected);
}

/**
 * Reads a window, from where to where: `90–110`.
 *
 * @param text What was typed, of any length.
 * @param expected The unit and range of the field; both ends lie in it.
 * @example
 * readWindow('90–110') // → { ok: true, low: 90, high: 110 }
 */
export function readWindow(text: string, expected: Expected = {}): ReadWindow {
  const ready = prepared(text, expected);
  if (!ready.ok) return ready;
  const range = aRange.exec(ready.text);
  return range
    ? readRange(range, ready.scale, expected)
    : refused(
        'not readable',
        `${expected.what ?? 'the range'}: write from where to where, as 90–110, not ${quoted(text)}`,
      );
}

function readAround(found: RegExpExecArray, scale: number, expected: Expected): ReadQuantity {
  const [, middle = '', half = '', shape] = found;
  const value = valueOf(middle, scale, expected);
  if (!value.ok) return value;
  const plusMinus = valueOf(half, scale, { what: `the ± of ${expected.what ?? 'the number'}`, low: 0 });
  if (!plusMinus.ok) return plusMinus;
  return {
    ok: true,
    value: {
      value: value.value,
      plusMinus: plusMinus.value,
      ...(shape === undefined ? {} : { shape: shape as 'uniform' | 'triangular' | 'normal' }),
    },
  };
}

function readRange([, from = '', to = '']: RegExpExecArray, scale: number, expected: Expected): ReadWindow {
  const low = valueOf(from, scale, expected);
  if (!low.ok) return low;
  const high = valueOf(to, scale, expected);
  if (!high.ok) return high;
  if (low.value > high.value) {
    return refused(
      'reversed',
      `${expected.what ?? 'the range'}: ${from}–${to} runs backwards; write ${to}–${from}`,
    );
  }
  return { ok: true, low: low.value, high: high.value };
}

function readUnknown(behind: string, scale: number, expected: Expected): ReadQuantity {
  const what = expected.what ?? 'the number';
  if (behind === '') {
    if (expected.unknown) return { ok: true, value: { unknown: true, ...expected.unknown } };
    return refused(
      'not readable',
      `${what}: a number is needed; if it is not known, give a range: not known (12–28)`,
    );
  }
  const range = aRange.exec(behind.replace(/^\((.*)\)$/, '$1'));
  if (!range) return unreadable(behind, what);
  const ends = readRange(range, scale, expected);
  return ends.ok ? { ok: true, value: { unknown: true, low: ends.low, high: ends.high } } : ends;
}

/**
 * A quantity as a field shows it; `readQuantity` reads it back.
 *
 * @param quantity The quantity, in the unit of the field.
 * @param figures Significant figures, 1–15.
 * @example
 * showQuantity({ value: 22, plusMinus: 1 }, 4) // → '22 ± 1'
 */
export function showQuantity(quantity: Quantity, figures = 4): string {
  if (typeof quantity === 'number') return written(quantity, figures);
  if ('unknown' in quantity)
    return `not known (${written(quantity.low, figures)}–${written(quantity.high, figures)})`;
  const shape = quantity.shape === undefined ? '' : ` (${quantity.shape})`;
  return `${written(quantity.value, figures)} ± ${written(quantity.plusMinus, figures)}${shape}`;
}
