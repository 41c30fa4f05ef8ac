import { expect, test } from 'vitest';
import { guessKeeper, linkName, mostGuesses } from '../../../src/elements/page/guesses-kept.ts';
import { guessesKey } from '../../../src/elements/start/guesses-key.ts';

/** A storage in memory. */
function shelf(text?: string) {
  const kept = new Map(text === undefined ? [] : [[guessesKey, text]]);
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

test('the name of a link is FNV-1a of its bytes', () => {
  // Test vectors published with the function (Fowler, Noll and Vo): "", "a" and "foobar" by the 32-bit FNV-1a.
  expect(parseInt(linkName(''), 36)).toBe(0x811c9dc5);
  expect(parseInt(linkName('a'), 36)).toBe(0xe40c292c);
  expect(parseInt(linkName('foobar'), 36)).toBe(0xbf9cf968);
});

test('a guess comes back for the comparison it was made of, and for no other', () => {
  const open = shelf();
  const keeper = guessKeeper(() => open);
  expect(keeper.any()).toBe(false);
  expect(keeper.load('#one')).toBeNull();
  expect(keeper.keep('#one', 5)).toBe(true);
  expect(keeper.keep('#two', 0.5)).toBe(true);
  expect(keeper.any()).toBe(true);
  expect([keeper.load('#one'), keeper.load('#two'), keeper.load('#three')]).toEqual([5, 0.5, null]);
  keeper.keep('#one', 10);
  expect(keeper.load('#one')).toBe(10);
  expect(guessKeeper(() => open).load('#one')).toBe(10);
});

test('of many guesses the latest twenty stay', () => {
  const open = shelf();
  const keeper = guessKeeper(() => open);
  for (let count = 1; count <= mostGuesses + 5; count += 1) keeper.keep(`#${count}`, count);
  expect(keeper.load('#5')).toBeNull();
  expect(keeper.load('#6')).toBe(6);
  expect(keeper.load(`#${mostGuesses + 5}`)).toBe(mostGuesses + 5);
  expect(JSON.parse(open.kept.get(guessesKey) ?? '[]')).toHaveLength(mostGuesses);
});

test.each(['', 'no list', '{"a":1}', '[1,["x"],["y","2"],["z",-1],null]', '[["ok",null]]'])(
  'what is stored as %s holds no guess and is written over',
  (text) => {
    const open = shelf(text);
    const keeper = guessKeeper(() => open);
    expect(keeper.any()).toBe(false);
    expect(keeper.load('#one')).toBeNull();
    expect(keeper.keep('#one', 3)).toBe(true);
    expect(keeper.load('#one')).toBe(3);
  },
);

test('a storage that is denied or full keeps nothing and says so', () => {
  const denied = guessKeeper(() => {
    throw new Error('denied');
  });
  expect([denied.any(), denied.load('#one'), denied.keep('#one', 3)]).toEqual([false, null, false]);
  const full = guessKeeper(() => ({
    getItem: () => null,
    setItem: () => {
      throw new Error('full');
    },
  }));
  expect(full.keep('#one', 3)).toBe(false);
});
