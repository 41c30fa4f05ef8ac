/** Which single change of one attribute would make the model say what was measured. */

import { refuse } from '../check.ts';
import { finishUm } from '../finish/finish.ts';
import { rangeOf } from '../quantities.ts';
import { attributeValue } from '../solve/attributes.ts';
import type { SolvableAttribute } from '../solve/attributes.ts';
import { whatItTakes } from '../solve/what-it-takes.ts';
import type { Knife, Comparison } from '../types.ts';

export interface Explanation {
  knife: string;
  attribute: SolvableAttribute;
  /** As entered, its middle: degrees per side, mm, µm, HRC or volume %. */
  from: number;
  /** What it would have to be, same unit; null where no value does it. */
  to: number | null;
  /** Whether that lies within the ± it was entered with: then nothing else need be wrong. */
  withinStated: boolean;
  /** As `whatItTakes` says it. */
  note?: string;
}

const tried: readonly SolvableAttribute[] = [
  'angleDeg',
  'microbevelAngleDeg',
  'edgeMm',
  'finish',
  'hrc',
  'grindHeightMm',
  'carbide',
];

/**
 * For each attribute of either knife, the value at which the model's ratio is the measured one, everything else as
 * entered. A list of suspects, not a verdict: several may be off a little at once, and the model itself may be.
 *
 * @param comparison as for `compare`
 * @param measured how many times as long `knife` was measured to cut as `against`, above 0
 * @returns those within their stated ± first, then by how far they would have to move as a ratio
 * @throws RangeError as `whatItTakes`
 */
export function explanations(
  comparison: Comparison,
  measured: { knife: string; against: string; ratio: number },
): Explanation[] {
  const { knife, against, ratio } = measured;
  const explain = (
    changing: string,
    held: string,
    target: number,
    attribute: SolvableAttribute,
  ): Explanation => {
    const { value, note } = whatItTakes(comparison, { knife: changing, against: held, attribute, target });
    const { low, high } = stated(knifeOf(comparison, changing), attribute);
    return {
      knife: changing,
      attribute,
      from: attributeValue(knifeOf(comparison, changing), attribute),
      to: value,
      withinStated: value !== null && value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9),
      ...(note === undefined ? {} : { note }),
    };
  };
  const all = [
    ...attributesOf(knifeOf(comparison, knife)).map((attribute) => explain(knife, against, ratio, attribute)),
    ...attributesOf(knifeOf(comparison, against)).map((attribute) =>
      explain(against, knife, 1 / ratio, attribute),
    ),
  ];
  const moved = ({ from, to }: Explanation): number =>
    to === null ? Infinity : Math.abs(Math.log(to / from));
  return all.sort((a, b) => Number(b.withinStated) - Number(a.withinStated) || moved(a) - moved(b));
}

function knifeOf(comparison: Comparison, id: string): Knife {
  return (
    comparison.knives.find((knife) => knife.id === id) ?? refuse(`knife ${id} is not one of the comparison's`)
  );
}

/** What can be changed of a knife: a microbevel only where there is one. */
const attributesOf = (knife: Knife): SolvableAttribute[] =>
  tried.filter((attribute) => attribute !== 'microbevelAngleDeg' || knife.microbevelAngleDeg !== undefined);

/** The ends between which an attribute was stated; a grit has no ± of its own. */
function stated(knife: Knife, attribute: SolvableAttribute): { low: number; high: number } {
  if (attribute === 'finish') {
    return 'um' in knife.finish ? rangeOf(knife.finish.um) : rangeOf(finishUm(knife.finish));
  }
  if (attribute === 'grindHeightMm') return rangeOf(knife.grind.heightMm);
  if (attribute === 'carbide') {
    const ranges = Object.values(knife.carbideVolPercent).map(rangeOf);
    return {
      low: ranges.reduce((sum, { low }) => sum + low, 0),
      high: ranges.reduce((sum, { high }) => sum + high, 0),
    };
  }
  // Unreachable: a microbevel is only asked for where there is one.
  return rangeOf(knife[attribute] ?? Number.NaN);
}
