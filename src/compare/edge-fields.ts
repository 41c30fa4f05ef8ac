/** The fields of the edge: its angle, its thickness and its finish. */
import type { GritScale, Quantity } from '../model/index.ts';
import type { KnifeEntry, Placed } from '../comparison/entry.ts';
import { readQuantity, showQuantity } from '../comparison/read.ts';
import { bad, good } from './field.ts';
import type { Field } from './field.ts';
import { quantityField } from './quantity-field.ts';

const typedAngle = (knife: KnifeEntry): boolean => 'deg' in knife.angle;

const bevelOf = ({ angle }: KnifeEntry): { bevelMm: Quantity; sideMm: Quantity } =>
  'deg' in angle
    ? { bevelMm: 0.5, sideMm: 1.2 }
    : { bevelMm: angle.bevelMm, sideMm: 'heightMm' in angle ? angle.heightMm : angle.slantWidthMm };

function withBevel(knife: KnifeEntry, way: string, bevelMm: Quantity, sideMm: Quantity): KnifeEntry {
  return {
    ...knife,
    angle: way === 'height' ? { bevelMm, heightMm: sideMm } : { bevelMm, slantWidthMm: sideMm },
  };
}

const angleWay = ({ angle }: KnifeEntry): string =>
  'deg' in angle ? 'typed' : 'heightMm' in angle ? 'height' : 'width';

/** Grain size not known: from a fine to a very coarse finish, µm. */
const unknownGrain = { low: 3, high: 80 } as const;

const plainNumber = (value: Placed): number =>
  typeof value === 'number' ? value : 'value' in value ? value.value : Number.NaN;

/** The angle, typed or from caliper readings. */
export const angleFields = {
  angleWay: {
    kind: 'choice',
    label: 'How the angle was found',
    choices: [
      ['typed', 'typed in'],
      ['width', 'from A and B'],
      ['height', 'from A and C'],
    ],
    show: angleWay,
    write(knife, way) {
      if (way === 'typed') return good(typedAngle(knife) ? knife : { ...knife, angle: { deg: 20 } });
      const { bevelMm, sideMm } = bevelOf(knife);
      return good(withBevel(knife, way, bevelMm, sideMm));
    },
  },
  angle: quantityField({
    label: 'Angle per side',
    hint: '22, 22 ± 1, 20–24, or heel / middle / tip: 21 / 22 / 24. Empty: not known.',
    unit: () => '°',
    unknown: { low: 12, high: 28 },
    placed: true,
    applies: typedAngle,
    get: ({ angle }) => ('deg' in angle ? angle.deg : undefined),
    set: (knife, deg) => ({ ...knife, angle: { deg } }),
  }),
  bevelThickness: quantityField({
    label: 'A, across the shoulder',
    hint: 'Across the blade, where the bevel begins. Empty: not known.',
    length: true,
    unknown: { low: 0.15, high: 0.9 },
    applies: (knife) => !typedAngle(knife),
    get: (knife) => bevelOf(knife).bevelMm,
    set: (knife, value) => withBevel(knife, angleWay(knife), value as Quantity, bevelOf(knife).sideMm),
  }),
  bevelSide: quantityField({
    label: 'B along the bevel, or C along the blade',
    hint: 'Width along the bevel (B), or height along the blade (C). Empty: not known.',
    length: true,
    unknown: { low: 0.4, high: 2.5 },
    applies: (knife) => !typedAngle(knife),
    get: (knife) => bevelOf(knife).sideMm,
    set: (knife, value) => withBevel(knife, angleWay(knife), bevelOf(knife).bevelMm, value as Quantity),
  }),
} satisfies Record<string, Field>;

export const edgeFields = {
  edge: quantityField({
    label: 'Thickness behind the edge',
    hint: '0.4, 0.40 ± 0.02, or heel / middle / tip. Empty: not known.',
    length: true,
    unknown: { low: 0.15, high: 0.9 },
    placed: true,
    get: ({ edgeMm }) => edgeMm,
    set: (knife, edgeMm) => ({ ...knife, edgeMm }),
  }),
} satisfies Record<string, Field>;

const noGrain = ({ finish }: KnifeEntry): boolean =>
  'um' in finish && typeof finish.um === 'object' && 'unknown' in finish.um;

/** The scale a finish is on; P, which most belts and papers are marked with, where it is not known. */
const scaleOf = (knife: KnifeEntry): GritScale | 'um' =>
  noGrain(knife) ? 'FEPA-P' : 'um' in knife.finish ? 'um' : knife.finish.scale;

export const finishFields = {
  finishScale: {
    kind: 'choice',
    label: 'scale of the grit (P and F are FEPA)',
    choices: [
      ['FEPA-P', 'P'],
      ['FEPA-F', 'F'],
      ['JIS', 'JIS'],
      ['CAMI', 'CAMI'],
      ['um', 'µm'],
    ],
    open: noGrain,
    show: scaleOf,
    write: (knife, scale) =>
      good(
        noGrain(knife)
          ? knife
          : {
              ...knife,
              finish:
                scale === 'um'
                  ? { um: 'um' in knife.finish ? knife.finish.um : 15 }
                  : { scale: scale as GritScale, grit: 'um' in knife.finish ? 400 : knife.finish.grit },
            },
      ),
  },
  finish: {
    kind: 'text',
    label: 'Finish',
    hint: 'The grit of the last stone or belt, or the median size in µm. Empty: not known.',
    unknown: unknownGrain,
    standsFor: () => showQuantity({ unknown: true, ...unknownGrain }, 4),
    show: ({ finish }) => ('um' in finish ? showQuantity(finish.um, 4) : String(finish.grit)),
    write(knife, text, _entry, beside) {
      const scale = beside ?? scaleOf(knife);
      const read = readQuantity(text, {
        what: scale === 'um' ? 'particle size' : 'grit',
        unknown: unknownGrain,
      });
      if (!read.ok) return bad(read.message);
      if (scale === 'um' || (typeof read.value === 'object' && 'unknown' in read.value))
        return good({ ...knife, finish: { um: read.value } });
      return good({ ...knife, finish: { scale: scale as GritScale, grit: plainNumber(read.value) } });
    },
  },
} satisfies Record<string, Field>;

export const microbevelFields = {
  microbevel: quantityField({
    label: 'Microbevel, angle per side',
    hint: 'Empty: there is none.',
    unit: () => '°',
    get: ({ microbevelDeg }) => microbevelDeg,
    set: (knife, value) => ({ ...knife, microbevelDeg: value as Quantity }),
    none: ({ microbevelDeg: _gone, ...rest }) => rest,
  }),
} satisfies Record<string, Field>;
