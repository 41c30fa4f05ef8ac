import type { Family, Row, Term } from '../../model/index.ts';
import { families } from '../../scene/factors.ts';
import { productOf } from '../../scene/terms.ts';

/** A factor on the ruler: it begins where the one before it ended. */
export interface Step extends Term {
  from: number;
  to: number;
}

/** The factors of a row end to end from 1, family by family. */
export function stepsOf({ terms }: Pick<Row, 'terms'>): Step[] {
  let reached = 1;
  return families
    .flatMap((family) => terms.filter((term) => term.family === family))
    .map((term) => {
      const from = reached;
      reached *= term.factor;
      return { ...term, from, to: reached };
    });
}

/** The steps of one family, which stand together. */
export interface FamilySteps {
  family: Family;
  first: number;
  count: number;
  product: number;
}

/** The families that have a factor, with what each makes. */
export const familySteps = (steps: readonly Step[]): FamilySteps[] =>
  families.flatMap((family) => {
    const own = steps.filter((step) => step.family === family);
    return own.length === 0
      ? []
      : [
          {
            family,
            first: steps.findIndex((step) => step.family === family),
            count: own.length,
            product: productOf(own),
          },
        ];
  });
