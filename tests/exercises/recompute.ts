import type { Kind, Problem } from '../../src/exercises/index.ts';

const values = ({ givens }: Problem): number[] => givens.map(({ value }) => value);
const percents = ({ givens }: Problem): number[] =>
  givens.filter(({ unit }) => unit === '%').map(({ value }) => value);

/** In whole numbers: hundredths of hundredths, divided once at the end. */
const inTurn = (changes: readonly number[]): number =>
  Number(changes.reduce((total, percent) => total * BigInt(100 + percent), 1n)) / 100 ** changes.length;

/** The number at which a rising function reaches a target, by halving. */
function reaches(target: number, rising: (x: number) => number): number {
  let [low, high] = [0, 1e6];
  for (let turn = 0; turn < 80; turn += 1) {
    const middle = (low + high) / 2;
    if (rising(middle) < target) low = middle;
    else high = middle;
  }
  return high;
}

const afterwards = (start: number, changes: readonly number[]): number =>
  changes.reduce((now, percent) => now + (now * percent) / 100, start);

/** By what the states of each variable are known in an option. */
const signs: Record<string, RegExp> = {
  'the edge angle': /per side$/,
  'the finish': /^P\d/,
  'the thickness behind the edge': /mm$/,
  'the hardness': /HRC$/,
  'the light': /of light$/,
  'the warmth': /°C$/,
  'the soil': /^(sand|loam|peat)$/,
  'the watering': /^watered/,
  'the chainring': /^chainring/,
  'the sprocket': /^sprocket/,
  'the wheel': /^wheel/,
  'the road': /^(level road|gentle hill|steep hill)$/,
  'the flour': /^(rye|wheat|spelt)$/,
  'the starter': /old$/,
  'the resting': /of rest$/,
  'the length': /km long$/,
  'the mouth': /^mouth/,
  'the depth': /deep$/,
  'the moon': /moon$/,
};

/** The key of each kind worked out anew from what the reader is given, by another way than the maker's. */
export const recompute: Record<Kind, (problem: Problem) => number> = {
  // From the words of the question.
  'times-or-more': ({ question, level }) => {
    const number = (before: string): number =>
      Number(new RegExp(`([\\d.]+) ?${before}`).exec(question)?.[1] ?? NaN);
    if (level === 1) return number('times as');
    if (level === 2) return (100 + number('% more')) / 100;
    return number('% as') / (100 + number('% more'));
  },

  // Hundredths of the one whole, counted together.
  'multiply-or-add': (problem) =>
    values(problem).reduce((total, percent) => total + percent, problem.level === 3 ? 100 : 0) / 100,

  // From the words: the pair in which what is asked differs and no other word does.
  'fair-pair': ({ question, options = [] }) => {
    const wanted = signs[/find out what (.+) does\./.exec(question)?.[1] ?? ''] ?? /$^/;
    const fair = options.flatMap((option, index) => {
      const [first = [], second = []] = option.split(' against ').map((half) => half.split(', '));
      const differs = first.filter((state, at) => state !== second[at]);
      return differs.length === 1 && wanted.test(String(differs[0])) ? [index + 1] : [];
    });
    return fair.length === 1 ? Number(fair[0]) : NaN;
  },

  'forward-chain': (problem) => inTurn(values(problem)),
  'equivalent-change': (problem) => inTurn(values(problem)),

  'missing-factor': (problem) => {
    const known = values(problem);
    const total = Number(known.pop());
    return reaches(100 + total, (factor) => afterwards(100 * factor, known));
  },

  'reverse-base': (problem) =>
    reaches(Number(values(problem)[0]), (base) => afterwards(base, percents(problem))),

  undo: (problem) => reaches(1, (back) => afterwards(1, values(problem)) * back),

  // The products of what is in inverse proportion are equal.
  'inverse-proportion': (problem) => {
    const [own = NaN, other] = values(problem);
    return other === undefined ? 100 / (100 + own) : reaches(other, (ratio) => own * ratio);
  },

  // By logarithms.
  'even-up': (problem) => {
    const [total = NaN, ...evened] = values(problem);
    return Math.exp(evened.reduce((left, factor) => left - Math.log(factor), Math.log(total)));
  },

  'grit-by-scale': (problem) => {
    const [coarse = NaN, fine = NaN] = problem.givens
      .filter(({ unit }) => unit === 'µm')
      .map(({ value }) => value);
    return problem.level === 3 ? reaches(fine, (x) => coarse * x) : reaches(coarse, (x) => fine * x);
  },

  // Statics of a symmetric wedge: push 2N(sin θ + µ cos θ) for a spread N(cos θ − µ sin θ). The depth of a
  // scratch on one bevel sets the apex back by 1/(2 sin θ).
  'two-routes': (problem) => {
    const [angle = NaN, baseline = NaN, mu = NaN] = values(problem);
    const [a, b] = [(angle * Math.PI) / 180, (baseline * Math.PI) / 180];
    const pushPerSpread = (t: number) =>
      (2 * (Math.sin(t) + mu * Math.cos(t))) / (Math.cos(t) - mu * Math.sin(t));
    const setBack = (t: number) => 1 / (2 * Math.sin(t));
    return (pushPerSpread(b) / pushPerSpread(a)) * (setBack(a) / setBack(b));
  },

  // Every true amount that rounds to what is given, in steps of a half.
  'rounding-bands': (problem) => {
    const [own = NaN, other = NaN] = values(problem);
    const within = Array.from({ length: 21 }, (_, step) => step / 2 - 5);
    const ratios = within.flatMap((up) => within.map((down) => (own + up) / (other + down)));
    return problem.level === 1 ? Math.max(...ratios) : Math.min(...ratios);
  },

  'mean-growth': (problem) => {
    const changes = values(problem);
    return reaches(inTurn(changes), (each) => each ** changes.length);
  },

  // The part of the way, in equal ratios, from 1 to the product.
  'share-of-factor': (problem) => {
    const factors = problem.givens.map(({ value, unit }) => (unit === '%' ? (100 + value) / 100 : value));
    const asked = /length has (.+), laid/.exec(problem.question)?.[1];
    const own = factors[problem.givens.findIndex(({ name }) => name === asked)] ?? NaN;
    const whole = factors.reduce((total, factor) => total * factor, 1);
    let [low, high] = [0, 1];
    for (let turn = 0; turn < 60; turn += 1) {
      const middle = (low + high) / 2;
      if (whole ** middle < own) low = middle;
      else high = middle;
    }
    return low;
  },

  // By logarithms; which causes are given is read from their names.
  'range-product': (problem) => {
    const given = /^(hardness|carbide|age|ripeness|rim|tyre|freshness|strength|depth|width), /;
    return Math.exp(
      problem.givens.reduce((total, { name, value }) => {
        const sign = (name.endsWith(', best') ? 1 : -1) * (given.test(name) ? -1 : 1);
        return total + sign * Math.log(value);
      }, 0),
    );
  },
};
