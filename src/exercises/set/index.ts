/** Sets of problems for a class, with their keys. */
export { answerLine } from './answer-line.ts';
export { csvCell, setCsv } from './csv.ts';
export { keyOf, markingGuidance } from './key.ts';
export type { Key } from './key.ts';
export { makeSet, versions } from './make-set.ts';
export type { ProblemSet, SetRequest, Version } from './make-set.ts';
export { setMarkdown } from './markdown.ts';
