import { describe, expect, it, test } from 'vitest';
import { powerOfRuns, simulatedPower, toppedUpFalseAlarms } from '../../../src/model/index.ts';
import { disjoint, passed, scenarios, simulate } from './judge-scenarios.ts';

describe('the judge on simulated logs: false alarms, intervals and coverage', () => {
  // A few hundred logs a row with two standard errors of room; `npm run simulate` makes ten thousand with none.
  const logs = 400;
  it.each(scenarios)('$name', (scenario) => {
    expect(passed(scenario, simulate(scenario, logs, 4), logs, 2)).toEqual([]);
  });

  it('gives no verdict in any log without a shared batch', () => {
    expect(simulate(disjoint, logs, 4).usable).toBe(0);
  });
});

describe('the power of the judge, by simulation', () => {
  // Own calculation, simulated elsewhere with the same rules: 10% scatter, true ratio 1.25.
  test.each([
    [3, 0.34, 0.44],
    [4, 0.57, 0.7],
    [5, 0.79, 0.85],
    [6, 0.9, 0.93],
  ])('%i runs a knife: about %f within 3 batches, %f without', (runs, within, without) => {
    const plan = { runs, cv: 0.1, ratio: 1.25, seed: 3 };
    expect(Math.abs(simulatedPower({ ...plan, batches: 3 }) - within)).toBeLessThan(0.025);
    expect(Math.abs(simulatedPower(plan) - without)).toBeLessThan(0.025);
  });

  it('comes near the formula where there are many runs', () => {
    const plan = { runs: 20, cv: 0.2, ratio: 1.2, batches: 4 };
    expect(Math.abs(simulatedPower({ ...plan, seed: 1 }) - powerOfRuns(plan))).toBeLessThan(0.03);
  });

  it('is the same for the same seed, and about the level for equal knives', () => {
    const plan = { runs: 6, cv: 0.2, ratio: 1, seed: 8 };
    expect(simulatedPower(plan)).toBe(simulatedPower(plan));
    expect(simulatedPower(plan)).not.toBe(simulatedPower({ ...plan, seed: 9 }));
    expect(simulatedPower(plan)).toBeLessThan(0.065);
    expect(simulatedPower({ ...plan, ratio: 0.7, runs: 6 })).toBeGreaterThan(0.5);
  });

  it('calls equal knives different about twice as often where a log is topped up twice after a look', () => {
    const plan = { runs: 4, cv: 0.2, seed: 2 };
    const once = toppedUpFalseAlarms({ ...plan, topUps: [] });
    expect(once).toBe(simulatedPower({ ...plan, ratio: 1 }));
    const twice = toppedUpFalseAlarms({ ...plan, topUps: [2, 2] });
    expect(twice).toBeGreaterThan(1.5 * once);
    expect(twice).toBeLessThan(0.12);
  });

  test.each<[Partial<Parameters<typeof toppedUpFalseAlarms>[0]>, string]>([
    [{ topUps: [0] }, 'topUps 0 is not a whole number of 1 or above'],
    [{ topUps: [1.5] }, 'topUps 1.5 is not a whole number of 1 or above'],
    [{ topUps: Array.from({ length: 11 }, () => 1) }, 'topUps are 11, at most 10 are allowed'],
    [{ topUps: [50] }, 'runs a knife 54 are more than 50: too many to simulate'],
    [{ batches: 5 }, 'runs a knife 4 is not a whole number from 5 to 1000000'],
    [{ batches: -1 }, 'batches -1 is not a whole number from 0 to 1000000'],
    [{ cv: 0 }, 'cv 0 is not above 0 and up to 5'],
    [{ seed: -1 }, 'seed -1 is not a whole number from 0 to 4294967295'],
  ])('%o is refused', (change, says) => {
    const plan = { runs: 4, topUps: [], cv: 0.2, seed: 2, ...change };
    expect(() => toppedUpFalseAlarms(plan)).toThrow(new RangeError(says));
  });

  test.each<[object, string]>([
    [{ runs: 51 }, 'runs a knife 51 are more than 50: too many to simulate'],
    [{ runs: 1 }, 'runs a knife 1 is not a whole number from 2 to 1000000'],
    [{ ratio: 0 }, 'ratio 0 is not a finite number above 0'],
    [{ ratio: Infinity }, 'ratio Infinity is not a finite number above 0'],
  ])('simulated power of %o is refused', (change, says) => {
    const plan = { runs: 4, cv: 0.2, ratio: 1.2, seed: 2, ...change };
    expect(() => simulatedPower(plan)).toThrow(new RangeError(says));
  });
});
