import { refuse } from './check.ts';
import type { Family, Knife, LineUp } from './types.ts';

/** What can be set equal to the baseline's. The angle takes the microbevel with it. */
export type Attribute = 'angleDeg' | 'edgeMm' | 'finish' | 'grind' | 'hrc' | 'carbideVolPercent';

export const attributesOf: Record<Family, readonly Attribute[]> = {
  geometry: ['angleDeg', 'edgeMm', 'grind'],
  finish: ['finish'],
  steel: ['hrc', 'carbideVolPercent'],
};

/**
 * The line-up with some attributes of a knife set to the baseline's; what the ratio then reads is what the others
 * are worth.
 *
 * @param attributes attributes, or whole families
 * @throws RangeError where knife or baseline is not in the line-up
 */
export function evenUp(lineUp: LineUp, knifeId: string, attributes: readonly (Attribute | Family)[]): LineUp {
  const find = (id: string): Knife =>
    lineUp.knives.find((knife) => knife.id === id) ??
    refuse(`knife ${id} is not among the knives: ${lineUp.knives.map((knife) => knife.id).join(', ')}`);
  const baseline = find(lineUp.baseline);
  find(knifeId);
  const all = attributes.flatMap((attribute) =>
    attribute in attributesOf ? attributesOf[attribute as Family] : [attribute as Attribute],
  );
  return {
    ...lineUp,
    knives: lineUp.knives.map((knife) =>
      knife.id === knifeId
        ? all.reduce((evened, attribute) => withAttribute(evened, baseline, attribute), knife)
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
