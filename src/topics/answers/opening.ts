import { jobOf } from '../../phrases/job.ts';
import { headlineSentence } from '../../phrases/headline.ts';
import type { Scene } from '../../scene/scene.ts';

/** Whether wear does not end the edge in the work of the scene, so that its slicing chain is refused. */
export const isRefused = ({ entry }: Scene): boolean => !jobOf(entry).slicingChain;

/** Up to here two names together may stand again in an answer. */
const mostLetters = 50;

/** What the two knives are called behind the opening: by name, or by their order where the names are long. */
export const called = ({ subject, baseline }: Scene): { subject: string; baseline: string } =>
  subject.name.length + baseline.name.length > mostLetters
    ? { subject: 'the first', baseline: 'the other' }
    : { subject: subject.name, baseline: baseline.name };

/**
 * Opens an answer with the headline: whom it covers, the range and its middle. Long names stand here alone, so
 * that they do not make it long.
 */
export const opening = (scene: Scene): string =>
  `${isRefused(scene) ? 'In clean slicing, which this work is not: ' : ''}${headlineSentence(scene)}`;
