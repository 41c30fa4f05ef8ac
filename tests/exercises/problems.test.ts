import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import katex from 'katex';
import { describe, expect, test, vi } from 'vitest';
import {
  contextIds,
  contextsFor,
  kinds,
  levels,
  makeProblem,
  workedExample,
} from '../../src/exercises/index.ts';
import type { Kind, Problem } from '../../src/exercises/index.ts';

const SEEDS = 10_000;

/** Every seed once; the levels and the contexts take turns, so that all of them meet. */
function* problems(kind: Kind, seeds = SEEDS): Generator<Problem> {
  const allowed = contextsFor(kind);
  for (let seed = 0; seed < seeds; seed += 1) {
    const [context, level] = [allowed[seed % allowed.length], levels[seed % levels.length]];
    if (context && level) yield makeProblem(kind, seed, context, level);
  }
}

const values = (problem: Problem): number[] => problem.givens.map(({ value }) => value);

/** The key of each kind worked out anew from the givens alone, by another way than the maker's. */
const recompute: Record<Kind, (problem: Problem) => number> = {
  // In whole numbers: hundredths of hundredths, divided once at the end.
  'forward-chain': (problem) =>
    Number(values(problem).reduce((total, percent) => total * BigInt(100 + percent), 1n)) /
    100 ** values(problem).length,
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
  // By logarithms; which causes belong to the steel is read from their names.
  'range-product': (problem) => {
    const given = /^(hardness|carbide|age|ripeness), /;
    return Math.exp(
      problem.givens.reduce((total, { name, value }) => {
        const sign = (name.endsWith(', best') ? 1 : -1) * (given.test(name) ? -1 : 1);
        return total + sign * Math.log(value);
      }, 0),
    );
  },
};

describe.each(kinds)('%s over ten thousand seeds', { timeout: 60_000 }, (kind) => {
  test('the key equals an independent recomputation', () => {
    let worst = 0;
    for (const problem of problems(kind))
      worst = Math.max(worst, Math.abs(problem.answer / recompute[kind](problem) - 1));
    expect(worst).toBeLessThan(1e-9);
  });

  test('no misstep would be taken for the key or for another misstep', () => {
    let fewest = Infinity;
    let nearest = Infinity;
    for (const { answer, missteps, tolerance } of problems(kind)) {
      const all = [answer, ...missteps.map((misstep) => misstep.answer)].sort((a, b) => a - b);
      fewest = Math.min(fewest, missteps.length);
      // Two bands of ± the tolerance stay clear of each other, so that no typed number falls into both.
      all.slice(1).forEach((larger, index) => {
        const smaller = Number(all[index]);
        nearest = Math.min(
          nearest,
          (larger * (1 - tolerance.relative)) / (smaller * (1 + tolerance.relative)),
        );
      });
    }
    expect(fewest).toBeGreaterThanOrEqual(3);
    expect(nearest).toBeGreaterThan(1);
  });

  test('numbers are pretty, and the steps end at the key', () => {
    for (const problem of problems(kind)) {
      for (const { value, unit } of problem.givens) {
        const grain = unit === '%' ? 5 : unit === '°' ? 1 : problem.kind === 'two-routes' ? 0.05 : 0.1;
        if (Math.abs(value / grain - Math.round(value / grain)) > 1e-9)
          expect.fail(`${value} ${unit} is not pretty`);
      }
      const last = problem.steps.at(-1)?.value;
      const key = problem.unit === '% more' ? problem.answer - 1 : problem.answer;
      if (Math.abs(Number(last) - key) > 1e-9) expect.fail(`the steps end at ${last}, the key is ${key}`);
      for (const { id, step } of problem.missteps)
        if (!problem.steps[step]) expect.fail(`${id} points at no step`);
    }
  });

  test('seeds give many different problems', () => {
    const questions = new Set(Array.from({ length: 100 }, (_, seed) => makeProblem(kind, seed).question));
    expect(questions.size).toBeGreaterThan(90);
  });

  test('every formula can be set', () => {
    for (const { steps } of problems(kind, 300)) {
      for (const { tex } of steps)
        katex.renderToString(tex, { output: 'mathml', strict: 'error', throwOnError: true });
    }
  });
});

const digest = (): string => {
  const hash = createHash('sha256');
  for (const kind of kinds) for (const problem of problems(kind, 1500)) hash.update(JSON.stringify(problem));
  return hash.digest('hex');
};

