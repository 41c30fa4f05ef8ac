import { describe, expect, test } from 'vitest';
import { createKeeper } from '../../src/lineup/keep.ts';
import type { Shelf } from '../../src/lineup/keep.ts';
import { decodeLink } from '../../src/lineup/link.ts';
import { aRun } from '../runs/runs.ts';
import { loft } from './entries.ts';

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
