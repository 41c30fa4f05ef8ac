import { compared } from './compared.ts';
import type { ComparisonEntry } from './entry.ts';
import { ofKnife } from './found.ts';
import { predictedOf } from './predicted.ts';
import { toModel } from './to-model.ts';

/** The subject's ratio to the baseline as a link or a seal of models 1 and 2 states it. */
export interface EarlierRatios {
  careful: number;
  quick: number;
  rival: number;
}

/** The same as this model states it: the three totals at the middle settings, the quick sum, and the band. */
export interface StatedRatios {
  multiplied: number;
  added: number;
  toLimit: number;
  quick: number;
  low: number;
  middle: number;
  high: number;
}

/** The order in which a link carries them. It never changes. */
const order = ['multiplied', 'added', 'toLimit', 'quick', 'low', 'middle', 'high'] as const;
const earlierOrder = ['careful', 'quick', 'rival'] as const;

const fourFigures = (ratio: number): number => Number(ratio.toPrecision(4));

/**
 * What the model makes of a comparison now, to four figures.
 *
 * @throws RangeError where the model refuses the comparison
 */
export function statedRatios(entry: ComparisonEntry): StatedRatios {
  const comparison = toModel(entry);
  const rows = compared(comparison);
  const { multiplied, added, toLimit } = ofKnife(rows.careful, entry.subject);
  const { low, median, high } = predictedOf(comparison, entry.subject);
  return {
    multiplied: fourFigures(multiplied),
    added: fourFigures(added),
    toLimit: fourFigures(toLimit),
    quick: fourFigures(ofKnife(rows.quick, entry.subject).multiplied),
    low: fourFigures(low),
    middle: fourFigures(median),
    high: fourFigures(high),
  };
}

/** The ratios as a link carries them. */
export const listedRatios = (said: StatedRatios): number[] => order.map((name) => said[name]);

/** What a link or a seal said when it was made. */
export interface Said {
  said?: StatedRatios;
  /** What models 1 and 2 said. */
  saidEarlier?: EarlierRatios;
}

const sensible = (value: unknown): value is number => typeof value === 'number' && value > 0 && value < 1e9;

/** Whether a link or a seal of this model states the ratios as `StatedRatios` has them. */
const statesBands = (modelNumber: string): boolean => modelNumber !== '1' && modelNumber !== '2';

/** The ratios named in an order, if every one of them is sensible. */
function named<Name extends string>(
  names: readonly Name[],
  valueOf: (name: Name, place: number) => unknown,
): Record<Name, number> | undefined {
  const all = names.map((name, place) => [name, valueOf(name, place)] as const);
  return all.every(([, value]) => sensible(value))
    ? (Object.fromEntries(all) as Record<Name, number>)
    : undefined;
}

/** What the list in a link says; nothing where it is not sensible, for a page shows it and computes nothing from it. */
export function saidIn(list: readonly unknown[], modelNumber: string): Said {
  return saidBy(modelNumber, (_name, place) => list[place]);
}

/** The same from the fields of a seal. */
export const saidInFields = (fields: Readonly<Record<string, unknown>>, modelNumber: string): Said =>
  saidBy(modelNumber, (name) => fields[name]);

function saidBy(modelNumber: string, valueOf: (name: string, place: number) => unknown): Said {
  if (statesBands(modelNumber)) {
    const said = named(order, valueOf);
    return said ? { said } : {};
  }
  const saidEarlier = named(earlierOrder, valueOf);
  return saidEarlier ? { saidEarlier } : {};
}

/** How many places the ratios take in the list of a link. */
export const placesOf = (modelNumber: string): number =>
  statesBands(modelNumber) ? order.length : earlierOrder.length;
