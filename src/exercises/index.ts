/** Problems to check oneself by: makers, the reader of typed answers, and the finder of missteps. */
export { contextIds } from './contexts.ts';
export { contextsFor, kinds, levels, makeProblem, workedExample } from './make.ts';
export { answerInWords, judge, toleranceInWords } from './missteps.ts';
export type { Judgement } from './missteps.ts';
export type { Asks, ContextId, Given, Kind, Level, Misstep, NumbersOf, Problem, Step } from './problem.ts';
export { readAnswer } from './reader.ts';
export type { Answer, Form } from './reader.ts';
