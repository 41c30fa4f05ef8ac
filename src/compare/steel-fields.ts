/** The fields of the steel: hardness, carbide and toughness. */
import { carbidesByDesignation } from '../model/index.ts';
import type { CarbideKind, Quantity } from '../model/index.ts';
import type { KnifeEntry } from '../comparison/entry.ts';
import { good } from './field.ts';
import type { Field, TextField } from './field.ts';
import { quantityField } from './quantity-field.ts';

const carbideNames: Record<CarbideKind, string> = {
  Fe3C: 'Cementite Fe₃C',
  CrC: 'Chromium carbide (Cr₇C₃, Cr₂₃C₆)',
  CrVC: 'Chromium–vanadium carbide',
  MC: 'Vanadium or niobium carbide MC',
  M6C: 'Tungsten–molybdenum carbide M₆C',
  MN: 'Vanadium nitride',
  CrN: 'Chromium nitride',
};

const byVolume = ({ carbide }: KnifeEntry): boolean =>
  'volPercent' in carbide && steelOf(carbide.volPercent) !== 'not known';

/** Carbide not known: this range of chromium carbide stands for it, wide enough for every common steel. */
const unknownCarbide = { CrC: { unknown: true, low: 0, high: 16 } } as const;

const steelOf = (volumes: object): 'not known' | 'volume' =>
  JSON.stringify(volumes) === JSON.stringify(unknownCarbide) ? 'not known' : 'volume';

/** A kind of carbide of which nobody knows how much there is: up to more than any standard designation has of all. */
const unknownVolume = { low: 0, high: 20 } as const;

const volumeField = (kind: CarbideKind): TextField =>
  quantityField({
    label: carbideNames[kind],
    hint: 'Volume per cent; 0 where there is none. Empty: not known.',
    unit: () => 'vol %',
    unknown: unknownVolume,
    applies: byVolume,
    get: ({ carbide }) => ('volPercent' in carbide ? (carbide.volPercent[kind] ?? 0) : undefined),
    set: (knife, value) => ({
      ...knife,
      carbide: {
        volPercent: {
          ...('volPercent' in knife.carbide ? knife.carbide.volPercent : {}),
          [kind]: value as Quantity,
        },
      },
    }),
  });

export const hardnessFields = {
  hrc: quantityField({
    label: 'Hardness',
    hint: '60, 60 ± 1, 58–60. Empty: not known.',
    unit: () => 'HRC',
    unknown: { low: 54, high: 64 },
    get: ({ hrc }) => hrc,
    set: (knife, value) => ({ ...knife, hrc: value as Quantity }),
  }),
} satisfies Record<string, Field>;

/** The steel by its designation, or its carbide kind by kind. */
export const carbideFields = {
  steel: {
    kind: 'choice',
    label: 'Steel',
    choices: [
      ['not known', 'not known'],
      ['volume', 'by carbide'],
      ...Object.keys(carbidesByDesignation).map((designation): [string, string] => [
        designation,
        designation,
      ]),
    ],
    show: ({ carbide }) => ('designation' in carbide ? carbide.designation : steelOf(carbide.volPercent)),
    write(knife, value) {
      if (value === 'not known') return good({ ...knife, carbide: { volPercent: unknownCarbide } });
      if (value === 'volume') {
        const known =
          'designation' in knife.carbide ? carbidesByDesignation[knife.carbide.designation] : undefined;
        return good({ ...knife, carbide: { volPercent: known ?? { CrC: 5 } } });
      }
      return good({ ...knife, carbide: { designation: value } });
    },
  },
  ...(Object.fromEntries(
    (Object.keys(carbideNames) as CarbideKind[]).map((kind) => [`carbide${kind}`, volumeField(kind)]),
  ) as Record<`carbide${CarbideKind}`, TextField>),
} satisfies Record<string, Field>;

export const toughnessFields = {
  toughness: quantityField({
    label: 'Toughness',
    hint: 'MPa√m, or one index for all knives. Empty: not known.',
    get: ({ toughness }) => toughness,
    set: (knife, value) => ({ ...knife, toughness: value as Quantity }),
    none: ({ toughness: _gone, ...rest }) => rest,
    empty: 'not known',
  }),
} satisfies Record<string, Field>;
