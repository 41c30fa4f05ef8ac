import {
  makeEqual,
  nominal,
  ratioCurve,
  sideLoadRatios,
  steelRemovedMm2,
  whatItTakes,
} from '../model/index.ts';
import type { Answer, Comparison, Ends } from '../model/index.ts';
import { pairOf } from './pair.ts';
import { memoizeByScene } from './guessed.ts';
import type { Scene } from './scene.ts';

/** What the baseline would need to draw level with a rival knife by its angle alone. */
export interface Level {
  /** How many times as long the baseline cuts as the other now. */
  now: number;
  answer: Answer;
  /** Cross-section to grind off, mm² (mm³ for each mm of edge); null where nothing or nothing sensible is ground. */
  removedMm2: number | null;
  /** Its resistance to rolling at that angle over that now; null where there is no angle. */
  rolling: Ends | null;
  /** The comparison in which the two meet. */
  comparison: Comparison;
}

export interface DrawLevel {
  /** Against the subject as it is. */
  whole: Level;
  /** Against the subject's steel alone: its geometry and finish set to the baseline's. */
  steel: Level;
}

/**
 * The edge angles at which the baseline draws level with the subject, and with the subject's steel alone, by the close
 * reading, and what they cost. The flanks above the bevel count as parallel.
 */
export const drawLevel = memoizeByScene((scene: Scene): DrawLevel => {
  const comparison = pairOf(scene);
  const found = {
    whole: levelIn(scene, comparison),
    steel: levelIn(scene, makeEqual(comparison, scene.entry.subject, ['geometry', 'finish'])),
  };
  return found;
});

function levelIn({ entry, baselineKnife }: Scene, comparison: Comparison): Level {
  const { subject, baseline } = entry;
  const present = nominal(baselineKnife.angleDeg);
  const asked = { knife: baseline, against: subject, attribute: 'angleDeg' } as const;
  // As it is the model has a ratio, or there would be no scene.
  const now = ratioCurve(comparison, { ...asked, values: [present] })[0] ?? 1;
  const answer = whatItTakes(comparison, asked);
  const { value } = answer;
  if (value === null) return { now, answer, removedMm2: null, rolling: null, comparison };
  const hrc = nominal(baselineKnife.hrc);
  return {
    now,
    answer,
    removedMm2:
      value < present
        ? steelRemovedMm2({
            edgeMm: nominal(baselineKnife.edgeMm),
            fromAngleDeg: present,
            toAngleDeg: value,
          })
        : null,
    rolling: sideLoadRatios({ apexAngleDeg: value, hrc }, { apexAngleDeg: present, hrc }).rolling,
    comparison,
  };
}
