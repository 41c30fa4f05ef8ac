/** The pieces every schema here is made of. Each takes the name and unit of its field for the message of a refusal. */
import * as v from 'valibot';
import { parameters } from '../model/index.ts';
import type { ParameterId, Quantity } from '../model/index.ts';
import { knifeIdPattern, printableText, shown } from '../runs/log.ts';
import type { Placed } from './knife-values.ts';

/** A finite number between two limits; what it is and its unit stand in the message. */
export function number(what: string, unit: string, low: number, high: number, perSide = '') {
  const range = `between ${low}${unit} and ${high}${unit}${perSide}`;
  const message = ({ input }: { input: unknown }) => `${what} ${shown(input)}${unit} is not ${range}`;
  return v.pipe(
    v.number(({ input }) => `${what} ${shown(input)} is not a number`),
    v.minValue(low, message),
    v.maxValue(high, message),
  );
}

/** A whole number between two limits. */
export const whole = (what: string, low: number, high: number) =>
  v.pipe(
    number(what, '', low, high),
    v.check(
      (value) => Number.isInteger(value),
      ({ input }) => `${what} ${input} is not a whole number`,
    ),
  );

/** The limits of the measures of a knife that come with a ±. */
export const knifeLimits = {
  angleDeg: { low: 4, high: 45 },
  edgeMm: { low: 0.01, high: 5 },
  hrc: { low: 20, high: 68 },
  carbide: { low: 0, high: 40 },
} as const;

/**
 * The widest ± a value may have: its ends may lie outside what is allowed by a quarter of that range, for the model draws
 * again what lies there.
 */
export const widestPlusMinus = (value: number, low: number, high: number): number =>
  Math.min(value - low, high - value) + (high - low) / 4;

function quantityOptions(what: string, unit: string, low: number, high: number, perSide: string) {
  const value = number(what, unit, low, high, perSide);
  return [
    value,
    v.pipe(
      v.strictObject({
        value,
        plusMinus: number(`the ± of ${what}`, unit, 0, high - low),
        shape: v.exactOptional(v.picklist(['uniform', 'triangular', 'normal'])),
      }),
      v.check(
        (read) => read.plusMinus <= widestPlusMinus(read.value, low, high),
        ({ input }) =>
          `${what} ${input.value} ± ${input.plusMinus}${unit} reaches too far beyond ${low}${unit} to ${high}${unit}${perSide}`,
      ),
    ),
    v.pipe(
      v.strictObject({ unknown: v.literal(true), low: value, high: value }),
      v.check(
        (range) => range.low <= range.high,
        ({ input }) => `the range of ${what} runs backwards: ${input.low}–${input.high}`,
      ),
    ),
  ] as const;
}

/** The same as a quantity: known, known to within ±, or not known beyond a range. */
export const quantity = (
  what: string,
  unit: string,
  low: number,
  high: number,
  perSide = '',
): v.GenericSchema<Quantity> =>
  v.union(
    quantityOptions(what, unit, low, high, perSide),
    `${what} must be a number, a number with its ±, or “not known” with a range`,
  );

/** A quantity, or three readings along the edge. */
export function placed(
  what: string,
  unit: string,
  low: number,
  high: number,
  perSide = '',
): v.GenericSchema<Placed> {
  const value = number(what, unit, low, high, perSide);
  const along = v.strictObject({ heel: value, middle: value, tip: value });
  return v.union(
    [...quantityOptions(what, unit, low, high, perSide), along],
    `${what} must be a number, a number with its ±, “not known” with a range, or readings at heel, middle and tip`,
  );
}

/** An assumption of the model: its limits are the model's own. */
export function assumed(what: string, id: ParameterId): v.GenericSchema<Quantity> {
  const { accepts } = parameters[id];
  return quantity(what, '', accepts.low, accepts.high);
}

/** Words of any script: not empty, not longer than so many characters, nothing invisible that breaks a line. */
export function words(what: string, longest: number) {
  return v.pipe(
    v.string(`${what} must be text`),
    v.minLength(1, `${what} is empty`),
    v.maxLength(longest, ({ input }) => `${what} has ${input.length} characters; at most ${longest} fit`),
    v.check((text) => text.trim() !== '', `${what} is empty`),
    v.check(printableText, `${what} holds a character that cannot be shown`),
  );
}

/** The id of a knife. */
export const knifeId = v.pipe(
  v.string('a knife’s id must be text'),
  v.regex(
    knifeIdPattern,
    ({ input }) => `the id ${shown(input)} is not 1–24 small letters, digits and hyphens`,
  ),
);

export const oneOf = <const T extends readonly string[]>(what: string, options: T) =>
  v.picklist(options, ({ input }) => `${what} ${shown(input)} is none of: ${options.join(', ')}`);
