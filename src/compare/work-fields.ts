import { jobProfiles } from '../model/index.ts';
import { readNumber, readQuantity, showQuantity } from '../comparison/read.ts';
import type { Equalisable } from '../comparison/entry.ts';
import { typedPercent } from '../scene/show.ts';
import { assumptionFields } from './assumption-fields.ts';
import { good } from './work-field.ts';
import type { WorkField } from './work-field.ts';

/** How the knife is moved, as slice/push speed ratios ξ. */
const motions: readonly (readonly [string, string])[] = [
  ['0', 'push straight through'],
  ['1', 'push with a draw (ξ = 1)'],
  ['3', 'long slices (ξ = 3)'],
  ['10', 'very long slices (ξ = 10)'],
];

const percentPattern = /[,;]\s+|\s*;\s*|\s+(?=[+−-])|\s*\n\s*/;

const workFields = {
  title: {
    kind: 'text',
    label: 'Title of the comparison',
    show: ({ title }) => title,
    write: (entry, text) => good({ ...entry, title: text.trim() }),
  },
  work: {
    kind: 'choice',
    label: 'What is cut',
    choices: jobProfiles.map(({ id, name }) => [id, name] as const),
    show: ({ work }) => work,
    write: (entry, work) => good({ ...entry, work }),
  },
  slicePush: {
    kind: 'choice',
    label: 'How it is cut',
    choices: motions,
    show: ({ slicePush }) => String(slicePush),
    write: (entry, text) => good({ ...entry, slicePush: Number(text) }),
  },
  outcome: {
    kind: 'choice',
    label: '“As long” means',
    choices: [
      ['end-point', 'how much it cuts until it is blunt'],
      ['fixed-strokes', 'card cut in a fixed number of strokes'],
    ],
    show: ({ outcome }) => outcome ?? 'end-point',
    write(entry, outcome) {
      const { outcome: _before, ...others } = entry;
      return good(outcome === 'fixed-strokes' ? { ...others, outcome } : others);
    },
  },
  friction: {
    kind: 'text',
    label: 'Friction in the cut',
    hint: 'The coefficient µ₀. We assume 0.25, from 0.1 to 0.4. Empty: not known.',
    show: ({ friction }) => showQuantity(friction, 4),
    write(entry, text) {
      const read = readQuantity(text, { what: 'friction', unknown: { low: 0.1, high: 0.4 } });
      return read.ok ? good({ ...entry, friction: read.value }) : read;
    },
  },
  contactDepth: {
    kind: 'text',
    label: 'Depth of contact',
    hint: 'How far up the blade the material touches. We assume 8 mm. Empty: not known.',
    unit: 'mm',
    show: ({ contactDepthMm }) => showQuantity(contactDepthMm, 4),
    write(entry, text) {
      const read = readQuantity(text, {
        what: 'depth of contact',
        unit: 'mm',
        unknown: { low: 2, high: 30 },
      });
      return read.ok ? good({ ...entry, contactDepthMm: read.value }) : read;
    },
  },
  lengthUnit: {
    kind: 'choice',
    label: 'Lengths in',
    choices: [
      ['mm', 'millimetres'],
      ['thou', 'thousandths of an inch'],
    ],
    show: ({ lengthUnit }) => lengthUnit,
    write: (entry, unit) => good({ ...entry, lengthUnit: unit === 'thou' ? 'thou' : 'mm' }),
  },
  reading: {
    kind: 'choice',
    label: 'Estimate shown first',
    choices: [
      ['careful', 'careful estimate: the whole model'],
      ['quick', 'quick sum: done in your head'],
    ],
    show: ({ reading }) => reading,
    write: (entry, reading) => good({ ...entry, reading: reading === 'quick' ? 'quick' : 'careful' }),
  },
  faceValues: {
    kind: 'text',
    label: 'Percentages, one after another',
    hint: 'For example +40%, +40%, −10%. Empty: the comparison’s own factors.',
    show: ({ faceValues }) => faceValues?.map(typedPercent).join(', ') ?? '',
    write(entry, text) {
      if (text.trim() === '') return good({ ...entry, faceValues: null });
      const values: number[] = [];
      for (const part of text.trim().split(percentPattern)) {
        const read = readNumber(part, { what: 'percentage', unit: '%' });
        if (!read.ok) return read;
        values.push(read.value);
      }
      return good({ ...entry, faceValues: values });
    },
  },
  ...assumptionFields,
} satisfies Record<string, WorkField>;

export type WorkFieldName = keyof typeof workFields;

export const workFieldNamed = (name: string): WorkField => {
  const field = (workFields as Record<string, WorkField>)[name];
  if (!field)
    throw new RangeError(`there is no field named "${name}"; the names stand in src/compare/work-fields.ts`);
  return field;
};

/** The switches that set an attribute of the knife looked at to the baseline's. */
export const switches: readonly { attribute: Equalisable; label: string }[] = [
  { attribute: 'angleDeg', label: 'edge angle' },
  { attribute: 'edgeMm', label: 'thickness behind the edge' },
  { attribute: 'grind', label: 'primary grind' },
  { attribute: 'finish', label: 'finish' },
  { attribute: 'hrc', label: 'hardness' },
  { attribute: 'carbideVolPercent', label: 'carbide' },
];

/** What is left to differ when everything else is made equal. */
export const onlyThese: readonly { label: string; equalised: readonly Equalisable[] }[] = [
  { label: 'Nothing made equal', equalised: [] },
  { label: 'Only geometry differs', equalised: ['finish', 'hrc', 'carbideVolPercent'] },
  {
    label: 'Only the finish differs',
    equalised: ['angleDeg', 'edgeMm', 'grind', 'hrc', 'carbideVolPercent'],
  },
  { label: 'Only the steel differs', equalised: ['angleDeg', 'edgeMm', 'grind', 'finish'] },
];
