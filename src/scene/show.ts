/** How numbers are written for readers: one place, so that a value reads the same in prose, table and figure. */

const minus = (text: string) => text.replace('-', '−');

/**
 * A value rounded to so many significant figures.
 *
 * @example inFigures(0.123456, 2) // → 0.12
 */
export const inFigures = (value: number, figures = 3): number => Number(value.toPrecision(figures));

/**
 * A value rounded to so many decimals.
 *
 * @example inDecimals(12.345, 1) // → 12.3
 */
export const inDecimals = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/**
 * A number to so many significant figures, without exponent notation between 0.001 and 1e6.
 *
 * @example plain(24) // → '24.0'
 */
export function plain(value: number, figures = 3): string {
  if (!Number.isFinite(value)) return 'not known';
  const rounded = inFigures(value, figures);
  const size = Math.abs(rounded);
  if (size !== 0 && (size < 1e-3 || size >= 1e6)) {
    const [mantissa, exponent] = rounded.toExponential().split('e') as [string, string];
    return minus(`${mantissa} × 10^${Number(exponent)}`);
  }
  const decimals = size === 0 ? 0 : Math.max(0, figures - 1 - Math.floor(Math.log10(size)));
  return minus(rounded.toFixed(Math.min(decimals, 6)));
}

/**
 * A number to four figures at most, without zeros behind them: for ticks and typed values.
 *
 * @example brief(0.5) // → '0.5'
 */
export const brief = (value: number): string => minus(String(inFigures(value, 4)));

/**
 * A number to three figures at most, or so many as are asked for, without zeros behind them: for measures in a sentence.
 *
 * @example short(14.235) // → '14.2'
 */
export const short = (value: number, figures = 3): string => minus(String(inFigures(value, figures)));

/**
 * A whole number with its thousands set apart.
 *
 * @example thousands(20000) // → '20,000'
 */
export const thousands = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, ',');

/**
 * A number to the nearest whole one.
 *
 * @example whole(41.6) // → 42
 */
export const whole = (value: number): number => Math.round(value);

/**
 * A number to fixed decimals.
 *
 * @example fixed(24, 1) // → '24.0'
 */
export const fixed = (value: number, decimals: number): string =>
  // What rounds to nothing has no sign.
  minus(value.toFixed(decimals).replace(/^-(?=[0.]*$)/, ''));

/**
 * Whether a factor or a total reads as one: whether it, or its inverse where that is the larger, is 1 to three figures.
 * So two knives that read alike do so whichever of them is the baseline. Everything that says “alike”, “level” or “makes
 * no difference” asks here, and `times` writes ×1.00 for these and for no other.
 *
 * @example readsAsOne(0.997) // → true
 * @example readsAsOne(1.006) // → false
 */
export const readsAsOne = (factor: number): boolean => inFigures(Math.max(factor, 1 / factor)) === 1;

/**
 * A ratio as it is shown, as a number: to three figures, and 1 where it reads as one.
 *
 * @example roundRatio(1.9649) // → 1.96
 */
export const roundRatio = (ratio: number): number => (readsAsOne(ratio) ? 1 : inFigures(ratio));

/**
 * Whether two ratios are shown with the same figures.
 *
 * @example readAlike(1.552, 1.5501) // → true
 */
export const readAlike = (ratio: number, other: number): boolean => roundRatio(ratio) === roundRatio(other);

/**
 * A factor, in three figures unless another number of them is asked for.
 *
 * @example times(1.9649) // → '×1.96'
 */
export const times = (factor: number, figures = 3): string =>
  `×${plain(figures <= 3 && readsAsOne(factor) ? 1 : factor, figures)}`;

/** The numbers a headline takes, for every power of ten; 0.9 and 1.1 beside 1 as well. */
const headlineSteps = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8];

