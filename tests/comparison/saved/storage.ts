import type { TextStorage } from '../../../src/comparison/saved/last.ts';

/** A browser's storage for the tests, which can be denied or full. */
export interface FakeStorage extends TextStorage {
  texts: Record<string, string>;
  /** Why nothing is stored: names that browsers throw, from the Storage section of the HTML standard. */
  refuses: '' | 'SecurityError' | 'QuotaExceededError';
}

export function fakeStorage(texts: Record<string, string> = {}): FakeStorage {
  const denied = (): void => {
    if (storage.refuses === 'SecurityError') throw new DOMException('no', 'SecurityError');
  };
  const storage: FakeStorage = {
    texts,
    refuses: '',
    getItem: (key) => {
      denied();
      return texts[key] ?? null;
    },
    setItem: (key, value) => {
      denied();
      // A full storage still takes what is no longer than what it has in that place.
      if (storage.refuses === 'QuotaExceededError' && value.length > (texts[key] ?? '').length)
        throw new DOMException('no', 'QuotaExceededError');
      texts[key] = value;
    },
  };
  return storage;
}
