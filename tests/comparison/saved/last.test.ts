import { describe, expect, test } from 'vitest';
import { decodeLink, encodeLink } from '../../../src/comparison/link/codec.ts';
import { Keeping } from '../../../src/comparison/saved/keeping.ts';
import { lastStorage, versionOf } from '../../../src/comparison/saved/last.ts';
import { createSavedList } from '../../../src/comparison/saved/saved.ts';
import { eraseUnreadTexts, unreadTexts } from '../../../src/comparison/saved/unread.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { aRun } from '../../runs/runs.ts';
import { loft } from '../entries.ts';
import { fakeStorage } from './storage.ts';
import type { FakeStorage } from './storage.ts';

const kept = (entry: ComparisonEntry) => ({ ...versionOf(entry), origin: 'own.1', line: '1.0' });
const found = (own: FakeStorage) => lastStorage(() => own).look();
const { invented: _invented, ...mine } = loft();
const day = (): Date => new Date(2026, 10, 30, 12);

/** A page that begins with the example and is changed to a comparison. */
function changedTo(own: FakeStorage, entry: ComparisonEntry): Keeping {
  const keeping = new Keeping(loft(), '2', () => own, day);
  keeping.shown(entry);
  return keeping;
}

test('a stored comparison is there after a reload, with where it comes from', () => {
  const own = fakeStorage();
  expect(lastStorage(() => own).write(kept(loft()))).toBeNull();
  expect(Object.keys(own.texts)).toEqual(['keenfold.line-up']);
  expect(found(own)).toEqual({ is: 'kept', ...kept(loft()) });
});

test('one stored before origins were is the visitor’s own', () => {
  expect(found(fakeStorage({ 'keenfold.line-up': encodeLink(mine) }))).toMatchObject({
    is: 'kept',
    entry: mine,
    origin: 'own',
  });
});

test('runs too many for a link are there after a reload', () => {
  const own = fakeStorage();
  const runs = Array.from({ length: 1500 }, (_, index) =>
    aRun({ cuts: 1 + ((index * 7919) % 1013), batch: `lot ${index}` }),
  );
  lastStorage(() => own).write(kept({ ...loft(), runs }));
  expect(found(own)).toMatchObject({ is: 'kept', entry: { ...loft(), runs } });
  const [link = ''] = own.texts['keenfold.line-up']?.split('\n') ?? [];
  expect(decodeLink(link)).toMatchObject({ ok: true, runsLeftBehind: true });
  own.texts['keenfold.line-up'] = `${link}\n[{"knife":`;
  expect(found(own)).toMatchObject({ is: 'unreadable' });
});

test('the first visit finds none', () => expect(found(fakeStorage())).toEqual({ is: 'nothing' }));

test('the unchanged example and an empty comparison need no saving', () => {
  const empty = { ...mine, knives: mine.knives.map(({ id, name, state }) => ({ id, name, state })) };
  expect(versionOf(loft()).worth).toBe(false);
  expect(versionOf(empty as unknown as ComparisonEntry).worth).toBe(false);
  expect(versionOf(mine).worth).toBe(true);
});

describe('trouble is told, once for each kind, and never thrown', () => {
  test('denied', () => {
    const own = fakeStorage();
    own.refuses = 'SecurityError';
    expect(found(own)).toEqual({ is: 'denied' });
    const page = changedTo(own, mine);
    expect(page.due()).toEqual({ said: 'not kept', kind: 'denied', first: true });
    expect(page.due()).toEqual({ said: 'not kept', kind: 'denied', first: false });
  });

  test('no storage at all', () => {
    const page = new Keeping(loft(), '2', () => undefined as unknown as FakeStorage);
    page.shown(mine);
    expect(page.due()).toMatchObject({ said: 'not kept', first: true });
  });

  test('full: nothing is written over, and it ends with the room', () => {
    const own = fakeStorage();
    lastStorage(() => own).write(kept({ ...mine, title: 'An older one' }));
    const before = { ...own.texts };
    own.refuses = 'QuotaExceededError';
    const page = changedTo(own, mine);
    expect(page.due()).toEqual({ said: 'not kept', kind: 'full', first: true });
    expect(own.texts).toEqual(before);
    own.refuses = '';
    expect(page.due()).toMatchObject({ said: 'put away' });
  });

  test('full for the comparison alone: what was put into Saved for it is taken out again', () => {
    const own = fakeStorage();
    lastStorage(() => own).write(kept({ ...mine, title: 'An older one' }));
    const { setItem } = own;
    own.setItem = (key, value) => {
      if (key === 'keenfold.line-up') throw new DOMException('no', 'QuotaExceededError');
      setItem(key, value);
    };
    expect(changedTo(own, mine).due()).toMatchObject({ said: 'not kept', kind: 'full' });
    expect(createSavedList(() => own).items()).toEqual([]);
    expect(found(own)).toMatchObject({ entry: { title: 'An older one' } });
  });
});

