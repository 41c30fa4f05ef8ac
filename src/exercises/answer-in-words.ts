import { modeOf } from './asks.ts';
import type { Asks } from './asks.ts';
import { inFigures } from './figures.ts';
import { letter } from './wording.ts';

/**
 * An answer in the words of the question.
 *
 * @param options what is chosen from, where a letter is asked for
 * @example inWords(1.96, 'times as long') // → '1.96 times as long'
 * @example inWords(0.8, '% more') // → '20% less'
 * @example inWords(2, 'letter', ['this', 'that']) // → 'B: that'
 */
export function inWords(value: number, asks: Asks, options: readonly string[] = []): string {
  const mode = modeOf(asks);
  if (mode === 'letter') return `${letter(value - 1)}: ${String(options[value - 1])}`;
  if (mode === 'share') return `${inFigures(value * 100)}%`;
  if (mode === 'more' || mode === 'less') {
    const less = value < 1 || (value === 1 && mode === 'less');
    return `${inFigures(Math.abs(value - 1) * 100)}% ${less ? 'less' : 'more'}`;
  }
  return asks === '°' ? `${inFigures(value)}°` : `${inFigures(value)} ${asks}`;
}
