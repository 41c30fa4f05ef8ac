import { effect } from '@preact/signals-core';
import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { compare } from '../../src/model/index.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { createStore } from '../../src/comparison/store.ts';
import type { Store } from '../../src/comparison/store.ts';
import { toModel } from '../../src/comparison/to-model.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';
import { anyEntry, loft } from './entries.ts';

let clock = 0;
let store: Store;
beforeEach(() => {
  clock = 0;
  store = createStore(loft(), () => clock);
});

const push = (slicePush: number) => (entry: ComparisonEntry) => ({ ...entry, slicePush });
const slicePush = () => store.entry.value.slicePush;
const start = loft().slicePush;

describe('undo and redo', () => {
  test('at first there is nothing to undo', () => {
    expect([store.canUndo.value, store.canRedo.value]).toEqual([false, false]);
    store.undo();
    store.redo();
    expect(store.entry.value).toEqual(loft());
  });

  test('a change is undone and done again', () => {
    expect(store.change(push(5), 'slice')).toEqual({ ok: true });
    expect([slicePush(), store.canUndo.value]).toEqual([5, true]);
    store.undo();
    expect([slicePush(), store.canUndo.value, store.canRedo.value]).toEqual([start, false, true]);
    store.redo();
    expect([slicePush(), store.canUndo.value, store.canRedo.value]).toEqual([5, true, false]);
  });

  test('changes of one label, each soon after the last, undo as one', () => {
    for (const value of [4, 5, 6, 7]) {
      store.change(push(value), 'slice');
      clock += 800;
    }
    store.undo();
    expect([slicePush(), store.canUndo.value]).toEqual([start, false]);
  });

  test('without a clock of their own they go by the browser’s', () => {
    const time = vi.spyOn(performance, 'now').mockReturnValue(0);
    const own = createStore(loft());
    own.change(push(4), 'slice');
    time.mockReturnValue(800);
    own.change(push(5), 'slice');
    time.mockReturnValue(1601);
    own.change(push(6), 'slice');
    time.mockRestore();
    own.undo();
    expect(own.entry.value.slicePush).toBe(5);
    own.undo();
    expect([own.entry.value.slicePush, own.canUndo.value]).toEqual([start, false]);
  });

  test('after a pause they are two steps', () => {
    store.change(push(4), 'slice');
    clock += 801;
    store.change(push(5), 'slice');
    store.undo();
    expect(slicePush()).toBe(4);
  });

  test('another label is another step', () => {
    store.change(push(4), 'slice');
    store.change(push(5), 'other');
    store.undo();
    expect(slicePush()).toBe(4);
  });

  test('a change after undo is a step of its own and ends what could be done again', () => {
    store.change(push(4), 'slice');
    store.change(push(5), 'other');
    store.undo();
    store.change(push(6), 'slice');
    expect(store.canRedo.value).toBe(false);
    store.undo();
    expect(slicePush()).toBe(4);
  });

  test('another comparison in its place can be undone', () => {
    const other = { ...loft(), title: 'Another' };
    expect(store.replace(other)).toEqual({ ok: true });
    expect(store.entry.value).toEqual(other);
    store.undo();
    expect(store.entry.value).toEqual(loft());
  });

  test('a change that changes nothing is no step', () => {
    store.change((entry) => entry, 'slice');
    expect(store.canUndo.value).toBe(false);
  });

  test('undoing everything comes back to the start, doing it again to the end', () =>
    fc.assert(
      fc.property(fc.array(anyEntry, { minLength: 1, maxLength: 6 }), (entries) => {
        const own = createStore(loft(), () => 0);
        entries.forEach((entry, index) => own.change(() => entry, `step ${index}`));
        while (own.canUndo.value) own.undo();
        expect(own.entry.value).toEqual(loft());
        while (own.canRedo.value) own.redo();
        expect(own.entry.value).toEqual(entries.at(-1));
      }),
      { numRuns: 30 },
    ));
});

describe('refusal', () => {
  test('what is not valid changes nothing and is told', () => {
    store.change(push(5), 'slice');
    const before = [store.entry.value, sceneOf(store.entry.value)];
    const refused = store.change(push(-1), 'slice');
    expect(refused).toMatchObject({ ok: false, problems: [{ path: 'slicePush' }] });
    expect(store.message.value).toContain('slice to push -1 is not between 0 and 100');
    expect([store.entry.value, sceneOf(store.entry.value)]).toEqual(before);
    store.change(push(6), 'slice');
    expect(store.message.value).toBe('');
  });

  test('a change that refuses itself is told too', () => {
    const refused = store.change(() => {
      throw new RangeError('edge angle 91° is not between 4° and 45° per side');
    }, 'angle');
    expect(refused).toEqual({
      ok: false,
      problems: [{ path: '', message: 'edge angle 91° is not between 4° and 45° per side' }],
    });
  });

  test('a mistake in the program is not taken for a refusal', () => {
    expect(() =>
      store.change(() => {
        throw new TypeError('slip');
      }, 'angle'),
    ).toThrow('slip');
  });

  test('another comparison that is not valid is refused', () => {
    expect(store.replace({ ...loft(), subject: 'plover' }).ok).toBe(false);
    expect(store.entry.value).toEqual(loft());
  });
});

describe('results', () => {
  test('are what the model says of the comparison', () => {
    const comparison = toModel(loft());
    const scene = sceneOf(store.entry.value);
    expect(scene.comparison).toEqual(comparison);
    expect(scene.rows).toEqual({
      quick: compare(comparison, { reading: 'quick' }).rows,
      careful: compare(comparison, { reading: 'careful' }).rows,
    });
    expect(scene.row.careful.knife).toBe('dunlin');
  });

  test('move with each change, once', () => {
    const seen: number[] = [];
    const endPoint = effect(() => {
      seen.push(sceneOf(store.entry.value).row.careful.multiplied);
    });
    store.change(push(8), 'slice');
    store.undo();
    endPoint();
    expect(seen).toHaveLength(3);
    expect(seen[1]).not.toBe(seen[0]);
    expect(seen[2]).toBe(seen[0]);
  });
});