describe('what is put into Saved', () => {
  const older = { ...mine, title: 'An older one' };
  const keptBefore = (): FakeStorage => {
    const own = fakeStorage();
    lastStorage(() => own).write(kept(older));
    return own;
  };
  const names = (own: FakeStorage) =>
    createSavedList(() => own)
      .items()
      .map(({ name }) => name);

  test('says why and when, and undone is kept again', () => {
    const own = keptBefore();
    const page = new Keeping(loft(), '2', () => own, day);
    page.linkOpened(mine);
    const changed = { ...mine, title: 'The link’s, changed' };
    page.shown(changed);
    const name = 'Kept before a link was opened, 30 November 2026: An older one';
    expect(page.due()).toEqual({ said: 'put away', because: 'link', name });
    expect(names(own)).toEqual([name]);
    expect(page.putBack()).toEqual({ said: 'put back', entry: older, instead: changed });
    expect(found(own)).toMatchObject({ entry: older, origin: 'own.1' });
    expect(names(own)).toEqual([]);
    expect(page.putBack()).toBeUndefined();
    page.shown(changed);
    expect(page.due()).toMatchObject({ said: 'put away', name });
  });

  test('after a damaged link, by another tab, and by starting again it says so', () => {
    const damaged = keptBefore();
    const page = new Keeping(loft(), '2', () => damaged, day);
    page.linkRefused();
    page.shown(mine);
    expect(page.due()).toMatchObject({ because: 'link' });

    const shared = keptBefore();
    const [one, other] = ['2', '3'].map((id) => new Keeping(loft(), id, () => shared, day));
    one?.keptShown();
    other?.keptShown();
    one?.shown({ ...older, title: 'Of the first tab' });
    one?.due();
    expect(other?.writtenElsewhere()).toEqual({ said: 'another tab changed it' });
    other?.shown({ ...older, title: 'Of the second tab' });
    expect(other?.due()).toMatchObject({ because: 'another tab' });
    expect(names(shared)).toEqual(['Changed in another tab, 30 November 2026: Of the first tab']);
    other?.begunAnew();
    other?.shown(loft());
    expect(other?.due()).toBeUndefined();
    other?.shown(mine);
    expect(other?.due()).toMatchObject({ because: 'begun anew' });
  });

  test('of a tab that wrote what is shown here already nothing is said', () => {
    const own = keptBefore();
    const page = new Keeping(loft(), '2', () => own, day);
    expect(page.writtenElsewhere()).toBeUndefined();
    page.keptShown();
    expect(page.writtenElsewhere()).toEqual({ said: 'nothing of another tab' });
  });
});

describe('a comparison that cannot be read is stored under another key', () => {
  const damaged = '#with=1.AAAAAAAAAAAAAAAAAAAA';
  const looked = (own: FakeStorage) => new Keeping(loft(), '2', () => own).look();

  test('as it was found, when a page looks, and stays there when another is stored', () => {
    const own = fakeStorage({ 'keenfold.line-up': damaged });
    expect(looked(own)).toMatchObject({ is: 'unreadable', text: damaged, aside: true });
    changedTo(own, mine).due();
    expect(unreadTexts(() => own)).toBe(damaged);
    expect(looked(own)).toMatchObject({ is: 'kept' });
  });

  test('before it is written over by a page that did not look', () => {
    const own = fakeStorage({ 'keenfold.line-up': damaged });
    expect(changedTo(own, mine).due()).toEqual({ said: 'laid aside' });
    expect(unreadTexts(() => own)).toBe(damaged);
    expect(found(own)).toMatchObject({ entry: mine });
  });

  test('with its runs, where only they are damaged', () => {
    const own = fakeStorage();
    lastStorage(() => own).write(kept({ ...mine, runs: [aRun()] }));
    own.texts['keenfold.line-up'] = own.texts['keenfold.line-up']?.replace(']\n', ']]\n') ?? '';
    const look = looked(own);
    expect(look.is === 'unreadable' && look.why).toContain('Its runs: ');
    expect(unreadTexts(() => own)).toBe(own.texts['keenfold.line-up']);
  });

  test('a second below the first, each once, until they are erased', () => {
    const own = fakeStorage({ 'keenfold.line-up': damaged });
    looked(own);
    looked(own);
    own.texts['keenfold.line-up'] = 'other';
    looked(own);
    expect(unreadTexts(() => own)).toBe(`${damaged}\nother`);
    eraseUnreadTexts(() => ({ removeItem: (key) => Reflect.deleteProperty(own.texts, key) }));
    expect(unreadTexts(() => own)).toBe('');
  });

  test('where there is no room for it, it is not written over', () => {
    const own = fakeStorage({ 'keenfold.line-up': damaged });
    own.refuses = 'QuotaExceededError';
    expect(looked(own)).toMatchObject({ aside: false });
    expect(changedTo(own, mine).due()).toMatchObject({ said: 'not kept', kind: 'full' });
    expect(own.texts).toEqual({ 'keenfold.line-up': damaged });
    own.refuses = 'SecurityError';
    expect(unreadTexts(() => own)).toBe('');
  });

  test('so is Saved as a whole, which nothing is put into before', () => {
    const own = fakeStorage({ 'keenfold.drawer': 'damaged', 'keenfold.drawer.unreadable': 'older' });
    lastStorage(() => own).write(kept({ ...mine, title: 'An older one' }));
    own.refuses = 'QuotaExceededError';
    expect(changedTo(own, mine).due()).toMatchObject({ said: 'not kept' });
    own.refuses = '';
    expect(changedTo(own, mine).due()).toMatchObject({ said: 'put away' });
    expect(unreadTexts(() => own)).toBe('older\ndamaged');
  });
});
