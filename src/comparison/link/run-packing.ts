/** A run as a list without field names; a position once used never changes its meaning. */
import { notRecorded } from '../../runs/log.ts';
import type { KnifeRef, Recorded, Run } from '../../runs/log.ts';
import { asItIs, flag, listOf, wholePacking } from './packed.ts';
import type { FieldPackings, Packed, Packing } from './packed.ts';

/** What was not recorded stands as 0: no text and no number of a run is that. */
const recorded = <Value extends string | number>(): Packing<Recorded<Value>> => ({
  pack: (value) => (value === notRecorded ? 0 : value),
  unpack: (packed) => (packed === 0 ? notRecorded : packed),
});

const text = recorded<string>();
const amount = recorded<number>();

const yesOrNo: Packing<Recorded<boolean>> = {
  pack: (value) => (value === notRecorded ? 0 : value ? 'y' : 'n'),
  unpack: (packed) => (packed === 'y' ? true : packed === 'n' ? false : packed === 0 ? notRecorded : packed),
};

/** A knife of the comparison by its place among the knives, any other by what the log calls it. */
const knifeRef = (ids: readonly unknown[]): Packing<KnifeRef> => ({
  pack: (knife) => (typeof knife === 'string' ? ids.indexOf(knife) : knife.called),
  unpack: (packed) => (typeof packed === 'number' ? ids[packed] : { called: packed }),
});

export const runFieldsOf = (ids: readonly unknown[]): FieldPackings<Run> => ({
  knife: { ...knifeRef(ids), position: 0 },
  batch: { ...text, position: 1 },
  sharpening: { ...text, position: 2 },
  cutMm: { ...asItIs, position: 3, optional: true },
  endPoint: { ...text, position: 4 },
  checkedEvery: { ...amount, position: 5 },
  startSharpness: { ...amount, position: 6 },
  angleDeg: { ...amount, position: 7 },
  burrChecked: { ...yesOrNo, position: 8 },
  judge: { ...text, position: 9 },
  censored: { ...flag, position: 10, optional: true },
  cuts: { ...asItIs, position: 11, optional: true },
  series: {
    position: 12,
    optional: true,
    pack: (series): Packed => series.map(({ cut, sharpness }) => [cut, sharpness]),
    unpack: (packed) =>
      Array.isArray(packed)
        ? packed.map((pair: unknown) => {
            const [cut, sharpness] = listOf(pair);
            return { cut, sharpness };
          })
        : packed,
  },
  order: { ...asItIs, position: 14, optional: true },
  date: { ...asItIs, position: 15, optional: true },
  remarks: { ...asItIs, position: 16, optional: true },
  leftOutBecause: { ...asItIs, position: 17, optional: true },
  cycles: { position: 13, optional: true, pack: (cycles): Packed => [...cycles], unpack: (packed) => packed },
});

/** @param ids of the knives of the comparison, in their order */
export const runPacking = (ids: readonly unknown[]): Packing<Run> => wholePacking<Run>(runFieldsOf(ids));
