/** A wrong idea met in a problem of one kind on one page, to be met again after a while. */
export interface Note {
  /** The page below the site's base: `lessons/forty-and-forty/`. */
  page: string;
  /** The id of the check on it. */
  anchor: string;
  kind: string;
  /** The idea, by the misstep's id. */
  misstep: string;
  /** The day it was met, or met again and answered rightly. */
  day: number;
  /** How often it has been answered rightly since, each time after its wait. */
  rung: number;
}

/** What a reader has done, as it is kept on the reader's own machine. */
export interface Progress {
  /** Right answers by page. */
  right: Readonly<Record<string, number>>;
  notes: readonly Note[];
}

export const nothingDone: Progress = { right: {}, notes: [] };

/** Days until a misstep comes back, by rung; each wait longer than the one before (common practice, no source). */
const waits = [1, 3, 7, 21] as const;

type Where = Pick<Note, 'page' | 'kind'>;
const same =
  (one: Where) =>
  (other: Where): boolean =>
    one.page === other.page && one.kind === other.kind;

/** A wrong idea was met: it comes back tomorrow, whatever had been answered before. */
export const withMisstep = (
  progress: Progress,
  at: Where & Pick<Note, 'anchor' | 'misstep'>,
  day: number,
): Progress => ({
  ...progress,
  notes: [...progress.notes.filter((note) => !same(at)(note)), { ...at, day, rung: 0 }],
});

/** A right answer: it counts for the page, and lets what was due wait for longer, in the end for good. */
export const withRight = (progress: Progress, at: Where, day: number): Progress => ({
  right: { ...progress.right, [at.page]: (progress.right[at.page] ?? 0) + 1 },
  notes: progress.notes.flatMap((note) => {
    if (!same(at)(note) || !isDue(note, day)) return [note];
    return note.rung + 1 < waits.length ? [{ ...note, day, rung: note.rung + 1 }] : [];
  }),
});

const isDue = ({ day, rung }: Note, today: number): boolean => today - day >= (waits[rung] ?? Infinity);

/** What is worth another look on that day, the longest overdue first. */
export const dueOn = (progress: Progress, today: number): Note[] =>
  progress.notes.filter((note) => isDue(note, today)).sort((one, other) => one.day - other.day);

/** The number of the local day since 1 January 1970. */
export const dayOf = (date: Date): number =>
  Math.floor((date.getTime() - date.getTimezoneOffset() * 60_000) / 86_400_000);

export const writeProgress = (progress: Progress): string => JSON.stringify(progress);

/** Reads what was kept. What is not whole is left out: progress lost is no harm, a page that fails is. */
export function readProgress(text: string | null): Progress {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? 'null');
  } catch {
    return nothingDone;
  }
  if (!isRecord(kept)) return nothingDone;
  const { right, notes } = kept;
  return {
    right: Object.fromEntries(
      Object.entries(isRecord(right) ? right : {}).filter(
        (entry): entry is [string, number] => Number.isInteger(entry[1]) && Number(entry[1]) > 0,
      ),
    ),
    notes: Array.isArray(notes) ? notes.filter(isNote) : [],
  };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isNote = (value: unknown): value is Note =>
  isRecord(value) &&
  ['page', 'anchor', 'kind', 'misstep'].every((name) => typeof value[name] === 'string') &&
  ['day', 'rung'].every((name) => Number.isInteger(value[name])) &&
  Number(value['rung']) >= 0 &&
  Number(value['rung']) < waits.length;
