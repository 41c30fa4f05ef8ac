/** What a log says about two knives: which of their runs can be compared, and what is left out of it. */

/**
 * How long one run lasted, in any unit: read exactly, given up before its end point, or known to lie between two looks.
 * From 0 means that the edge was already blunt at the first look.
 */
export type RunLife = { cuts: number } | { atLeast: number } | { from: number; to: number };

/** One run of a log: one sharpening, cut within one batch of material. */
export interface LoggedRun {
  knife: string;
  /** The batch of material; left out where it was not recorded. */
  batch?: string | undefined;
  /** The sharpening. Runs of one knife with the same name here were cut with the same edge. */
  edge: string;
  life: RunLife;
}

/** The lives of one edge in one batch, as one: the logarithms of their geometric means. */
export interface Cell {
  /** 0 for the knife looked at, 1 for the one it is compared with. */
  knife: 0 | 1;
  /** Number of the edge, counted over both knives. */
  edge: number;
  /** Number of the batch; 0 for all where none is recorded. */
  batch: number;
  /** The logarithm of the life lies from `low` to `high`, which may be without end on one side. */
  low: number;
  high: number;
  /** Places of its runs in the log. */
  runs: number[];
}

/** Whether the cell's runs reached their end point, at a look or between two. */
export const closed = ({ low, high }: Cell): boolean => low > -Infinity && high < Infinity;

export const ofKnife = (cells: readonly Cell[], knife: number): Cell[] =>
  cells.filter((cell) => cell.knife === knife);

/** How many edges the cells come from. */
export const edgeCount = (cells: readonly Cell[]): number => new Set(cells.map(({ edge }) => edge)).size;

export interface LeftOut {
  /** Place of the run in the log, counted from 0. */
  run: number;
  why: string;
}

/** What of a log can be compared. */
export interface ReadLog {
  cells: Cell[];
  /** Names of the batches the knives share; empty where no batch is recorded. */
  batches: string[];
  leftOut: LeftOut[];
  /** Batches are recorded, both knives have runs, and no batch holds both. */
  apart: boolean;
}

interface Limits {
  low: number;
  high: number;
}

interface PlacedRun extends Limits {
  run: number;
  knife: 0 | 1;
  batch: string | undefined;
  edge: string;
}

/** Ends of a life in its own unit, the upper one Infinity where the run was given up. */
function limitsOf(life: RunLife, run: number): Limits {
  if ('cuts' in life) {
    if (!(life.cuts > 0 && life.cuts < Infinity))
      throw new RangeError(`life of run ${run}, ${life.cuts} cuts, is not a finite number above 0`);
    return { low: life.cuts, high: life.cuts };
  }
  if ('atLeast' in life) {
    if (!(life.atLeast >= 0 && life.atLeast < Infinity))
      throw new RangeError(
        `life of run ${run}, at least ${life.atLeast}, is not a finite number of 0 or above`,
      );
    return { low: life.atLeast, high: Infinity };
  }
  const { from, to } = life;
  if (!(from >= 0 && from < Infinity && to >= from && to > 0))
    throw new RangeError(`life of run ${run}, from ${from} to ${to}, is not in order from 0 upwards`);
  return { low: from, high: to };
}

/** The runs of both knives that say something about a life. */
function place(
  runs: readonly LoggedRun[],
  knives: readonly [string, string],
  leftOut: LeftOut[],
): PlacedRun[] {
  const placed: PlacedRun[] = [];
  runs.forEach(({ knife, batch, edge, life }, run) => {
    const { low, high } = limitsOf(life, run);
    if (knife !== knives[0] && knife !== knives[1]) return;
    if (low === 0 && high === Infinity) leftOut.push({ run, why: 'it was given up before the first cut' });
    else placed.push({ run, knife: knife === knives[0] ? 0 : 1, batch: batch || undefined, edge, low, high });
  });
  return placed;
}

