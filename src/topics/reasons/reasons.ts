import { memoizeByObject } from '../../model/index.ts';
import type { TermId } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { readsAsOne } from '../../scene/show.ts';
import { productOf } from '../../scene/terms.ts';

/** A reason as a person would name it, with the factors that belong to it. */
const factorsOf = {
  angle: ['wedge', 'apex'],
  edge: ['thickness'],
  grind: ['grind'],
  finish: ['finish'],
  steel: ['hardness', 'carbide'],
} as const satisfies Record<string, readonly TermId[]>;

export type NamedReason = keyof typeof factorsOf;
const named = Object.entries(factorsOf) as [NamedReason, readonly TermId[]][];

/** Why one knife cuts longer or shorter than another. */
export interface Reason {
  /** One of the named reasons, or the id of a factor that belongs to none. */
  id: string;
  /** How many times as long for this reason alone, by the careful estimate at its middle settings. */
  factor: number;
  /** Its factors one by one. */
  parts: Readonly<Record<string, number>>;
}

export const isNamed = (id: string): id is NamedReason => Object.hasOwn(factorsOf, id);

/** The reasons of a scene that make a difference of their own, gains and losses, the biggest first. */
export const reasonsOf: (scene: Scene) => readonly Reason[] = memoizeByObject(({ row }: Scene): Reason[] => {
  const groups = new Map<string, { id: string; factor: number }[]>();
  // What could not be computed is no reason that could be named.
  for (const { id, factor } of row.careful.terms.filter(
    (term) => term.factor > 0 && Number.isFinite(term.factor),
  )) {
    const reason = named.find(([, ids]) => (ids as readonly string[]).includes(id))?.[0] ?? id;
    groups.set(reason, [...(groups.get(reason) ?? []), { id, factor }]);
  }
  return [...groups]
    .map(([id, terms]) => ({
      id,
      factor: productOf(terms),
      parts: Object.fromEntries(terms.map((term) => [term.id, term.factor])),
    }))
    .filter(({ factor }) => !readsAsOne(factor))
    .sort((a, b) => Math.abs(Math.log(b.factor)) - Math.abs(Math.log(a.factor)));
});

/** How many reasons are told one by one. */
export const mostTold = 3;

/** The biggest reasons, as many as are told one by one. */
export const biggestReasons = (scene: Scene): readonly Reason[] => reasonsOf(scene).slice(0, mostTold);

/** What all else makes of the product, beside the reasons that are told one by one. */
export const restOf = (scene: Scene): number =>
  scene.row.careful.multiplied / productOf(biggestReasons(scene));
