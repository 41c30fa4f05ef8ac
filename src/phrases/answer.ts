import { unknownMeasures } from '../model/index.ts';
import type { Scene } from '../scene/scene.ts';
import { aboutJob } from './about-job.ts';
import { attributeName } from './attribute-names.ts';
import { headlineSentence } from './headline.ts';
import { jobOf } from './job.ts';
import { capital, list } from './list.ts';
import { countInWords } from '../scene/show.ts';

/** How many measures of the two knives are not known: the answer then stands on the middles of their ranges. */
export function notKnown({
  subjectKnife,
  baselineKnife,
}: Pick<Scene, 'subjectKnife' | 'baselineKnife'>): string {
  const count = [subjectKnife, baselineKnife]
    .flatMap(unknownMeasures)
    .filter(({ what }) => what !== 'toughness').length;
  if (count === 0) return '';
  return count === 1
    ? 'One measure isn’t known: a middle value stands in, and the range is wider for it.'
    : `${capital(countInWords(count))} measures aren’t known: middle values stand in, and the range is wider for it.`;
}

/** What the two knives were made equal in; nothing where they are as they were entered. */
export const madeEqualSaid = ({ entry }: Pick<Scene, 'entry'>): string =>
  entry.madeEqual.length === 0
    ? ''
    : `They were given the same ${list(entry.madeEqual.map((attribute) => attributeName[attribute].name))}, so this is what the rest makes.`;

/** The answer: the range with its middle. */
export function answerOf(scene: Scene): string[] {
  const { entry } = scene;
  if (!jobOf(entry).slicingChain) return aboutJob(scene);
  return [headlineSentence(scene), madeEqualSaid(scene), notKnown(scene)];
}
