/** The fields in which offers are typed, and what they say. They belong to nobody's comparison: nothing keeps them. */

import { carbidesByDesignation } from '../../model/index.ts';

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
