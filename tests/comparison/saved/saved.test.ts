import { describe, expect, test, vi } from 'vitest';
import { createSavedList } from '../../../src/comparison/saved/saved.ts';
import { comparisonsFile } from '../../../src/comparison/files.ts';
import { lastStorage, versionOf } from '../../../src/comparison/saved/last.ts';
import type { TextStorage } from '../../../src/comparison/saved/last.ts';
import { eraseUnreadTexts, unreadTexts } from '../../../src/comparison/saved/unread.ts';
import { oddComparisons } from '../../topics/odd-comparisons.ts';
import { loft } from '../entries.ts';

function textStorage(texts: Record<string, string> = {}): TextStorage & { texts: Record<string, string> } {
  return {
    texts,
    getItem: (key) => texts[key] ?? null,
    setItem: (key, value) => {
      texts[key] = value;
    },
  };
}
const noon = () => new Date('2020-06-01T12:00:00Z');
const savedListOn = (own: TextStorage) => createSavedList(() => own, noon);
/** What browsers throw: names from the Storage section of the HTML standard. */
const throwing = (name: string) => (): never => {
  throw new DOMException('no', name);
};
const names = (savedList: ReturnType<typeof createSavedList>) => savedList.items().map(({ name }) => name);

describe('what is put in', () => {
  test.each(Object.entries(oddComparisons))('comes back equal after a reload: %s', (name, entry) => {
    const own = textStorage();
    savedListOn(own).put(entry, name);
    expect(savedListOn(own).items()).toEqual([
      { id: '1', name, entry, changedAt: noon().toISOString(), savedToFileAt: null },
    ]);
  });

  test('is named, renamed and copied, and no two have one name', () => {
    const savedList = savedListOn(textStorage());
    savedList.put(loft());
    savedList.put(loft(), '  mine ');
    savedList.put(loft(), 'mine');
    savedList.copy('2');
    savedList.rename('1', 'mine');
    savedList.rename('2', '   ');
    expect(names(savedList)).toEqual(['mine (4)', loft().title, 'mine (2)', 'mine (3)']);
  });

  test('is erased, and put back where it was', () => {
    const savedList = savedListOn(textStorage());
    for (const name of ['a', 'b', 'c']) savedList.put(loft(), name);
    savedList.erase('2');
    expect(names(savedList)).toEqual(['a', 'c']);
    expect(savedList.putBack().message).toContain('back');
    expect(names(savedList)).toEqual(['a', 'b', 'c']);
    expect(savedList.putBack().message).toBe('Nothing was erased.');
  });

  test('says when it was saved to a file, and no longer after a change', () => {
    const savedList = savedListOn(textStorage());
    savedList.put(loft(), 'a');
    savedList.markSaved(['1']);
    expect(savedList.items()[0]?.savedToFileAt).toBe(noon().toISOString());
    savedList.rename('1', 'b');
    expect(savedList.items()[0]?.savedToFileAt).toBeNull();
  });
});

test('what is not there is neither copied nor erased, and only what is named is marked as saved', () => {
  const savedList = savedListOn(textStorage());
  savedList.put(loft(), 'a');
  savedList.put(loft(), 'b');
  expect([savedList.copy('9').message, savedList.erase('9').message]).toEqual(['', '']);
  expect(names(savedList)).toEqual(['a', 'b']);
  savedList.markSaved(['2']);
  expect(savedList.items().map(({ savedToFileAt }) => savedToFileAt !== null)).toEqual([false, true]);
});

