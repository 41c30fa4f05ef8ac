/** How numbers are written for readers: one place, so that a value reads the same in prose, table and figure. */

const minus = (text: string) => text.replace('-', '−');

/** A number to so many significant figures, without exponent notation between 0.001 and 1e6: 1.96, 0.51, 24. */
export function plain(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return 'not known';
  const rounded = Number(value.toPrecision(digits));
  const size = Math.abs(rounded);
  if (size !== 0 && (size < 1e-3 || size >= 1e6)) {
    const [mantissa, exponent] = rounded.toExponential().split('e') as [string, string];
    return minus(`${mantissa} × 10^${Number(exponent)}`);
  }
  const decimals = size === 0 ? 0 : Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  return minus(rounded.toFixed(Math.min(decimals, 6)));
}

/** A number as short as it can be said, for ticks and typed values: 10, 0.5, 40. */
export const brief = (value: number): string => minus(String(Number(value.toPrecision(4))));

/** A whole number with its thousands set apart: `20,000`. */
export const thousands = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, ',');

/** A factor: `×1.96`. */
export const times = (factor: number, digits = 3): string => `×${plain(factor, digits)}`;

/** A number to fixed decimals: `24.0`. */
export const fixed = (value: number, decimals: number): string => minus(value.toFixed(decimals));

/** A share or rise as per cent with its unit: `56 %`. */
export const percent = (share: number, decimals = 0): string => `${minus((share * 100).toFixed(decimals))} %`;

/** The same to the whole per cent, whatever else is given along: for the ticks of an axis. */
export const wholePercent = (share: number): string => percent(share);

/** The same with its sign: `+40 %`. */
export const signedPercent = (share: number, decimals = 0): string => {
  const text = (share * 100).toFixed(decimals);
  return `${Number(text) >= 0 ? '+' : ''}${minus(text)} %`;
};

/** The same number of per cent as typed, without trailing zeros: `+12.5 %`. */
export const typedPercent = (value: number): string =>
  `${value >= 0 ? '+' : ''}${minus(String(Number(value.toFixed(4))))} %`;

/** A ratio in words a listener keeps: "about 3 times as long". */
export function ratioInWords(ratio: number): string {
  if (!(ratio > 0) || !Number.isFinite(ratio)) return 'no length of time that can be given';
  if (Math.abs(Math.log(ratio)) < 0.03) return 'about as long';
  if (ratio < 1) {
    const part = 1 / ratio;
    if (part < 1.95) return `about ${Math.round(ratio * 20) * 5} % as long`;
    if (part < 2.5) return 'about half as long';
    return `about one ${ordinal(part < 9.5 ? Math.round(part) : Number(plain(part, 2)))} as long`;
  }
  if (ratio < 1.1) return `about ${plain(ratio, 3)} times as long`;
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
