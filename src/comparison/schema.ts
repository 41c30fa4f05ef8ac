import * as v from 'valibot';
import { disputes, jobProfiles, parameters } from '../model/index.ts';
import type {
  Assumptions,
  CarbideVolPercent,
  Finish,
  Grind,
  ParameterId,
  Position,
  Quantity,
  Reading,
} from '../model/index.ts';
import { runSchema, printableText, shown } from '../runs/log.ts';
import type { Run } from '../runs/log.ts';
import { compared } from './compared.ts';
import { toModel } from './to-model.ts';
import { orRefusal } from './unless-refused.ts';

export { angleQuestions, toModel } from './to-model.ts';

/** Three readings along the edge of one knife, in the unit of the attribute. */
export interface Along {
  heel: number;
  middle: number;
  tip: number;
}

/** One value for the whole edge, or readings along it. */
export type Placed = Quantity | Along;

/**
 * How the edge angle was found. `deg` is per side. `bevelMm` is the thickness at the shoulder of the bevel;
 * `plusMinus` then is the ± of each caliper reading, mm, beside what ± a reading has of its own.
 */
export type AngleEntry =
  | {
      deg: Placed;
      /** The visitor confirmed that an angle over 30° is meant per side. */
      perSide?: true;
    }
  | { bevelMm: Quantity; slantWidthMm: Quantity; plusMinus?: number }
  | { bevelMm: Quantity; heightMm: Quantity; plusMinus?: number };

/** Typical hardened volumes by standard designation, or the volume per cent of each kind. */
export type CarbideEntry = { volPercent: CarbideVolPercent } | { designation: string };

/** One knife as a visitor enters it. Lengths in mm, angles per side in degrees. */
export interface KnifeEntry {
  /** Small letters, digits and hyphens, 1–24. */
  readonly id: string;
  /** 1–80 characters of any script. */
  readonly name: string;
  readonly state: 'as bought' | 'resharpened' | 'modified' | 'not recorded';
  readonly angle: AngleEntry;
  readonly microbevelDeg?: Quantity;
  readonly edgeMm: Placed;
  readonly finish: Finish;
  readonly grind: Grind;
  readonly hrc: Quantity;
  readonly carbide: CarbideEntry;
  readonly toughness?: Quantity;
}

/** What can be made equal: the subject then takes the baseline's value. */
export const equalisable = ['angleDeg', 'edgeMm', 'finish', 'grind', 'hrc', 'carbideVolPercent'] as const;
export type Equalisable = (typeof equalisable)[number];

/** The session that is to be cut next. */
export interface PlanEntry {
  /** Coefficient of variation of one knife's runs, 0.2 is 20 %; what the runs show where it is left out. */
  readonly cv?: number;
  /** The smallest ratio of two lives worth finding, above 1. */
  readonly ratio: number;
  /** Sharpenings of each knife; as many as the scatter asks for where it is left out. */
  readonly runs?: number;
  /** Of the logarithms of two runs cut in a pair on the same stock, −1 to 0.99; not in pairs where it is left out. */
  readonly correlation?: number;
  /** How many batches of material they are spread over. */
  readonly batches: number;
  /** A knife beside the others, cut first and last in every batch. */
  readonly control?: string;
  /** The sharpness at which readings of two knives are compared; halfway where it is left out. */
  readonly endPoint?: number;
  /** Between which readings an edge must start, in their own unit; no window where it is left out. */
  readonly start?: { low: number; high: number };
  /** The sheet shows codes in place of names. */
  readonly blind: boolean;
  /** The same seed gives the same sheet. */
  readonly seed: number;
  /** The log is closed: its runs stay as they are, and the key of a blind sheet is open. */
  readonly closed?: true;
  /** The log was opened again after its key was open. */
  readonly reopened?: true;
}

/** A correction of what was published before. */
export interface CorrectionEntry {
  /** Year, month, day. */
  readonly date: string;
  readonly reason: string;
  /** One sentence a number that changed. */
  readonly changed: readonly string[];
}

