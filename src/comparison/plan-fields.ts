import * as v from 'valibot';
import type { PlanEntry } from './entry.ts';
import type { FieldTable } from './field-table.ts';
import { asItIs, listOf } from './link/packed.ts';
import { number, whole, words } from './schema-parts.ts';

const onlyTrue = (message: string) => v.literal(true, message);

/** The fields of a plan. A position in the link once used never changes. */
export const planFields: FieldTable<PlanEntry> = {
  cv: { ...asItIs, schema: number('the scatter', '', 0.01, 2), position: 0, optional: true },
  ratio: { ...asItIs, schema: number('the ratio', '', 1.01, 20), position: 1 },
  runs: { ...asItIs, schema: whole('runs', 1, 200), position: 5, optional: true },
  batches: { ...asItIs, schema: whole('lots', 1, 20), position: 2 },
  control: { ...asItIs, schema: words('the name', 80), position: 6, optional: true },
  endPoint: { ...asItIs, schema: number('the stop', '', 1e-9, 1e9), position: 7, optional: true },
  correlation: { ...asItIs, schema: number('the correlation', '', -1, 0.99), position: 11, optional: true },
  start: {
    schema: v.pipe(
      v.strictObject({
        low: number('the lower end of the start', '', 1e-9, 1e9),
        high: number('the upper end of the start', '', 1e-9, 1e9),
      }),
      v.check(({ low, high }) => low < high, 'the window of the start runs backwards, or has no width'),
    ),
    position: 10,
    optional: true,
    pack: ({ low, high }) => [low, high],
    unpack(packed) {
      const [low, high] = listOf(packed);
      return { low, high };
    },
  },
  blind: { ...asItIs, schema: v.boolean(), position: 4 },
  numbersRestart: { ...asItIs, schema: v.boolean(), position: 12, optional: true },
  endPointLate: {
    ...asItIs,
    schema: onlyTrue(
      'endPointLate is true where the end point was set after the first readings, else left out',
    ),
    position: 13,
    optional: true,
  },
  looks: {
    schema: v.pipe(
      v.array(whole('a look', 1, 2000), 'the looks must be a list'),
      v.maxLength(50, ({ input }) => `there are ${input.length} looks; at most 50 fit`),
      v.check((looks) => looks.every((look, i) => look > (looks[i - 1] ?? 0)), 'the looks do not grow'),
    ),
    position: 14,
    optional: true,
    pack: (looks) => [...looks],
    unpack: (packed) => packed,
  },
  lookEvery: { ...asItIs, schema: number('looked every', '', 1e-9, 1e9), position: 15, optional: true },
  life: { ...asItIs, schema: number('the usual life', '', 1e-9, 1e9), position: 16, optional: true },
  seed: { ...asItIs, schema: whole('the seed', 0, 999_999), position: 3 },
  closed: {
    ...asItIs,
    schema: onlyTrue('closed is true where the log is closed, else left out'),
    position: 8,
    optional: true,
  },
  reopened: {
    ...asItIs,
    schema: onlyTrue('reopened is true where the log was opened again, else left out'),
    position: 9,
    optional: true,
  },
};
