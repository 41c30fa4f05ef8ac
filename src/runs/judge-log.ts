/** A log judged: the one way from runs to a verdict on two knives. */
import { judgeRuns } from '../model/index.ts';
import type { Judgement } from '../model/index.ts';
import { livesOf } from './lives.ts';
import type { LivesQuestion, LoggedLife, LogLives } from './lives.ts';
import type { Run } from './log.ts';

export interface LogQuestion extends Omit<LivesQuestion, 'knives'> {
  /** Ids of the knife looked at and of the one it is compared with. */
  knife: string;
  against: string;
  /** Judge as if every batch cut alike, to show what that would say; no verdict may go by it. */
  ignoreBatches?: boolean | undefined;
}

export interface LogJudgement extends Omit<Judgement, 'leftOut'>, LogLives {
  /** Pairs of knives that this log can judge, all of which hold at once. */
  family: number;
  /** Confidence of the interval from `low` to `high`: 0.95 for one pair, more for each of several. */
  confidence: number;
  /** A sharpening of one of the two that is logged in several batches, and nobody said whether it is one edge. */
  askedNumber: { knife: string; sharpening: string; batches: string[] } | null;
}

const alpha = 0.05;

/** Pairs of knives with two sharpenings each: those a verdict is possible for. */
function pairsIn(lives: readonly LoggedLife[]): number {
  const edges = new Map<string, Set<string>>();
  for (const { knife, edge } of lives)
    if (typeof knife === 'string') edges.set(knife, (edges.get(knife) ?? new Set()).add(edge));
  const knives = [...edges.values()].filter(({ size }) => size > 1).length;
  return Math.max(1, (knives * (knives - 1)) / 2);
}

function askedNumber(lives: readonly LoggedLife[], knives: readonly string[]): LogJudgement['askedNumber'] {
  for (const knife of knives) {
    const batchesOf = new Map<string, Set<string>>();
    for (const { knife: own, sharpening, batch } of lives)
      if (own === knife && sharpening !== undefined && batch !== undefined)
        batchesOf.set(sharpening, (batchesOf.get(sharpening) ?? new Set()).add(batch));
    for (const [sharpening, batches] of batchesOf)
      if (batches.size > 1) return { knife, sharpening, batches: [...batches] };
  }
  return null;
}

/**
 * Judges two knives of a log, by the same function and the same rules for every page, lesson and file. With more than two
 * knives in the log all pairs hold at once.
 *
 * @throws RangeError for a knife against itself
 */
export function judgeLog(runs: readonly Run[], question: LogQuestion): LogJudgement {
  const { knife, against, numbersRestart, ignoreBatches = false } = question;
  const found = livesOf(runs, { ...question, knives: [knife, against] });
  const family = pairsIn(found.lives);
  const logged = found.lives.map(({ knife: of, batch, edge, life }) => ({
    edge,
    life,
    batch: ignoreBatches ? undefined : batch,
    // A knife that is none of the comparison's is judged against nobody.
    knife: typeof of === 'string' ? of : ' ',
  }));
  const { leftOut, ...judged } = judgeRuns(logged, { knife, against, family });
  const ofTwo = found.leftOut.filter(({ row }) => runs[row]?.knife === knife || runs[row]?.knife === against);
  return {
    ...found,
    ...judged,
    leftOut: [...ofTwo, ...leftOut.map(({ run, why }) => ({ row: found.lives[run]?.row ?? run, why }))].sort(
      (a, b) => a.row - b.row,
    ),
    family,
    confidence: 1 - alpha / family,
    askedNumber: numbersRestart === undefined ? askedNumber(found.lives, [knife, against]) : null,
  };
}

/** A ratio with the interval that goes with it, and the one "as good as equal" is looked for in. */
export interface Measured {
  ratio: number;
  low: number;
  high: number;
  low90: number;
  high90: number;
}

/** The ratio with its intervals; null where the runs give none. */
export function measuredOf({
  ratio,
  low,
  high,
  low90,
  high90,
}: Pick<Judgement, 'ratio' | 'low' | 'high' | 'low90' | 'high90'>): Measured | null {
  if (ratio === null || low === null || high === null || low90 === null || high90 === null) return null;
  return { ratio, low, high, low90, high90 };
}