/** A whole comparison as it is entered, stored, linked and exported. */
export interface ComparisonEntry {
  /** 1–120 characters. */
  readonly title: string;
  /** Demo data, shown as such. */
  readonly invented?: true;
  /** Two to eight. */
  readonly knives: readonly KnifeEntry[];
  /** The id of the knife everything is compared with. */
  readonly baseline: string;
  /** The id of the knife looked at; not the baseline. */
  readonly subject: string;
  readonly reading: Reading;
  /** The id of a job profile of the model. */
  readonly work: string;
  /** Slice/push speed ratio; 0 takes the friction as already effective. */
  readonly slicePush: number;
  readonly contactDepthMm: Quantity;
  readonly friction: Quantity;
  readonly assumptions: Assumptions;
  /** The common ± of the gauge that measured all of them: degrees per side, mm, HRC. */
  readonly gaugeBias?: { angleDeg?: number; edgeMm?: number; hrc?: number };
  /** Where the visitor stands on the disputed assumptions; left out where it is the careful estimate's own. */
  readonly position?: Position;
  /** What was cut, where anything was. */
  readonly runs?: readonly Run[];
  /** What is to be cut next, where that was thought about. */
  readonly plan?: PlanEntry;
  /** What was corrected since it was published, the oldest first. */
  readonly corrections?: readonly CorrectionEntry[];
  /** How lengths are shown and typed; they are stored in mm. */
  readonly lengthUnit: 'mm' | 'thou';
  readonly madeEqual: readonly Equalisable[];
  /** A chain of percentages typed instead of measurements, at most ten; each above −100. */
  readonly faceValues: readonly number[] | null;
}

/** Whether a text is a day of the calendar: `2026-11-25`. */
function isDay(text: string): boolean {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text;
}

/** A finite number between two limits; what it is and its unit stand in the message. */
function number(what: string, unit: string, low: number, high: number, perSide = '') {
  const range = `between ${low}${unit} and ${high}${unit}${perSide}`;
  const message = ({ input }: { input: unknown }) => `${what} ${shown(input)}${unit} is not ${range}`;
  return v.pipe(
    v.number(({ input }) => `${what} ${shown(input)} is not a number`),
    v.minValue(low, message),
    v.maxValue(high, message),
  );
}

/** A whole number between two limits. */
const whole = (what: string, low: number, high: number) =>
  v.pipe(
    number(what, '', low, high),
    v.check(
      (value) => Number.isInteger(value),
      ({ input }) => `${what} ${input} is not a whole number`,
    ),
  );

/** The same as a quantity: known, known to within ±, or not known beyond a range. */
function quantity(what: string, unit: string, low: number, high: number, perSide = '') {
  const value = number(what, unit, low, high, perSide);
  return v.union(
    [
      value,
      v.strictObject({
        value,
        plusMinus: number(`the ± of ${what}`, unit, 0, high - low),
        shape: v.exactOptional(v.picklist(['uniform', 'triangular', 'normal'])),
      }),
      v.pipe(
        v.strictObject({ unknown: v.literal(true), low: value, high: value }),
        v.check(
          (range) => range.low <= range.high,
          ({ input }) => `the range of ${what} runs backwards: ${input.low}–${input.high}`,
        ),
      ),
    ],
    `${what} must be a number, a number with its ±, or “not known” with a range`,
  );
}

/** An assumption of the model: its limits are the model's own. */
const assumed = (what: string, id: ParameterId) => {
  const { accepts } = parameters[id];
  return quantity(what, '', accepts.low, accepts.high);
};

function placed(what: string, unit: string, low: number, high: number, perSide = '') {
  const value = number(what, unit, low, high, perSide);
  const along = v.strictObject({ heel: value, middle: value, tip: value });
  return v.union(
    [...quantity(what, unit, low, high, perSide).options, along],
    `${what} must be a number, a number with its ±, “not known” with a range, or readings at heel, middle and tip`,
  );
}

/** Words of any script: not empty, not longer than so many characters, nothing invisible that breaks a line. */
function words(what: string, longest: number) {
  return v.pipe(
    v.string(`${what} must be text`),
    v.minLength(1, `${what} is empty`),
    v.maxLength(longest, ({ input }) => `${what} has ${input.length} characters; at most ${longest} fit`),
    v.check((text) => text.trim() !== '', `${what} is empty`),
    v.check(printableText, `${what} holds a character that cannot be shown`),
  );
}

const id = v.pipe(
  v.string('a knife’s id must be text'),
  v.regex(
    /^[a-z0-9-]{1,24}$/,
    ({ input }) => `the id ${shown(input)} is not 1–24 small letters, digits and hyphens`,
  ),
);

function oneOf<const T extends readonly string[]>(what: string, options: T) {
  return v.picklist(options, ({ input }) => `${what} ${shown(input)} is none of: ${options.join(', ')}`);
}

const plusMinusMm = v.exactOptional(number('the ± of a caliper reading', ' mm', 0, 2));
const bevelMm = quantity('the thickness at the shoulder of the bevel', ' mm', 0.01, 10);

const angle = v.union(
  [
    v.strictObject({
      deg: placed('edge angle', '°', 4, 45, ' per side'),
      perSide: v.exactOptional(v.literal(true)),
    }),
    v.strictObject({
      bevelMm,
      slantWidthMm: quantity('the width of the bevel', ' mm', 0.01, 30),
      plusMinus: plusMinusMm,
    }),
    v.strictObject({
      bevelMm,
      heightMm: quantity('the height of the bevel', ' mm', 0.01, 30),
      plusMinus: plusMinusMm,
    }),
  ],
  'the edge angle must be degrees per side (deg), or the thickness at the shoulder (bevelMm) with the width (slantWidthMm) or the height (heightMm) of the bevel',
);

