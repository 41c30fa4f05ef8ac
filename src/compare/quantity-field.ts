import type { ComparisonEntry, KnifeEntry, Placed } from '../comparison/entry.ts';
import { readNumber, readQuantity, showQuantity } from '../comparison/read.ts';
import type { Expected } from '../comparison/read.ts';
import { inFigures, plain } from '../scene/show.ts';
import { bad, good } from './field.ts';
import type { TextField } from './field.ts';

const mmPerThou = 0.0254;

const scaleOf = ({ lengthUnit }: ComparisonEntry): number => (lengthUnit === 'thou' ? mmPerThou : 1);

function scaled(quantity: Placed, by: number): Placed {
  const round = (value: number) => inFigures(value * by, 10);
  if (typeof quantity === 'number') return round(quantity);
  if ('heel' in quantity)
    return { heel: round(quantity.heel), middle: round(quantity.middle), tip: round(quantity.tip) };
  if ('unknown' in quantity) return { unknown: true, low: round(quantity.low), high: round(quantity.high) };
  return { ...quantity, value: round(quantity.value), plusMinus: round(quantity.plusMinus) };
}

const showPlaced = (value: Placed): string =>
  typeof value === 'object' && 'heel' in value
    ? [value.heel, value.middle, value.tip].map((part) => plain(part, 4)).join(' / ')
    : showQuantity(value, 4);

type ReadPlaced = { ok: true; value: Placed } | { ok: false; message: string };

/** One quantity, or three readings from heel to tip: "22 / 23 / 25". */
function readPlaced(text: string, expected: Expected): ReadPlaced {
  const parts = text.split('/');
  if (parts.length === 1) return readQuantity(text, expected);
  if (parts.length !== 3) {
    return { ok: false, message: 'Readings along the edge are three, heel / middle / tip: 22 / 23 / 25.' };
  }
  const values: number[] = [];
  for (const part of parts) {
    const read = readNumber(part, expected);
    if (!read.ok) return read;
    values.push(read.value);
  }
  const [heel = 0, middle = 0, tip = 0] = values;
  return { ok: true, value: { heel, middle, tip } };
}

export interface QuantityFieldOptions {
  label: string;
  hint: string;
  unit?: (entry: ComparisonEntry) => string;
  length?: boolean;
  unknown?: { low: number; high: number };
  applies?: (knife: KnifeEntry) => boolean;
  get(knife: KnifeEntry): Placed | undefined;
  set(knife: KnifeEntry, value: Placed): KnifeEntry;
  /** Where given, an empty field is allowed and means there is none. */
  none?: (knife: KnifeEntry) => KnifeEntry;
  /** What an empty field is called then; “none” where nothing is given. */
  empty?: string;
  /** True where three readings along the edge make sense. */
  placed?: boolean;
}

/** A field of one quantity, or of readings along the edge. */
export function quantityField({
  label,
  hint,
  unit,
  length,
  unknown,
  applies,
  get,
  set,
  none,
  empty,
  placed,
}: QuantityFieldOptions): TextField {
  const by = (entry: ComparisonEntry) => (length ? scaleOf(entry) : 1);
  const theUnit = length
    ? ({ lengthUnit }: ComparisonEntry) => (lengthUnit === 'thou' ? 'thousandths of an inch' : 'mm')
    : unit;
  return {
    kind: 'text',
    label,
    hint,
    ...(theUnit ? { unit: theUnit } : {}),
    ...(unknown ? { unknown } : {}),
    ...(applies ? { applies } : {}),
    ...(unknown
      ? { standsFor: (entry) => showPlaced(scaled({ unknown: true, ...unknown }, 1 / by(entry))) }
      : {}),
    ...(none ? { standsFor: () => empty ?? 'none' } : {}),
    show(knife, entry) {
      const value = get(knife);
      return value === undefined ? (none ? (empty ?? 'none') : '') : showPlaced(scaled(value, 1 / by(entry)));
    },
    write(knife, text, entry) {
      if (none && (text.trim() === '' || text === (empty ?? 'none'))) return good(none(knife));
      const expected: Expected = {
        what: label.toLowerCase(),
        ...(length ? { unit: entry.lengthUnit } : {}),
        ...(unknown ? { unknown: { low: unknown.low / by(entry), high: unknown.high / by(entry) } } : {}),
      };
      const read = placed ? readPlaced(text, expected) : readQuantity(text, expected);
      return read.ok ? good(set(knife, scaled(read.value, by(entry)))) : bad(read.message);
    },
  };
}
