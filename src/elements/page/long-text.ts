import { thousands } from '../../scene/show.ts';

/** As many characters as a field of guesses takes: more than any audience writes, and not too many to be drawn. */
const mostCharacters = 100_000;

/**
 * Keeps a text that is too long out of a field of several lines, before it is pasted or dropped there.
 *
 * @param event `beforeinput`
 * @returns why it was kept out; empty where it was not
 */
export function keptOut(event: Event): string {
  const field = event.target;
  if (!(event instanceof InputEvent) || !(field instanceof HTMLTextAreaElement)) return '';
  const coming = (event.data ?? event.dataTransfer?.getData('text') ?? '').length;
  const staying = field.value.length - (field.selectionEnd - field.selectionStart);
  if (coming === 0 || staying + coming <= mostCharacters) return '';
  event.preventDefault();
  return `A text of ${thousands(coming)} characters is too long for this field, which takes ${thousands(mostCharacters)}. What stood there stays.`;
}
