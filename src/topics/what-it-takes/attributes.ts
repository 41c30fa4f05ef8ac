/** The attributes one can ask “what would it take” of: how they are said, what a comparison holds of them, and back. */

import { grainSizeUm, nominal } from '../../model/index.ts';
import type { Knife, SolvableAttribute } from '../../model/index.ts';
import type { KnifeEntry, ComparisonEntry } from '../../comparison/entry.ts';
import { short } from '../../scene/show.ts';
import { attributeName } from '../../phrases/attribute-names.ts';

interface TakesAttribute {
  attribute: SolvableAttribute;
  name: string;
  /** Shown in the comparison's unit of length. */
  length?: true;
  /** What a comparison takes, ends included. */
  low: number;
  high: number;
  now(knife: Knife): number;
  /** The entry with what the model's knife holds of the attribute. */
  back(entry: KnifeEntry, knife: Knife): KnifeEntry;
}

export const takesAttributes: readonly TakesAttribute[] = [
  {
    attribute: 'angleDeg',
    name: 'Edge angle, per side',
    low: 4,
    high: 45,
    now: ({ angleDeg }) => nominal(angleDeg),
    // The value is per side beyond doubt: nobody is asked whether it is an included angle.
    back: (entry, { angleDeg }) => ({
      ...entry,
      angle: { deg: nominal(angleDeg), ...(nominal(angleDeg) > 30 ? { perSide: true as const } : {}) },
    }),
  },
  {
    attribute: 'edgeMm',
    name: 'Thickness behind the edge',
    length: true,
    low: 0.01,
    high: 5,
    now: ({ edgeMm }) => nominal(edgeMm),
    back: (entry, { edgeMm }) => ({ ...entry, edgeMm }),
  },
  {
    attribute: 'finish',
    name: 'Finish, median grain',
    low: 0.1,
    high: 250,
    now: ({ finish }) => ('um' in finish ? nominal(finish.um) : grainSizeUm(finish)),
    back: (entry, { finish }) => ({ ...entry, finish }),
  },
  {
    attribute: 'grindHeightMm',
    name: 'Height of the primary grind',
    length: true,
    low: 0.5,
    high: 150,
    now: ({ grind }) => nominal(grind.heightMm),
    back: (entry, { grind }) => ({ ...entry, grind }),
  },
  {
    attribute: 'hrc',
    name: 'Hardness',
    low: 20,
    high: 68,
    now: ({ hrc }) => nominal(hrc),
    back: (entry, { hrc }) => ({ ...entry, hrc }),
  },
  {
    attribute: 'carbide',
    name: 'Carbide, all kinds together',
    low: 0,
    high: 40,
    now: ({ carbideVolPercent }) =>
      Object.values(carbideVolPercent).reduce<number>((sum, volume) => sum + nominal(volume), 0),
    back: (entry, { carbideVolPercent }) => ({ ...entry, carbide: { volPercent: carbideVolPercent } }),
  },
];

/** @throws RangeError for an attribute that is not asked of */
export function attributeNamed(attribute: SolvableAttribute): TakesAttribute {
  const named = takesAttributes.find((one) => one.attribute === attribute);
  if (!named) throw new RangeError(`attribute ${attribute} is not one that is asked of`);
  return named;
}

const mmPerThou = 0.0254;

/** A value with its unit, lengths in the unit of the comparison: `14.2°`, `0.6 mm`, `12.2 thou`. */
export function valueSaid(
  { attribute, length }: Pick<TakesAttribute, 'attribute' | 'length'>,
  value: number,
  { lengthUnit }: Pick<ComparisonEntry, 'lengthUnit'>,
): string {
  return length && lengthUnit === 'thou'
    ? `${short(value / mmPerThou)} thou`
    : `${short(value)}${attributeName[attribute].unit}`;
}
