/** A comparison, its runs and what they come to in one file that anyone can compute again. */
import * as v from 'valibot';
import { MODEL_NUMBER } from '../../model/index.ts';
import { validate } from '../validate.ts';
import type { ComparisonEntry } from '../entry.ts';
import { evidenceOf } from './evidence.ts';
import type { Evidence, EvidenceQuestion } from './evidence.ts';

/** The file as parsed. `digest` is the SHA-256 of everything else, so that no cell changes unnoticed. */
export interface EvidenceBundle {
  kind: 'keenfold evidence';
  version: 3;
  modelNumber: string;
  entry: ComparisonEntry;
  question: EvidenceQuestion;
  results: Evidence;
  digest: string;
}

/** What does not hold, and where: `results.judged.ratio`. */
export interface BundleProblem {
  path: string;
  message: string;
}

export type CheckedBundle = { ok: true; bundle: EvidenceBundle } | { ok: false; problems: BundleProblem[] };

const questionSchema = v.strictObject({
  knife: v.string(),
  against: v.string(),
  samples: v.pipe(v.number(), v.integer(), v.minValue(100), v.maxValue(1_000_000)),
  seed: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(0xffffffff)),
}) satisfies v.GenericSchema<EvidenceQuestion>;

const bundleSchema = v.strictObject({
  kind: v.literal('keenfold evidence'),
  version: v.literal(3),
  modelNumber: v.string(),
  entry: v.unknown(),
  question: questionSchema,
  results: v.unknown(),
  digest: v.string(),
});

/** Numbers of two machines may differ in the last bits of a tangent. */
const tolerance = 1e-9;

/**
 * The bundle as the text of a file.
 *
 * @throws RangeError as `evidenceOf`
 */
export async function evidenceBundle(entry: ComparisonEntry, question: EvidenceQuestion): Promise<string> {
  const content = {
    kind: 'keenfold evidence' as const,
    version: 3 as const,
    modelNumber: MODEL_NUMBER,
    entry,
    question,
    results: evidenceOf(entry, question),
  };
  return `${JSON.stringify({ ...content, digest: await digestOf(content) }, null, 2)}\n`;
}

/**
 * Checks a bundle by computing everything again from its comparison and runs: the digest, the comparison, every result.
 *
 * @param text The file as text; anything else is refused in words.
 * @returns The bundle, or everything that does not hold.
 */
export async function checkBundle(text: string): Promise<CheckedBundle> {
  const problem = (path: string, message: string): CheckedBundle => ({
    ok: false,
    problems: [{ path, message }],
  });
  const parsed = v.safeParse(bundleSchema, parse(text));
  if (!parsed.success) {
    const [issue] = parsed.issues;
    const path = issue.path?.map(({ key }) => String(key)).join('.') ?? '';
    return problem(
      path,
      path === '' ? 'this is no evidence bundle' : `${path} is not what a bundle holds there`,
    );
  }
  const { digest, ...content } = parsed.output;
  const problems: BundleProblem[] = [];
  if ((await digestOf(content)) !== digest)
    problems.push({ path: 'digest', message: 'the file was changed after it was made' });
  const checked = validate(content.entry);
  if (!checked.ok) {
    problems.push(...checked.problems.map(({ path, message }) => ({ path: `entry.${path}`, message })));
    return { ok: false, problems };
  }
  if (content.modelNumber !== MODEL_NUMBER) {
    const message = `it was made with model ${content.modelNumber}; this is model ${MODEL_NUMBER}, whose results may differ`;
    return { ok: false, problems: [...problems, { path: 'modelNumber', message }] };
  }
  try {
    const results = evidenceOf(checked.entry, content.question);
    problems.push(...differences('results', JSON.parse(JSON.stringify(results)), content.results));
    if (problems.length > 0) return { ok: false, problems };
    return { ok: true, bundle: { ...content, entry: checked.entry, results, digest } };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, problems: [...problems, { path: 'question', message: error.message }] };
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

async function digestOf(content: object): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify(content));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Where what is stated differs from what was computed. */
function* differences(path: string, computed: unknown, stated: unknown): Generator<BundleProblem> {
  if (typeof computed === 'number' && typeof stated === 'number') {
    if (!(Math.abs(computed - stated) <= tolerance * Math.max(1, Math.abs(computed))))
      yield { path, message: `${stated} is stated, ${computed} is what it comes to` };
    return;
  }
  if (isRecord(computed) && isRecord(stated)) {
    for (const key of new Set([...Object.keys(computed), ...Object.keys(stated)]))
      yield* differences(`${path}.${key}`, computed[key], stated[key]);
    return;
  }
  if (computed !== stated)
    yield {
      path,
      message: `${JSON.stringify(stated)} is stated, ${JSON.stringify(computed)} is what it comes to`,
    };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
