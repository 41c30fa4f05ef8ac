/** Lives in the order in which they were cut: does anything but the knives change on the way? */
import { controlDrift, judgeRuns } from '../model/index.ts';
import type { RatioInterval } from '../model/index.ts';
import type { LoggedLife } from './lives.ts';
import { notRecorded } from './log.ts';
import type { Run } from './log.ts';

const dayOf = ({ date = '' }: Run): string => date;

/** By day, then by the order written down, then as the log has them. */
function inOrder(runs: readonly Run[], lives: readonly LoggedLife[]): LoggedLife[] {
  const of = ({ row }: LoggedLife): { day: string; order: number } => {
    const run = runs[row];
    return { day: run ? dayOf(run) : '', order: run?.order ?? 0 };
  };
  return [...lives].sort((a, b) => {
    const [one, other] = [of(a), of(b)];
    return one.day.localeCompare(other.day) || one.order - other.order || a.row - b.row;
  });
}

export interface ControlDrift {
  /** Runs of the control knife that have a life. */
  runs: number;
  /** How many times as long its last half lasted as its first; null where the runs are too few to say. */
  drift: RatioInterval | null;
}

/** The control knife's first runs against its last, by the order of the log. */
export function controlInOrder(
  runs: readonly Run[],
  lives: readonly LoggedLife[],
  control: string,
): ControlDrift {
  const own = inOrder(
    runs,
    lives.filter(({ knife }) => typeof knife === 'object' && knife.called === control),
  );
  return { runs: own.length, drift: controlDrift(own.map(({ life }) => life)) };
}

/**
 * How many times as long runs lasted in the last half of their batch as in the first, knife by knife, so that neither knives
 * nor batches take part. Only runs count whose order and batch are on record; of an odd number the middle one is left out.
 *
 * @returns null where they are too few to say
 */
export function driftWithinBatches(
  runs: readonly Run[],
  lives: readonly LoggedLife[],
): (RatioInterval & { runs: number }) | null {
  const groups = new Map<string, LoggedLife[]>();
  for (const life of lives) {
    const run = runs[life.row];
    if (run?.order === undefined || run.batch === notRecorded) continue;
    const key = JSON.stringify([life.knife, run.batch]);
    groups.set(key, [...(groups.get(key) ?? []), life]);
  }
  const halves = [...groups].flatMap(([batch, group]) => {
    const half = Math.floor(group.length / 2);
    return inOrder(runs, group).flatMap(({ row, life }, place) => {
      const knife = place < half ? 'first' : place >= group.length - half ? 'last' : null;
      return knife === null ? [] : [{ knife, batch, edge: String(row), life }];
    });
  });
  const { ratio, low, high } = judgeRuns(halves, { knife: 'last', against: 'first' });
  return ratio === null || low === null || high === null ? null : { ratio, low, high, runs: halves.length };
}
