/** The measured ratio of two knives of a log. */
import { measuredRatio } from '../model/index.ts';
import type { AlikeBounds, Measured } from '../model/index.ts';
import type { LifeUnit } from './lives.ts';
import { logLives } from './log-lives.ts';
import type { LogLives, LogLivesOptions } from './log-lives.ts';
import type { Run } from './log.ts';

export interface MeasureOptions extends LogLivesOptions {
  knife: string;
  against: string;
  /** Compare within batches; where it is left out, wherever at least two batches hold both knives. */
  withinBatches?: boolean;
  confidence?: number;
  alikeWithin?: AlikeBounds;
}

export type LogMeasured = Pick<LogLives, 'leftOut' | 'notes'> & { unit: LifeUnit; withinBatches: boolean } & (
    | { ok: true; measured: Measured }
    /** Why there is no ratio, in words. */
    | { ok: false; why: string }
  );

/**
 * How many times as long `knife` lasts as `against`, from the runs of a log, or in words why that cannot be said. Never
 * a number that is none.
 */
export function measureLog(runs: readonly Run[], options: MeasureOptions): LogMeasured {
  const { knife, against, confidence, alikeWithin } = options;
  const { unit, lives, leftOut, notes } = logLives(runs, options);
  const x = lives.filter((life) => life.knife === knife);
  const y = lives.filter((life) => life.knife === against);
  const shared = new Set(x.flatMap(({ batch }) => (y.some((life) => life.batch === batch) ? [batch] : [])));
  const allHaveBatches = [...x, ...y].every(({ batch }) => batch !== undefined);
  const withinBatches = options.withinBatches ?? (allHaveBatches && shared.size >= 2);
  const about = { unit, withinBatches, leftOut, notes };
  try {
    const measured = measuredRatio({
      x,
      y,
      withinBatches,
      ...(confidence === undefined ? {} : { confidence }),
      ...(alikeWithin === undefined ? {} : { alikeWithin }),
    });
    return { ...about, ok: true, measured };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ...about, ok: false, why: named(error.message, knife, against) };
  }
}

/** The model covers x and y; a reader knows the knives by name. */
const named = (message: string, knife: string, against: string): string =>
  message.replace(/\b([xy])\b/g, (_whole, letter) => (letter === 'x' ? knife : against));
