import { compare, memoizeByObject, structures } from '../../model/index.ts';
import type { Row, Structure } from '../../model/index.ts';
import { factorOf, ofKnife } from '../../comparison/found.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import type { Scene } from '../../scene/scene.ts';

/** The two frictions that stand side by side: none, and the most of the stated range. */
export const frictions = [0, 0.4] as const;

/** What friction changes, under one friction. */
export interface UnderFriction extends Record<Structure, number> {
  friction: number;
  wedge: number;
  apex: number;
  /** Wedge and apex together: what the angle alone is worth. */
  angle: number;
  grind: number;
}

const underFriction = (friction: number, row: Row): UnderFriction => {
  const [wedge, apex] = [factorOf(row, 'wedge'), factorOf(row, 'apex')];
  const totals = Object.fromEntries(structures.map((of) => [of, row[of]])) as Record<Structure, number>;
  return { friction, wedge, apex, angle: wedge * apex, grind: factorOf(row, 'grind'), ...totals };
};

/** The chain of the two knives at both frictions, all else as it is; null where an edge cannot be driven at one. */
export const sideBySide = memoizeByObject(
  ({ comparison, entry }: Scene): [none: UnderFriction, much: UnderFriction] | null =>
    unlessRefused(() => {
      const at = (friction: number): UnderFriction =>
        underFriction(friction, ofKnife(compare({ ...comparison, friction }).rows, entry.subject));
      return [at(frictions[0]), at(frictions[1])];
    }),
);
