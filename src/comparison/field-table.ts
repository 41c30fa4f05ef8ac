import * as v from 'valibot';
import type { FieldPackings } from './link/packed.ts';

/** What may stand in every field of a whole, and how it is packed: a field that is left out does not compile. */
export type FieldTable<Whole> = FieldPackings<Whole> & {
  readonly [Name in keyof Whole]-?: {
    readonly schema: v.GenericSchema<Exclude<Whole[Name], undefined>>;
    /** What it is, and the unit of its numbers: the published schema says both. */
    readonly label?: string;
    readonly unit?: string;
  };
};

interface AnyField {
  schema: v.GenericSchema;
  optional?: boolean;
  label?: string;
  unit?: string;
}

function entryOf({ schema, optional = false, label, unit = '' }: AnyField) {
  const title = unit === '' ? label : `${label ?? ''}, ${unit.trim()}`;
  const titled = title === undefined ? schema : v.pipe(schema, v.title(title));
  return optional ? v.exactOptional(titled) : titled;
}

/** The shape of the whole; a field that is not in the table is refused. */
export function schemaOf<Whole>(fields: FieldTable<Whole>): v.GenericSchema<Whole> {
  const all = Object.entries(fields) as [string, AnyField][];
  const entries = Object.fromEntries(all.map(([name, field]) => [name, entryOf(field)]));
  return v.strictObject(entries) as unknown as v.GenericSchema<Whole>;
}
