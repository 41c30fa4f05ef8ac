/** Refusals that name parameter, value and allowed range. */

export function refuse(message: string): never {
  throw new RangeError(message);
}

/** The value, if it is a finite number within the range. */
export function within(name: string, value: number, low: number, high: number, unit = ''): number {
  if (!Number.isFinite(value) || value < low || value > high) {
    refuse(`${name} ${String(value)}${unit} is not between ${low}${unit} and ${high}${unit}`);
  }
  return value;
}

/** The value, if it is a finite number above 0. */
export function positive(name: string, value: number, unit = ''): number {
  if (!Number.isFinite(value) || value <= 0) {
    refuse(`${name} ${String(value)}${unit} is not a number above 0${unit}`);
  }
  return value;
}
