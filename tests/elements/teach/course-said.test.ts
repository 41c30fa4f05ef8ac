import { expect, test } from 'vitest';
import { courseSaid } from '../../../src/elements/teach/course-said.ts';

test.each([
  [{}, ''],
  [{ one: 1 }, '1 problem answered rightly, in 1 lesson.'],
  [{ one: 2 }, '2 problems answered rightly, in 1 lesson.'],
  [{ one: 2, two: 3 }, '5 problems answered rightly, in 2 lessons.'],
])('of %j the list of lessons says “%s”', (right, said) => {
  expect(courseSaid({ right, notes: [] })).toBe(said);
});

test('where nothing can be kept it says that', () => {
  expect(courseSaid(null)).toMatch(/nothing is noted/);
});
