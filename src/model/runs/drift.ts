/** Did the stock cut alike from batch to batch? */

import { fisherTail } from '../statistics/distributions.ts';

/** A life read exactly, with what it belongs to. */
export interface KnifeLife {
  knife: string;
  batch: string;
  /** Above 0, any unit, the same for all. */
  life: number;
}

export interface Drift {
  /** How many times as long knives last in each batch as in the geometric middle of the batches, knife for knife. */
  batches: { batch: string; ratio: number; runs: number }[];
  /** Chance of batches this far apart if they were alike; null where too few runs are left to tell. */
  p: number | null;
}

/**
 * The shift of each batch, knives evened out: least squares on logarithms with one value a knife and one a batch. A control
 * knife that is cut in every batch ties them together.
 *
 * @param lives of at least two batches, tied together by knives cut in more than one
 * @throws RangeError for a life not above 0, a single batch, or batches that no knife ties together
 * @example batchDrift([{ knife: 'plover', batch: 'a', life: 200 }, { knife: 'plover', batch: 'b', life: 50 }]).batches[0].ratio // → 2.000000
 */
export function batchDrift(lives: readonly KnifeLife[]): Drift {
  lives.forEach(({ life }, i) => {
    if (!(life > 0 && Number.isFinite(life)))
      throw new RangeError(`life ${i} ${life} is not a finite number above 0`);
  });
  const knives = [...new Set(lives.map(({ knife }) => knife))];
  const batches = [...new Set(lives.map(({ batch }) => batch))];
  if (batches.length < 2) throw new RangeError(`there is ${batches.length} batch, at least 2 are needed`);
  checkTied(lives, batches);
  const shift = new Map(batches.map((batch) => [batch, 0]));
  const level = new Map(knives.map((knife) => [knife, 0]));
  // Unreachable: every knife and every batch has its entry.
  const of = (all: ReadonlyMap<string, number>, name: string): number => all.get(name) ?? 0;
  const settle = (
    into: Map<string, number>,
    key: (life: KnifeLife) => string,
    other: (life: KnifeLife) => number,
  ) => {
    let moved = 0;
    for (const name of into.keys()) {
      const own = lives.filter((life) => key(life) === name);
      const mean = own.reduce((sum, life) => sum + Math.log(life.life) - other(life), 0) / own.length;
      moved = Math.max(moved, Math.abs(mean - of(into, name)));
      into.set(name, mean);
    }
    return moved;
  };
  // Means of knives and of batches, each with the other taken off, in turn: they run into the least squares.
  for (let turn = 0; turn < 100_000; turn += 1) {
    const moved = settle(
      level,
      ({ knife }) => knife,
      ({ batch }) => of(shift, batch),
    );
    if (
      Math.max(
        moved,
        settle(
          shift,
          ({ batch }) => batch,
          ({ knife }) => of(level, knife),
        ),
      ) < 1e-14
    )
      break;
  }
  const middle = [...shift.values()].reduce((sum, s) => sum + s, 0) / batches.length;
  return {
    batches: batches.map((batch) => ({
      batch,
      ratio: Math.exp(of(shift, batch) - middle),
      runs: lives.filter((life) => life.batch === batch).length,
    })),
    p: chance(lives, knives, batches, ({ knife, batch }) => of(level, knife) + of(shift, batch)),
  };
}

/** The F test of the batches: squares that are left with them against squares without. */
function chance(
  lives: readonly KnifeLife[],
  knives: readonly string[],
  batches: readonly string[],
  fitted: (life: KnifeLife) => number,
): number | null {
  const [between, left] = [batches.length - 1, lives.length - knives.length - batches.length + 1];
  if (left < 1) return null;
  const rss = (value: (life: KnifeLife) => number): number =>
    lives.reduce((sum, life) => sum + (Math.log(life.life) - value(life)) ** 2, 0);
  const means = new Map(
    knives.map((knife) => {
      const own = lives.filter((life) => life.knife === knife);
      return [knife, own.reduce((sum, { life }) => sum + Math.log(life), 0) / own.length];
    }),
  );
  // Unreachable: every knife has a mean.
  const [within, without] = [rss(fitted), rss(({ knife }) => means.get(knife) ?? 0)];
  if (!(within > 1e-24 * lives.length)) return null;
  return fisherTail(Math.max(0, without - within) / between / (within / left), between, left);
}

function checkTied(lives: readonly KnifeLife[], batches: readonly string[]): void {
  const reached = new Set(batches.slice(0, 1));
  for (let before = 0; before < reached.size;) {
    before = reached.size;
    const knives = new Set(lives.filter(({ batch }) => reached.has(batch)).map(({ knife }) => knife));
    for (const { knife, batch } of lives) if (knives.has(knife)) reached.add(batch);
  }
  const loose = batches.find((batch) => !reached.has(batch));
  if (loose !== undefined)
    throw new RangeError(
      `batch ${loose} shares no knife with batch ${batches[0] ?? ''}: cut a control knife in both`,
    );
}
