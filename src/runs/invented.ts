/** Runs that nobody cut: made from truths that are stated, so that what the runs say can be compared with them. */
import { drawUniform, logSd, normalScore } from '../model/index.ts';
import { notRecorded } from './log.ts';
import type { Run } from './log.ts';

/** What is true of the invented runs, though no run shows it. */
export interface Truths {
  /** By id: median number of cuts of one sharpening in a batch of factor 1; `chance` names the draw, the id if left out. */
  knives: readonly { knife: string; cuts: number; angleDeg?: number; chance?: string }[];
  /** What every knife's cuts are multiplied by in a batch of material. */
  batches: readonly { batch: string; factor: number }[];
  /** Coefficient of variation from sharpening to sharpening within one batch: 0.1 is 10%. */
  spreadCv: number;
  /** Sharpenings of each knife in each batch. */
  sharpenings: number;
}

/** The rigging loft's knives in three coils of rope. All invented. */
export const loftTruths: Truths = {
  knives: [
    { knife: 'plover', cuts: 60, angleDeg: 24, chance: 'Plover' },
    { knife: 'dunlin', cuts: 510, angleDeg: 14, chance: 'Dunlin' },
    { knife: 'curlew', cuts: 176, angleDeg: 17, chance: 'Curlew' },
    { knife: 'avocet', cuts: 170, angleDeg: 17.5, chance: 'Avocet' },
  ],
  batches: [
    { batch: 'coil 1', factor: 1 },
    { batch: 'coil 2', factor: 1.5 },
    { batch: 'coil 3', factor: 0.75 },
  ],
  spreadCv: 0.12,
  sharpenings: 3,
};

/**
 * Invented runs, counted in cuts: the knife's median, times the batch's factor, times a lognormal scatter of its own for
 * every sharpening. A knife's runs are the same whatever other knives there are.
 *
 * @param seed a whole number from 0 to 4294967295; the same seed makes the same runs on every machine
 * @throws RangeError for a seed, spread or number of sharpenings outside its limits, or a median or factor not above 0
 */
export function inventedRuns({ knives, batches, spreadCv, sharpenings }: Truths, seed: number): Run[] {
  if (!Number.isInteger(sharpenings) || sharpenings < 1)
    throw new RangeError(`sharpenings ${sharpenings} is not a whole number of 1 or above`);
  const spread = logSd(spreadCv);
  return knives.flatMap(({ knife, cuts, angleDeg, chance = knife }) =>
    batches.flatMap(({ batch, factor }, place) => {
      if (!(cuts * factor > 0 && cuts * factor < Infinity))
        throw new RangeError(`cuts ${cuts} times factor ${factor} of ${knife} is not above 0`);
      const even = drawUniform(seed, `${chance} in ${batch}`, new Float64Array(sharpenings));
      return Array.from(even, (drawn, index): Run => ({
        knife,
        batch,
        sharpening: String(place * sharpenings + index + 1),
        cuts: Math.max(1, Math.round(cuts * factor * Math.exp(spread * normalScore(drawn)))),
        endPoint: 'a strand left uncut',
        checkedEvery: 1,
        startSharpness: notRecorded,
        angleDeg: angleDeg ?? notRecorded,
        burrChecked: true,
        judge: 'nobody: invented',
      }));
    }),
  );
}

/** The seed of the loft's runs. */
const loftSeed = 11;

/** What the loft's knives cut, invented. */
export const loftRuns = (): Run[] => inventedRuns(loftTruths, loftSeed);
