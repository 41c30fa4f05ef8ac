import { unknownMeasures } from '../model/index.ts';
import type { Scene } from '../scene/scene.ts';
import { aboutJob } from './about-job.ts';
import { attributeName } from './attribute-names.ts';
import { headlineSentence } from './headline.ts';
import { jobOf } from './job.ts';
import { list } from './list.ts';

/** How many measures of the two knives are not known: the answer then stands on the middles of their ranges. */
function notKnown({ subjectKnife, baselineKnife }: Scene): string {
  const count = [subjectKnife, baselineKnife]
    .flatMap(unknownMeasures)
    .filter(({ what }) => what !== 'toughness').length;
  if (count === 0) return '';
  return count === 1
    ? 'One measure in it is not known, so the middle of its range stands in; the notes name it.'
    : `${count} measures in it are not known, so the middles of their ranges stand in; the notes name them.`;
}

/** The answer: the range with its middle. */
export function answerOf(scene: Scene): string[] {
  const { entry } = scene;
  if (!jobOf(entry).slicingChain) return aboutJob(scene);
  return [
    headlineSentence(scene),
    entry.madeEqual.length > 0
      ? `Made equal: ${list(entry.madeEqual.map((attribute) => attributeName[attribute].name))}. The ratio is what the rest is worth.`
      : '',
    notKnown(scene),
  ];
}
