import { describe, expect, test } from 'vitest';
import type { Search } from '../../../src/model/solve/attributes.ts';
import { nearestRoot } from '../../../src/model/solve/roots.ts';

/** Functions whose roots are known by hand, in place of a model's gap. */
const gapOf =
  (short: (x: number) => number, taken: (x: number) => boolean = () => true) =>
  (x: number): number | null =>
    taken(x) ? short(x) : null;
const steps = (low: number, high: number): Search => ({ low, high, ratio: false });
const ratios = (low: number, high: number): Search => ({ low, high, ratio: true });

/** To the last digits: a root of a gap is closed as far as numbers go. */
const careful = (found: number | null, root: number): void => {
  expect(Math.abs((found ?? NaN) - root)).toBeLessThan(4e-15 * Math.max(1, Math.abs(root)));
};

describe('a root', () => {
  test.each<[string, (x: number) => number, number, number, number]>([
    ['of a straight line', (x) => x - 3.7, 1, 10, 3.7],
    ['of a falling one', (x) => 3.7 - x, 1, 10, 3.7],
    ['of a cosine', Math.cos, 1, 2, Math.PI / 2],
    ['of a logarithm', (x) => Math.log(x / 7.3), 1, 30, 7.3],
    // Where secants get stuck: flat on one side, or nearly so about the root.
    ['of an exponential', (x) => Math.exp(40 * (x - 1)) - 1, 0.1, 3, 1],
    ['of a fifth power', (x) => (x - 1.23) ** 5 + 1e-9 * (x - 1.23), 0, 4, 1.23],
    ['of a step as good as vertical', (x) => Math.tanh(1e6 * (x - 2.345)), 0, 5, 2.345],
    ['of a lopsided step', (x) => (x < 2.345 ? -1e-9 : 1e9), 0, 5, 2.345],
    ['of one lopsided the other way', (x) => (x > 2.345 ? -1e-9 : 1e9), 0, 5, 2.345],
  ])('%s is closed to the last digits', (_what, short, low, high, root) => {
    for (const from of [low, (low + high) / 2, high])
      for (const search of [steps(low, high), ratios(Math.max(low, 0.01), high)])
        careful(nearestRoot(gapOf(short), Math.max(from, search.low), search), root);
  });

  /** How often a function is looked at before its root is found. */
  const looksAt = (short: (x: number) => number, search = steps(0, 5)): number => {
    let looks = 0;
    nearestRoot(
      (x) => {
        looks += 1;
        return short(x);
      },
      4,
      search,
    );
    return looks;
  };
  // 24 parts have 25 ends; the present is looked at, and is one of the stops; just inside either end one each.
  const first = 25 + 2 + 2;

  test.each<[string, (x: number) => number]>([
    ['a straight line', (x) => x - 3.7],
    ['a falling line', (x) => 3.7 - x],
    ['a square', (x) => x * x - 2.9],
    ['an exponential', (x) => Math.exp(x) - 9],
    ['a logarithm', (x) => Math.log((x + 0.1) / 1.7)],
  ])('of %s is closed about as quickly as by secants', (_what, short) => {
    // Secants gain half the digits again at every look: from 1e-1 to 1e-16 takes seven, and as many to close both ends.
    expect(looksAt(short)).toBeLessThanOrEqual(first + 14);
    expect(looksAt(short, ratios(0.01, 5))).toBeLessThanOrEqual(first + 14);
  });

  test.each<[string, (x: number) => number]>([
    ['a steep exponential', (x) => Math.exp(40 * (x - 1)) - 1],
    ['a step', (x) => Math.tanh(1e6 * (x - 2.345))],
    ['a lopsided step', (x) => (x < 2.345 ? -1e-9 : 1e9)],
    ['one lopsided the other way', (x) => (x < 2.345 ? -1e9 : 1e-9)],
    ['a flat power', (x) => (x - 1.23) ** 9],
  ])('of %s takes no more looks than halving, and two', (_what, short) => {
    // To halve a part of 5/24 down to 2e-15 of 1 takes log₂(5/24/2e-15), about 47.
    expect(looksAt(short)).toBeLessThanOrEqual(first + 47 + 2);
  });

  test('is looked for no further than past a turn, and not at all where the present is one', () => {
    // A golden section that went on to the bottom of the dip would take log(1e-9)/log(0.618), over 40 looks.
    expect(looksAt((x) => (x - 2.13) ** 2 - 0.02 ** 2)).toBeLessThanOrEqual(first + 2 * 14 + 6);
    expect(looksAt((x) => x - 4)).toBe(1);
  });

  test('at the present is the present itself, even where others are', () => {
    expect(
      nearestRoot(
        gapOf((x) => Math.sin(Math.PI * x)),
        5,
        steps(0, 10),
      ),
    ).toBe(5);
    // Within 1e-12 of the target it has reached it; a little more and it has not.
    expect(
      nearestRoot(
        gapOf((x) => x - 5),
        5 + 5e-13,
        steps(0, 10),
      ),
    ).toBe(5 + 5e-13);
    expect(
      nearestRoot(
        gapOf((x) => x - 5),
        5 + 5e-12,
        steps(0, 10),
      ),
    ).not.toBe(5 + 5e-12);
  });

  test('nearest by difference, or by ratio where equal ratios are natural', () => {
    // Roots at 1 and 7: from 3.5 the first is nearer by difference, the second by ratio.
    const gap = gapOf((x) => (x - 1) * (x - 7));
    careful(nearestRoot(gap, 3.5, steps(0.5, 20)), 1);
    careful(nearestRoot(gap, 3.5, ratios(0.5, 20)), 7);
    careful(nearestRoot(gap, 4.5, steps(0.5, 20)), 7);
    careful(nearestRoot(gap, 2, ratios(0.5, 20)), 1);
  });

  test('of many is the nearest, wherever one begins', () => {
    // A cosine is 0 at π/2 + kπ. Of 8x and of 12 ln x these lie further apart than the parts of the range.
    const zero = (k: number): number => Math.PI / 2 + k * Math.PI;
    for (const from of [2.1, 3, 5.55, 7.3, 9.9]) {
      const roots = Array.from({ length: 30 }, (_, k) => zero(k) / 8).filter(
        (root) => root >= 2 && root <= 10,
      );
      const nearest = roots.toSorted((a, b) => Math.abs(a - from) - Math.abs(b - from))[0] ?? NaN;
      careful(
        nearestRoot(
          gapOf((x) => Math.cos(8 * x)),
          from,
          steps(2, 10),
        ),
        nearest,
      );
    }
    for (const from of [0.11, 0.4, 1.3, 3.7, 9]) {
      const roots = Array.from({ length: 21 }, (_, k) => Math.exp(zero(k - 10) / 12));
      const nearest = roots.toSorted((a, b) => Math.abs(Math.log(a / from)) - Math.abs(Math.log(b / from)));
      const found = nearestRoot(
        gapOf((x) => Math.cos(12 * Math.log(x))),
        from,
        ratios(0.1, 10),
      );
      expect(found).toBeCloseTo(nearest[0] ?? NaN, 12);
    }
  });

  test('at either end of the range counts', () => {
    for (const end of [2, 9]) {
      const found = nearestRoot(
        gapOf((x) => x - end),
        5,
        steps(2, 9),
      );
      expect(found).toBe(end);
    }
    expect(
      nearestRoot(
        gapOf((x) => x - 9.001),
        5,
        steps(2, 9),
      ),
    ).toBeNull();
    expect(
      nearestRoot(
        gapOf((x) => x - 1.999),
        5,
        steps(2, 9),
      ),
    ).toBeNull();
  });

  test('there is none where the gap never closes, nor in a range of one value', () => {
    expect(
      nearestRoot(
        gapOf((x) => 1 + x * x),
        1,
        steps(-5, 5),
      ),
    ).toBeNull();
    expect(
      nearestRoot(
        gapOf((x) => -1 - x * x),
        1,
        steps(-5, 5),
      ),
    ).toBeNull();
    expect(
      nearestRoot(
        gapOf(() => 1),
        3,
        steps(3, 3),
      ),
    ).toBeNull();
    expect(nearestRoot(() => null, 3, steps(1, 5))).toBeNull();
  });
});

