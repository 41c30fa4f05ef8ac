import { describe, expect, test, vi } from 'vitest';
import { createDrawer } from '../../../src/comparison/saved/saved.ts';
import { lineUpsFile } from '../../../src/comparison/files.ts';
import { createKeeper } from '../../../src/comparison/saved/last.ts';
import type { Shelf } from '../../../src/comparison/saved/last.ts';
import { eraseLaidAside, laidAside } from '../../../src/comparison/saved/unread.ts';
import { awkward } from '../../topics/awkward.ts';
import { loft } from '../entries.ts';

function shelf(kept: Record<string, string> = {}): Shelf & { kept: Record<string, string> } {
  return {
    kept,
    getItem: (key) => kept[key] ?? null,
    setItem: (key, value) => {
      kept[key] = value;
    },
  };
}
const noon = () => new Date('2020-06-01T12:00:00Z');
const drawerOn = (own: Shelf) => createDrawer(() => own, noon);
/** What browsers throw: names from the Storage section of the HTML standard. */
const throwing = (name: string) => (): never => {
  throw new DOMException('no', name);
};
const names = (drawer: ReturnType<typeof createDrawer>) => drawer.items().map(({ name }) => name);

describe('what is put in', () => {
  test.each(Object.entries(awkward))('comes back equal after a reload: %s', (name, entry) => {
    const own = shelf();
    drawerOn(own).put(entry, name);
    expect(drawerOn(own).items()).toEqual([
      { id: '1', name, entry, kept: noon().toISOString(), saved: null },
    ]);
  });

  test('is named, renamed and copied, and no two have one name', () => {
    const drawer = drawerOn(shelf());
    drawer.put(loft());
    drawer.put(loft(), '  mine ');
    drawer.put(loft(), 'mine');
    drawer.copy('2');
    drawer.rename('1', 'mine');
    drawer.rename('2', '   ');
    expect(names(drawer)).toEqual(['mine (4)', loft().title, 'mine (2)', 'mine (3)']);
  });

  test('is erased, and put back where it was', () => {
    const drawer = drawerOn(shelf());
    for (const name of ['a', 'b', 'c']) drawer.put(loft(), name);
    drawer.erase('2');
    expect(names(drawer)).toEqual(['a', 'c']);
    expect(drawer.putBack().message).toContain('back');
    expect(names(drawer)).toEqual(['a', 'b', 'c']);
    expect(drawer.putBack().message).toBe('Nothing was erased.');
  });

  test('says when it was saved to a file, and no longer after a change', () => {
    const drawer = drawerOn(shelf());
    drawer.put(loft(), 'a');
    drawer.markSaved(['1']);
    expect(drawer.items()[0]?.saved).toBe(noon().toISOString());
    drawer.rename('1', 'b');
    expect(drawer.items()[0]?.saved).toBeNull();
  });
});

test('what is not there is neither copied nor erased, and only what is named is marked as saved', () => {
  const drawer = drawerOn(shelf());
  drawer.put(loft(), 'a');
  drawer.put(loft(), 'b');
  expect([drawer.copy('9').message, drawer.erase('9').message]).toEqual(['', '']);
  expect(names(drawer)).toEqual(['a', 'b']);
  drawer.markSaved(['2']);
  expect(drawer.items().map(({ saved }) => saved !== null)).toEqual([false, true]);
});

