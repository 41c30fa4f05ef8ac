/**
 * What may stand in every field of a comparison, and how it is packed in a link. A position once used never changes; a
 * new field takes the next one.
 */
import * as v from 'valibot';
import { disputes, jobProfiles } from '../model/index.ts';
import type { Assumptions, Dispute, Position } from '../model/index.ts';
import { isDay, runSchema, shown } from '../runs/log.ts';
import { assumptionFields } from './assumption-fields.ts';
import { equalisable } from './entry.ts';
import type { ComparisonEntry, CorrectionEntry, KnifeEntry, PlanEntry } from './entry.ts';
import { schemaOf } from './field-table.ts';
import type { FieldTable } from './field-table.ts';
import { knifeFields } from './knife-fields.ts';
import { quantityPacking } from './link/knife-packing.ts';
import { asItIs, each, flag, listOf, nameOf, wholePacking } from './link/packed.ts';
import type { FieldPacking, Packing } from './link/packed.ts';
import { runPacking } from './link/run-packing.ts';
import { planFields } from './plan-fields.ts';
import { assumed, knifeId, number, oneOf, quantity, words } from './schema-parts.ts';

/** Two to eight knives. */
export const listOfKnives = (one: v.GenericSchema<KnifeEntry>): v.GenericSchema<readonly KnifeEntry[]> =>
  v.pipe(
    v.array(one, 'the knives must be a list'),
    v.minLength(2, ({ input }) => `a comparison has two to eight knives, not ${input.length}`),
    v.maxLength(8, ({ input }) => `a comparison has two to eight knives, not ${input.length}`),
  );

export const knifeSchema = schemaOf<KnifeEntry>(knifeFields);

/** A knife referred to by its id: in a link by its place among the knives. */
const knifeByPlace: Omit<FieldPacking<string, ComparisonEntry>, 'position'> = {
  pack: (id, { knives }) => knives.findIndex((knife) => knife.id === id),
  unpack(place, whole) {
    const knives = listOf(whole[comparisonFields.knives.position]);
    return typeof place === 'number' ? listOf(knives[place])[knifeFields.id.position] : undefined;
  },
};

/** The ids of the knives of a comparison that is being unpacked, not checked yet. */
const idsIn = (whole: readonly unknown[]): unknown[] =>
  listOf(whole[comparisonFields.knives.position]).map((knife) => listOf(knife)[knifeFields.id.position]);

type GaugeBias = NonNullable<ComparisonEntry['gaugeBias']>;
const gaugeFields: FieldTable<GaugeBias> = {
  angleDeg: {
    ...asItIs,
    schema: number('the common ± of the angle', '°', 0, 20),
    position: 0,
    optional: true,
  },
  edgeMm: {
    ...asItIs,
    schema: number('the common ± of the thickness', ' mm', 0, 2),
    position: 1,
    optional: true,
  },
  hrc: {
    ...asItIs,
    schema: number('the common ± of the hardness', ' HRC', 0, 20),
    position: 2,
    optional: true,
  },
};

/** The names are packed in the order in which they stand here, which the model's own order must not change. */
const dispute = <D extends Dispute>(
  id: D,
  position: number,
  what: string,
  names: readonly NonNullable<Position[D]>[],
) => ({ ...nameOf(names), schema: oneOf(what, disputes[id]), position, optional: true }) as const;

const positionFields: FieldTable<Position> = {
  apex: dispute('apex', 0, 'what the angle does at the apex', ['between', 'tooth', 'wear']),
  push: dispute('push', 1, 'how the wedge is pushed', ['spread', 'bed', 'buried']),
  structure: dispute('structure', 2, 'how the factors combine', ['multiplied', 'added', 'toLimit']),
  floor: dispute('floor', 3, 'the floor of the angle', ['moving', 'still']),
};

const correctionSchema: v.GenericSchema<CorrectionEntry> = v.strictObject({
  date: v.pipe(
    v.string('the date must be text'),
    v.check(isDay, ({ input }) => `${shown(input)} is no day; write year, month, day`),
  ),
  reason: words('the reason', 300),
  changed: v.pipe(
    v.array(words('what changed', 400), 'what changed must be a list'),
    v.maxLength(5000, ({ input }) => `${input.length} sentences are more than 5000`),
  ),
});