describe('two roots within one part of the range', () => {
  // Parts are 10/24, about 0.42, wide: a dip of 0.04 lies between two ends.
  const dip = (at: number) => (x: number) => (x - at) ** 2 - 0.02 ** 2;
  test.each([5.1, 5.25, 3.217, 8.9])('about %f are found by their turn', (at) => {
    for (const sign of [1, -1]) {
      const gap = gapOf((x) => sign * dip(at)(x));
      careful(nearestRoot(gap, 9.9, steps(0, 10)), at + 0.02);
      careful(nearestRoot(gap, 0.1, steps(0, 10)), at - 0.02);
    }
  });

  test('about 5.25 are found however the range is cut', () => {
    // Parts of 8/24, and of a ratio of 10^(1/12) = 1.21: wider both than the 0.04 of the dip.
    for (const search of [steps(2, 10), ratios(0.1, 10)]) {
      careful(nearestRoot(gapOf(dip(5.25)), 9.9, search), 5.27);
      careful(nearestRoot(gapOf(dip(5.25)), 2.1, search), 5.23);
    }
  });

  test.each([0.05, 9.95])('in the outermost part, about %f, too', (at) => {
    const gap = gapOf(dip(at));
    careful(nearestRoot(gap, 9.999, steps(0, 10)), at + 0.02);
    careful(nearestRoot(gap, 0.001, steps(0, 10)), at - 0.02);
  });

  test('a turn that only just does not reach the target is none', () => {
    expect(
      nearestRoot(
        gapOf((x) => (x - 5.1) ** 2 + 1e-6),
        2,
        steps(0, 10),
      ),
    ).toBeNull();
    expect(
      nearestRoot(
        gapOf((x) => -((x - 5.1) ** 2) - 1e-6),
        2,
        steps(0, 10),
      ),
    ).toBeNull();
  });

  test('a turn away from the target is not followed, and a plateau is none', () => {
    let looks = 0;
    const away = (x: number): number => {
      looks += 1;
      return 100 - (x - 5) ** 2;
    };
    expect(nearestRoot(away, 2, steps(0, 9))).toBeNull();
    expect(looks).toBeLessThan(35);
    looks = 0;
    const level = (): number => {
      looks += 1;
      return 1;
    };
    expect(nearestRoot(level, 2, steps(0, 9))).toBeNull();
    expect(looks).toBeLessThan(35);
  });
});

describe('where the model refuses a value', () => {
  test('roots up to there are found, and none beyond', () => {
    const refused = (x: number) => !(x > 3.3 && x < 7.7);
    for (const root of [3.3 - 1e-7, 7.7 + 1e-7, 1.2, 9.1])
      careful(
        nearestRoot(
          gapOf((x) => x - root, refused),
          root < 5 ? 0.1 : 9.9,
          steps(0, 10),
        ),
        root,
      );
    for (const root of [3.4, 5, 7.6])
      expect(
        nearestRoot(
          gapOf((x) => x - root, refused),
          1,
          steps(0, 10),
        ),
      ).toBeNull();
    // A change of sign across the gap is none.
    expect(
      nearestRoot(
        gapOf((x) => x - 5, refused),
        9,
        steps(0, 10),
      ),
    ).toBeNull();
    // Nor does it matter that the present itself is refused.
    careful(
      nearestRoot(
        gapOf((x) => x - 9.1, refused),
        5,
        steps(0, 10),
      ),
      9.1,
    );
  });
});