describe('what is stored and cannot be read', () => {
  const key = 'keenfold.drawer';
  const stored = (): Record<string, unknown> => {
    const own = textStorage();
    savedListOn(own).put(loft(), 'a');
    const { items } = JSON.parse(own.texts[key] ?? '') as { items: Record<string, unknown>[] };
    return items[0] ?? {};
  };

  test.each<[string, (item: Record<string, unknown>) => unknown]>([
    ['is no object', () => 7],
    ['is nothing', () => null],
    ['has no id', ({ id: _id, ...item }) => item],
    ['has the id of the one before', (item) => item],
    ['has no version', ({ version: _version, ...item }) => ({ ...item, id: '2' })],
    ['has half a version', (item) => ({ ...item, id: '2', version: 1.5 })],
    ['holds no comparison', (item) => ({ ...item, id: '2', comparison: {} })],
  ])('%s: it is left as it is, beside what can', (_how, damage) => {
    const item = stored();
    const damaged = damage(item);
    const own = textStorage({ [key]: JSON.stringify({ items: [item, damaged] }) });
    const savedList = savedListOn(own);
    expect([names(savedList), savedList.unread()]).toEqual([['a'], 1]);
    savedList.put(loft(), 'b');
    const { items } = JSON.parse(own.texts[key] ?? '') as { items: unknown[] };
    expect(items).toContainEqual(damaged);
    expect(new Set(savedList.items().map(({ id }) => id)).size).toBe(2);
  });

  test('what cannot be read is given as it was found, and erased when asked', () => {
    const items = [stored(), 7, { id: '9', version: 99 }];
    const own = textStorage({ [key]: JSON.stringify({ items }) });
    const savedList = savedListOn(own);
    expect(savedList.unreadText()).toBe('7\n{"id":"9","version":99}');
    expect(savedList.eraseUnread().message).toBe('');
    expect([names(savedList), savedList.unread(), savedList.unreadText()]).toEqual([['a'], 0, '']);
  });

  test('a comparison without its times counts as never saved', () => {
    const { kept: _kept, saved: _saved, ...item } = stored();
    const savedList = savedListOn(textStorage({ [key]: JSON.stringify({ items: [item] }) }));
    expect(savedList.items()).toMatchObject([{ name: 'a', changedAt: '', savedToFileAt: null }]);
  });

  test('a text of another kind is laid aside', () => {
    const own = textStorage({ [key]: '{"items":"none"}' });
    expect(savedListOn(own).items()).toEqual([]);
    expect(own.texts['keenfold.drawer.unreadable']).toBe('{"items":"none"}');
  });
});

test('two of a file that are here already are counted in the plural', () => {
  const savedList = savedListOn(textStorage());
  savedList.put(loft(), 'a');
  savedList.put(loft(), 'b');
  expect(savedList.take(comparisonsFile(savedList.items())).message).toMatch(/ 2 were here already\.$/);
});

test('without a word about where, it is the browser’s own storage', () => {
  const own = textStorage();
  const removeItem = (key: string) => Reflect.deleteProperty(own.texts, key);
  vi.stubGlobal('localStorage', { ...own, removeItem });
  createSavedList().put(loft(), 'a');
  expect(own.texts['keenfold.drawer']).toContain('"a"');
  lastStorage().write({ ...versionOf(loft()), origin: 'own', line: '1' });
  expect(unreadTexts()).toBe('');
  own.texts['keenfold.line-up.unread'] = 'a';
  own.texts['keenfold.drawer.unreadable'] = 'b';
  expect(unreadTexts()).toBe('a\nb');
  eraseUnreadTexts();
  vi.unstubAllGlobals();
  expect(Object.keys(own.texts)).toHaveLength(2);
});

describe('a file', () => {
  test('of all that is saved fills an empty list equal', () => {
    const one = savedListOn(textStorage());
    Object.entries(oddComparisons).forEach(([name, entry]) => one.put(entry, name));
    const other = savedListOn(textStorage());
    other.take(comparisonsFile(one.items()));
    expect(other.items()).toEqual(one.items());
  });

  test('is not taken in twice; another comparison of the same name is', () => {
    const savedList = savedListOn(textStorage());
    savedList.put(loft(), 'a');
    const file = comparisonsFile(savedList.items());
    expect(savedList.take(file).message).toBe('0 comparisons were taken from the file. 1 was here already.');
    savedList.take(comparisonsFile([{ name: 'a', entry: { ...loft(), reading: 'quick' } }]));
    expect(names(savedList)).toEqual(['a', 'a (2)']);
  });

  test('that is none changes nothing', () => {
    const savedList = savedListOn(textStorage());
    savedList.put(loft(), 'a');
    expect(savedList.take('{').message).toContain('not JSON');
    expect(names(savedList)).toEqual(['a']);
  });
});