describe('what is stored and cannot be read', () => {
  const key = 'keenfold.drawer';
  const stored = (): Record<string, unknown> => {
    const own = shelf();
    drawerOn(own).put(loft(), 'a');
    const { items } = JSON.parse(own.kept[key] ?? '') as { items: Record<string, unknown>[] };
    return items[0] ?? {};
  };

  test.each<[string, (item: Record<string, unknown>) => unknown]>([
    ['is no object', () => 7],
    ['is nothing', () => null],
    ['has no id', ({ id: _id, ...item }) => item],
    ['has the id of the one before', (item) => item],
    ['has no version', ({ version: _version, ...item }) => ({ ...item, id: '2' })],
    ['has half a version', (item) => ({ ...item, id: '2', version: 1.5 })],
    ['holds no line-up', (item) => ({ ...item, id: '2', lineUp: {} })],
  ])('%s: it is left as it is, beside what can', (_how, damage) => {
    const item = stored();
    const damaged = damage(item);
    const own = shelf({ [key]: JSON.stringify({ items: [item, damaged] }) });
    const drawer = drawerOn(own);
    expect([names(drawer), drawer.unread()]).toEqual([['a'], 1]);
    drawer.put(loft(), 'b');
    const { items } = JSON.parse(own.kept[key] ?? '') as { items: unknown[] };
    expect(items).toContainEqual(damaged);
    expect(new Set(drawer.items().map(({ id }) => id)).size).toBe(2);
  });

  test('what cannot be read is given as it was found, and erased when asked', () => {
    const items = [stored(), 7, { id: '9', version: 99 }];
    const own = shelf({ [key]: JSON.stringify({ items }) });
    const drawer = drawerOn(own);
    expect(drawer.unreadText()).toBe('7\n{"id":"9","version":99}');
    expect(drawer.eraseUnread().message).toBe('');
    expect([names(drawer), drawer.unread(), drawer.unreadText()]).toEqual([['a'], 0, '']);
  });

  test('a line-up without its times counts as never saved', () => {
    const { kept: _kept, saved: _saved, ...item } = stored();
    const drawer = drawerOn(shelf({ [key]: JSON.stringify({ items: [item] }) }));
    expect(drawer.items()).toMatchObject([{ name: 'a', kept: '', saved: null }]);
  });

  test('a text of another kind is laid aside', () => {
    const own = shelf({ [key]: '{"items":"none"}' });
    expect(drawerOn(own).items()).toEqual([]);
    expect(own.kept['keenfold.drawer.unreadable']).toBe('{"items":"none"}');
  });
});

test('two of a file that are here already are counted in the plural', () => {
  const drawer = drawerOn(shelf());
  drawer.put(loft(), 'a');
  drawer.put(loft(), 'b');
  expect(drawer.take(lineUpsFile(drawer.items())).message).toMatch(/ 2 were here already\.$/);
});

test('without a word about where, it is the browser’s own storage', () => {
  const own = shelf();
  const removeItem = (key: string) => Reflect.deleteProperty(own.kept, key);
  vi.stubGlobal('localStorage', { ...own, removeItem });
  createDrawer().put(loft(), 'a');
  expect(own.kept['keenfold.drawer']).toContain('"a"');
  createKeeper().keep(loft());
  expect(laidAside()).toBe('');
  own.kept['keenfold.line-up.unread'] = 'a';
  own.kept['keenfold.drawer.unreadable'] = 'b';
  expect(laidAside()).toBe('a\nb');
  eraseLaidAside();
  vi.unstubAllGlobals();
  expect(Object.keys(own.kept)).toHaveLength(2);
});

describe('a file', () => {
  test('of the whole drawer fills an empty one equal', () => {
    const one = drawerOn(shelf());
    Object.entries(awkward).forEach(([name, entry]) => one.put(entry, name));
    const other = drawerOn(shelf());
    other.take(lineUpsFile(one.items()));
    expect(other.items()).toEqual(one.items());
  });

  test('is not taken in twice; another line-up of the same name is', () => {
    const drawer = drawerOn(shelf());
    drawer.put(loft(), 'a');
    const file = lineUpsFile(drawer.items());
    expect(drawer.take(file).message).toBe('0 line-ups were taken from the file. 1 was here already.');
    drawer.take(lineUpsFile([{ name: 'a', entry: { ...loft(), reading: 'pocket' } }]));
    expect(names(drawer)).toEqual(['a', 'a (2)']);
  });

  test('that is none changes nothing', () => {
    const drawer = drawerOn(shelf());
    drawer.put(loft(), 'a');
    expect(drawer.take('{').message).toContain('not JSON');
    expect(names(drawer)).toEqual(['a']);
  });
});

