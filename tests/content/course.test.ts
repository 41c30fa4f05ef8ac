import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { partsOf, runsOfWords, sentencesOf, TERMS, unlinked, wordsOf } from './course.ts';
import { filesBelow } from './reading.ts';

const lessons = filesBelow('content/lessons', '.mdx');
const headOf = (text: string) =>
  parse(/^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '') as { take: string; order: number; comparison: unknown };

describe('what the course is read for', () => {
  const mdx =
    '---\na: b\n---\n\n<Guess of="x" ask="How much?" />\n\nIt is the apex. <Num of="x" /> of <Term word="quick sum">quick sum</Term>s, then the quick sum.\n\n<Own>\n</Own>\n';
  it('is found', () => {
    expect(sentencesOf(mdx)).toEqual(['How much?.', 'It is the apex.', '# of quick sums, then the quick sum.']);
    expect(wordsOf('# of rivals, 4° then')).toEqual(['#', 'of', 'rivals', '4', 'then']);
    expect(partsOf(mdx)).toEqual(['Guess', 'Own']);
    expect(unlinked(mdx)).toEqual(['apex']);
    expect(runsOfWords(mdx, 4)).toContain('sums then the quick');
  });
});

/** The order of design: a guess, a figure, the working, one's own knives, a check, the limits, the sources, the code. */
const order = ['Guess', 'Figure', 'Worked', 'Own', 'Check', 'What this leaves out', 'Sources', 'Code'];

describe.each(lessons)('$path', ({ text }) => {
  it('has every part, in the order of the course', () => {
    const parts = partsOf(text);
    const first = order.map((part) => parts.indexOf(part));
    expect(first).not.toContain(-1);
    expect([...first].sort((a, b) => a - b)).toEqual(first);
    // What comes after the figures and their working is not mixed with them.
    const own = parts.indexOf('Own');
    for (const part of ['Guess', 'Figure', 'Worked']) expect(parts.lastIndexOf(part)).toBeLessThan(own);
  });

  it('has one line to take away', () => {
    const { take } = headOf(text);
    expect(take).toMatch(/^[“A-Z].*\.$/);
    expect(wordsOf(take).length).toBeLessThanOrEqual(32);
    expect(take.match(/[.?!](\s|$)/g)?.length).toBeLessThanOrEqual(3);
  });

  it('has no sentence longer than twenty-five words', () => {
    expect(sentencesOf(text).filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
  });

  it('links a term where it first uses it', () => expect(unlinked(text)).toEqual([]));
});

describe('the course as a whole', () => {
  it('says nothing in the same eight words in more than two lessons', () => {
    const seen = new Map<string, number>();
    for (const { text } of lessons)
      for (const run of runsOfWords(text, 8)) seen.set(run, (seen.get(run) ?? 0) + 1);
    expect(seen.size).toBeGreaterThan(1000);
    expect([...seen].filter(([, times]) => times > 2).map(([run]) => run)).toEqual([]);
  });

  it('shows no figure in two lessons', () => {
    const figures = lessons.flatMap(({ text }) => [...text.matchAll(/<Figure of="([^"]+)"/g)].map(([, of]) => of));
    expect(figures.length).toBeGreaterThan(20);
    expect(figures.filter((of, index) => figures.indexOf(of) !== index)).toEqual([]);
  });

  it('is numbered through', () => {
    expect(lessons.map(({ text }) => headOf(text).order)).toEqual(lessons.map((_, index) => index + 1));
  });

  it('takes its terms from the glossary', () => {
    const glossary = Object.values(parse(readFileSync('content/words.yaml', 'utf8')) as Record<string, { word: string }>)
      .map(({ word }) => word)
      .join(', ');
    for (const term of TERMS) expect(glossary).toContain(term);
  });
});
