import { makeProblem, workedExample } from '../../exercises/index.ts';
import type { ContextId, Kind, Level, Problem } from '../../exercises/index.ts';

/** Which question a tally is of. */
export interface TallyChoice {
  kind: Kind;
  context: ContextId;
  level: Level;
  /** null for the worked example of the kind. */
  seed: number | null;
}

/** The question a fresh tally opens with: two advantages of 40%. */
export const FIRST_TALLY: TallyChoice = {
  kind: 'forward-chain',
  context: 'seed-trays',
  level: 1,
  seed: null,
};

/** The question before, and one of the same kind and level with other numbers for afterwards. */
export function tallyProblems({ kind, context, level, seed }: TallyChoice): [Problem, Problem] {
  const setting = { context, level };
  const before =
    seed === null ? workedExample(kind, undefined, { context }) : makeProblem(kind, seed, setting);
  return [before, makeProblem(kind, ((seed ?? 0) + 1) % 2 ** 32, setting)];
}
