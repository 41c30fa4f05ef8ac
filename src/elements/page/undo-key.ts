/** What a key asks for: Control or Command with Z undoes, with Shift it redoes. In a text the browser does that itself. */
export function undoKey(
  { key, ctrlKey, metaKey, shiftKey }: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey'>,
  inText: boolean,
): 'undo' | 'redo' | null {
  if (inText || !(ctrlKey || metaKey) || key.toLowerCase() !== 'z') return null;
  return shiftKey ? 'redo' : 'undo';
}
