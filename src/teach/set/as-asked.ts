import { modeOf } from '../../exercises/index.ts';
import type { Problem } from '../../exercises/index.ts';
import { inFigures } from '../../scene/show.ts';

/** An answer as a bare number in the unit asked for, and how far from it an answer may lie, in the same unit. */
export interface AsAsked {
  value: number;
  within: number;
}

const settled = (value: number): number => inFigures(value, 10);

/**
 * Turns an answer of a problem, which is a ratio, an amount or a place, into the bare number a learner types.
 *
 * @example asAsked(workedExample('forward-chain'), 1.96).value // → 1.96
 * @example asAsked(workedExample('undo'), 0.8).value // → 20
 */
export function asAsked({ tolerance, unit }: Problem, answer: number): AsAsked {
  const within = answer * tolerance.relative;
  switch (modeOf(unit)) {
    case 'more':
      return { value: settled(100 * (answer - 1)), within: settled(100 * within) };
    case 'less':
      return { value: settled(100 * (1 - answer)), within: settled(100 * within) };
    case 'share':
      return { value: settled(100 * answer), within: settled(100 * within) };
    default:
      return { value: answer, within: settled(within) };
  }
}
