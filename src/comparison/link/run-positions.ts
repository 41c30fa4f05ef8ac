import { notRecorded } from '../../runs/log.ts';
import type { Recorded, Run } from '../../runs/log.ts';
import type { Packed } from './positions.ts';

/** A run as a list without field names; a position never changes its meaning within a version of the link. */

/** What was not recorded stands as 0: no text and no number of a run is that. */
const packRecorded = <T>(value: Recorded<T>, pack: (value: T) => Packed): Packed =>
  value === notRecorded ? 0 : pack(value as T);

const same = (value: string | number): Packed => value;

export function packRun(run: Run): Packed {
  const list: Packed[] = [
    run.knife,
    packRecorded(run.batch, same),
    packRecorded(run.sharpening, same),
    run.cutMm ?? null,
    packRecorded(run.endPoint, same),
    packRecorded(run.checkedEvery, same),
    packRecorded(run.startSharpness, same),
    packRecorded(run.angleDeg, same),
    packRecorded(run.burrChecked, (checked) => (checked ? 'y' : 'n')),
    packRecorded(run.judge, same),
    run.censored ? 1 : null,
    run.cuts ?? null,
    run.series?.map(({ cut, sharpness }) => [cut, sharpness]) ?? null,
    run.cycles ?? null,
  ];
  return list.slice(0, list.findLastIndex((item) => item !== null) + 1);
}

const unpackRecorded = (value: unknown): unknown => (value === 0 ? notRecorded : value);

const field = (name: string, value: unknown): object =>
  value === null || value === undefined ? {} : { [name]: value };

/** The run the list stands for, not yet checked. */
export function unpackRun(packed: unknown): unknown {
  const [
    knife,
    batch,
    sharpening,
    cutMm,
    endPoint,
    every,
    start,
    angle,
    burr,
    judge,
    censored,
    cuts,
    series,
    cycles,
  ] = Array.isArray(packed) ? (packed as unknown[]) : [];
  return {
    knife,
    batch: unpackRecorded(batch),
    sharpening: unpackRecorded(sharpening),
    ...field('cutMm', cutMm),
    endPoint: unpackRecorded(endPoint),
    checkedEvery: unpackRecorded(every),
    startSharpness: unpackRecorded(start),
    angleDeg: unpackRecorded(angle),
    burrChecked: burr === 'y' ? true : burr === 'n' ? false : unpackRecorded(burr),
    judge: unpackRecorded(judge),
    ...(censored === 1 ? { censored: true } : {}),
    ...field('cuts', cuts),
    ...field(
      'series',
      Array.isArray(series)
        ? series.map((pair: unknown) => {
            const [cut, sharpness] = Array.isArray(pair) ? (pair as unknown[]) : [];
            return { cut, sharpness };
          })
        : series,
    ),
    ...field('cycles', cycles),
  };
}
