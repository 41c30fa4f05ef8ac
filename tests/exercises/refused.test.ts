import { describe, expect, test } from 'vitest';
import { contextIds, kinds, kindsFor, makeProblem, workedExample } from '../../src/exercises/index.ts';
import type { Kind } from '../../src/exercises/index.ts';

describe('what is refused', () => {
  test.each([
    [() => makeProblem('forward-chain', 1.5), 'seed 1.5 is not a whole number from 0 to 4294967295'],
    [() => makeProblem('forward-chain', NaN), 'seed NaN is not a whole number from 0 to 4294967295'],
    [
      () => makeProblem('toString' as Kind, 1),
      'kind of problem "toString" is not one of times-or-more, multiply-or-add,',
    ],
    [
      () => makeProblem('two-routes', 1, { context: 'seed-trays' }),
      'context "seed-trays" is not one of rigging-loft for two-routes',
    ],
    [() => makeProblem('forward-chain', 1, { level: 4 as 1 }), 'level 4 is not between 1 and 3'],
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

  test('a context without blades has no kind that needs them, and most others', () => {
    for (const context of contextIds.filter((id) => id !== 'rigging-loft')) {
      expect(kindsFor(context)).not.toContain('two-routes');
      expect(kindsFor(context)).not.toContain('grit-by-scale');
      expect(kindsFor(context).length).toBeGreaterThanOrEqual(13);
    }
    expect(kindsFor('rigging-loft')).toEqual(kinds);
    expect(() => kindsFor('kitchen' as 'tides')).toThrow('context "kitchen" is not one of rigging-loft,');
  });
});
