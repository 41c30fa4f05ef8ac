/**
 * What is known of every field of a knife: what it is called, what may stand in it, where it stands in a link, and what
 * the model takes from it. The entry's type, its schema, its link and its model follow from this one table; the rest,
 * how a page shows and reads a field, is the table in `src/compare/knife-fields.ts`, which does not compile without it.
 */
import type * as v from 'valibot';
import type { Knife } from '../model/index.ts';
import { carbideVolumes, oneQuantity, perSideDeg } from './knife-measures.ts';
import { angleSchema, carbideSchema, finishSchema, grindSchema } from './knife-value-schemas.ts';
import { edgeStates } from './knife-values.ts';
import {
  anglePacking,
  carbidePacking,
  finishPacking,
  grindPacking,
  placedPacking,
  quantityPacking,
} from './link/knife-packing.ts';
import { nameOf, text } from './link/packed.ts';
import type { Packing } from './link/packed.ts';
import { knifeId, oneOf, placed, quantity, words } from './schema-parts.ts';

interface KnifeField<Value, Part> extends Packing<Value> {
  /** What it is, in words. */
  label: string;
  /** Written behind a number of it; empty where it has none. */
  unit: string;
  /** What may stand there. */
  schema: v.GenericSchema<Value>;
  /** Where it stands in a link. A position once used never changes; a new field takes the next one. */
  position: number;
  /** What of the model's knife it gives. */
  toModel(value: Value): Part;
}

const required = <Value, Part extends Partial<Knife>>(field: KnifeField<Value, Part>) => ({
  ...field,
  optional: false as const,
});
const optional = <Value, Part extends Partial<Knife>>(field: KnifeField<Value, Part>) => ({
  ...field,
  optional: true as const,
});

const angleUnit = { unit: '° per side' };
const notOfTheModel = (): object => ({});

/** The fields in the order in which a table of a comparison shows them. */
export const knifeFields = {
  /** Small letters, digits and hyphens, 1–24. */
  id: required({
    ...text,
    label: 'id',
    unit: '',
    schema: knifeId,
    position: 0,
    toModel: (id) => ({ id }),
  }),
  /** 1–80 characters of any script. */
  name: required({
    ...text,
    label: 'name',
    unit: '',
    schema: words('the name', 80),
    position: 1,
    toModel: (name) => ({ name }),
  }),
  /** What happened to the edge before it was measured. */
  state: required({
    ...nameOf(edgeStates),
    label: 'state of the edge',
    unit: '',
    schema: oneOf('the state', edgeStates),
    position: 2,
    toModel: notOfTheModel,
  }),
  /** However it was found: typed, or from caliper readings. */
  angle: required({
    ...anglePacking,
    ...angleUnit,
    label: 'edge angle',
    schema: angleSchema,
    position: 3,
    toModel: (angle) => ({ angleDeg: perSideDeg(angle) }),
  }),
  /** Left out where there is no microbevel. */
  microbevelDeg: optional({
    ...quantityPacking,
    ...angleUnit,
    label: 'microbevel angle',
    schema: quantity('microbevel angle', '°', 4, 45, ' per side'),
    position: 9,
    toModel: (microbevelAngleDeg) => ({ microbevelAngleDeg }),
  }),
  /** At the shoulder of the bevel. */
  edgeMm: required({
    ...placedPacking,
    label: 'thickness behind the edge',
    unit: ' mm',
    schema: placed('thickness behind the edge', ' mm', 0.01, 5),
    position: 4,
    toModel: (edgeMm) => ({ edgeMm: oneQuantity(edgeMm) }),
  }),
  grind: required({
    ...grindPacking,
    label: 'primary grind',
    unit: '',
    schema: grindSchema,
    position: 6,
    toModel: (grind) => ({ grind }),
  }),
  finish: required({
    ...finishPacking,
    label: 'finish',
    unit: '',
    schema: finishSchema,
    position: 5,
    toModel: (finish) => ({ finish }),
  }),
  hrc: required({
    ...quantityPacking,
    label: 'hardness',
    unit: ' HRC',
    schema: quantity('hardness', ' HRC', 20, 68),
    position: 7,
    toModel: (hrc) => ({ hrc }),
  }),
  carbide: required({
    ...carbidePacking,
    label: 'carbide',
    unit: ' vol %',
    schema: carbideSchema,
    position: 8,
    toModel: (carbide) => ({ carbideVolPercent: carbideVolumes(carbide) }),
  }),
  /** MPa√m, or one index for all knives. */
  toughness: optional({
    ...quantityPacking,
    label: 'toughness',
    unit: '',
    schema: quantity('toughness', '', 0.001, 10000),
    position: 10,
    toModel: (toughness) => ({ toughness }),
  }),
};

type Fields = typeof knifeFields;
export type KnifeFieldName = keyof Fields;
type ValueOf<Field> = Field extends { schema: v.GenericSchema<infer Value> } ? Value : never;
type RequiredFields = {
  readonly [Name in keyof Fields as Fields[Name]['optional'] extends false ? Name : never]: ValueOf<
    Fields[Name]
  >;
};
type OptionalFields = {
  readonly [Name in keyof Fields as Fields[Name]['optional'] extends true ? Name : never]?: ValueOf<
    Fields[Name]
  >;
};

/** One knife as a visitor enters it. Lengths in mm, angles per side in degrees. */
export type KnifeEntry = RequiredFields & OptionalFields;
