import { describe, expect, test } from 'vitest';
import { createStorage } from '../../../src/comparison/saved/last.ts';
import type { Shelf } from '../../../src/comparison/saved/last.ts';
import { decodeLink } from '../../../src/comparison/link/codec.ts';
import { eraseSetAside, setAside } from '../../../src/comparison/saved/unread.ts';
import { aRun } from '../../runs/runs.ts';
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

/** What browsers throw: names from the Storage section of the HTML standard. */
const throwing = (name: string) => (): never => {
  throw new DOMException('no', name);
};

test('a comparison kept is there after a reload', () => {
  const own = shelf();
  expect(createStorage(() => own).keep(loft())).toEqual({ ok: true });
  expect(Object.keys(own.kept)).toEqual(['keenfold.line-up']);
  expect(createStorage(() => own).load()).toEqual({ ok: true, entry: loft() });
});

test('runs too many for a link are there after a reload', () => {
  const own = shelf();
  const runs = Array.from({ length: 1500 }, (_, index) =>
    aRun({ cuts: 1 + ((index * 7919) % 1013), batch: `lot ${index}` }),
  );
  createStorage(() => own).keep({ ...loft(), runs });
  expect(createStorage(() => own).load()).toEqual({ ok: true, entry: { ...loft(), runs } });
  const [link = ''] = own.kept['keenfold.line-up']?.split('\n') ?? [];
  expect(decodeLink(link)).toMatchObject({ ok: true, runsLeftBehind: true });
  own.kept['keenfold.line-up'] = `${link}\n[{"knife":`;
  expect(createStorage(() => own).load()).toMatchObject({ ok: false, kind: 'corrupted' });
});

test('the first visit finds none', () =>
  expect(createStorage(() => shelf()).load()).toEqual({ ok: true, entry: null }));

describe('trouble is told, said once, and never thrown', () => {
  test('denied', () => {
    const storage = createStorage(throwing('SecurityError'));
    expect(storage.load()).toMatchObject({ ok: false, kind: 'denied', first: true });
    expect(storage.keep(loft())).toMatchObject({ ok: false, kind: 'denied', first: false });
  });

  test('no storage at all', () => {
    const storage = createStorage(() => undefined as unknown as Shelf);
    expect(storage.keep(loft())).toMatchObject({ ok: false, kind: 'denied', first: true });
  });

  test('full', () => {
    const storage = createStorage(() => ({ ...shelf(), setItem: throwing('QuotaExceededError') }));
    expect(storage.keep(loft())).toMatchObject({ ok: false, kind: 'full', first: true });
    expect(storage.keep(loft())).toMatchObject({ ok: false, kind: 'full', first: false });
    expect(storage.load()).toEqual({ ok: true, entry: null });
  });

  test('corrupted, and the next one kept mends it', () => {
    const own = shelf({ 'keenfold.line-up': '#with=1.AAAAAAAAAAAAAAAAAAAA' });
    const storage = createStorage(() => own);
    expect(storage.load()).toMatchObject({ ok: false, kind: 'corrupted', first: true });
    storage.keep(loft());
    expect(storage.load()).toEqual({ ok: true, entry: loft() });
  });
});

describe('a comparison that cannot be read is kept aside', () => {
  const damaged = '#with=1.AAAAAAAAAAAAAAAAAAAA';
  const aside = (own: ReturnType<typeof shelf>) => own.kept['keenfold.line-up.unread'];
  const loaded = (own: Shelf) => {
    const read = createStorage(() => own).load();
    return read.ok ? '' : read.message;
  };

  test('as it was found, and stays there when another is kept', () => {
    const own = shelf({ 'keenfold.line-up': damaged });
    expect(loaded(own)).toMatch(/cannot be read\. .+ It is kept aside: the drawer saves it to a file\.$/);
    createStorage(() => own).keep(loft());
    expect(setAside(() => own)).toBe(damaged);
    expect(loaded(own)).toBe('');
  });

  test('with its runs, where only they are damaged', () => {
    const own = shelf();
    createStorage(() => own).keep({ ...loft(), runs: [aRun()] });
    own.kept['keenfold.line-up'] = `${own.kept['keenfold.line-up'] ?? ''}]`;
    expect(loaded(own)).toContain('Its runs: ');
    expect(aside(own)).toBe(own.kept['keenfold.line-up']);
  });

  test('the first stays until it is erased, and of another it is not said', () => {
    const own = shelf({ 'keenfold.line-up': damaged });
    loaded(own);
    own.kept['keenfold.line-up'] = 'other';
    expect(loaded(own)).not.toContain('kept aside');
    expect(aside(own)).toBe(damaged);
    eraseSetAside(() => ({ removeItem: (key) => Reflect.deleteProperty(own.kept, key) }));
    expect(setAside(() => own)).toBe('');
    expect(loaded(own)).toContain('kept aside');
    expect(aside(own)).toBe('other');
  });

  test('nothing is said of it where there is no room, nor found where storage is denied', () => {
    const own = shelf({ 'keenfold.line-up': damaged });
    expect(loaded({ ...own, setItem: throwing('QuotaExceededError') })).not.toContain('kept aside');
    expect(setAside(throwing('SecurityError'))).toBe('');
  });

  test('what can be read is not', () => {
    const own = shelf();
    createStorage(() => own).keep(loft());
    expect([loaded(own), aside(own)]).toEqual(['', undefined]);
  });
});
