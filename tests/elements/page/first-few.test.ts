import { expect, test } from 'vitest';
import { firstFew } from '../../../src/elements/page/first-few.ts';

test.each([
  [[], ''],
  [['One.'], 'One.'],
  [['One.', 'Two.'], 'One. Two.'],
  [['One.', 'Two.', 'Three.'], 'One. Two. And 1 line more.'],
  [['One.', 'Two.', 'Three.', 'Four.'], 'One. Two. And 2 lines more.'],
])('of %j two are shown', (messages, said) => expect(firstFew(messages, 2)).toBe(said));
