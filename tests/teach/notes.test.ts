import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { notes, plan, standardName, standards } from '../../src/components/content/class-notes.ts';

/** Computes the left side of a line of the board: numbers, + − × ÷ ^ √ and brackets. */
function computed(text: string): number {
  const parts = text.match(/[\d.]+|[-+−×÷^√()]/g) ?? [];
  let at = 0;
  const atom = (): number => {
    const part = parts[at++] ?? '';
    if (part === '√') return Math.sqrt(atom());
    if (part !== '(') return Number(part);
    const inside = sum();
    at += 1;
    return inside;
  };
  const power = (): number => {
    const base = atom();
    if (parts[at] !== '^') return base;
    at += 1;
    return base ** power();
  };
  const product = (): number => {
    let value = power();
    while (parts[at] === '×' || parts[at] === '÷')
      value = parts[at++] === '×' ? value * power() : value / power();
    return value;
  };
  const sum = (): number => {
    let value = product();
    while (parts[at] === '+' || parts[at] === '−')
      value = parts[at++] === '+' ? value + product() : value - product();
    return value;
  };
  return sum();
}

const lessons = readdirSync('content/lessons').map((name) => name.replace(/^\d+-|\.mdx$/g, ''));

test('every lesson has its note', () => {
  for (const lesson of lessons) expect(notes).toHaveProperty(lesson);
});

describe.each(Object.entries(notes))('the note on %s', (_, note) => {
  test('is whole', () => {
    for (const text of [note.aim, note.bring, note.activity]) expect(text).toMatch(/^[A-Z].*[.?]$/);
    expect(note.minutes).toBeGreaterThan(0);
    expect(note.pupils.length).toBeGreaterThanOrEqual(3);
    for (const { says, ask } of note.pupils) {
      expect(says).toMatch(/[.?]$/);
      expect(ask).toMatch(/\?$/);
    }
    expect(Object.keys(note).sort()).toEqual([
      'activity',
      'aim',
      'board',
      'bring',
      'minutes',
      'pupils',
      'standards',
    ]);
  });

  test('puts only right sums on the board', () => {
    expect(note.board.length).toBeGreaterThan(0);
    for (const line of note.board) {
      const [, left = '', sign, right = ''] = /^(.+) ([=≈]) ([\d.]+)$/.exec(line) ?? [];
      expect(left, line).not.toBe('');
      const decimals = right.split('.')[1]?.length ?? 0;
      const off = Math.abs(computed(left) - Number(right));
      expect(off, line).toBeLessThan(sign === '=' ? 1e-9 : 0.5 * 10 ** -decimals);
      // What is only near is said to be near.
      if (sign === '≈') expect(off, line).toBeGreaterThan(1e-9);
    }
  });

  test('names standards there are', () => {
    expect(note.standards.length).toBeGreaterThan(0);
    for (const id of note.standards) expect(standardName(id)).toMatch(/^(CCSS |England )/);
  });
});

test('every standard on the list is named by a note', () => {
  const named = new Set(Object.values(notes).flatMap((note) => note.standards));
  expect(Object.keys(standards).filter((id) => !named.has(id))).toEqual([]);
});

test('the plan fills fifty minutes and ends with the exit ticket', () => {
  expect(plan.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(50);
  expect(plan.at(-1)?.what).toBe('Exit ticket');
});
