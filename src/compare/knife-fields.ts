import { carbidesByDesignation } from '../model/index.ts';
import type { CarbideKind, Grind, GrindForm, GritScale, Quantity } from '../model/index.ts';
import { readNumber, readQuantity, showQuantity } from '../comparison/read.ts';
import type { Expected } from '../comparison/read.ts';
import type { KnifeEntry, ComparisonEntry, Placed } from '../comparison/schema.ts';
import { inFigures, plain } from '../scene/show.ts';

/**
 * The fields of one knife. Each knows how to show a part of the entry as text and how to read the text back;
 * none keeps anything. A text that can't be read leaves the entry as it was and says why.
 */
export type Written = { ok: true; knife: KnifeEntry } | { ok: false; message: string };

interface Shared {
  label: string;
  hint?: string;
  /** True where the field has a meaning for this knife; the others are not shown. */
  applies?(knife: KnifeEntry): boolean;
  show(knife: KnifeEntry, entry: ComparisonEntry): string;
  write(knife: KnifeEntry, text: string, entry: ComparisonEntry): Written;
}

export interface TextField extends Shared {
  kind: 'text';
  unit?(entry: ComparisonEntry): string;
  /** The range that stands for "not known": wide, stated, and shown in the field. */
  unknown?: { low: number; high: number };
}

export interface ChoiceField extends Shared {
  kind: 'choice';
  choices: readonly (readonly [value: string, label: string])[];
}

export type Field = TextField | ChoiceField;

const mmPerThou = 0.0254;

const good = (knife: KnifeEntry): Written => ({ ok: true, knife });
const bad = (message: string): Written => ({ ok: false, message });

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

interface QuantityFieldOptions {
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
  /** True where three readings along the edge make sense. */
  placed?: boolean;
}

