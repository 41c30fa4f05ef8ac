/** A number as a page shows it, and how far from it one that rounds to much the same may lie. */
export interface ShownNumber {
  value: number;
  reach: number;
}

/** Trailing zeros may have been left out, so that no fewer figures than these are counted. */
const fewest = 3;

/**
 * The value of a number as shown, and how far off still agrees with it. That is one unit of the last figure that
 * rounding kept, since the reader may round down where the page rounded up; three where it has four figures or more,
 * since the numbers it is computed from have no more than that. The zeros at the end of a whole number are no figures.
 *
 * @throws RangeError for what is no number
 * @example shownNumber('1.96') // → { value: 1.96, reach: 0.01 }
 * @example shownNumber('0.5') // → { value: 0.5, reach: 0.001 }
 * @example shownNumber('1.553') // → { value: 1.553, reach: 0.003 }
 * @example shownNumber('1230') // → { value: 1230, reach: 10 }
 * @example shownNumber('−1.2 × 10^−4') // → { value: -0.00012, reach: 0.000001 }
 */
export function shownNumber(shown: string): ShownNumber {
  const [mantissa = '', exponent = '0'] = shown.replaceAll('−', '-').split(' × 10^');
  const value = Number(`${mantissa}e${exponent}`);
  if (mantissa === '' || Number.isNaN(value))
    throw new RangeError(`shown number "${shown}" is none, allowed: digits, a point, a power of ten`);
  if (value === 0) return { value, reach: 0.001 };
  const digits = mantissa.replace(/^-?0*\.?0*/, '').replace('.', '');
  const figures = mantissa.includes('.') ? digits.length : digits.replace(/0+$/, '').length;
  const size = Math.floor(Math.log10(Math.abs(value)));
  return { value, reach: Number(`${figures > fewest ? 3 : 1}e${size - Math.max(fewest, figures) + 1}`) };
}
