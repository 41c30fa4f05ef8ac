import type { Planned } from '../topics/plan/values.ts';
import { readNumber, readWindow } from '../comparison/read.ts';
import type { PlanEntry } from '../comparison/entry.ts';
import { brief, inFigures } from '../scene/show.ts';

/** The fields of the plan. None keeps anything: each shows a plan and writes one. */
export type WrittenPlan = { ok: true; plan: PlanEntry } | { ok: false; message: string };

interface PlanField {
  kind: 'text' | 'choice';
  label: string;
  hint?: string;
  unit?: string;
  choices?: readonly (readonly [string, string])[];
  show(plan: Planned): string;
  write(plan: PlanEntry, text: string): WrittenPlan;
}

const good = (plan: PlanEntry): WrittenPlan => ({ ok: true, plan });

function whole(what: string, text: string, high: number, set: (value: number) => PlanEntry): WrittenPlan {
  const read = readNumber(text, { what, low: 0, high });
  if (!read.ok) return read;
  return Number.isInteger(read.value)
    ? good(set(read.value))
    : { ok: false, message: `${what} ${brief(read.value)} is not a whole number` };
}

const planFields = {
  cv: {
    kind: 'text',
    label: 'How much the runs of one knife scatter',
    hint: 'Standard deviation by mean. Empty: the upper 80% limit of what the runs show, or 20% where they show none.',
    unit: '%',
    show: ({ cv }) => brief(cv * 100),
    write(plan, text) {
      const { cv: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      const read = readNumber(text, { what: 'the scatter', unit: '%', low: 1, high: 200 });
      return read.ok ? good({ ...rest, cv: inFigures(read.value / 100, 6) }) : read;
    },
  },
  ratio: {
    kind: 'text',
    label: 'The smallest ratio worth finding',
    hint: '1.25: one lasts 1.25 times as long as the other.',
    show: ({ ratio }) => brief(ratio),
    write(plan, text) {
      const read = readNumber(text, { what: 'the ratio', low: 1.01, high: 20 });
      return read.ok ? good({ ...plan, ratio: read.value }) : read;
    },
  },
  runs: {
    kind: 'text',
    label: 'Sharpenings of each knife on the sheet',
    hint: 'Empty: as many as the two numbers above ask for.',
    show: ({ runs }) => (runs === undefined ? '' : String(runs)),
    write(plan, text) {
      const { runs: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      return whole('the number of sharpenings', text, 200, (runs) => ({ ...rest, runs }));
    },
  },
  lookEvery: {
    kind: 'text',
    label: 'Looked at the end point every',
    hint: 'So many cuts, or mm. Empty: at every cut.',
    show: ({ lookEvery }) => (lookEvery === undefined ? '' : brief(lookEvery)),
    write(plan, text) {
      const { lookEvery: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      const read = readNumber(text, { what: 'looked every', low: 1e-9, high: 1e9 });
      return read.ok ? good({ ...rest, lookEvery: read.value }) : read;
    },
  },
  life: {
    kind: 'text',
    label: 'How long the shorter-lived knife lasts',
    hint: 'In the same unit. Empty: as the runs show.',
    show: ({ life }) => (life === undefined ? '' : brief(life)),
    write(plan, text) {
      const { life: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      const read = readNumber(text, { what: 'the usual life', low: 1e-9, high: 1e9 });
      return read.ok ? good({ ...rest, life: read.value }) : read;
    },
  },
  correlation: {
    kind: 'text',
    label: 'Correlation of two runs on one stock',
    hint: 'Where both knives are cut in pairs on the same piece: 0 they scatter apart, 0.9 nearly as one. Empty: not in pairs.',
    show: ({ correlation }) => (correlation === undefined ? '' : brief(correlation)),
    write(plan, text) {
      const { correlation: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      const read = readNumber(text, { what: 'the correlation', low: -1, high: 0.99 });
      return read.ok ? good({ ...rest, correlation: read.value }) : read;
    },
  },
  batches: {
    kind: 'text',
    label: 'Batches of material',
    hint: 'Every knife is cut in every batch.',
    show: ({ batches }) => String(batches),
    write: (plan, text) => whole('the number of batches', text, 20, (batches) => ({ ...plan, batches })),
  },
  control: {
    kind: 'text',
    label: 'Control knife',
    hint: 'A knife beside the others, cut first and last in every batch. Empty: none.',
    show: ({ control }) => control ?? '',
    write(plan, text) {
      const { control: _before, ...rest } = plan;
      return good(text.trim() === '' ? rest : { ...rest, control: text.trim() });
    },
  },
  endPoint: {
    kind: 'text',
    label: 'The end point, as a reading',
    hint: 'The sharpness, or the force, that counts as blunt. Choose it before you look. Empty: readings are no lives.',
    show: ({ endPoint }) => (endPoint === undefined ? '' : brief(endPoint)),
    write(plan, text) {
      const { endPoint: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      const read = readNumber(text, { what: 'the end point', low: 1e-9, high: 1e9 });
      return read.ok ? good({ ...rest, endPoint: read.value }) : read;
    },
  },
  start: {
    kind: 'text',
    label: 'The sharpness an edge must start with',
    hint: 'From–to, as 90–110, in the unit of your readings. Empty: no such window.',
    show: ({ start }) => (start === undefined ? '' : `${start.low}–${start.high}`),
    write(plan, text) {
      const { start: _before, ...rest } = plan;
      if (text.trim() === '') return good(rest);
      const read = readWindow(text, { what: 'the start', low: 1e-9, high: 1e9 });
      return read.ok ? good({ ...rest, start: { low: read.low, high: read.high } }) : read;
    },
  },
  numbersRestart: {
    kind: 'choice',
    label: 'Numbers of sharpenings',
    choices: [
      ['', 'not said: one number is one edge'],
      ['on', 'go on from batch to batch'],
      ['again', 'start again with each batch'],
    ],
    show: ({ numbersRestart }) => (numbersRestart === undefined ? '' : numbersRestart ? 'again' : 'on'),
    write(plan, text) {
      const { numbersRestart: _before, ...rest } = plan;
      return good(text === '' ? rest : { ...rest, numbersRestart: text === 'again' });
    },
  },
  blind: {
    kind: 'choice',
    label: 'The sheet shows',
    choices: [
      ['codes', 'codes; the key is a sheet of its own'],
      ['names', 'the names of the knives'],
    ],
    show: ({ blind }) => (blind ? 'codes' : 'names'),
    write: (plan, text) => good({ ...plan, blind: text === 'codes' }),
  },
  seed: {
    kind: 'text',
    label: 'Seed of the order',
    hint: 'The same number gives the same sheet again.',
    show: ({ seed }) => String(seed),
    write: (plan, text) => whole('the seed', text, 999_999, (seed) => ({ ...plan, seed })),
  },
} satisfies Record<string, PlanField>;

export type PlanFieldName = keyof typeof planFields;
export const planFieldNames = Object.keys(planFields) as PlanFieldName[];

export function planFieldNamed(name: string): PlanField {
  const field = (planFields as Record<string, PlanField>)[name];
  if (!field)
    throw new RangeError(`there is no field named "${name}"; the names stand in src/test/plan-fields.ts`);
  return field;
}
