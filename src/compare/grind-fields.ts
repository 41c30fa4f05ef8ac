/** The fields of the primary grind. */
import type { Grind, GrindForm, Quantity } from '../model/index.ts';
import type { KnifeEntry } from '../comparison/entry.ts';
import { good } from './field.ts';
import type { Field, TextField } from './field.ts';
import { quantityField } from './quantity-field.ts';
import type { QuantityFieldOptions } from './quantity-field.ts';

const curved = ({ grind }: KnifeEntry): boolean => grind.form !== 'flat';

const grindField = (
  key: 'spineMm' | 'heightMm' | 'radiusMm',
  more: Pick<QuantityFieldOptions, 'label' | 'hint' | 'applies' | 'unknown'>,
): TextField =>
  quantityField({
    ...more,
    length: true,
    get: ({ grind }) => grind[key],
    set: (knife, value) => ({ ...knife, grind: { ...knife.grind, [key]: value as Quantity } }),
  });

export const grindFields = {
  grindForm: {
    kind: 'choice',
    label: 'Grind',
    choices: [
      ['flat', 'flat'],
      ['hollow', 'hollow'],
      ['convex', 'convex'],
    ],
    show: ({ grind }) => grind.form,
    write(knife, form) {
      const { spineMm, heightMm, radiusMm } = knife.grind;
      const grind: Grind = {
        form: form as GrindForm,
        spineMm,
        heightMm,
        ...(form === 'flat' ? {} : { radiusMm: radiusMm ?? 150 }),
      };
      return good({ ...knife, grind });
    },
  },
  spine: grindField('spineMm', {
    label: 'Thickness at the spine',
    hint: 'Full thickness, above the grind: 3, or 3 ± 0.1. Empty: not known.',
    unknown: { low: 1.5, high: 5 },
  }),
  grindHeight: grindField('heightMm', {
    label: 'Height of the grind',
    hint: 'From the shoulder to full thickness. Empty: not known.',
    unknown: { low: 8, high: 40 },
  }),
  radius: grindField('radiusMm', {
    label: 'Radius of the face',
    hint: 'Of the wheel for a hollow, of the bulge for a convex face. Empty: not known.',
    unknown: { low: 40, high: 400 },
    applies: curved,
  }),
} satisfies Record<string, Field>;
