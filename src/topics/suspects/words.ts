import { predictionCheckOf } from '../../scene/check-prediction.ts';
import type { Explanation, SolvableAttribute } from '../../model/index.ts';
import { found } from '../../comparison/found.ts';
import { runsOf } from '../../scene/runs.ts';
import type { Scene } from '../../scene/scene.ts';
import { ratioSaid } from '../../phrases/judged-runs.ts';
import { plain } from '../../scene/show.ts';
import { suspectsOf } from './values.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { attributeName } from '../../phrases/attribute-names.ts';

const valueSaid = (attribute: SolvableAttribute, value: number): string =>
  `${plain(value)}${attributeName[attribute].unit}`;

function suspect(scene: Scene, { knife, attribute, from, to, withinStated, note }: Explanation): string {
  const { name, measure = name } = attributeName[attribute];
  const what = `The ${measure} of ${found(scene.knives, knife, 'knife').name}`;
  if (to === null) return `${what}: no value of it alone explains the runs.`;
  const how = withinStated
    ? 'within the ± it was entered with'
    : note === 'below the floor'
      ? 'but an edge that slim breaks away'
      : note === 'out of the regression'
        ? 'but beyond the hardness of the published line'
        : 'outside what was entered';
  return `${what}: ${valueSaid(attribute, to)} in place of ${valueSaid(attribute, from)}, ${how}.`;
}

/** Whether a suspect is one that can be believed at all. */
const possible = ({ to, note }: Explanation): boolean => to !== null && note === undefined;

export const suspectsWords: Record<string, WordsOf> = {
  /** Which single change of one measure would explain what was measured: possibilities, not findings. */
  'runs-suspects': (scene) =>
    suspectsOf(scene)
      .filter(possible)
      .map((one) => suspect(scene, one)),

  /** Which single changes cannot. */
  'runs-ruled-out': (scene) =>
    suspectsOf(scene)
      .filter((one) => !possible(one))
      .map((one) => suspect(scene, one)),

  /** What the list of suspects is worth. */
  'runs-suspects-said': (scene) => {
    const { measured } = runsOf(scene);
    const { subject, baseline } = scene;
    if (measured === null)
      return [
        `Once ${subject.name} and ${baseline.name} have been cut with, this says which single measure would have to be another to explain what came out.`,
      ];
    return [
      predictionCheckOf(scene)?.needsExplaining === false
        ? `The model and these runs of ${subject.name} and ${baseline.name} are not shown to disagree. The list below closes what gap there is.`
        : '',
      `Each line changes one measure alone until the model says that ${subject.name} lasts ${ratioSaid(measured.ratio)} times as long as ${baseline.name}, with all factors multiplied.`,
      'These are possibilities, nearest first, not findings. Several measures may be off a little at once, and the end point may have been judged differently. The model itself may be wrong, or the factors combine in another way.',
    ];
  },
};
