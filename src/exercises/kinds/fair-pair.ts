import { contextIds } from '../contexts/index.ts';
import type { Maker } from '../maker.ts';
import type { NumbersOf, Pair } from '../numbers.ts';
import type { Misstep } from '../problem.ts';
import type { Dice } from '../random.ts';
import { letter } from '../wording.ts';

const WANTED = 0;
const EQUAL = 1;
const STATES = 3;

/**
 * Which of four pairs shows what one variable does? The one in which it alone differs.
 * Level 1 has three variables; level 2 four; level 3 four, with more that differ at once.
 */
export const fairPair: Maker<NumbersOf['fair-pair']> = {
  contexts: contextIds,
  example: {
    wanted: 1,
    pairs: [
      { first: [0, 0, 1], second: [2, 0, 1] },
      { first: [1, 0, 1], second: [1, 2, 1] },
      { first: [1, 0, 0], second: [2, 1, 0] },
      { first: [0, 2, 1], second: [2, 2, 0] },
    ],
  },

  draw: (dice, level) => {
    const count = level === 1 ? 3 : 4;
    const wanted = dice.whole(0, count - 1);
    const others = dice.several(
      Array.from({ length: count }, (_, index) => index).filter((index) => index !== wanted),
      count - 1,
    );
    const [one = 0, ...rest] = others;
    const differing =
      level === 3
        ? [[wanted], [wanted, ...rest], [one, ...rest], [one]]
        : [[wanted], [wanted, one], rest.slice(0, 1), others];
    return { wanted, pairs: dice.several(differing, 4).map((differs) => pair(dice, count, differs)) };
  },

  set: ({ wanted, pairs }, { context }) => {
    const { what, variables } = context.trials;
    const differing = pairs.map(({ first, second }) =>
      first.flatMap((state, index) => (state === second[index] ? [] : [index])),
    );
    const fair = differing.flatMap((differs, index) =>
      differs.length === 1 && differs[0] === wanted ? [index + 1] : [],
    );
    const [answer] = fair;
    if (answer === undefined || fair.length > 1)
      throw new RangeError(`number of fair pairs ${fair.length} is not 1`);
    const states = (of: readonly number[]): string =>
      of.map((state, index) => String(variables[index]?.states[state])).join(', ');
    const name = String(variables[wanted]?.name);
    const left = differing.flatMap((differs, index) => (differs.includes(wanted) ? [letter(index)] : []));

    return {
      question: `${context.place}, two ${what} are compared to find out what ${name} does. Which pair shows it fairly?`,
      givens: [],
      options: pairs.map(({ first, second }) => `${states(first)} against ${states(second)}`),
      unit: 'letter',
      answer,
      steps: [
        {
          text: `Keep the pairs in which ${name} differs. How many are left?`,
          tex: `\\text{${left.join(', ')}: } \\quad n = ${left.length}`,
          values: [left.length],
          asks: 'left',
        },
        {
          text: 'Of these, take the one in which all else is equal.',
          tex: `\\text{pair} = \\text{${letter(answer - 1)}}`,
          values: [answer],
          asks: 'letter',
        },
      ],
      missteps: differing.flatMap((differs, index) =>
        index + 1 === answer ? [] : [unfair(index + 1, differs, wanted, name)],
      ),
    };
  },
};

/** Two set-ups that differ in these variables and in no other. */
function pair(dice: Dice, count: number, differs: readonly number[]): Pair {
  const first = Array.from({ length: count }, () => dice.whole(0, STATES - 1));
  const second = first.map((state, index) =>
    differs.includes(index) ? (state + dice.whole(1, STATES - 1)) % STATES : state,
  );
  return { first, second };
}

/** What is wrong with a pair, by what differs in it. */
function unfair(answer: number, differs: readonly number[], wanted: number, name: string): Misstep {
  if (differs.includes(wanted)) {
    return {
      id: 'changed something else as well',
      answer,
      idea: `In that pair ${name} differs, but not alone. What the other difference does cannot be told apart from it.`,
      step: EQUAL,
    };
  }
  return differs.length > 1
    ? {
        id: 'changed all but what is asked',
        answer,
        idea: `In that pair much differs, but ${name} is the same.`,
        step: WANTED,
      }
    : {
        id: 'changed the wrong thing',
        answer,
        idea: `In that pair one thing differs alone, but it is another: ${name} is the same.`,
        step: WANTED,
      };
}
