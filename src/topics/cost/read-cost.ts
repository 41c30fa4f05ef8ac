import { carbidesByDesignation } from '../../model/index.ts';
import type { Finish } from '../../model/index.ts';
import { readNumber } from '../../comparison/read.ts';
import type { Expected } from '../../comparison/read.ts';
import type { Scene } from '../../scene/scene.ts';
import type { CostFieldName, CostTexts } from './fields.ts';
import type { CostAsked, OfferAsked } from './asked.ts';

interface CostProblem {
  field: CostFieldName;
  message: string;
}

export type ReadCost = { ok: true; asked: CostAsked } | { ok: false; problems: CostProblem[] };

/** The fields as they are read: what is wrong in them gathers in `problems`. */
interface Reading {
  texts: CostTexts;
  problems: CostProblem[];
  /** Undefined where the field is empty, or holds no number; the latter is noted. */
  number(field: CostFieldName, expected: Expected): number | undefined;
}

function readingOf(texts: CostTexts): Reading {
  const problems: CostProblem[] = [];
  return {
    texts,
    problems,
    number(field, expected) {
      if (texts[field].trim() === '') return undefined;
      const read = readNumber(texts[field], expected);
      if (read.ok) return read.value;
      problems.push({ field, message: read.message });
      return undefined;
    },
  };
}

function timeAndMoney({ number }: Reading, of: OfferAsked['of']): { minutes?: number; price?: number } {
  const minutes = number(`${of}-minutes`, { what: 'the minutes', low: 0 });
  const price = number(`${of}-price`, { what: 'the price', low: 0 });
  return { ...(minutes === undefined ? {} : { minutes }), ...(price === undefined ? {} : { price }) };
}

/** A number stays on the scale of the knife's own finish; without one it is a size in µm. */
function refinish(reading: Reading, finish: Finish | undefined): OfferAsked[] {
  const grit = reading.number('refinish-grit', { what: 'the finish', low: 0.1, high: 8000 });
  if (grit === undefined) return [];
  return [
    {
      of: 'refinish',
      offer: {
        kind: 'refinish',
        finish: finish && !('um' in finish) ? { scale: finish.scale, grit } : { um: grit },
      },
      ...timeAndMoney(reading, 'refinish'),
    },
  ];
}

function regrind(reading: Reading): OfferAsked[] {
  const angleDeg = reading.number('regrind-angle', { what: 'the angle', unit: '°', low: 4, high: 45 });
  const edgeMm = reading.number('regrind-edge', { what: 'the thickness', unit: 'mm', low: 0.01, high: 5 });
  if (angleDeg === undefined && edgeMm === undefined) return [];
  return [
    {
      of: 'regrind',
      offer: {
        kind: 'regrind',
        ...(angleDeg === undefined ? {} : { angleDeg }),
        ...(edgeMm === undefined ? {} : { edgeMm }),
      },
      ...timeAndMoney(reading, 'regrind'),
    },
  ];
}

function anotherSteel(reading: Reading): OfferAsked[] {
  const { texts, problems, number } = reading;
  const hrc = number('steel-hrc', { what: 'the hardness', unit: 'HRC', low: 20, high: 68 });
  const toughness = number('steel-toughness', { what: 'the toughness', low: 0.001, high: 10_000 });
  if (hrc === undefined) return [];
  const designation = texts['steel-designation'];
  // A name such as “constructor” is no steel either.
  const carbideVolPercent = new Map(Object.entries(carbidesByDesignation)).get(designation);
  if (!carbideVolPercent) {
    problems.push({
      field: 'steel-designation',
      message: 'this steel is not known here: choose one of the list',
    });
    return [];
  }
  return [
    {
      of: 'steel',
      designation,
      offer: { kind: 'steel', hrc, carbideVolPercent, ...(toughness === undefined ? {} : { toughness }) },
      ...timeAndMoney(reading, 'steel'),
    },
  ];
}

/** What the texts offer, or what is wrong in which field. */
export function readCost(
  texts: CostTexts,
  { comparison }: Scene,
  pair: { knife: string; against: string },
): ReadCost {
  const reading = readingOf(texts);
  const { problems, number } = reading;
  const finish = comparison.knives.find(({ id }) => id === pair.knife)?.finish;
  const offers = [...refinish(reading, finish), ...regrind(reading), ...anotherSteel(reading)];

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
