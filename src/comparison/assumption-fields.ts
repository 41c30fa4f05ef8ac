import type { Assumptions, ParameterId, Quantity } from '../model/index.ts';
import * as v from 'valibot';
import type { FieldTable } from './field-table.ts';
import { quantityPacking } from './link/knife-packing.ts';
import { listOf } from './link/packed.ts';
import { assumed, number } from './schema-parts.ts';

/** One of the model's parameters, which takes what the model's registry says. */
const parameter = (id: ParameterId, what: string, position: number) =>
  ({
    ...quantityPacking,
    schema: assumed(what, id) satisfies v.GenericSchema<Quantity>,
    position,
    optional: true,
  }) as const;

const share = number('a share of the cutting force', '', 0, 1);

/** The assumptions of the model that a visitor may set. A position in the link once used never changes. */
export const assumptionFields: FieldTable<Assumptions> = {
  angleExponent: parameter('angleExponent', 'the angle exponent', 0),
  thicknessExponent: parameter('thicknessExponent', 'the thickness exponent', 1),
  finishExponent: parameter('finishExponent', 'the finish exponent', 2),
  hardnessExponent: parameter('hardnessExponent', 'the hardness exponent', 3),
  residualCv: parameter('residualCv', 'the scatter of steels about the regression', 5),
  rivalShares: {
    schema: v.strictObject({ wedge: share, thickness: share, grind: share }),
    position: 4,
    optional: true,
    pack: ({ wedge, thickness, grind }) => [wedge, thickness, grind],
    unpack(packed) {
      const [wedge, thickness, grind] = listOf(packed);
      return { wedge, thickness, grind };
    },
  },
};
