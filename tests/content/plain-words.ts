/**
 * How the site speaks, as far as a pattern can hold it: each rule with what to write instead. The patterns look at running
 * text, not at tables, workings or the labels of drawings.
 */
interface Rule {
  say: string;
  found(text: string): readonly string[];
}

const all = (pattern: RegExp) => (text: string) => [...text.matchAll(pattern)].map(([hit]) => hit);

/** The digits of a number that say something: 0.25 has two, 109 three. */
const figures = (number: string): number => number.replace(/^0?\.?0*/, '').replace('.', '').length;

const mostFigures = 2;
const mostWords = 25;

/** Numbers with a fraction and more than two figures, where the text before or behind makes a ratio or a percentage of them. */
const tooFine = (text: string): string[] =>
  [...text.matchAll(/(\d+\.\d+)(?=(?:\s*(?:to|–|and)\s*[\d.]+)?\s*(?:times\b|%))|(?<=\bto )(\d+\.\d+)(?=\s*(?:times\b|%))/g)]
    .map(([number]) => number)
    .filter((number) => figures(number) > mostFigures);

/** Sentences, cut where a stop, a question mark or a new line ends one. */
export const sentencesIn = (text: string): string[] =>
  text
    .split(/(?<=[.?!…:]["”’)]?)\s+(?=["“‘(]?[\p{Lu}\d])|\n+/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '');

const words = (sentence: string): number => sentence.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length;

const phrases = [
  'asked is',
  'hangs on',
  'speaks for',
  'takes it that',
  'how many per cent',
  'reckon',
  'is held against',
  'nine samples of ten lie',
  'that is sure only to',
  'by the close reading',
  'whoever',
  'line-up',
  'the drawer',
  'on the bench',
  'the telling',
  'close reading',
  'pocket reading',
  'call it first',
  'keep my call',
  'even up',
];

export const rules: readonly Rule[] = [
  { say: 'write it as you would say it', found: all(new RegExp(`\\b(?:${phrases.join('|')})`, 'gi')) },
  { say: '“can’t be told apart”, or “a real difference”', found: all(/(?<!can’t be |cannot be )\btold apart/gi) },
  { say: 'no shares of a logarithm in a sentence', found: all(/of the logarithm .*? holds?\b/gi) },
  { say: '“times as long as”', found: all(/(?:\b[\d.]+\s*(?:times|%)|\b(?:half|a third|a quarter)) longer\b/gi) },
  { say: '“1.6 times as long”; × stands in labels only', found: all(/×\s?\d[\d.]*/g) },
  { say: 'two figures in running text', found: tooFine },
  { say: 'a percentage close up: 40%', found: all(/\d\s%/g) },
  { say: 'no more than 25 words', found: (text) => sentencesIn(text).filter((one) => words(one) > mostWords) },
];

/** What the rules find in a running text, each with what to write instead. */
export const faultsIn = (text: string): string[] =>
  rules.flatMap(({ say, found }) => found(text).map((hit) => `“${hit}”: ${say}`));
