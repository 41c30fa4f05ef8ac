/** The fields in which offers are typed, and what they say. They belong to nobody's comparison: nothing keeps them. */

import { carbidesByDesignation } from '../../model/index.ts';
import type { CostAsked, OfferAsked } from './asked.ts';
import { readNumber } from '../../comparison/read.ts';
import type { Expected } from '../../comparison/read.ts';
import type { Scene } from '../../scene/scene.ts';

interface CostField {
  label: string;
  unit?: string;
  hint?: string;
  /** What stands there at first. Invented, like the loft. */
  first: string;
  choices?: readonly (readonly [string, string])[];
}

const minutes = (hint: string, first = ''): CostField => ({ label: 'Minutes', hint, first });
const price = (first: string): CostField => ({ label: 'Price', hint: 'In your own money.', first });

export const costFields = {
  rate: {
    label: 'Steel you take off',
    unit: 'mm³ a minute',
    hint: 'Weigh a blade before and after: 1 g of steel is about 128 mm³. Empty: not known.',
    first: '25',
  },
  length: { label: 'Length of the edge', unit: 'mm', first: '110' },
  'refinish-grit': { label: 'Finish to', unit: 'grit or µm', hint: 'Empty: not offered.', first: '220' },
  'refinish-minutes': minutes('Empty: from the steel taken off alone.', '6'),
  'refinish-price': price('4'),
  'regrind-angle': { label: 'Angle per side', unit: '°', hint: 'Empty: as it is.', first: '16' },
  'regrind-edge': { label: 'Thickness behind the edge', unit: 'mm', hint: 'Empty: as it is.', first: '0.4' },
  'regrind-minutes': minutes('Empty: from the steel taken off alone.'),
  'regrind-price': price('25'),
  'steel-hrc': { label: 'Hardness', unit: 'HRC', hint: 'Empty: not offered.', first: '61' },
  'steel-designation': {
    label: 'Steel',
    first: 'AISI D2',
    choices: Object.keys(carbidesByDesignation).map((name) => [name, name]),
  },
  'steel-toughness': {
    label: 'Toughness',
    hint: 'In the unit of the knife’s own. Empty: not known.',
    first: '',
  },
  'steel-minutes': minutes('Your own, for changing over. Empty: not counted.'),
  'steel-price': price('90'),
} as const satisfies Record<string, CostField>;

export type CostFieldName = keyof typeof costFields;
export type CostTexts = Record<CostFieldName, string>;

export const costFieldNames = Object.keys(costFields) as CostFieldName[];
export const costField = (name: CostFieldName): CostField => costFields[name];

/** The fields by what is offered. */
export const costGroups: readonly { title: string; names: readonly CostFieldName[] }[] = [
  { title: 'Yourself', names: ['rate', 'length'] },
  { title: 'Refinish', names: ['refinish-grit', 'refinish-minutes', 'refinish-price'] },
  { title: 'Regrind', names: ['regrind-angle', 'regrind-edge', 'regrind-minutes', 'regrind-price'] },
  {
    title: 'Another steel',
    names: ['steel-hrc', 'steel-designation', 'steel-toughness', 'steel-minutes', 'steel-price'],
  },
];

export const firstTexts = Object.fromEntries(
  costFieldNames.map((name) => [name, costFields[name].first]),
) as CostTexts;

export type ReadCost =
  { ok: true; asked: CostAsked } | { ok: false; problems: { field: CostFieldName; message: string }[] };

/** What the texts offer, or what is wrong in which field. */
export function readCost(
  texts: CostTexts,
  { comparison }: Scene,
  pair: { knife: string; against: string },
): ReadCost {
  const problems: { field: CostFieldName; message: string }[] = [];
  /** Undefined where the field is empty, or holds no number; the latter is noted. */
  const number = (field: CostFieldName, expected: Expected): number | undefined => {
    if (texts[field].trim() === '') return undefined;
    const read = readNumber(texts[field], expected);
    if (read.ok) return read.value;
    problems.push({ field, message: read.message });
    return undefined;
  };
  const costs = (of: 'refinish' | 'regrind' | 'steel') => {
    const [time, money] = [
      number(`${of}-minutes`, { what: 'the minutes', low: 0 }),
      number(`${of}-price`, { what: 'the price', low: 0 }),
    ];
    return {
      ...(time === undefined ? {} : { minutes: time }),
      ...(money === undefined ? {} : { price: money }),
    };
  };

  const offers: OfferAsked[] = [];
  const grit = number('refinish-grit', { what: 'the finish', low: 0.1, high: 8000 });
  const finish = comparison.knives.find(({ id }) => id === pair.knife)?.finish;
  if (grit !== undefined)
    offers.push({
      of: 'refinish',
      offer: {
        kind: 'refinish',
        finish: finish && !('um' in finish) ? { scale: finish.scale, grit } : { um: grit },
      },
      ...costs('refinish'),
    });

  const angleDeg = number('regrind-angle', { what: 'the angle', unit: '°', low: 4, high: 45 });
  const edgeMm = number('regrind-edge', { what: 'the thickness', unit: 'mm', low: 0.01, high: 5 });
  if (angleDeg !== undefined || edgeMm !== undefined)
    offers.push({
      of: 'regrind',
      offer: {
        kind: 'regrind',
        ...(angleDeg === undefined ? {} : { angleDeg }),
        ...(edgeMm === undefined ? {} : { edgeMm }),
      },
      ...costs('regrind'),
    });

  const hrc = number('steel-hrc', { what: 'the hardness', unit: 'HRC', low: 20, high: 68 });
  const toughness = number('steel-toughness', { what: 'the toughness', low: 0.001, high: 10_000 });
  const designation = texts['steel-designation'];
  // A name such as “constructor” is no steel either.
  const carbideVolPercent = new Map(Object.entries(carbidesByDesignation)).get(designation);
  if (hrc !== undefined && !carbideVolPercent)
    problems.push({
      field: 'steel-designation',
      message: 'this steel is not known here: choose one of the list',
    });
  if (hrc !== undefined && carbideVolPercent)
    offers.push({
      of: 'steel',
      designation,
      offer: {
        kind: 'steel',
        hrc,
        carbideVolPercent,
        ...(toughness === undefined ? {} : { toughness }),
      },
      ...costs('steel'),
    });

  const rate = number('rate', { what: 'the steel taken off', low: 0.01, high: 1e5 });
  const edgeLengthMm = number('length', { what: 'the length', unit: 'mm', low: 1, high: 2000 });
  if (edgeLengthMm === undefined && texts.length.trim() === '')
    problems.push({ field: 'length', message: 'the length is empty: the steel to take off depends on it' });
  if (problems.length > 0 || edgeLengthMm === undefined) return { ok: false, problems };
  return {
    ok: true,
    asked: { ...pair, edgeLengthMm, ...(rate === undefined ? {} : { rate }), offers },
  };
}
