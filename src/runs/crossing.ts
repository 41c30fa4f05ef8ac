/** Where a series of readings comes to a stop, without any curve through it. */
import { curveKindOf } from './curve-kind.ts';
import type { SeriesReading } from './log.ts';

/**
 * The readings made to fall by pooling neighbours that rise (least squares under that one condition), then joined by
 * straight lines; forces, which rise, the other way round.
 *
 * @param readings Cuts growing.
 * @param stop In the unit of the readings.
 * @returns Cuts to the stop; null where the readings start at or beyond it, or do not come to it.
 */
export function crossing(readings: readonly SeriesReading[], endPoint: number): number | null {
  return curveKindOf(readings) === 'falling'
    ? fallsTo(readings, endPoint)
    : fallsTo(
        readings.map(({ cut, sharpness }) => ({ cut, sharpness: -sharpness })),
        -endPoint,
      );
}

function fallsTo(readings: readonly SeriesReading[], endPoint: number): number | null {
  const falling = pooled(readings.map(({ sharpness }) => sharpness));
  for (let i = 1; i < readings.length; i += 1) {
    const [before, after] = [falling[i - 1] ?? Number.NaN, falling[i] ?? Number.NaN];
    const [from, to] = [readings[i - 1]?.cut ?? Number.NaN, readings[i]?.cut ?? Number.NaN];
    if (before > endPoint && after <= endPoint)
      return from + ((to - from) * (before - endPoint)) / (before - after);
  }
  return null;
}

/** The nearest falling values, by pooling adjacent violators. */
function pooled(values: readonly number[]): number[] {
  const blocks: { mean: number; count: number }[] = [];
  for (const value of values) {
    let block = { mean: value, count: 1 };
    for (let last = blocks.at(-1); last !== undefined && last.mean < block.mean; last = blocks.at(-1)) {
      blocks.pop();
      const count = last.count + block.count;
      block = { mean: (last.mean * last.count + block.mean * block.count) / count, count };
    }
    blocks.push(block);
  }
  return blocks.flatMap(({ mean, count }) => Array.from({ length: count }, () => mean));
}
