import type { Assumptions, ParameterId, Quantity } from '../model/index.ts';
import * as v from 'valibot';
import type { FieldTable } from './field-table.ts';
import { quantityPacking } from './link/knife-packing.ts';
import { assumed, number } from './schema-parts.ts';

/** One of the model's parameters, which takes what the model's registry says. */
const parameter = (id: ParameterId, what: string, position: number) =>
  ({
    ...quantityPacking,
    schema: assumed(what, id) satisfies v.GenericSchema<Quantity>,
    position,
    optional: true,
  }) as const;

const weight = (of: string) => number(`the weight of ${of}`, '', 0, 1000);

/** How likely each way to combine the factors is: three numbers, not all 0. */
const weights = v.pipe(
  v.strictTuple(
    [weight('multiplied'), weight('added'), weight('to a limit')],
    'the weights must be three numbers',
  ),
  v.check((all) => all.some((one) => one > 0), 'the weights of the three structures are all 0'),
);

/** The assumptions of the model that a visitor may set. A position in the link once used never changes. */
export const assumptionFields: FieldTable<Assumptions> = {
  angleExponent: parameter('angleExponent', 'the angle exponent', 0),
  thicknessExponent: parameter('thicknessExponent', 'the thickness exponent', 1),
  finishExponent: parameter('finishExponent', 'the finish exponent', 2),
  hardnessExponent: parameter('hardnessExponent', 'the hardness exponent', 3),
  residualCv: parameter('residualCv', 'the scatter of steels about the regression', 5),
  lifeExponent: parameter('lifeExponent', 'the life exponent', 6),
  wedgingShare: parameter('wedgingShare', 'the share of wedging', 7),
  limitPower: parameter('limitPower', 'the power of the width', 8),
  // Position 4 held the shares of the force until model 3.
  structureWeights: {
    pack: (all) => [...all],
    unpack: (packed) => packed,
    schema: weights as unknown as v.GenericSchema<[number, number, number]>,
    position: 9,
    optional: true,
  },
};