describe('nothing is lost', () => {
  test.each([
    ['denied', throwing('SecurityError')],
    ['absent', () => undefined as unknown as Shelf],
    ['full', () => ({ ...shelf(), setItem: throwing('QuotaExceededError') })],
  ])('where storage is %s: it goes on in memory, and says so once', (_how, open) => {
    const drawer = createDrawer(open);
    expect(drawer.put(loft(), 'a').message).toContain('Save it to a file');
    expect(drawer.put(loft(), 'b').message).not.toContain('Save it to a file');
    expect(names(drawer)).toEqual(['a', 'b']);
  });

  test('storage denied between a look and a write loses nothing', () => {
    const own = shelf();
    let denied = false;
    const gone = throwing('SecurityError');
    const drawer = drawerOn({
      getItem: (key) => (denied ? gone() : own.getItem(key)),
      setItem: () => {
        denied = true;
        gone();
      },
    });
    expect(drawer.put(loft(), 'mine').message).toContain('Save it to a file');
    expect(names(drawer)).toEqual(['mine']);
    denied = false;
    expect(names(drawer)).toEqual(['mine']);
  });

  test('where storage fills up later: what was there stays, and what comes is in memory', () => {
    const own = shelf();
    let full = false;
    const drawer = drawerOn({
      ...own,
      setItem: (key, value) => (full ? throwing('QuotaExceededError')() : own.setItem(key, value)),
    });
    drawer.put(loft(), 'a');
    full = true;
    drawer.put(loft(), 'b');
    expect(names(drawer)).toEqual(['a', 'b']);
    expect(names(drawerOn(own))).toEqual(['a']);
    full = false;
    drawer.put(loft(), 'c');
    expect(names(drawerOn(own))).toEqual(['a', 'b', 'c']);
  });

  test('where another page of the site writes too', () => {
    const own = shelf();
    const [one, other] = [drawerOn(own), drawerOn(own)];
    one.put(loft(), 'a');
    other.put(loft(), 'b');
    one.put(loft(), 'c');
    expect(names(other)).toEqual(['a', 'b', 'c']);
  });

  describe('where another page of the site writes while this one cannot', () => {
    /** Two pages on one shelf, of which the first can be kept from it. */
    const two = () => {
      const own = shelf();
      const [one, other] = [{ shut: '' }, drawerOn(own)];
      const shut = () => {
        if (one.shut !== '') throwing(one.shut)();
      };
      const drawer = drawerOn({
        getItem: (key) => {
          if (one.shut === 'SecurityError') shut();
          return own.getItem(key);
        },
        setItem: (key, value) => {
          shut();
          own.setItem(key, value);
        },
      });
      return { one, drawer, other, stored: () => drawerOn(own) };
    };

    test.each(['QuotaExceededError', 'SecurityError'])('what both put in is there: %s', (error) => {
      const { one, drawer, other, stored } = two();
      other.put(loft(), 'a');
      one.shut = error;
      drawer.put(loft(), 'b');
      other.put(loft(), 'c');
      other.put(loft(), 'b');
      one.shut = '';
      expect(names(drawer)).toEqual(['a', 'c', 'b', 'b (2)']);
      drawer.put(loft(), 'd');
      expect(names(stored())).toEqual(['a', 'c', 'b', 'b (2)', 'd']);
      expect(
        new Set(
          stored()
            .items()
            .map(({ id }) => id),
        ).size,
      ).toBe(5);
      expect(names(other)).toEqual(names(drawer));
    });

    test('what each changed and erased is so', () => {
      const { one, drawer, other, stored } = two();
      for (const name of ['a', 'b', 'c', 'd', 'e']) other.put(loft(), name);
      one.shut = 'QuotaExceededError';
      drawer.rename('1', 'A');
      drawer.erase('2');
      drawer.rename('3', 'C');
      other.erase('3');
      other.erase('4');
      other.rename('5', 'E');
      expect(names(drawer)).toEqual(['A', 'E', 'C']);
      one.shut = '';
      drawer.markSaved([]);
      expect(names(stored())).toEqual(['A', 'E', 'C']);
    });
  });

  test('where one stored line-up is of a version to come', () => {
    const own = shelf();
    drawerOn(own).put(loft(), 'a');
    drawerOn(own).put(loft(), 'b');
    own.kept['keenfold.drawer'] = (own.kept['keenfold.drawer'] ?? '').replace(
      /"version":\d+/,
      '"version":99',
    );
    const drawer = drawerOn(own);
    expect([names(drawer), drawer.unread()]).toEqual([['b'], 1]);
    drawer.put(loft(), 'c');
    expect(own.kept['keenfold.drawer']).toContain('"version":99');
    // Two would share one where only what can be read is looked at.
    own.kept['keenfold.drawer'] = (own.kept['keenfold.drawer'] ?? '').replace('"id":"1"', '"id":"4"');
    drawer.put(loft(), 'd');
    expect(drawer.items().map(({ id }) => id)).not.toContain('4');
  });

  test('where the whole of it cannot be read: it is laid aside', () => {
    const own = shelf({ 'keenfold.drawer': '{"items":[' });
    drawerOn(own).put(loft(), 'a');
    expect(own.kept['keenfold.drawer.unreadable']).toBe('{"items":[');
    expect(names(drawerOn(own))).toEqual(['a']);
  });
});
