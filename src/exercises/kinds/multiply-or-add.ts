import { compound } from '../../model/index.ts';
import { contextIds } from '../contexts/index.ts';
import { inFigures, result } from '../figures.ts';
import type { Maker, Scene } from '../maker.ts';
import type { NumbersOf } from '../numbers.ts';
import { percentsGiven } from '../percent.ts';
import type { Draft, Misstep } from '../problem.ts';

/**
 * Effects that add, where a product is tempting.
 * Level 1 has parts of a whole; level 2 percentage points; level 3 effects side by side.
 */
export const multiplyOrAdd: Maker<NumbersOf['multiply-or-add']> = {
  contexts: contextIds,
  adds: true,
  example: { percents: [35, 20] },

  draw: (dice, level) => {
    if (level === 1) return { percents: [dice.whole(10, 45, 5), dice.whole(10, 45, 5)] };
    if (level === 2) return { percents: [dice.whole(20, 60, 5), dice.whole(10, 35, 5)] };
    return { percents: Array.from({ length: 3 }, () => dice.whole(20, 80, 5)) };
  },

  set: ({ percents }, scene) => {
    if (scene.level === 3) return sideBySide(percents, scene);
    const [one = NaN, other = NaN] = percents;
    if (percents.length !== 2 || !(one > 0 && other > 0 && one + other < 100))
      throw new RangeError(`shares ${percents.join(', ')} are not two above 0 and below 100% together`);
    return (scene.level === 1 ? partsOfWhole : percentagePoints)(one, other, scene);
  },
};

const multiplied = (answer: number, step: number): Misstep => ({
  id: 'multiplied where adding is right',
  answer,
  idea: 'You multiplied. But none of them works on what another left: all are counted from the same whole, so they add.',
  step,
});

const addStep = (one: number, other: number) => ({
  tex: `${inFigures(one)} + ${inFigures(other)} ${result(one + other)}`,
  values: [(one + other) / 100],
  asks: '%' as const,
});

function partsOfWhole(one: number, other: number, { context, subject }: Scene): Draft {
  const { of, parts } = context.whole;
  return {
    question: `${context.place}, of ${of(subject)}, ${inFigures(one)}% ${String(parts[0])} and ${inFigures(other)}% ${String(parts[1])}. What percentage is that together?`,
    givens: percentsGiven([one, other], parts),
    unit: '%',
    answer: (one + other) / 100,
    steps: [
      {
        text: 'Both are parts of the same whole, and none is in the other: add them.',
        ...addStep(one, other),
      },
    ],
    missteps: [
      multiplied(compound([one, other]) - 1, 0),
      {
        id: 'multiplied the percentages themselves',
        answer: (one * other) / 1e4,
        idea: 'You took a part of a part. Here each is a part of the whole.',
        step: 0,
      },
      {
        id: 'gave the rest',
        answer: 1 - (one + other) / 100,
        idea: 'You gave what remains of the whole. Asked are the two parts.',
        step: 0,
      },
      {
        id: 'arithmetic mean',
        answer: (one + other) / 200,
        idea: 'You took the mean. The two parts lie beside each other and add.',
        step: 0,
      },
    ],
  };
}

function percentagePoints(one: number, other: number, { context, subject, baseline }: Scene): Draft {
  return {
    question: `${context.place}, ${context.share(baseline)} is ${inFigures(one)}%. With ${subject} it is ${inFigures(other)} percentage points higher. What percentage is it with ${subject}?`,
    givens: percentsGiven([one, other], [`share with ${baseline}`, 'percentage points higher']),
    unit: '%',
    answer: (one + other) / 100,
    steps: [
      {
        text: 'Percentage points are parts of the same whole as the share: add them.',
        ...addStep(one, other),
      },
    ],
    missteps: [
      {
        ...multiplied((one * (100 + other)) / 1e4, 0),
        idea: 'You multiplied. That is right for per cent of the share, but percentage points add.',
      },
      {
        id: 'multiplied the percentages themselves',
        answer: (one * other) / 1e4,
        idea: 'You took a part of a part. Percentage points come on top of the share.',
        step: 0,
      },
      {
        id: 'compounded the percentages',
        answer: compound([one, other]) - 1,
        idea: 'You compounded the two as if each were a rise. The first is a share of the whole, the second is added to it.',
        step: 0,
      },
      {
        id: 'took the wrong way',
        answer: (one - other) / 100,
        idea: 'You took the percentage points away. The share is higher by them.',
        step: 0,
      },
    ],
  };
}

function sideBySide(percents: readonly number[], { context }: Scene): Draft {
  const { start, all, helpers } = context.beside;
  const count = percents.length;
  if (count < 2 || count > helpers.length || !percents.every((percent) => percent > 0))
    throw new RangeError(`percentages ${percents.join(', ')} are not 2 to ${helpers.length} above 0`);
  const sum = percents.reduce((total, percent) => total + percent, 0) / 100;
  const said = percents.map(
    (percent, index) => `${String(helpers[index])} adds ${inFigures(percent)}% of ${start}.`,
  );
  return {
    question: `${context.place}, several things act side by side, none of them on another. ${said.join(' ')} How many times ${start} is the ${all} in all, ${start} included?`,
    givens: percentsGiven(percents, helpers),
    unit: 'times',
    answer: 1 + sum,
    steps: [
      {
        text: `All are counted from the same start, ${start}: add them up.`,
        tex: `${percents.map((percent) => `\\frac{${inFigures(percent)}}{100}`).join(' + ')} ${result(sum)}`,
        values: [sum],
      },
      {
        text: 'Add the start itself, which is 1.',
        tex: `1 + ${inFigures(sum)} ${result(1 + sum)}`,
        values: [1 + sum],
      },
    ],
    missteps: [
      multiplied(compound(percents), 0),
      {
        id: 'forgot the base',
        answer: sum,
        idea: 'You left the start out. It is there and counts too.',
        step: 1,
      },
      {
        id: 'added the multipliers',
        answer: count + sum,
        idea: 'You counted the start once for each of them. It is there once.',
        step: 1,
      },
      {
        id: 'arithmetic mean',
        answer: 1 + sum / count,
        idea: 'You took the mean. All that act side by side add.',
        step: 0,
      },
    ],
  };
}
