import { refusedWork } from '../../phrases/refused-work.ts';
import { runsOf } from '../../scene/runs.ts';
import { times } from '../../scene/show.ts';
import { predictionCheckOf } from '../../scene/check-prediction.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

const interval = ({ low, high }: { low: number; high: number }): string => `${times(low)} and ${times(high)}`;

export const predictionCheckWords: Record<string, WordsOf> = {
  /** Prediction and measurement on one axis. */
  'runs-square': (scene) => {
    const runs = runsOf(scene);
    const { subject, baseline } = scene;
    const sure = sureOf(scene);
    const entered = times(scene.row.careful.product);
    const middle = times(sure.median);
    const predicted = isExact(sure)
      ? middle
      : `${middle === entered ? middle : `${entered} from the measures as they stand; with all that is not known exactly drawn at once, the middle is ${middle}`}, with 90 % between ${interval(sure)}`;
    const refused = refusedWork(scene);
    const opening = `${refused === '' ? '' : `${refused} `}Without a single cut the model puts ${subject.name} against ${baseline.name} at ${predicted}.`;
    const predictionCheck = predictionCheckOf(scene);
    if (runs.measured === null) return [opening, 'There is no measured interval to square it with yet.'];
    if (predictionCheck === null)
      return [
        opening,
        `The runs say ${times(runs.measured.ratio)}. With everything entered as exact and every assumption fixed, the prediction has no band to be weighed by.`,
      ];
    const { leftover, combined, needsExplaining } = predictionCheck;
    return [
      opening,
      `The runs say ${times(runs.measured.ratio)}. What is left over between the two is ${times(leftover.ratio)}, with 90 % between ${interval(leftover)}.`,
      needsExplaining
        ? `That leaves 1 out, so it needs explaining: ${leftover.ratio < 1 ? `${subject.name} did worse against ${baseline.name} than predicted` : `${subject.name} did better against ${baseline.name} than predicted`} by more than both bands allow. Combining them would only hide it.`
        : `That takes 1 in, so prediction and runs agree as far as either goes. Together they say ${times(combined.ratio)}, with 90 % between ${interval(combined)}.`,
    ];
  },
};
