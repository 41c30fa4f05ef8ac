/** The log of runs: what was cut, with which edge, until when, as it is entered, stored and exported. */
import * as v from 'valibot';

/** What stands in a column that exists but was not filled at the time. It is never guessed. */
export const notRecorded = 'not recorded';
export type Recorded<T> = T | typeof notRecorded;

/**
 * One reading of a series, after so much cut in the unit of the run: sharpness, which falls as the edge dulls, or the
 * force of a cut, which rises.
 */
export interface SeriesReading {
  cut: number;
  sharpness: number;
}

/** What the id of a knife looks like. */
export const knifeIdPattern = /^[a-z0-9-]{1,24}$/;

/** A knife of the comparison by its id, or what the log calls one that the comparison does not have. */
export type KnifeRef = string | { readonly called: string };

/**
 * One run: one series of cuts with one sharpening of one knife. How far it went stands in `cutMm`, or in `cuts` where
 * cuts were counted; a card test gives the depth of every cycle in `cycles` instead, mm.
 */
export interface Run {
  readonly knife: KnifeRef;
  /** The batch of material that was cut. */
  readonly batch: Recorded<string>;
  /** Which sharpening of this knife; runs after one sharpening count as one. */
  readonly sharpening: Recorded<string>;
  /** Material cut until the end point, mm. */
  readonly cutMm?: number;
  /** Cuts until the end point, where they were counted. */
  readonly cuts?: number;
  readonly series?: readonly SeriesReading[];
  /** Depth cut in each cycle of a card test, mm. */
  readonly cycles?: readonly number[];
  /** What ended the run, in words: a sharpness, a force, a torn strand. */
  readonly endPoint: Recorded<string>;
  /** How much was cut between two looks at the stop, in the unit of the run: the true life lies within the last of them. */
  readonly checkedEvery: Recorded<number>;
  readonly startSharpness: Recorded<number>;
  /** Edge angle per side as sharpened, degrees. */
  readonly angleDeg: Recorded<number>;
  readonly burrChecked: Recorded<boolean>;
  /** Who judged that the stop was reached. */
  readonly judge: Recorded<string>;
  /** The run ended before the end point was reached: the edge would have gone on. */
  readonly censored?: true;
  /** Its place in the order of work, from 1; the log's own order where it is left out. */
  readonly order?: number;
  /** Year, month, day. */
  readonly date?: string;
  readonly remarks?: string;
  /** Why the run does not count, in the words of the person who logged it; the run stays in the log. */
  readonly leftOutBecause?: string;
}

/** A run as a file has it: its knife by name, 1–80 characters. */
export type NamedRun = Omit<Run, 'knife'> & { readonly knife: string };

/** What was given, as messages quote it. */
export function shown(input: unknown): string {
  if (typeof input === 'string') return `“${input.length > 40 ? `${input.slice(0, 40)}…` : input}”`;
  if (typeof input === 'number' && !Number.isFinite(input))
    return Number.isNaN(input) ? '(no value)' : '(an endless number)';
  // Turning any other object into text may call what it brings along.
  if (typeof input === 'object' && input !== null) return Array.isArray(input) ? '(a list)' : '(an object)';
  return typeof input === 'function' ? '(a function)' : String(input);
}

/** Whether a text holds nothing that breaks a line unseen, or that no font can show. */
export const printableText = (text: string): boolean => text.isWellFormed() && !/\p{Cc}/u.test(text);

/** Whether a text is a day of the calendar: `2026-11-25`. */
export function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text;
}

function words(what: string, longest: number) {
  return v.pipe(
    v.string(`${what} must be text`),
    // Two names that look alike are one knife: no space around, one form of accented letters.
    v.trim(),
    v.normalize('NFC'),
    v.check((text) => text !== '', `${what} is empty; write “${notRecorded}” if it is not known`),
    v.maxLength(longest, ({ input }) => `${what} has ${input.length} characters; at most ${longest} fit`),
    v.check(printableText, `${what} holds a character that cannot be shown`),
  );
}

/** A finite number above 0. */
function positive(what: string, unit: string, most: number) {
  const message = ({ input }: { input: unknown }) =>
    `${what} ${shown(input)}${unit} is not above 0 and up to ${most}${unit}`;
  return v.pipe(
    v.number(({ input }) => `${what} ${shown(input)} is not a number`),
    v.gtValue(0, message),
    v.maxValue(most, message),
  );
}

function recorded<T extends v.GenericSchema>(what: string, kind: string, schema: T) {
  return v.union(
    [v.literal(notRecorded), schema],
    // A single reason is worth more than the list of what might have stood there.
    ({ input, issues }) =>
      (issues as { message: string; type: string }[] | undefined)?.find(({ type }) => type !== 'literal')
        ?.message ?? `${what} ${shown(input)} is neither ${kind} nor “${notRecorded}”`,
  );
}

const mostCut = 1e9;

