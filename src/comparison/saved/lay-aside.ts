/**
 * Stores a text that cannot be read under a key of its own, below those that are there already, so that nothing writes
 * over it.
 *
 * @returns whether the text is there now
 */
export function layAside(storage: Pick<Storage, 'getItem' | 'setItem'>, key: string, text: string): boolean {
  try {
    const before = storage.getItem(key);
    if (before === null) storage.setItem(key, text);
    else if (!`\n${before}\n`.includes(`\n${text}\n`)) storage.setItem(key, `${before}\n${text}`);
    return `\n${storage.getItem(key) ?? ''}\n`.includes(`\n${text}\n`);
  } catch {
    return false;
  }
}
