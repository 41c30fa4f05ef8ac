import type { WordsOf } from './sentences-of.ts';

/** The question of a comparison. */
export const questionOf: WordsOf = ({ subject, baseline }) => [
  `How many times as long should ${subject.name} cut as ${baseline.name}?`,
];