/**
 * A ratio as a headline has it: the nearest, in the logarithm, of 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, their tens and
 * their tenths, and 0.9 and 1.1 beside 1.
 *
 * @example shownRatio(10.33) // → 10
 * @example shownRatio(31.9) // → 30
 * @example shownRatio(0.93) // → 0.9
 */
export function shownRatio(ratio: number): number {
  if (!(ratio > 0) || !Number.isFinite(ratio)) return ratio;
  const power = Math.floor(Math.log10(ratio));
  const steps = [power - 1, power, power + 1].flatMap((ten) => headlineSteps.map((step) => step * 10 ** ten));
  const all = [...steps, 0.9, 1.1];
  const away = (value: number): number => Math.abs(Math.log(value / ratio));
  return inFigures(
    all.reduce((best, value) => (away(value) < away(best) ? value : best)),
    2,
  );
}

/**
 * A share or rise as per cent with its unit.
 *
 * @example percent(0.56) // → '56%'
 */
export const percent = (share: number, decimals = 0): string => `${fixed(share * 100, decimals)}%`;

/** The same to the whole per cent, whatever else is given along: for the ticks of an axis. */
export const wholePercent = (share: number): string => percent(share);

/**
 * A rise or fall as per cent, with its sign.
 *
 * @example signedPercent(0.4) // → '+40%'
 */
export const signedPercent = (share: number, decimals = 0): string => {
  const text = percent(share, decimals);
  return text.startsWith('−') ? text : `+${text}`;
};

/**
 * A number of per cent as typed, with its sign and without trailing zeros.
 *
 * @example typedPercent(12.5) // → '+12.5%'
 */
export const typedPercent = (value: number): string =>
  `${value >= 0 ? '+' : ''}${minus(String(inDecimals(value, 4)))}%`;

/**
 * The same rounded to a tenth of a per cent.
 *
 * @example roundedPercent(12.34) // → '+12.3%'
 */
export const roundedPercent = (value: number): string => typedPercent(inDecimals(value, 1));

/**
 * Whether a share rounds to 0%.
 *
 * @example readsAsNone(0.004) // → true
 */
export const readsAsNone = (share: number): boolean => Math.abs(share) < 0.005;

/** A ratio in words a listener keeps: "about 3 times as long". */
export function ratioInWords(ratio: number): string {
  if (!(ratio > 0) || !Number.isFinite(ratio)) return 'no length of time that can be given';
  if (Math.abs(Math.log(ratio)) < 0.05) return 'about as long';
  if (ratio < 1) {
    const part = 1 / ratio;
    if (part < 1.95) return `about ${Math.round(ratio * 20) * 5}% as long`;
    if (part < 2.5) return 'about half as long';
    return `about one ${ordinal(part < 9.5 ? Math.round(part) : inFigures(part, 2))} as long`;
  }
  if (ratio < 1.95) return `about ${plain(ratio, 2)} times as long`;
  if (ratio < 9.75) return `about ${minus(String(Math.round(ratio * 2) / 2))} times as long`;
  return `about ${plain(ratio, 2)} times as long`;
}

function ordinal(part: number): string {
  const word = { 3: 'third', 4: 'quarter', 5: 'fifth', 6: 'sixth', 7: 'seventh', 8: 'eighth', 9: 'ninth' };
  return word[part as keyof typeof word] ?? `${part}${suffix(part)}`;
}

function suffix(part: number): string {
  const last = part % 100;
  if (last > 10 && last < 14) return 'th';
  return ['th', 'st', 'nd', 'rd'][part % 10] ?? 'th';
}

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/**
 * A count as it is written in a sentence: a word up to ten, then figures.
 *
 * @example countInWords(7) // → 'seven'
 */
export const countInWords = (count: number): string => small[count] ?? thousands(count);

/** Units as they stand behind a number, with the space that belongs before them. */
export const units = {
  deg: '°',
  mm: ' mm',
  um: ' µm',
  hrc: ' HRC',
  volPercent: ' vol %',
} as const;
