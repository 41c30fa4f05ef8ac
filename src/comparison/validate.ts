import * as v from 'valibot';
import { compared } from './compared.ts';
import { comparisonFields, knifeSchema, listOfKnives } from './comparison-fields.ts';
import type { ComparisonEntry } from './entry.ts';
import { schemaOf } from './field-table.ts';
import { toModel } from './to-model.ts';
import { orRefusal } from './unless-refused.ts';

/** What is wrong and where: `knives.1.angle.deg`. */
export interface Problem {
  path: string;
  message: string;
}

/**
 * What has been read once passes the next time without a look: comparisons are never changed, only replaced, and under a
 * hand on a slider all but one of their parts are those of before.
 */
const taken = new WeakSet<object>();

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

const once = <Value>(schema: v.GenericSchema<Value>): v.GenericSchema<Value> => {
  const noted = v.pipe(
    schema,
    v.transform((read) => {
      if (isObject(read)) taken.add(read);
      return read;
    }),
  );
  const passed = v.custom<Value>(() => true);
  return v.lazy((input) => (isObject(input) && taken.has(input) ? passed : noted));
};

const { contactDepthMm, friction, assumptions, gaugeBias, runs } = comparisonFields;
const readSchema = schemaOf<ComparisonEntry>({
  ...comparisonFields,
  knives: { ...comparisonFields.knives, schema: listOfKnives(once(knifeSchema)) },
  contactDepthMm: { ...contactDepthMm, schema: once(contactDepthMm.schema) },
  friction: { ...friction, schema: once(friction.schema) },
  assumptions: { ...assumptions, schema: once(assumptions.schema) },
  gaugeBias: { ...gaugeBias, schema: once(gaugeBias.schema) },
  runs: { ...runs, schema: once(runs.schema) },
});

export type Validated = { ok: true; entry: ComparisonEntry } | { ok: false; problems: Problem[] };

/**
 * Checks a comparison from any source: shape, limits, and whether the model can compute it.
 *
 * @param input Anything: a parsed file, link or form, of the current document version.
 * @returns The entry, or every problem found, each with the path of its field and a sentence in plain words.
 */
export function validate(input: unknown): Validated {
  if (Array.isArray(input))
    return { ok: false, problems: [{ path: '', message: 'this is not a comparison' }] };
  const read = v.safeParse(readSchema, input, { abortPipeEarly: true });
  if (!read.success) return { ok: false, problems: read.issues.map(problemOf) };
  const entry: ComparisonEntry = read.output;
  const problems = [...contradictions(entry)];
  if (problems.length === 0) problems.push(...refusals(entry));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, entry };
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = issue.path?.map(({ key }) => String(key)).join('.') ?? '';
  if (issue.type !== 'strict_object') return { path, message: issue.message };
  if (issue.expected === 'never') return { path, message: `${path} is not a field of a comparison` };
  return {
    path,
    message:
      path === '' ? 'this is not a comparison' : `${path} is missing or not what a comparison holds there`,
  };
}

/** What the fields say about each other. */
function* contradictions(entry: ComparisonEntry): Generator<Problem> {
  const ids = entry.knives.map((knife) => knife.id);
  for (const [index, own] of ids.entries()) {
    if (ids.indexOf(own) < index)
      yield { path: `knives.${index}.id`, message: `two knives have the id “${own}”` };
  }
  for (const role of ['baseline', 'subject'] as const) {
    if (!ids.includes(entry[role])) {
      yield {
        path: role,
        message: `the ${role} “${entry[role]}” is not among the knives: ${ids.join(', ')}`,
      };
    }
  }
  const stray = entry.runs?.findIndex(({ knife }) => typeof knife === 'string' && !ids.includes(knife)) ?? -1;
  if (stray >= 0)
    yield {
      path: `runs.${stray}.knife`,
      message: `a run is of a knife that is not among: ${ids.join(', ')}`,
    };
  if (entry.baseline === entry.subject) {
    yield {
      path: 'subject',
      message: `“${entry.subject}” cannot be compared with itself: choose another knife or another baseline`,
    };
  }
}

/** What the model refuses, knife by knife, so that the message lands on the knife it is about. */
function* refusals(entry: ComparisonEntry): Generator<Problem> {
  const whole = refusalOf(entry);
  if (whole === undefined) return;
  let found = false;
  for (const [index, knife] of entry.knives.entries()) {
    // A knife beside its own copy: refused only for what it is itself.
    const alone = {
      ...entry,
      madeEqual: [],
      knives: [knife, { ...knife, id: 'copy' }],
      baseline: knife.id,
      subject: 'copy',
    };
    const message = refusalOf(alone);
    if (message === undefined) continue;
    found = true;
    yield { path: `knives.${index}`, message };
  }
  if (!found) yield { path: '', message: whole };
}

const refusalOf = (entry: ComparisonEntry): string | undefined =>
  orRefusal(
    () => {
      compared(toModel(entry));
      return undefined;
    },
    (message) => message,
  );
