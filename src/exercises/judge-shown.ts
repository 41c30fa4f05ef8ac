import type { Asks } from './asks.ts';
import { readAnswer } from './reader/index.ts';
import { plainSigns } from './reader/plain-signs.ts';
import { shownNumber } from './shown-number.ts';

/** What is said of a number typed in place of one that was shown. */
export interface ShownJudgement {
  verdict: 'right' | 'not right' | 'not readable';
  message: string;
}

/**
 * Judges what was typed in place of a result, by the rounding in which the result is shown.
 *
 * @param shown the result as the page writes it
 * @param asks how a bare number is meant, or the unit that may follow
 * @throws RangeError where what is shown is no number
 * @example judgeShown('1.96', 'times', '+96%').verdict // → 'right'
 * @example judgeShown('1.96', 'times', '0,51').message // → 'You wrote 0.51. That is one divided by the result: look at what stands on top.'
 * @example judgeShown('22.4', 'µm', '22,4 µm').verdict // → 'right'
 */
export function judgeShown(shown: string, asks: Asks, typed: string): ShownJudgement {
  const read = readNumber(typed, asks);
  if (typeof read !== 'number') return { verdict: 'not readable', message: read.message };
  const { value, reach } = shownNumber(shown);
  // The last bit of a difference of decimals is nobody's mistake.
  const near = (target: number): boolean => Math.abs(read - target) <= reach * (1 + 1e-9);
  if (near(value)) return { verdict: 'right', message: `Yes: ${shown}${unitOf(asks)}.` };
  const wrote = `You wrote ${String(Number(read.toPrecision(6))).replace('-', '−')}${unitOf(asks)}.`;
  return { verdict: 'not right', message: `${wrote} ${hint(read, value, near)}` };
}

const unitOf = (asks: Asks): string => (asks === 'times' ? '' : asks === '°' ? '°' : ` ${asks}`);

/** A power of ten, as the page writes very small and very large numbers. */
const POWER = /^(.*\S) ?x ?10(?=[\^-])\^?([+-]?\d{1,2})( ?\D.*)?$/;

/** The number that was typed: a ratio as one, an amount in its unit, per cent as so many. */
function readNumber(typed: string, asks: Asks): number | { message: string } {
  const power = POWER.exec(plainSigns(typed.slice(0, 200)));
  const read = readAnswer(power ? `${power[1] ?? ''}${power[3] ?? ''}` : typed, asks, [], true);
  if (!read.ok) return read;
  const value =
    asks !== '%' ? read.value : (read.form === 'percent more' ? read.value - 1 : read.value) * 100;
  return value * 10 ** Number(power?.[2] ?? 0);
}

/** Where to look: never the result itself. */
function hint(typed: number, value: number, near: (target: number) => boolean): string {
  if (typed !== 0 && value !== 0) {
    if (near(-value)) return 'The size is right. Look at the sign once more.';
    const tens = Math.round(Math.log10(Math.abs(value / typed)));
    if (tens !== 0 && Math.abs((typed * 10 ** tens) / value - 1) < 0.005)
      return 'The figures are right. The decimal mark stands elsewhere.';
    if (Math.abs(typed * value - 1) < 0.01)
      return 'That is one divided by the result: look at what stands on top.';
    if (Math.abs(typed / value - 1) < 0.02)
      return 'Very near: take one more figure along on the way, and round at the end.';
  }
  return `Not yet: the result is ${value > typed ? 'larger' : 'smaller'}. Put the numbers into the formula once more, or have the step shown.`;
}
