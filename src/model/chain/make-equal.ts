import { refuse } from '../check.ts';
import type { Family, Knife, Comparison } from '../types.ts';

/** What can be set equal to the baseline's. The angle takes the microbevel with it. */
export type Attribute = 'angleDeg' | 'edgeMm' | 'finish' | 'grind' | 'hrc' | 'carbideVolPercent';

/** The attributes that belong to each family. */
export const attributesOf: Record<Family, readonly Attribute[]> = {
  geometry: ['angleDeg', 'edgeMm', 'grind'],
  finish: ['finish'],
  steel: ['hrc', 'carbideVolPercent'],
};

const every = Object.values(attributesOf).flat();

/**
 * The comparison with some attributes of a knife set to the baseline's; what the ratio then reads is what the others
 * are worth. All of them made equal, every term is exactly 1. The grind alone is the form and its measures: its wedge
 * also depends on the thickness behind the edge, so that term is 1 only where both are even.
 *
 * @param attributes attributes, or whole families
 * @throws RangeError where knife or baseline is not in the comparison, or an attribute is none of these
 */
export function makeEqual(
  comparison: Comparison,
  knifeId: string,
  attributes: readonly (Attribute | Family)[],
): Comparison {
  const find = (id: string): Knife =>
    comparison.knives.find((knife) => knife.id === id) ??
    refuse(`knife ${id} is not among the knives: ${comparison.knives.map((knife) => knife.id).join(', ')}`);
  const baseline = find(comparison.baseline);
  find(knifeId);
  const all = attributes.flatMap((attribute) =>
    Object.hasOwn(attributesOf, attribute) ? attributesOf[attribute as Family] : [attribute as Attribute],
  );
  const unknown = all.find((attribute) => !every.includes(attribute));
  if (unknown !== undefined)
    refuse(`attribute ${unknown} is not one of ${[...every, ...Object.keys(attributesOf)].join(', ')}`);
  return {
    ...comparison,
    knives: comparison.knives.map((knife) =>
      knife.id === knifeId
        ? all.reduce((equalised, attribute) => withAttribute(equalised, baseline, attribute), knife)
        : knife,
    ),
  };
}

function withAttribute(knife: Knife, from: Knife, attribute: Attribute): Knife {
  if (attribute !== 'angleDeg') return { ...knife, [attribute]: from[attribute] };
  const { microbevelAngleDeg: _own, ...rest } = knife;
  return {
    ...rest,
    angleDeg: from.angleDeg,
    ...(from.microbevelAngleDeg === undefined ? {} : { microbevelAngleDeg: from.microbevelAngleDeg }),
  };
}
