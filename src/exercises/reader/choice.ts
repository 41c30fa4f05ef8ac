import { plainSigns } from './plain-signs.ts';

/** The place of an option, counted from 1: by its letter, as `b`, `B)` or `(b)`, or by its text. */
export function choiceOf(text: string, options: readonly string[]): number | undefined {
  const tidy = plainSigns(text);
  const byText = options.findIndex((option) => plainSigns(option) === tidy);
  if (byText >= 0) return byText + 1;
  const letter = /^(?:option |pair )?\(?([a-z])[).]?$/.exec(tidy)?.[1];
  const place = letter === undefined ? NaN : letter.charCodeAt(0) - 'a'.charCodeAt(0) + 1;
  return place <= options.length ? place : undefined;
}
