import { describe, expect, test } from 'vitest';
import { createKeeper } from '../../../src/comparison/saved/last.ts';
import type { Shelf } from '../../../src/comparison/saved/last.ts';
import { decodeLink } from '../../../src/comparison/link/codec.ts';
import { eraseLaidAside, laidAside } from '../../../src/comparison/saved/unread.ts';
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

test('a line-up kept is there after a reload', () => {
  const own = shelf();
  expect(createKeeper(() => own).keep(loft())).toEqual({ ok: true });
  expect(Object.keys(own.kept)).toEqual(['keenfold.line-up']);
  expect(createKeeper(() => own).recall()).toEqual({ ok: true, entry: loft() });
});

test('runs too many for a link are there after a reload', () => {
  const own = shelf();
  const runs = Array.from({ length: 1500 }, (_, index) =>
    aRun({ cuts: 1 + ((index * 7919) % 1013), lot: `lot ${index}` }),
  );
  createKeeper(() => own).keep({ ...loft(), runs });
  expect(createKeeper(() => own).recall()).toEqual({ ok: true, entry: { ...loft(), runs } });
  const [link = ''] = own.kept['keenfold.line-up']?.split('\n') ?? [];
  expect(decodeLink(link)).toMatchObject({ ok: true, runsLeftBehind: true });
  own.kept['keenfold.line-up'] = `${link}\n[{"knife":`;
  expect(createKeeper(() => own).recall()).toMatchObject({ ok: false, kind: 'corrupted' });
});

test('the first visit finds none', () =>
  expect(createKeeper(() => shelf()).recall()).toEqual({ ok: true, entry: null }));

describe('trouble is told, said once, and never thrown', () => {
  test('denied', () => {
    const keeper = createKeeper(throwing('SecurityError'));
    expect(keeper.recall()).toMatchObject({ ok: false, kind: 'denied', first: true });
    expect(keeper.keep(loft())).toMatchObject({ ok: false, kind: 'denied', first: false });
  });

  test('no storage at all', () => {
    const keeper = createKeeper(() => undefined as unknown as Shelf);
    expect(keeper.keep(loft())).toMatchObject({ ok: false, kind: 'denied', first: true });
  });

  test('full', () => {
    const keeper = createKeeper(() => ({ ...shelf(), setItem: throwing('QuotaExceededError') }));
    expect(keeper.keep(loft())).toMatchObject({ ok: false, kind: 'full', first: true });
    expect(keeper.keep(loft())).toMatchObject({ ok: false, kind: 'full', first: false });
    expect(keeper.recall()).toEqual({ ok: true, entry: null });
  });

  test('corrupted, and the next one kept mends it', () => {
    const own = shelf({ 'keenfold.line-up': '#with=1.AAAAAAAAAAAAAAAAAAAA' });
    const keeper = createKeeper(() => own);
    expect(keeper.recall()).toMatchObject({ ok: false, kind: 'corrupted', first: true });
    keeper.keep(loft());
    expect(keeper.recall()).toEqual({ ok: true, entry: loft() });
  });
});

describe('a line-up that cannot be read is kept aside', () => {
  const damaged = '#with=1.AAAAAAAAAAAAAAAAAAAA';
  const aside = (own: ReturnType<typeof shelf>) => own.kept['keenfold.line-up.unread'];
  const recalled = (own: Shelf) => {
    const read = createKeeper(() => own).recall();
    return read.ok ? '' : read.message;
  };

  test('as it was found, and stays there when another is kept', () => {
    const own = shelf({ 'keenfold.line-up': damaged });
    expect(recalled(own)).toMatch(/cannot be read\. .+ It is kept aside: the drawer saves it to a file\.$/);
    createKeeper(() => own).keep(loft());
    expect(laidAside(() => own)).toBe(damaged);
    expect(recalled(own)).toBe('');
  });

  test('with its runs, where only they are damaged', () => {
    const own = shelf();
    createKeeper(() => own).keep({ ...loft(), runs: [aRun()] });
    own.kept['keenfold.line-up'] = `${own.kept['keenfold.line-up'] ?? ''}]`;
    expect(recalled(own)).toContain('Its runs: ');
    expect(aside(own)).toBe(own.kept['keenfold.line-up']);
  });

  test('the first stays until it is erased, and of another it is not said', () => {
    const own = shelf({ 'keenfold.line-up': damaged });
    recalled(own);
    own.kept['keenfold.line-up'] = 'other';
    expect(recalled(own)).not.toContain('kept aside');
    expect(aside(own)).toBe(damaged);
    eraseLaidAside(() => ({ removeItem: (key) => Reflect.deleteProperty(own.kept, key) }));
    expect(laidAside(() => own)).toBe('');
    expect(recalled(own)).toContain('kept aside');
    expect(aside(own)).toBe('other');
  });

  test('nothing is said of it where there is no room, nor found where storage is denied', () => {
    const own = shelf({ 'keenfold.line-up': damaged });
    expect(recalled({ ...own, setItem: throwing('QuotaExceededError') })).not.toContain('kept aside');
    expect(laidAside(throwing('SecurityError'))).toBe('');
  });

  test('what can be read is not', () => {
    const own = shelf();
    createKeeper(() => own).keep(loft());
    expect([recalled(own), aside(own)]).toEqual(['', undefined]);
  });
});
