import { batch, computed, signal } from '@preact/signals-core';
import type { ReadonlySignal } from '@preact/signals-core';
import { validate } from './validate.ts';
import type { ComparisonEntry } from './entry.ts';
import type { Problem } from './validate.ts';
import { orRefusal } from './unless-refused.ts';

/** What became of a change. A refused one leaves everything as it was. */
export type Changed = { ok: true } | { ok: false; problems: Problem[] };

/** The one state of a page. Only controls and fields write it. */
export interface Store {
  entry: ReadonlySignal<ComparisonEntry>;
  /**
   * Changes the comparison. Changes in a row with the same label undo as one: each within 800 ms of the last, or, while
   * something is held, however long that takes.
   */
  change(update: (entry: ComparisonEntry) => ComparisonEntry, label: string, held?: boolean): Changed;
  /** Puts another comparison in its place, as one step to undo. */
  replace(entry: ComparisonEntry): Changed;
  undo(): void;
  redo(): void;
  canUndo: ReadonlySignal<boolean>;
  canRedo: ReadonlySignal<boolean>;
  /** Why the last change was refused; empty after one that was not. */
  message: ReadonlySignal<string>;
}

const mergeWithinMs = 800;
const mostSteps = 200;

/**
 * The store of a comparison.
 *
 * @param initial The comparison to begin with, as `validate` gives it: the first look at a page does not wait for its own
 * comparison to be judged once more.
 * @param now The clock, in ms.
 */
export function createStore(initial: ComparisonEntry, now: () => number = () => performance.now()): Store {
  const entry = signal(initial);
  const past = signal<readonly ComparisonEntry[]>([]);
  const future = signal<readonly ComparisonEntry[]>([]);
  const message = signal('');
  let last = { label: '', at: -Infinity };

  const refuse = (problems: Problem[]): Changed => {
    message.value = sentence(problems);
    return { ok: false, problems };
  };

  const accept = (next: ComparisonEntry, merge: boolean): Changed => {
    batch(() => {
      if (!merge) past.value = [...past.value, entry.value].slice(-mostSteps);
      future.value = [];
      entry.value = next;
      message.value = '';
    });
    return { ok: true };
  };

  const step = (from: typeof past, to: typeof future): void => {
    const next = from.value.at(-1);
    if (!next) return;
    batch(() => {
      to.value = [...to.value, entry.value];
      from.value = from.value.slice(0, -1);
      entry.value = next;
      message.value = '';
    });
    last = { label: '', at: -Infinity };
  };

  return {
    entry,
    change(update, label, held = false) {
      const proposed = attempt(() => update(entry.value));
      if (!proposed.ok) return refuse(proposed.problems);
      if (proposed.entry === entry.value) return { ok: true };
      const checked = validate(proposed.entry);
      if (!checked.ok) return refuse(checked.problems);
      const at = now();
      const merge = label === last.label && (held || at - last.at <= mergeWithinMs);
      last = { label, at };
      return accept(checked.entry, merge);
    },
    replace(next) {
      const checked = validate(next);
      if (!checked.ok) return refuse(checked.problems);
      last = { label: '', at: -Infinity };
      return accept(checked.entry, false);
    },
    undo: () => step(past, future),
    redo: () => step(future, past),
    canUndo: computed(() => past.value.length > 0),
    canRedo: computed(() => future.value.length > 0),
    message,
  };
}

const sentence = (problems: readonly Problem[]): string => problems.map(({ message }) => message).join('; ');

/** A change may itself refuse, as the model's functions do. */
const attempt = (
  update: () => ComparisonEntry,
): { ok: true; entry: ComparisonEntry } | { ok: false; problems: Problem[] } =>
  orRefusal(
    () => ({ ok: true, entry: update() }),
    (message) => ({ ok: false, problems: [{ path: '', message }] }),
  );
