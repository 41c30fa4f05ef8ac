/**
 * Values as nested lists without field names, so that a link stays short. A field's position never changes its meaning,
 * and lists of names only ever grow at their end: links already sent depend on both.
 */
export type Packed = string | number | boolean | null | readonly Packed[];

/** How one value is packed, and read back. What `unpack` gives is not checked yet. */
export interface Packing<Value> {
  pack(value: Value): Packed;
  unpack(packed: unknown): unknown;
}

/** How one field of a whole is packed, and at which position; the whole is at hand for what refers to another field. */
export interface FieldPacking<Value, Whole> {
  readonly position: number;
  pack(value: Value, whole: Whole): Packed;
  unpack(packed: unknown, whole: readonly unknown[]): unknown;
}

type Optional<Whole, Name extends keyof Whole> =
  object extends Pick<Whole, Name>
    ? {
        readonly optional: true;
        /** What stands where the field is left out; null by default. */
        readonly absent?: Packed;
      }
    : { readonly optional?: false; readonly absent?: never };

/** The packing of every field of a whole: one that is left out does not compile. */
export type FieldPackings<Whole> = {
  readonly [Name in keyof Whole]-?: FieldPacking<Exclude<Whole[Name], undefined>, Whole> &
    Optional<Whole, Name>;
};

type AnyPacking = FieldPacking<unknown, unknown> & {
  readonly optional?: boolean;
  readonly absent?: Packed;
};

/** The list at a place; an empty one where something else stands, which the check of the comparison then refuses. */
export const listOf = (packed: unknown): unknown[] => (Array.isArray(packed) ? (packed as unknown[]) : []);

/** Without what is missing at the end. */
function withoutMissingEnd(list: readonly Packed[]): Packed[] {
  return list.slice(0, list.findLastIndex((item) => item !== null) + 1);
}

/** A whole as the list of its fields, each at its position; null where one is left out, nothing at the end. */
export function packFields<Whole extends object>(fields: FieldPackings<Whole>, whole: Whole): Packed[] {
  const packings = Object.entries(fields) as [string, AnyPacking][];
  const list: Packed[] = Array.from({ length: packings.length }, () => null);
  for (const [name, { position, absent, pack }] of packings) {
    const value = (whole as Record<string, unknown>)[name];
    list[position] = value === undefined ? (absent ?? null) : pack(value, whole);
  }
  return withoutMissingEnd(list);
}

/** The whole a list stands for, not yet checked. An optional field is there only where something stands for it. */
export function unpackFields<Whole extends object>(
  fields: FieldPackings<Whole>,
  packed: unknown,
): Record<string, unknown> {
  const list = listOf(packed);
  const whole: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(fields) as [string, AnyPacking][]) {
    const { position, optional, absent, unpack } = field;
    const value = list[position] ?? null;
    const isLeftOut = optional && (value === null || value === absent);
    if (!isLeftOut) whole[name] = unpack(value, list);
  }
  return whole;
}

/** A whole whose fields are packed each at its position. */
export const wholePacking = <Whole extends object>(fields: FieldPackings<Whole>): Packing<Whole> => ({
  pack: (whole) => packFields(fields, whole),
  unpack: (packed) => unpackFields(fields, packed),
});

/** Text, numbers and yes or no stand as they are. */
export const asItIs: Packing<string | number | boolean> = {
  pack: (value) => value,
  unpack: (packed) => packed,
};
export const text: Packing<string> = { ...asItIs };

/** One of a list of names as its place in it. */
export const nameOf = <const Name extends string>(names: readonly Name[]): Packing<Name> => ({
  pack: (name) => names.indexOf(name),
  unpack: (packed) => (typeof packed === 'number' ? names[packed] : undefined),
});

/** What is either true or left out. */
export const flag: Packing<true> = { pack: () => 1, unpack: (packed) => (packed === 1 ? true : packed) };

/** A list of values packed alike. */
export const each = <Value>({ pack, unpack }: Packing<Value>): Packing<readonly Value[]> => ({
  pack: (values) => values.map((value) => pack(value)),
  unpack: (packed) => listOf(packed).map((value) => unpack(value)),
});
