import { inverted } from '../common-missteps.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { Ends, NumbersOf } from '../numbers.ts';
import { times } from '../percent.ts';
import type { Misstep, Step } from '../problem.ts';
import type { Dice } from '../random.ts';
import { capital, list } from '../wording.ts';

const RANGES = 0;
const DONE = 1;
const AGAINST = 3;

const room = ({ low, high }: Ends): number => high / low;
const width = ({ low, high }: Ends): number => high - low;
const product = (values: readonly number[]): number => values.reduce((total, value) => total * value, 1);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const ends = (dice: Dice, lows: readonly number[], highs: readonly number[]): Ends => ({
  low: dice.pick(lows),
  high: dice.pick(highs),
});

interface Named extends Ends {
  name: string;
}

/**
 * The ranges with the names of their causes.
 *
 * @throws RangeError where there are more ranges than names, none at all, or one that does not rise from above 0
 */
function named(names: readonly string[], ranges: readonly Ends[]): Named[] {
  if (ranges.length < 1 || ranges.length > names.length) {
    throw new RangeError(`number of ranges ${ranges.length} is not between 1 and ${names.length}`);
  }
  return ranges.map(({ low, high }, index) => {
    if (!(low > 0 && low < high && Number.isFinite(high))) {
      throw new RangeError(`range ${low} to ${high} does not rise from above 0`);
    }
    return { name: String(names[index]), low, high };
  });
}

/** The rooms of what is done and of what is given, each multiplied, and the first against the second. */
function sidesOf({ geometry, steel }: NumbersOf['range-product']) {
  const ofDone = product(geometry.map(room));
  const ofGiven = product(steel.map(room));
  return { geometry, steel, ofDone, ofGiven, against: ofDone / ofGiven };
}

type Sides = ReturnType<typeof sidesOf>;

const multiplied = (ranges: readonly Ends[]): string =>
  `${times(ranges.map(room))} ${result(product(ranges.map(room)))}`;

const gather = (count: number, name: string): string =>
  count > 1
    ? `Multiply the rooms that belong to ${name}.`
    : `Only one room belongs to ${name}: take it as it is.`;

function stepsOf(
  { geometry, steel, ofDone, ofGiven, against }: Sides,
  { context, subject, baseline }: Scene,
): Step[] {
  const { done, given } = context;
  const rooms = [...geometry, ...steel].map(
    ({ low, high }) => `\\frac{${inFigures(high)}}{${inFigures(low)}} ${result(high / low)}`,
  );
  return [
    {
      text: 'Find the room of each cause: its best divided by its worst.',
      tex: rooms.join(' \\qquad '),
      values: [...geometry, ...steel].map(room),
    },
    { text: gather(geometry.length, done.name), tex: multiplied(geometry), values: [ofDone] },
    { text: gather(steel.length, given.name), tex: multiplied(steel), values: [ofGiven] },
    {
      text: `${capital(done.name)} speaks for ${subject} and ${given.name} for ${baseline}: divide the first by the second.`,
      tex: `\\frac{${inFigures(ofDone)}}{${inFigures(ofGiven)}} ${result(against)}`,
      values: [against],
    },
  ];
}

function misstepsOf(
  { geometry, steel, ofDone, ofGiven, against }: Sides,
  { context, subject, baseline }: Scene,
): Misstep[] {
  const { done, given } = context;
  return [
    {
      id: 'one side only',
      answer: ofDone,
      idea: `That is ${done.name} alone. ${capital(given.name)} pulls the other way.`,
      step: AGAINST,
    },
    {
      id: 'put both on one side',
      answer: ofDone * ofGiven,
      idea: `You let ${given.name} help ${subject} as well. It helps ${baseline}.`,
      step: AGAINST,
    },
    inverted(against, subject, baseline, AGAINST),
    {
      id: 'difference for ratio',
      answer: ofDone - ofGiven,
      idea: 'You took one from the other. "How many times" asks for a quotient.',
      step: AGAINST,
    },
    {
      id: 'added the rooms',
      answer: sum(geometry.map(room)) / sum(steel.map(room)),
      idea: 'You added the rooms. Causes that work one on the other multiply.',
      step: DONE,
    },
    {
      id: 'took the width for the room',
      answer: product(geometry.map(width)) / product(steel.map(width)),
      idea: 'You took the worst from the best. The room is how many times the worst the best is.',
      step: RANGES,
    },
    {
      id: 'best ends only',
      answer: product(geometry.map(({ high }) => high)) / product(steel.map(({ high }) => high)),
      idea: 'You compared the best ends only. The worst ends are in play as well.',
      step: RANGES,
    },
  ];
}

/**
 * The best of one family of causes with the worst of another, against the reverse: which has more room?
 * Level 1 has two causes against one; level 2 two against two; level 3 three against two.
 */
export const rangeProduct: Maker<NumbersOf['range-product']> = {
  contexts: contextIds,
  example: {
    geometry: [
      { low: 0.8, high: 1.6 },
      { low: 0.8, high: 2 },
    ],
    steel: [{ low: 0.8, high: 1.2 }],
  },

  draw: (dice, level) => ({
    geometry: Array.from({ length: level === 3 ? 3 : 2 }, () =>
      ends(dice, [0.5, 0.6, 0.8], [1.2, 1.5, 1.6, 1.8, 2, 2.4]),
    ),
    steel: Array.from({ length: level === 1 ? 1 : 2 }, () => ends(dice, [0.8, 0.9], [1.1, 1.2, 1.4, 1.5])),
  }),

  set: (numbers, scene) => {
    const { context, subject, baseline } = scene;
    const { done, given } = context;
    const doable = named(done.causes, numbers.geometry);
    const fixed = named(given.causes, numbers.steel);
    const said = (ranges: readonly Named[]): string =>
      list(ranges.map(({ name, low, high }) => `${name} from ${inFigures(low)} to ${inFigures(high)}`));

    const sides = sidesOf(numbers);

    return {
      question: `${context.place}, each cause is worth so many times an ordinary one. ${capital(done.name)}: ${said(doable)}. ${capital(given.name)}: ${said(fixed)}. ${capital(subject)} has the best of ${done.name} and the worst of ${given.name}; ${baseline} has the reverse. The causes multiply. So ${context.timesAs(subject, baseline)}`,
      givens: [...doable, ...fixed].flatMap(({ name, low, high }) => [
        { name: `${name}, worst`, value: low, unit: '' as const },
        { name: `${name}, best`, value: high, unit: '' as const },
      ]),
      unit: context.asks,
      answer: sides.against,
      steps: stepsOf(sides, scene),
      missteps: misstepsOf(sides, scene),
    };
  },
};
