import type { WordsOf } from '../../phrases/sentences-of.ts';

/** Whose numbers these are, on a page that carries a visitor's comparison. */
export const whose: WordsOf = ({ entry, subject, baseline }) => [
  `From the link: “${entry.title}”, ${subject.name} against ${baseline.name}.${entry.invented ? ' Its numbers are invented.' : ''}`,
];