const volume = v.exactOptional(quantity('carbide', ' vol %', 0, 40));

const knife = v.strictObject({
  id,
  name: words('the name', 80),
  state: oneOf('the state', ['as bought', 'resharpened', 'modified', 'not recorded']),
  angle,
  microbevelDeg: v.exactOptional(quantity('microbevel angle', '°', 4, 45, ' per side')),
  edgeMm: placed('thickness behind the edge', ' mm', 0.01, 5),
  finish: v.union(
    [
      v.strictObject({
        scale: oneOf('the grit scale', ['FEPA-P', 'FEPA-F', 'JIS', 'CAMI']),
        grit: number('grit', '', 80, 8000),
      }),
      v.strictObject({ um: quantity('median particle size', ' µm', 0.1, 250) }),
    ],
    'the finish must be a grit with its scale, or a median particle size in µm (um)',
  ),
  grind: v.strictObject({
    form: oneOf('the grind', ['flat', 'hollow', 'convex']),
    spineMm: quantity('thickness at the spine', ' mm', 0.1, 20),
    heightMm: quantity('height of the grind', ' mm', 0.5, 150),
    radiusMm: v.exactOptional(quantity('radius of the grind', ' mm', 1, 10000)),
  }),
  hrc: quantity('hardness', ' HRC', 20, 68),
  carbide: v.union(
    [
      v.strictObject({
        volPercent: v.strictObject({
          Fe3C: volume,
          CrC: volume,
          CrVC: volume,
          MC: volume,
          M6C: volume,
          MN: volume,
          CrN: volume,
        }),
      }),
      v.strictObject({ designation: words('the designation', 24) }),
    ],
    'the carbide must be volume per cent by kind (volPercent), or a standard designation',
  ),
  toughness: v.exactOptional(quantity('toughness', '', 0.001, 10000)),
});

const listOfKnives = <T extends v.GenericSchema<KnifeEntry>>(one: T) =>
  v.pipe(
    v.array(one, 'the knives must be a list'),
    v.minLength(2, ({ input }) => `a line-up has two to eight knives, not ${input.length}`),
    v.maxLength(8, ({ input }) => `a line-up has two to eight knives, not ${input.length}`),
  );

const share = number('a share of the cutting force', '', 0, 1);

