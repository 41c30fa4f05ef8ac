import type { Misstep } from './problem.ts';

/** The ratio turned over: the two who are compared are swapped. */
export const inverted = (answer: number, subject: string, baseline: string, step: number): Misstep => ({
  id: 'inverted',
  answer: 1 / answer,
  idea: `You turned the ratio over: that is ${baseline} against ${subject}.`,
  step,
});

/** The whole given as per cent where the gain is asked: 225 for 125. */
export const wholeForGain = (answer: number, step: number): Misstep => ({
  id: 'forgot the base',
  answer: 1 + answer,
  idea: 'You gave what there is in all. Asked is what there is more: the start was there before.',
  step,
});

/** What is left given as per cent where the loss is asked: 80 for 20. */
export const restForLoss = (answer: number, step: number): Misstep => ({
  id: 'forgot the base',
  answer: 1 - answer,
  idea: 'You gave what is left. Asked is what is missing from the whole.',
  step,
});