describe('nothing is lost', () => {
  test.each([
    ['denied', throwing('SecurityError')],
    ['absent', () => undefined as unknown as TextStorage],
    ['full', () => ({ ...textStorage(), setItem: throwing('QuotaExceededError') })],
  ])('where storage is %s: it goes on in memory, and says so once', (_how, open) => {
    const savedList = createSavedList(open);
    expect(savedList.put(loft(), 'a').message).toContain('Save it to a file');
    expect(savedList.put(loft(), 'b').message).not.toContain('Save it to a file');
    expect(names(savedList)).toEqual(['a', 'b']);
  });

  test('storage denied between a look and a write loses nothing', () => {
    const own = textStorage();
    let denied = false;
    const gone = throwing('SecurityError');
    const savedList = savedListOn({
      getItem: (key) => (denied ? gone() : own.getItem(key)),
      setItem: () => {
        denied = true;
        gone();
      },
    });
    expect(savedList.put(loft(), 'mine').message).toContain('Save it to a file');
    expect(names(savedList)).toEqual(['mine']);
    denied = false;
    expect(names(savedList)).toEqual(['mine']);
  });

  test('where storage fills up later: what was there stays, and what comes is in memory', () => {
    const own = textStorage();
    let full = false;
    const savedList = savedListOn({
      ...own,
      setItem: (key, value) => (full ? throwing('QuotaExceededError')() : own.setItem(key, value)),
    });
    savedList.put(loft(), 'a');
    full = true;
    savedList.put(loft(), 'b');
    expect(names(savedList)).toEqual(['a', 'b']);
    expect(names(savedListOn(own))).toEqual(['a']);
    full = false;
    savedList.put(loft(), 'c');
    expect(names(savedListOn(own))).toEqual(['a', 'b', 'c']);
  });

  test('where another page of the site writes too', () => {
    const own = textStorage();
    const [one, other] = [savedListOn(own), savedListOn(own)];
    one.put(loft(), 'a');
    other.put(loft(), 'b');
    one.put(loft(), 'c');
    expect(names(other)).toEqual(['a', 'b', 'c']);
  });

  describe('where another page of the site writes while this one cannot', () => {
    /** Two pages with one storage, which the first cannot always reach. */
    const two = () => {
      const own = textStorage();
      const [one, other] = [{ shut: '' }, savedListOn(own)];
      const shut = () => {
        if (one.shut !== '') throwing(one.shut)();
      };
      const savedList = savedListOn({
        getItem: (key) => {
          if (one.shut === 'SecurityError') shut();
          return own.getItem(key);
        },
        setItem: (key, value) => {
          shut();
          own.setItem(key, value);
        },
      });
      return { one, savedList, other, stored: () => savedListOn(own) };
    };

    test.each(['QuotaExceededError', 'SecurityError'])('what both put in is there: %s', (error) => {
      const { one, savedList, other, stored } = two();
      other.put(loft(), 'a');
      one.shut = error;
      savedList.put(loft(), 'b');
      other.put(loft(), 'c');
      other.put(loft(), 'b');
      one.shut = '';
      expect(names(savedList)).toEqual(['a', 'c', 'b', 'b (2)']);
      savedList.put(loft(), 'd');
      expect(names(stored())).toEqual(['a', 'c', 'b', 'b (2)', 'd']);
      expect(
        new Set(
          stored()
            .items()
            .map(({ id }) => id),
        ).size,
      ).toBe(5);
      expect(names(other)).toEqual(names(savedList));
    });

    test('what each changed and erased is so', () => {
      const { one, savedList, other, stored } = two();
      for (const name of ['a', 'b', 'c', 'd', 'e']) other.put(loft(), name);
      one.shut = 'QuotaExceededError';
      savedList.rename('1', 'A');
      savedList.erase('2');
      savedList.rename('3', 'C');
      other.erase('3');
      other.erase('4');
      other.rename('5', 'E');
      expect(names(savedList)).toEqual(['A', 'E', 'C']);
      one.shut = '';
      savedList.markSaved([]);
      expect(names(stored())).toEqual(['A', 'E', 'C']);
    });
  });

  test('where one stored comparison is of a version to come', () => {
    const own = textStorage();
    savedListOn(own).put(loft(), 'a');
    savedListOn(own).put(loft(), 'b');
    own.texts['keenfold.drawer'] = (own.texts['keenfold.drawer'] ?? '').replace(
      /"version":\d+/,
      '"version":99',
    );
    const savedList = savedListOn(own);
    expect([names(savedList), savedList.unread()]).toEqual([['b'], 1]);
    savedList.put(loft(), 'c');
    expect(own.texts['keenfold.drawer']).toContain('"version":99');
    // Two would share one where only what can be read is looked at.
    own.texts['keenfold.drawer'] = (own.texts['keenfold.drawer'] ?? '').replace('"id":"1"', '"id":"4"');
    savedList.put(loft(), 'd');
    expect(savedList.items().map(({ id }) => id)).not.toContain('4');
  });

  test('where the whole of it cannot be read: it is laid aside', () => {
    const own = textStorage({ 'keenfold.drawer': '{"items":[' });
    savedListOn(own).put(loft(), 'a');
    expect(own.texts['keenfold.drawer.unreadable']).toBe('{"items":[');
    expect(names(savedListOn(own))).toEqual(['a']);
  });
});
