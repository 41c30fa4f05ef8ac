/** Problems to check oneself by: makers, the reader of typed answers, and the finder of missteps. For sets, see set/. */
export { inWords } from './answer-in-words.ts';
export { modeOf } from './asks.ts';
export type { Asks, Mode, Quantity } from './asks.ts';
export { blanksOf, judgeBlank } from './blanks.ts';
export type { Blank } from './blanks.ts';
export { contextIds } from './contexts/index.ts';
export { contextsFor, isAdditive, kinds, kindsFor, levels, makeProblem, workedExample } from './make.ts';
export type { Setting } from './make.ts';
export { answerInWords, judge } from './missteps.ts';
export type { Judgement } from './missteps.ts';
export type { Kind, NumbersOf } from './numbers.ts';
export type { ContextId, Given, Level, Misstep, Problem, Step } from './problem.ts';
export { readAnswer } from './reader/index.ts';
export type { Answer, Form } from './reader/index.ts';
export { toleranceInWords } from './tolerance-in-words.ts';