/** The shape of the stored document. Checks between fields and the model's own are in `validate`. */
export const comparisonSchema = v.strictObject({
  title: words('the title', 120),
  invented: v.exactOptional(v.literal(true)),
  knives: listOfKnives(knife),
  baseline: id,
  subject: id,
  reading: oneOf('the reading', ['quick', 'careful']),
  work: oneOf(
    'the work',
    jobProfiles.map((profile) => profile.id),
  ),
  slicePush: number('slice to push', '', 0, 100),
  contactDepthMm: quantity('depth of contact', ' mm', 0.1, 100),
  friction: assumed('friction', 'friction'),
  assumptions: v.strictObject({
    angleExponent: v.exactOptional(assumed('the angle exponent', 'angleExponent')),
    thicknessExponent: v.exactOptional(assumed('the thickness exponent', 'thicknessExponent')),
    finishExponent: v.exactOptional(assumed('the finish exponent', 'finishExponent')),
    hardnessExponent: v.exactOptional(assumed('the hardness exponent', 'hardnessExponent')),
    residualCv: v.exactOptional(assumed('the scatter of steels about the regression', 'residualCv')),
    rivalShares: v.exactOptional(v.strictObject({ wedge: share, thickness: share, grind: share })),
  }),
  gaugeBias: v.exactOptional(
    v.strictObject({
      angleDeg: v.exactOptional(number('the common ± of the angle', '°', 0, 20)),
      edgeMm: v.exactOptional(number('the common ± of the thickness', ' mm', 0, 2)),
      hrc: v.exactOptional(number('the common ± of the hardness', ' HRC', 0, 20)),
    }),
  ),
  position: v.exactOptional(
    v.strictObject({
      apex: v.exactOptional(oneOf('what the angle does at the apex', disputes.apex)),
      push: v.exactOptional(oneOf('how the wedge is pushed', disputes.push)),
      forces: v.exactOptional(oneOf('what the forces do', disputes.forces)),
      floor: v.exactOptional(oneOf('the floor of the angle', disputes.floor)),
    }),
  ),
  runs: v.exactOptional(
    v.pipe(
      v.array(runSchema, 'the runs must be a list'),
      v.maxLength(2000, ({ input }) => `there are ${input.length} runs; a line-up carries at most 2000`),
    ),
  ),
  plan: v.exactOptional(
    v.strictObject({
      cv: v.exactOptional(number('the scatter', '', 0.01, 2)),
      ratio: number('the ratio', '', 1.01, 20),
      runs: v.exactOptional(whole('runs', 1, 200)),
      batches: whole('lots', 1, 20),
      control: v.exactOptional(words('the name', 80)),
      endPoint: v.exactOptional(number('the stop', '', 1e-9, 1e9)),
      correlation: v.exactOptional(number('the correlation', '', -1, 0.99)),
      start: v.exactOptional(
        v.pipe(
          v.strictObject({
            low: number('the lower end of the start', '', 1e-9, 1e9),
            high: number('the upper end of the start', '', 1e-9, 1e9),
          }),
          v.check(({ low, high }) => low < high, 'the window of the start runs backwards, or has no width'),
        ),
      ),
      blind: v.boolean(),
      seed: whole('the seed', 0, 999_999),
      closed: v.exactOptional(v.literal(true, 'closed is true where the log is closed, else left out')),
      reopened: v.exactOptional(
        v.literal(true, 'reopened is true where the log was opened again, else left out'),
      ),
    }),
  ),
  corrections: v.exactOptional(
    v.pipe(
      v.array(
        v.strictObject({
          date: v.pipe(
            v.string('the date must be text'),
            v.check(isDay, ({ input }) => `${shown(input)} is no day; write year, month, day`),
          ),
          reason: words('the reason', 300),
          changed: v.pipe(
            v.array(words('what changed', 400), 'what changed must be a list'),
            v.maxLength(5000, ({ input }) => `${input.length} sentences are more than 5000`),
          ),
        }),
        'the corrections must be a list',
      ),
      v.maxLength(50, ({ input }) => `there are ${input.length} corrections; at most 50 fit`),
    ),
  ),
  lengthUnit: oneOf('the unit of length', ['mm', 'thou']),
  madeEqual: v.pipe(
    v.array(oneOf('what is evened up,', equalisable)),
    v.check((list) => new Set(list).size === list.length, 'an attribute is evened up twice'),
  ),
  faceValues: v.nullable(
    v.pipe(
      v.array(
        v.pipe(
          v.number('a percentage must be a number'),
          v.gtValue(-100, ({ input }) => `${input} % leaves nothing: a percentage is above −100 %`),
          v.maxValue(1000, ({ input }) => `${input} % is above 1000 %`),
        ),
      ),
      v.maxLength(10, ({ input }) => `a chain has at most ten percentages, not ${input.length}`),
    ),
  ),
}) satisfies v.GenericSchema<ComparisonEntry>;

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

const once = <T extends v.GenericSchema>(schema: T) => {
  const noted = v.pipe(
    schema,
    v.transform((read) => {
      if (isObject(read)) taken.add(read);
      return read;
    }),
  );
  const passed = v.custom<v.InferOutput<T>>(() => true);
  return v.lazy((input) => (isObject(input) && taken.has(input) ? passed : noted));
};

const { entries } = comparisonSchema;
const readSchema = v.strictObject({
  ...entries,
  knives: listOfKnives(once(knife)),
  contactDepthMm: once(entries.contactDepthMm),
  friction: once(entries.friction),
  assumptions: once(entries.assumptions),
  gaugeBias: v.exactOptional(once(entries.gaugeBias.wrapped)),
  runs: v.exactOptional(once(entries.runs.wrapped)),
}) satisfies v.GenericSchema<ComparisonEntry>;

export type Validated = { ok: true; entry: ComparisonEntry } | { ok: false; problems: Problem[] };

/**
 * Checks a comparison from any source: shape, limits, and whether the model can compute it.
 *
 * @param input Anything: a parsed file, link or form, of the current document version.
 * @returns The entry, or every problem found, each with the path of its field and a sentence in plain words.
 */
export function validate(input: unknown): Validated {
  if (Array.isArray(input)) return { ok: false, problems: [{ path: '', message: 'this is not a line-up' }] };
  const read = v.safeParse(readSchema, input, { abortPipeEarly: true });
  if (!read.success) return { ok: false, problems: read.issues.map(problemOf) };
  const entry: ComparisonEntry = read.output;
  const problems = [...contradictions(entry)];
  if (problems.length === 0) problems.push(...refusals(entry));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, entry };
}

function problemOf(issue: v.InferIssue<typeof readSchema>): Problem {
  const path = issue.path?.map(({ key }) => String(key)).join('.') ?? '';
  if (issue.type !== 'strict_object') return { path, message: issue.message };
  if (issue.expected === 'never') return { path, message: `${path} is not a field of a line-up` };
  return {
    path,
    message: path === '' ? 'this is not a line-up' : `${path} is missing or not what a line-up holds there`,
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
