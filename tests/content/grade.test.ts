import { describe, expect, it } from 'vitest';
import { gradeOf, proseOf, syllables } from './grade.ts';
import { filesBelow } from './reading.ts';

describe('the grade of a text', () => {
  it('counts syllables as one speaks them', () => {
    const said = {
      cut: 1,
      cakes: 1,
      changes: 2,
      walked: 1,
      added: 2,
      table: 2,
      scale: 1,
      effect: 2,
      percentage: 3,
      multiplied: 3,
      inverse: 2,
    };
    expect(Object.fromEntries(Object.keys(said).map((word) => [word, syllables(word)]))).toEqual(said);
  });

  // By hand: 6 words, 1 sentence, 6 syllables: 0.39 × 6 + 11.8 × 1 − 15.59 = −1.45.
  it('is that of the formula', () => expect(gradeOf('The cat sat on the mat.')).toBeCloseTo(-1.45, 10));

  // By hand: 13 words, 24 syllables, 1 sentence; 11.3 is also the value told with this usual example (memory).
  it('is high for a learned sentence', () =>
    expect(
      gradeOf('The australian platypus is seemingly a hybrid of a mammal and reptilian creature.'),
    ).toBeCloseTo(11.3, 0));

  it('is of what is read, and of that alone', () => {
    expect(
      proseOf(
        '---\na: b\n---\nimport A from "a";\n\n## Head\n\nIt is <Num of="x" /> (<Cite id="iso-6344-grit" />).\n\n<Check kind="z" />\n',
      ).trim(),
    ).toBe('It is ten.');
  });
});

// A reader of twelve is in grade 6 or 7; a little below leaves room for what the formula does not see.
const grade = 6;

const lessons = [...filesBelow('content/lessons', '.mdx'), ...filesBelow('content/plain', '.mdx')].filter(
  ({ path }) => /\/0[123]-/.test(path),
);

describe('lessons a reader of twelve can follow', () => {
  it('are the first three, each told twice', () => expect(lessons).toHaveLength(6));
  it.each(lessons)('$path', ({ text }) => {
    expect(proseOf(text).length).toBeGreaterThan(1000);
    expect(gradeOf(proseOf(text))).toBeLessThanOrEqual(grade);
  });
});