const series = v.pipe(
  v.array(
    v.strictObject({
      cut: v.pipe(
        v.number('the cut of a reading must be a number'),
        v.minValue(0, ({ input }) => `the cut ${input} of a reading is below 0`),
        v.maxValue(mostCut, ({ input }) => `the cut ${input} of a reading is above ${mostCut}`),
      ),
      sharpness: positive('the sharpness of a reading', '', 1e9),
    }),
    'the series must be a list of readings',
  ),
  v.minLength(1, 'the series has no reading; leave it out'),
  v.maxLength(10_000, ({ input }) => `the series has ${input.length} readings; at most 10000 fit`),
  v.check(
    (readings) => readings.every(({ cut }, i) => i === 0 || cut > (readings[i - 1]?.cut ?? Infinity)),
    'the cuts of the series do not grow from reading to reading',
  ),
);

const cycles = v.pipe(
  v.array(
    v.pipe(
      v.number('the depth of a cycle must be a number'),
      v.minValue(0, ({ input }) => `the depth ${input} mm of a cycle is below 0`),
      v.maxValue(1000, ({ input }) => `the depth ${input} mm of a cycle is above 1000 mm`),
    ),
    'the cycles must be a list of depths',
  ),
  v.minLength(1, 'the cycles are empty; leave them out'),
  v.maxLength(10_000, ({ input }) => `there are ${input.length} cycles; at most 10000 fit`),
  v.check((depths) => depths.some((depth) => depth > 0), 'no cycle cut anything'),
);

const knifeName = words('the knife', 80);

/** One of the knives of a comparison. */
const knifeOfComparison = v.union(
  [v.pipe(v.string(), v.regex(knifeIdPattern)), v.strictObject({ called: knifeName })],
  ({ input }) => `the knife ${shown(input)} is neither the id of a knife nor what a log calls one`,
);

/** The shape of a run as stored, or as a file has it. */
const schemaWith = <Knife extends v.GenericSchema>(knife: Knife) =>
  v.pipe(
    v.strictObject({
      knife,
      batch: words('the lot', 80),
      sharpening: words('the sharpening', 80),
      cutMm: v.exactOptional(positive('the cut', ' mm', mostCut)),
      cuts: v.exactOptional(positive('the number of cuts', '', mostCut)),
      series: v.exactOptional(series),
      cycles: v.exactOptional(cycles),
      endPoint: words('the stop', 200),
      checkedEvery: recorded('checked every', 'a number', positive('checked every', '', mostCut)),
      startSharpness: recorded(
        'the starting sharpness',
        'a number',
        positive('the starting sharpness', '', 1e9),
      ),
      angleDeg: recorded(
        'the edge angle',
        'a number',
        v.pipe(
          v.number(({ input }) => `the edge angle ${shown(input)} is not a number`),
          v.minValue(4, ({ input }) => `the edge angle ${input}° is below 4° per side`),
          v.maxValue(45, ({ input }) => `the edge angle ${input}° is above 45° per side`),
        ),
      ),
      burrChecked: recorded('burr checked', 'yes or no', v.boolean('burr checked must be yes or no')),
      judge: words('the judge', 80),
      censored: v.exactOptional(v.literal(true, 'censored is true where the run ended early, else left out')),
      order: v.exactOptional(positive('the order', '', 1e6)),
      date: v.exactOptional(
        v.pipe(
          v.string('the date must be text'),
          v.check(isDay, ({ input }) => `the date ${shown(input)} is no day; write year, month, day`),
        ),
      ),
      remarks: v.exactOptional(words('the remarks', 500)),
      leftOutBecause: v.exactOptional(words('the reason it is left out', 200)),
    }),
    v.check(
      (run) => [run.cutMm, run.cuts, run.cycles, run.series].some((part) => part !== undefined),
      'the run says nowhere how far it went: give the cut in mm, the number of cuts, the cycles or a series',
    ),
    v.check(
      (run) => [run.cutMm, run.cuts, run.cycles].filter((part) => part !== undefined).length <= 1,
      'the run says twice how far it went: give the cut in mm, or the number of cuts, or the cycles',
    ),
  );

/** The shape of a run as stored with a comparison. */
export const runSchema = schemaWith(knifeOfComparison) satisfies v.GenericSchema<Run>;

const namedRunSchema = schemaWith(knifeName) satisfies v.GenericSchema<NamedRun>;

/** What is wrong and where: `angleDeg`, `series.3.cut`, or '' for the run as a whole. */
export interface RunProblem {
  path: string;
  message: string;
}

export type ValidatedRun = { ok: true; run: NamedRun } | { ok: false; problems: RunProblem[] };

/**
 * Checks one run of a file or form, which names its knife.
 *
 * @param input Anything: a parsed row, file or form.
 * @returns The run, or every problem found, each with the path of its field and a sentence in plain words.
 */
export function validateRun(input: unknown): ValidatedRun {
  if (Array.isArray(input)) return { ok: false, problems: [{ path: '', message: 'this is not a run' }] };
  const read = v.safeParse(namedRunSchema, input, { abortPipeEarly: true });
  return read.success
    ? { ok: true, run: read.output }
    : { ok: false, problems: read.issues.map((issue) => problemOf(issue)) };
}

function problemOf(issue: v.InferIssue<typeof namedRunSchema>): RunProblem {
  const path = issue.path?.map(({ key }) => String(key)).join('.') ?? '';
  if (issue.type !== 'strict_object') return { path, message: issue.message };
  if (path === '') return { path, message: 'this is not a run' };
  return {
    path,
    message: issue.expected === 'never' ? `${path} is not a column of a log` : `${path} is missing`,
  };
}