function quantityField({
  label,
  hint,
  unit,
  length,
  unknown,
  applies,
  get,
  set,
  none,
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
    show(knife, entry) {
      const value = get(knife);
      return value === undefined ? '' : showPlaced(scaled(value, 1 / by(entry)));
    },
    write(knife, text, entry) {
      if (none && text.trim() === '') return good(none(knife));
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

const without = (knife: KnifeEntry, key: 'microbevelDeg' | 'toughness'): KnifeEntry => {
  const { [key]: _gone, ...rest } = knife;
  return rest;
};

const typedAngle = (knife: KnifeEntry): boolean => 'deg' in knife.angle;

const bevelOf = ({ angle }: KnifeEntry): { bevelMm: Quantity; sideMm: Quantity } =>
  'deg' in angle
    ? { bevelMm: 0.5, sideMm: 1.2 }
    : { bevelMm: angle.bevelMm, sideMm: 'heightMm' in angle ? angle.heightMm : angle.slantWidthMm };

function withBevel(knife: KnifeEntry, way: string, bevelMm: Quantity, sideMm: Quantity): KnifeEntry {
  return {
    ...knife,
    angle: way === 'height' ? { bevelMm, heightMm: sideMm } : { bevelMm, slantWidthMm: sideMm },
  };
}

const angleWay = ({ angle }: KnifeEntry): string =>
  'deg' in angle ? 'typed' : 'heightMm' in angle ? 'height' : 'width';

const plainNumber = (value: Placed): number =>
  typeof value === 'number' ? value : 'value' in value ? value.value : Number.NaN;

const carbideNames: Record<CarbideKind, string> = {
  Fe3C: 'Cementite Fe₃C',
  CrC: 'Chromium carbide (Cr₇C₃, Cr₂₃C₆)',
  CrVC: 'Chromium–vanadium carbide',
  MC: 'Vanadium or niobium carbide MC',
  M6C: 'Tungsten–molybdenum carbide M₆C',
  MN: 'Vanadium nitride',
  CrN: 'Chromium nitride',
};

const byVolume = ({ carbide }: KnifeEntry): boolean =>
  'volPercent' in carbide && steelOf(carbide.volPercent) !== 'not known';

/** Carbide not known: this range of chromium carbide stands for it, wide enough for every common steel. */
const unknownCarbide = { CrC: { unknown: true, low: 0, high: 16 } } as const;

const steelOf = (volumes: object): 'not known' | 'volume' =>
  JSON.stringify(volumes) === JSON.stringify(unknownCarbide) ? 'not known' : 'volume';

/** A kind of carbide of which nobody knows how much there is: up to more than any standard designation has of all. */
const unknownVolume = { low: 0, high: 20 } as const;

const volumeField = (kind: CarbideKind): TextField =>
  quantityField({
    label: carbideNames[kind],
    hint: 'Volume per cent; 0 where there is none. Empty: not known.',
    unit: () => 'vol %',
    unknown: unknownVolume,
    applies: byVolume,
    get: ({ carbide }) => ('volPercent' in carbide ? (carbide.volPercent[kind] ?? 0) : undefined),
    set: (knife, value) => ({
      ...knife,
      carbide: {
        volPercent: {
          ...('volPercent' in knife.carbide ? knife.carbide.volPercent : {}),
          [kind]: value as Quantity,
        },
      },
    }),
  });

const curved = ({ grind }: KnifeEntry): boolean => grind.form !== 'flat';

const grindField = (
  key: 'spineMm' | 'heightMm' | 'radiusMm',
  more: Pick<QuantityFieldOptions, 'label' | 'hint' | 'applies' | 'unknown'>,
): TextField =>
  quantityField({
    ...more,
    length: true,
    get: ({ grind }) => grind[key],
    set: (knife, value) => ({ ...knife, grind: { ...knife.grind, [key]: value as Quantity } }),
  });

export const fields = {
  name: {
    kind: 'text',
    label: 'Name',
    show: ({ name }) => name,
    write: (knife, text) =>
      text.trim() === ''
        ? bad('Give the knife a name, so that the sentences can speak of it.')
        : good({ ...knife, name: text.trim() }),
  },
  state: {
    kind: 'choice',
    label: 'Edge as it is',
    choices: [
      ['as bought', 'as bought'],
      ['resharpened', 'resharpened'],
      ['modified', 'modified'],
      ['not recorded', 'not recorded'],
    ],
    show: ({ state }) => state,
    write: (knife, text) => good({ ...knife, state: text as KnifeEntry['state'] }),
  },
  angleWay: {
    kind: 'choice',
    label: 'Edge angle',
    choices: [
      ['typed', 'typed, per side'],
      ['width', 'from bevel width'],
      ['height', 'from bevel height'],
    ],
    show: angleWay,
    write(knife, way) {
      if (way === 'typed') return good(typedAngle(knife) ? knife : { ...knife, angle: { deg: 20 } });
      const { bevelMm, sideMm } = bevelOf(knife);
      return good(withBevel(knife, way, bevelMm, sideMm));
    },
  },
  angle: quantityField({
    label: 'Angle per side',
    hint: '22, 22 ± 1, 20–24, or heel / middle / tip: 21 / 22 / 24. Empty: not known.',
    unit: () => '°',
    unknown: { low: 12, high: 28 },
    placed: true,
    applies: typedAngle,
    get: ({ angle }) => ('deg' in angle ? angle.deg : undefined),
    set: (knife, deg) => ({ ...knife, angle: { deg } }),
  }),
  bevelThickness: quantityField({
    label: 'Thickness at the shoulder (A)',
    hint: 'Across the blade, where the bevel begins. Empty: not known.',
    length: true,
    unknown: { low: 0.15, high: 0.9 },
    applies: (knife) => !typedAngle(knife),
    get: (knife) => bevelOf(knife).bevelMm,
    set: (knife, value) => withBevel(knife, angleWay(knife), value as Quantity, bevelOf(knife).sideMm),
  }),
  bevelSide: quantityField({
    label: 'Bevel width or height (B or C)',
    hint: 'Width along the bevel (B), or height along the blade (C). Empty: not known.',
    length: true,
    unknown: { low: 0.4, high: 2.5 },
    applies: (knife) => !typedAngle(knife),
    get: (knife) => bevelOf(knife).sideMm,
    set: (knife, value) => withBevel(knife, angleWay(knife), bevelOf(knife).bevelMm, value as Quantity),
  }),
  microbevel: quantityField({
    label: 'Microbevel, angle per side',
    hint: 'Empty: there is none.',
    unit: () => '°',
    get: ({ microbevelDeg }) => microbevelDeg,
    set: (knife, value) => ({ ...knife, microbevelDeg: value as Quantity }),
    none: (knife) => without(knife, 'microbevelDeg'),
  }),
  edge: quantityField({
    label: 'Thickness behind the edge',
    hint: '0.4, 0.40 ± 0.02, or heel / middle / tip. Empty: not known.',
    length: true,
    unknown: { low: 0.15, high: 0.9 },
    placed: true,
    get: ({ edgeMm }) => edgeMm,
    set: (knife, edgeMm) => ({ ...knife, edgeMm }),
  }),
  finishScale: {
    kind: 'choice',
    label: 'Finish: scale',
    choices: [
      ['FEPA-P', 'FEPA P'],
      ['FEPA-F', 'FEPA F'],
      ['JIS', 'JIS'],
      ['CAMI', 'CAMI'],
      ['um', 'µm'],
    ],
    show: ({ finish }) => ('um' in finish ? 'um' : finish.scale),
    write: (knife, scale) =>
      good({
        ...knife,
        finish:
          scale === 'um'
            ? { um: 'um' in knife.finish ? knife.finish.um : 15 }
            : { scale: scale as GritScale, grit: 'um' in knife.finish ? 400 : knife.finish.grit },
      }),
  },
  finish: {
    kind: 'text',
    label: 'Finish: grit or size',
    hint: 'The grit of the last stone or belt, or the median size in µm. Empty: not known.',
    unknown: { low: 3, high: 80 },
    show: ({ finish }) => ('um' in finish ? showQuantity(finish.um, 4) : String(finish.grit)),
    write(knife, text) {
      const read = readQuantity(text, {
        what: 'um' in knife.finish ? 'particle size' : 'grit',
        unknown: { low: 3, high: 80 },
      });
      if (!read.ok) return bad(read.message);
      if ('um' in knife.finish || (typeof read.value === 'object' && 'unknown' in read.value))
        return good({ ...knife, finish: { um: read.value } });
      return good({ ...knife, finish: { ...knife.finish, grit: plainNumber(read.value) } });
    },
  },
  grindForm: {
    kind: 'choice',
    label: 'Primary grind',
    choices: [
      ['flat', 'flat'],
      ['hollow', 'hollow'],
      ['convex', 'convex'],
    ],
    show: ({ grind }) => grind.form,
    write(knife, form) {
      const { spineMm, heightMm, radiusMm } = knife.grind;
      const grind: Grind = {
        form: form as GrindForm,
        spineMm,
        heightMm,
        ...(form === 'flat' ? {} : { radiusMm: radiusMm ?? 150 }),
      };
      return good({ ...knife, grind });
    },
  },
  spine: grindField('spineMm', {
    label: 'Thickness at the spine',
    hint: 'Full thickness, above the grind: 3, or 3 ± 0.1. Empty: not known.',
    unknown: { low: 1.5, high: 5 },
  }),
  grindHeight: grindField('heightMm', {
    label: 'Height of the grind',
    hint: 'From the shoulder to full thickness. Empty: not known.',
    unknown: { low: 8, high: 40 },
  }),
  radius: grindField('radiusMm', {
    label: 'Radius of the face',
    hint: 'Of the wheel for a hollow, of the bulge for a convex face. Empty: not known.',
    unknown: { low: 40, high: 400 },
    applies: curved,
  }),
  hrc: quantityField({
    label: 'Hardness',
    hint: '60, 60 ± 1, 58–60. Empty: not known.',
    unit: () => 'HRC',
    unknown: { low: 54, high: 64 },
    get: ({ hrc }) => hrc,
    set: (knife, value) => ({ ...knife, hrc: value as Quantity }),
  }),
  steel: {
    kind: 'choice',
    label: 'Steel',
    choices: [
      ['not known', 'not known'],
      ['volume', 'carbide by volume'],
      ...Object.keys(carbidesByDesignation).map((designation): [string, string] => [
        designation,
        designation,
      ]),
    ],
    show: ({ carbide }) => ('designation' in carbide ? carbide.designation : steelOf(carbide.volPercent)),
    write(knife, value) {
      if (value === 'not known') return good({ ...knife, carbide: { volPercent: unknownCarbide } });
      if (value === 'volume') {
        const known =
          'designation' in knife.carbide ? carbidesByDesignation[knife.carbide.designation] : undefined;
        return good({ ...knife, carbide: { volPercent: known ?? { CrC: 5 } } });
      }
      return good({ ...knife, carbide: { designation: value } });
    },
  },
  ...(Object.fromEntries(
    (Object.keys(carbideNames) as CarbideKind[]).map((kind) => [`carbide${kind}`, volumeField(kind)]),
  ) as Record<`carbide${CarbideKind}`, TextField>),
  toughness: quantityField({
    label: 'Toughness',
    hint: 'MPa√m, or one index for all knives. Empty: not known.',
    get: ({ toughness }) => toughness,
    set: (knife, value) => ({ ...knife, toughness: value as Quantity }),
    none: (knife) => without(knife, 'toughness'),
  }),
} satisfies Record<string, Field>;

export type FieldName = keyof typeof fields;

export const fieldNamed = (name: string): Field => {
  const field = (fields as Record<string, Field>)[name];
  if (!field)
    throw new RangeError(`there is no field named "${name}"; the names stand in src/compare/knife-fields.ts`);
  return field;
};

/** Field sets in the order a person measures a knife. */
export const groups: readonly { title: string; names: readonly FieldName[] }[] = [
  {
    title: 'Edge',
    names: [
      'angleWay',
      'angle',
      'bevelThickness',
      'bevelSide',
      'edge',
      'finishScale',
      'finish',
      'microbevel',
    ],
  },
  { title: 'Grind', names: ['grindForm', 'spine', 'grindHeight', 'radius'] },
  {
    title: 'Steel',
    names: [
      'hrc',
      'steel',
      'carbideFe3C',
      'carbideCrC',
      'carbideCrVC',
      'carbideMC',
      'carbideM6C',
      'carbideMN',
      'carbideCrN',
      'toughness',
    ],
  },
];