describe('the same seed gives the same bytes', { timeout: 60_000 }, () => {
  test('twice over', () => {
    expect(digest()).toBe(digest());
  });

  test('in a process of another locale and time zone', () => {
    const program = `
      import { createHash } from 'node:crypto';
      import { contextsFor, kinds, levels, makeProblem } from './src/exercises/index.ts';
      const hash = createHash('sha256');
      for (const kind of kinds) for (let seed = 0; seed < 1500; seed += 1) {
        const allowed = contextsFor(kind);
        hash.update(JSON.stringify(makeProblem(kind, seed, allowed[seed % allowed.length], levels[seed % levels.length])));
      }
      console.log(new Intl.NumberFormat().resolvedOptions().locale, hash.digest('hex'));`;
    const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', program], {
      env: { ...process.env, LC_ALL: 'de_DE.UTF-8', TZ: 'Pacific/Apia', NODE_OPTIONS: '' },
      encoding: 'utf8',
    });
    expect(`${stdout}${stderr}`.trim()).toBe(`de-DE ${digest()}`);
  });

  test('where the last bit of a tangent or a logarithm differs', () => {
    const before = digest();
    const spies = (['tan', 'sin', 'atan', 'log1p', 'exp'] as const).map((name) => {
      const original = Math[name];
      return vi.spyOn(Math, name).mockImplementation((x) => original(x) * (1 + Number.EPSILON));
    });
    const after = digest();
    spies.forEach((spy) => {
      expect(spy).toHaveBeenCalled();
      spy.mockRestore();
    });
    expect(after).toBe(before);
  });
});

describe('worked examples', () => {
  test('the lesson takes forty and forty', () => {
    const problem = workedExample('forward-chain');
    expect(values(problem)).toEqual([40, 40]);
    expect(problem.seed).toBeNull();
  });

  // Chen & Rao, Journal of Consumer Research 34(3), 2007, by its press reports: +25 % and +25 % make +56.25 %.
  // AMC 8 2002, problem 14: 30 % off, then 20 % off, is 44 % off.
  test.each([
    [[25, 25], 1.5625],
    [[-30, -20], 0.56],
  ])('%j makes %d', (percents, expected) => {
    expect(workedExample('forward-chain', { percents }).answer).toBeCloseTo(expected, 9);
  });

  // From 20° to 10° at friction 0.2: wedge 1.56 by statics, apex sin 20°/sin 10° = 1.970 by a table of sines.
  test('both routes of the angle', () => {
    const { answer, steps } = workedExample('two-routes', {
      angleDeg: 10,
      baselineAngleDeg: 20,
      friction: 0.2,
    });
    expect(steps[1]?.value).toBeCloseTo(1.56, 2);
    expect(steps[2]?.value).toBeCloseTo(0.34202 / 0.173648, 4);
    expect(answer).toBeCloseTo(1.56 * 1.9696, 2);
  });

  test.each(kinds)('%s has one in every context it allows', (kind) => {
    for (const context of contextsFor(kind))
      expect(workedExample(kind, undefined, context).missteps.length).toBeGreaterThanOrEqual(3);
  });

  test('the context without blades has no word of them', () => {
    const blades = /knif|knives|blade|edge|steel|bevel|apex|wedge|\bcut|sharp|grind/i;
    for (const kind of kinds.filter((one) => contextsFor(one).includes('seed-trays'))) {
      for (const level of levels) {
        for (let seed = 0; seed < 50; seed += 1)
          expect(JSON.stringify(makeProblem(kind, seed, 'seed-trays', level))).not.toMatch(blades);
      }
    }
  });
});

describe('what is refused', () => {
  test.each([
    [() => makeProblem('forward-chain', 1.5), 'seed 1.5 is not a whole number from 0 to 4294967295'],
    [() => makeProblem('forward-chain', NaN), 'seed NaN is not a whole number from 0 to 4294967295'],
    [
      () => makeProblem('toString' as Kind, 1),
      'kind of problem "toString" is not one of forward-chain, two-routes, range-product',
    ],
    [
      () => makeProblem('two-routes', 1, 'seed-trays'),
      'context "seed-trays" is not one of rigging-loft for two-routes',
    ],
    [() => makeProblem('forward-chain', 1, 'rigging-loft', 4 as 1), 'level 4 is not between 1 and 3'],
    [
      () => workedExample('forward-chain', { percents: [40] }),
      'number of percentages 1 is not between 2 and 4',
    ],
    [() => workedExample('forward-chain', { percents: [4, 4] }), 'too alike to tell apart'],
    [
      () => workedExample('range-product', { geometry: [{ low: 2, high: 1 }], steel: [{ low: 1, high: 2 }] }),
      'range 2 to 1 does not rise from above 0',
    ],
  ])('%s', (make, message) => {
    expect(make).toThrow(RangeError);
    expect(make).toThrow(message);
  });

  test('what the model refuses', () => {
    expect(() => workedExample('forward-chain', { percents: [-100, 40] })).toThrow(RangeError);
    expect(() => workedExample('two-routes', { angleDeg: 91, baselineAngleDeg: 20, friction: 0.2 })).toThrow(
      /91/,
    );
  });

  test('every context is used by some kind', () => {
    expect(new Set(kinds.flatMap((kind) => contextsFor(kind)))).toEqual(new Set(contextIds));
  });
});
