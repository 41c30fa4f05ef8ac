import { expect, test } from 'vitest';
import { undoKey } from '../../../src/elements/page/undo-key.ts';

const press = (key: string, ...held: ('ctrlKey' | 'metaKey' | 'shiftKey')[]) => ({
  key,
  ctrlKey: held.includes('ctrlKey'),
  metaKey: held.includes('metaKey'),
  shiftKey: held.includes('shiftKey'),
});

// The keys of the common desktops: Control with Z, Command with Z on a Mac, with Shift to redo.
test.each([
  [press('z', 'ctrlKey'), 'undo'],
  [press('z', 'metaKey'), 'undo'],
  [press('Z', 'ctrlKey', 'shiftKey'), 'redo'],
  [press('Z', 'metaKey', 'shiftKey'), 'redo'],
  [press('z'), null],
  [press('Z', 'shiftKey'), null],
  [press('y', 'ctrlKey'), null],
])('%o asks for %s', (event, asked) => expect(undoKey(event, false)).toBe(asked));

test('in a text the browser undoes by itself', () => expect(undoKey(press('z', 'ctrlKey'), true)).toBeNull());
