/** One guess of an audience, or a count of like ones. */
export interface Guess {
  /** How many times as long, above 0. */
  ratio: number;
  count: number;
}

/** How near to a value a guess must be to count as that value: within three per cent either way. */
const same = 0.03;

const near = (guess: number, value: number): boolean => Math.abs(Math.log(guess / value)) < same;

export interface Tally {
  guesses: number;
  /** How many gave the sum of the effects; null where no sum tempts. */
  added: number | null;
  /** How many gave the model's answer. */
  called: number;
  /** How many called the other knife. */
  otherKnife: number;
  /** The guess in the middle: as many below as above. */
  median: number;
}

/**
 * What an audience's guesses come to.
 *
 * @throws RangeError where there is no guess
 */
export function tally(
  guesses: readonly Guess[],
  { answer, sum }: { answer: number; sum: number | null },
): Tally {
  const total = guesses.reduce((all, { count }) => all + count, 0);
  if (total === 0) throw new RangeError('the guesses are 0; at least 1 is needed');
  const of = (holds: (ratio: number) => boolean): number =>
    guesses.reduce((all, { ratio, count }) => (holds(ratio) ? all + count : all), 0);
  const sorted = [...guesses].sort((a, b) => a.ratio - b.ratio);
  const at = (place: number): number => {
    let passed = 0;
    // Unreachable: a place below the total is passed.
    return sorted.find(({ count }) => (passed += count) > place)?.ratio ?? NaN;
  };
  return {
    guesses: total,
    added: sum === null ? null : of((ratio) => near(ratio, sum)),
    called: of((ratio) => near(ratio, answer)),
    otherKnife: of((ratio) => Math.log(ratio) * Math.log(answer) < 0),
    // Of an even number the mean that suits ratios.
    median: Math.sqrt(at(Math.floor((total - 1) / 2)) * at(Math.floor(total / 2))),
  };
}
