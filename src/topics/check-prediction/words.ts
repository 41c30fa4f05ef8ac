import { headlineSentence } from '../../phrases/headline.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { rangeSaid, ratioSaid } from '../../phrases/judged-runs.ts';
import { runsOf } from '../../scene/runs.ts';
import { percent } from '../../scene/show.ts';
import { predictionCheckOf } from '../../scene/check-prediction.ts';
import type { Scene } from '../../scene/scene.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

const predictedSaid = (scene: Scene): string => `Without a single cut: ${headlineSentence(scene)}`;

export const predictionCheckWords: Record<string, WordsOf> = {
  /** Prediction and measurement on one axis. */
  'runs-square': (scene) => {
    const runs = runsOf(scene);
    const { subject, baseline } = scene;
    const opening = [refusedWork(scene), predictedSaid(scene)];
    const check = predictionCheckOf(scene);
    if (runs.measured === null) return [...opening, 'There is no measured range to compare it with yet.'];
    const measured = `The runs say ${rangeSaid(runs.measured.low, runs.measured.high)}; ${ratioSaid(runs.measured.ratio)} is the middle.`;
    if (check === null)
      return [
        ...opening,
        measured,
        'Everything was entered as exact, and every assumption is fixed. So the prediction has no range to weigh it by.',
      ];
    const { leftover, needsExplaining } = check;
    const than = `${subject.name} did ${leftover.ratio < 1 ? 'worse' : 'better'} against ${baseline.name} than predicted`;
    return [
      ...opening,
      measured,
      `Measured over predicted is ${rangeSaid(leftover.low, leftover.high)}, nine chances in ten; ${ratioSaid(leftover.ratio)} is the middle.`,
      needsExplaining
        ? `That range leaves out 1, so something needs explaining. ${than}.`
        : `That range holds 1, so prediction and runs don’t clearly disagree.`,
      needsExplaining ? '' : 'That doesn’t prove that they agree.',
    ];
  },

  /** Both in one number, for anyone who asks. */
  'runs-combined': (scene) => {
    const check = predictionCheckOf(scene);
    const { subject, baseline } = scene;
    if (check === null)
      return [`There is nothing to put together for ${subject.name} and ${baseline.name} yet.`];
    const { combined, predictedLogSd, measuredLogSd, needsExplaining } = check;
    const weight = measuredLogSd ** 2 / (predictedLogSd ** 2 + measuredLogSd ** 2);
    return [
      needsExplaining
        ? 'Prediction and runs disagree by more than both ranges allow. One number from both would hide that.'
        : '',
      `Put together, ${subject.name} lasts ${rangeSaid(combined.low, combined.high)} times as long as ${baseline.name}; ${ratioSaid(combined.ratio)} is the middle.`,
      `The prediction has ${percent(weight)} of the weight, the runs ${percent(1 - weight)}.`,
      'That is right only if neither is off by more than its range says.',
    ];
  },
};
