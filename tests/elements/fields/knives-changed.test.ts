import { describe, expect, test } from 'vitest';
import {
  withAngle,
  withAnotherKnife,
  withKnife,
  withRole,
  withoutKnife,
} from '../../../src/elements/fields/knives-changed.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { loft } from '../../comparison/entries.ts';

/** Three knives: the first is the baseline, the second the one that is looked at. */
const pair = loft();
const [one, two] = pair.knives.map(({ id }) => id);
const three = {
  ...pair,
  knives: [...pair.knives.slice(0, 2), { ...pair.knives[0], id: 'ruff', name: 'Ruff' }],
};
const start = { ...three, baseline: one, subject: two } as typeof pair;

const ids = ({ knives }: typeof start) => knives.map(({ id }) => id);

describe('a role', () => {
  test('goes to a knife that has none', () => {
    expect(withRole(start, 'subject', 'ruff')).toMatchObject({ baseline: one, subject: 'ruff' });
  });
  test('of a knife that holds the other one makes the two change places', () => {
    expect(withRole(start, 'subject', one ?? '')).toMatchObject({ baseline: two, subject: one });
    expect(withRole(start, 'baseline', two ?? '')).toMatchObject({ baseline: two, subject: one });
  });
  test('given to the knife that holds it changes nothing', () => {
    expect(withRole(start, 'baseline', one ?? '')).toEqual(start);
  });
});

describe('a knife more', () => {
  test('is like the last but for its id and its name, and the comparison stays valid', () => {
    const added = withAnotherKnife(start);
    expect(added?.id).toBe('knife-4');
    expect(ids(added?.entry ?? start)).toEqual([one, two, 'ruff', 'knife-4']);
    expect(added?.entry.knives.at(-1)).toEqual({ ...start.knives.at(-1), id: 'knife-4', name: 'Knife 4' });
    expect(validate(added?.entry).ok).toBe(true);
  });
  test('takes the next number that is free', () => {
    const taken = {
      ...start,
      knives: start.knives.map((knife) => ({ ...knife, id: knife.id === 'ruff' ? 'knife-4' : knife.id })),
    };
    expect(withAnotherKnife(taken)?.id).toBe('knife-5');
  });
  test('cannot be made out of none', () => expect(withAnotherKnife({ ...start, knives: [] })).toBeNull());
});

describe('a knife less', () => {
  test('leaves the roles of the others alone', () => {
    const left = withoutKnife(start, 'ruff');
    expect(ids(left)).toEqual([one, two]);
    expect(left).toMatchObject({ baseline: one, subject: two });
  });
  test.each(['baseline', 'subject'] as const)(
    'hands on its role as %s, and both roles stay apart',
    (role) => {
      const left = withoutKnife(start, start[role]);
      expect(left[role]).toBe('ruff');
      expect(left.baseline).not.toBe(left.subject);
      expect(validate(left).ok).toBe(true);
    },
  );
});

test('a knife or its angle is changed in its place, and nothing else is', () => {
  const [first, second, third] = start.knives;
  expect(withAngle(start, two ?? '', { deg: 17 }).knives).toEqual([
    first,
    { ...second, angle: { deg: 17 } },
    third,
  ]);
  const ground = { ...start.knives[2], hrc: 62 } as (typeof start.knives)[number];
  expect(withKnife(start, ground).knives).toEqual([first, second, ground]);
});