/** Names of the batches in which both knives were cut, in the order of the log. */
function sharedBatches(placed: readonly PlacedRun[]): string[] {
  const knivesIn = new Map<string, Set<number>>();
  for (const { knife, batch } of placed)
    if (batch !== undefined) knivesIn.set(batch, (knivesIn.get(batch) ?? new Set<number>()).add(knife));
  return [...knivesIn].filter(([, knives]) => knives.size === 2).map(([batch]) => batch);
}

/**
 * Sorts out the runs of two knives. Where batches are recorded only those count that both knives share, since anywhere
 * else a harder batch looks like a worse knife.
 *
 * @throws RangeError for a life that is none, naming the run by its place in the log
 */
export function readLog(runs: readonly LoggedRun[], knives: readonly [string, string]): ReadLog {
  const leftOut: LeftOut[] = [];
  const placed = place(runs, knives, leftOut);
  const recorded = placed.some(({ batch }) => batch !== undefined);
  const batches = sharedBatches(placed);
  const used = recorded
    ? placed.filter(({ run, knife, batch }) => {
        if (batch !== undefined && batches.includes(batch)) return true;
        const why =
          batch === undefined
            ? 'its batch is not recorded'
            : `batch ${batch} holds no run of ${knives[1 - knife] ?? ''}`;
        leftOut.push({ run, why });
        return false;
      })
    : placed;
  const both = [0, 1].every((knife) => placed.some((run) => run.knife === knife));
  const apart = recorded && both && batches.length === 0;
  const { kept, dropped } = dropBarren(cellsOf(used, batches), batches);
  leftOut.push(...dropped);
  leftOut.sort((a, b) => a.run - b.run);
  const left = batches.filter((_, batch) => kept.some((cell) => cell.batch === batch));
  const renumbered = kept.map((cell) => ({
    ...cell,
    batch: Math.max(0, left.indexOf(batches[cell.batch] ?? '')),
  }));
  return { cells: renumbered, batches: left, leftOut, apart };
}

/** One cell for every edge in every batch: the mean logarithms of its lives' ends. */
function cellsOf(used: readonly PlacedRun[], batches: readonly string[]): Cell[] {
  const edges = new Map<string, number>();
  const cells = new Map<string, Cell>();
  for (const { run, knife, batch: name, edge: edgeName, low, high } of used) {
    const edge = edges.get(`${knife} ${edgeName}`) ?? edges.size;
    edges.set(`${knife} ${edgeName}`, edge);
    const batch = name === undefined ? 0 : batches.indexOf(name);
    const cell = cells.get(`${edge} ${batch}`) ?? { knife, edge, batch, low: 0, high: 0, runs: [] };
    cells.set(`${edge} ${batch}`, cell);
    cell.low += Math.log(low);
    cell.high += Math.log(high);
    cell.runs.push(run);
  }
  return [...cells.values()].map((cell) => ({
    ...cell,
    low: cell.low / cell.runs.length,
    high: cell.high / cell.runs.length,
  }));
}

/**
 * Drops cells that say nothing: those open to both sides (one life given up, another too short for the first look), and
 * those of a batch in which no run reached its end point, whose own mean is then free.
 */
function dropBarren(
  cells: readonly Cell[],
  batches: readonly string[],
): { kept: Cell[]; dropped: LeftOut[] } {
  const dropped: LeftOut[] = [];
  const kept = cells.filter((cell) => {
    const open = cell.low === -Infinity && cell.high === Infinity;
    const barren = !cells.some((other) => other.batch === cell.batch && closed(other));
    if (!open && !barren) return true;
    const where = batches[cell.batch] === undefined ? '' : ` in batch ${batches[cell.batch] ?? ''}`;
    const why = barren
      ? `no run${where} reached its end point`
      : 'the lives of its edge are open to both sides';
    dropped.push(...cell.runs.map((run) => ({ run, why })));
    return false;
  });
  return { kept, dropped };
}