const correctionPacking: Packing<CorrectionEntry> = {
  pack: ({ date, reason, changed }) => [date, reason, ...changed],
  unpack(packed) {
    const [date, reason, ...changed] = listOf(packed);
    return { date, reason, changed };
  },
};

const percentages = v.pipe(
  v.array(
    v.pipe(
      v.number('a percentage must be a number'),
      v.gtValue(-100, ({ input }) => `${input}% leaves nothing: a percentage is above −100%`),
      v.maxValue(1000, ({ input }) => `${input}% is above 1000%`),
    ),
  ),
  v.maxLength(10, ({ input }) => `a chain has at most ten percentages, not ${input.length}`),
);

export const comparisonFields: FieldTable<ComparisonEntry> = {
  title: { ...asItIs, schema: words('the title', 120), position: 0 },
  invented: { ...flag, schema: v.literal(true), position: 1, optional: true, absent: 0 },
  knives: {
    ...each(wholePacking<KnifeEntry>(knifeFields)),
    schema: listOfKnives(knifeSchema),
    position: 2,
  },
  baseline: { ...knifeByPlace, schema: knifeId, position: 3 },
  subject: { ...knifeByPlace, schema: knifeId, position: 4 },
  reading: {
    ...nameOf(['quick', 'careful']),
    schema: oneOf('the reading', ['quick', 'careful']),
    position: 5,
  },
  work: {
    ...asItIs,
    schema: oneOf(
      'the work',
      jobProfiles.map((profile) => profile.id),
    ),
    position: 6,
  },
  slicePush: { ...asItIs, schema: number('slice to push', '', 0, 100), position: 7 },
  contactDepthMm: {
    ...quantityPacking,
    schema: quantity('depth of contact', ' mm', 0.1, 100),
    position: 8,
  },
  friction: { ...quantityPacking, schema: assumed('friction', 'friction'), position: 9 },
  assumptions: {
    ...wholePacking<Assumptions>(assumptionFields),
    schema: schemaOf<Assumptions>(assumptionFields),
    position: 10,
  },
  gaugeBias: {
    ...wholePacking<GaugeBias>(gaugeFields),
    schema: schemaOf<GaugeBias>(gaugeFields),
    position: 14,
    optional: true,
  },
  position: {
    ...wholePacking<Position>(positionFields),
    schema: schemaOf<Position>(positionFields),
    position: 15,
    optional: true,
  },
  runs: {
    pack: (runs, { knives }) => each(runPacking(knives.map(({ id }) => id))).pack(runs),
    unpack: (packed, whole) => each(runPacking(idsIn(whole))).unpack(packed),
    schema: v.pipe(
      v.array(runSchema, 'the runs must be a list'),
      v.maxLength(2000, ({ input }) => `there are ${input.length} runs; a comparison carries at most 2000`),
    ),
    position: 16,
    optional: true,
  },
  plan: {
    ...wholePacking<PlanEntry>(planFields),
    schema: schemaOf<PlanEntry>(planFields),
    position: 17,
    optional: true,
  },
  corrections: {
    ...each(correctionPacking),
    schema: v.pipe(
      v.array(correctionSchema, 'the corrections must be a list'),
      v.maxLength(50, ({ input }) => `there are ${input.length} corrections; at most 50 fit`),
    ),
    position: 18,
    optional: true,
  },
  outcome: {
    ...nameOf(['end-point', 'fixed-strokes']),
    schema: oneOf('what “as long” means', ['end-point', 'fixed-strokes']),
    position: 19,
    optional: true,
  },
  lengthUnit: {
    ...nameOf(['mm', 'thou']),
    schema: oneOf('the unit of length', ['mm', 'thou']),
    position: 11,
  },
  madeEqual: {
    ...each(nameOf(['angleDeg', 'edgeMm', 'finish', 'grind', 'hrc', 'carbideVolPercent'])),
    schema: v.pipe(
      v.array(oneOf('what is evened up,', equalisable)),
      v.check((list) => new Set(list).size === list.length, 'an attribute is evened up twice'),
    ),
    position: 12,
  },
  faceValues: {
    schema: v.nullable(percentages),
    position: 13,
    pack: (values) => values && [...values],
    unpack: (packed) => packed,
  },
};
