/** Keeps what was computed for as long as what it was computed from is the same. */
export interface Memory {
  /**
   * The value kept under this key, if it was made of these very things (`Object.is`, one by one); otherwise it is made
   * anew and takes the old one's place. The old one is handed over, for its room to be used again: it must then come
   * back as another object, or what was made of it would seem unchanged.
   */
  keep<T>(key: string, of: readonly unknown[], make: (old: T | undefined) => T): T;
  /** Forgets what was not asked for since the last sweep. */
  sweep(): void;
}

interface Kept {
  of: readonly unknown[];
  value: unknown;
  asked: boolean;
}

export function createMemory(): Memory {
  const all = new Map<string, Kept>();
  return {
    keep<T>(key: string, of: readonly unknown[], make: (old: T | undefined) => T): T {
      const kept = all.get(key);
      if (kept?.of.length === of.length && kept.of.every((part, i) => Object.is(part, of[i]))) {
        kept.asked = true;
        return kept.value as T;
      }
      // Taken away first: should making fail, nothing half overwritten is left.
      all.delete(key);
      const value = make(kept?.value as T | undefined);
      all.set(key, { of, value, asked: true });
      return value;
    },
    sweep() {
      for (const [key, kept] of all) {
        if (kept.asked) kept.asked = false;
        else all.delete(key);
      }
    },
  };
}

/** Keeps nothing: for what is computed once. */
export const noMemory: Memory = { keep: (_key, _of, make) => make(undefined), sweep: () => undefined };
