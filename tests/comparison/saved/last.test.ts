import { describe, expect, test } from 'vitest';
import { createStorage } from '../../../src/comparison/saved/last.ts';
import type { TextStorage } from '../../../src/comparison/saved/last.ts';
import { decodeLink } from '../../../src/comparison/link/codec.ts';
import { eraseUnreadTexts, unreadTexts } from '../../../src/comparison/saved/unread.ts';
import { aRun } from '../../runs/runs.ts';
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

/** What browsers throw: names from the Storage section of the HTML standard. */
const throwing = (name: string) => (): never => {
  throw new DOMException('no', name);
};

test('a stored comparison is there after a reload', () => {
  const own = textStorage();
  expect(createStorage(() => own).save(loft())).toEqual({ ok: true });
  expect(Object.keys(own.texts)).toEqual(['keenfold.line-up']);
  expect(createStorage(() => own).load()).toEqual({ ok: true, entry: loft() });
});

test('runs too many for a link are there after a reload', () => {
  const own = textStorage();
  const runs = Array.from({ length: 1500 }, (_, index) =>
    aRun({ cuts: 1 + ((index * 7919) % 1013), batch: `lot ${index}` }),
  );
  createStorage(() => own).save({ ...loft(), runs });
  expect(createStorage(() => own).load()).toEqual({ ok: true, entry: { ...loft(), runs } });
  const [link = ''] = own.texts['keenfold.line-up']?.split('\n') ?? [];
  expect(decodeLink(link)).toMatchObject({ ok: true, runsLeftBehind: true });
  own.texts['keenfold.line-up'] = `${link}\n[{"knife":`;
  expect(createStorage(() => own).load()).toMatchObject({ ok: false, kind: 'corrupted' });
});

test('the first visit finds none', () =>
  expect(createStorage(() => textStorage()).load()).toEqual({ ok: true, entry: null }));

describe('trouble is told, said once, and never thrown', () => {
  test('denied', () => {
    const storage = createStorage(throwing('SecurityError'));
    expect(storage.load()).toMatchObject({ ok: false, kind: 'denied', first: true });
    expect(storage.save(loft())).toMatchObject({ ok: false, kind: 'denied', first: false });
  });

  test('no storage at all', () => {
    const storage = createStorage(() => undefined as unknown as TextStorage);
    expect(storage.save(loft())).toMatchObject({ ok: false, kind: 'denied', first: true });
  });

  test('full', () => {
    const storage = createStorage(() => ({ ...textStorage(), setItem: throwing('QuotaExceededError') }));
    expect(storage.save(loft())).toMatchObject({ ok: false, kind: 'full', first: true });
    expect(storage.save(loft())).toMatchObject({ ok: false, kind: 'full', first: false });
    expect(storage.load()).toEqual({ ok: true, entry: null });
  });

  test('corrupted, and storing the next one ends it', () => {
    const own = textStorage({ 'keenfold.line-up': '#with=1.AAAAAAAAAAAAAAAAAAAA' });
    const storage = createStorage(() => own);
    expect(storage.load()).toMatchObject({ ok: false, kind: 'corrupted', first: true });
    storage.save(loft());
    expect(storage.load()).toEqual({ ok: true, entry: loft() });
  });
});

describe('a comparison that cannot be read is stored under another key', () => {
  const damaged = '#with=1.AAAAAAAAAAAAAAAAAAAA';
  const aside = (own: ReturnType<typeof textStorage>) => own.texts['keenfold.line-up.unread'];
  const loaded = (own: TextStorage) => {
    const read = createStorage(() => own).load();
    return read.ok ? '' : read.message;
  };

  test('as it was found, and stays there when another is stored', () => {
    const own = textStorage({ 'keenfold.line-up': damaged });
    expect(loaded(own)).toMatch(
      /cannot be read\. .+ It is kept aside: on the page Saved you can save it to a file\.$/,
    );
    createStorage(() => own).save(loft());
    expect(unreadTexts(() => own)).toBe(damaged);
    expect(loaded(own)).toBe('');
  });

  test('with its runs, where only they are damaged', () => {
    const own = textStorage();
    createStorage(() => own).save({ ...loft(), runs: [aRun()] });
    own.texts['keenfold.line-up'] = `${own.texts['keenfold.line-up'] ?? ''}]`;
    expect(loaded(own)).toContain('Its runs: ');
    expect(aside(own)).toBe(own.texts['keenfold.line-up']);
  });

  test('the first stays until it is erased, and of another it is not said', () => {
    const own = textStorage({ 'keenfold.line-up': damaged });
    loaded(own);
    own.texts['keenfold.line-up'] = 'other';
    expect(loaded(own)).not.toContain('kept aside');
    expect(aside(own)).toBe(damaged);
    eraseUnreadTexts(() => ({ removeItem: (key) => Reflect.deleteProperty(own.texts, key) }));
    expect(unreadTexts(() => own)).toBe('');
    expect(loaded(own)).toContain('kept aside');
    expect(aside(own)).toBe('other');
  });

  test('nothing is said of it where there is no room, nor found where storage is denied', () => {
    const own = textStorage({ 'keenfold.line-up': damaged });
    expect(loaded({ ...own, setItem: throwing('QuotaExceededError') })).not.toContain('kept aside');
    expect(unreadTexts(throwing('SecurityError'))).toBe('');
  });

  test('what can be read is not', () => {
    const own = textStorage();
    createStorage(() => own).save(loft());
    expect([loaded(own), aside(own)]).toEqual(['', undefined]);
  });
});
