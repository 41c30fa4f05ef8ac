import { modeOf } from './asks.ts';
import { inFigures } from './figures.ts';
import type { Problem } from './problem.ts';
import { letter } from './wording.ts';

/** What is asked for and how near counts as right, to stand beside the box. */
export function toleranceInWords({
  tolerance,
  unit,
  options = [],
}: Pick<Problem, 'tolerance' | 'unit' | 'options'>): string {
  const part = `${inFigures(tolerance.relative * 100)}%`;
  switch (modeOf(unit)) {
    case 'letter':
      return `A letter from A to ${letter(options.length - 1)}.`;
    case 'more':
    case 'less':
      return `In per cent ${unit.slice(2)}. Right to within ${part} of the whole, the start included.`;
    case 'share':
      return `In per cent. Right to within ${part} of the answer.`;
    case 'quantity':
      return `In ${unit}. Right to within ${part}.`;
    case 'times':
      return `In how many ${unit}. Right to within ${part}.`;
  }
}
