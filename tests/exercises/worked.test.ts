import { describe, expect, test } from 'vitest';
import { contextsFor, kinds, workedExample } from '../../src/exercises/index.ts';

describe('worked examples', () => {
  test('the lesson takes forty and forty', () => {
    const problem = workedExample('forward-chain');
    expect(problem.givens.map(({ value }) => value)).toEqual([40, 40]);
    expect(problem.seed).toBeNull();
  });

  // Chen & Rao, Journal of Consumer Research 34(3), 2007, by its press reports: +25% and +25% make +56.25%.
  // AMC 8 2002, problem 14: 30% off, then 20% off, is 44% off.
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
    expect(steps[1]?.values[0]).toBeCloseTo(1.56, 2);
    expect(steps[2]?.values[0]).toBeCloseTo(0.34202 / 0.173648, 4);
    expect(answer).toBeCloseTo(1.56 * 1.9696, 2);
  });

  test.each(kinds)('%s has one in every context it allows', (kind) => {
    for (const context of contextsFor(kind))
      expect(workedExample(kind, undefined, { context }).missteps.length).toBeGreaterThanOrEqual(3);
  });
});
