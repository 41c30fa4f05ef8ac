import { jobOf } from '../../phrases/job.ts';
import { headlineSentence } from '../../phrases/headline.ts';
import type { Scene } from '../../scene/scene.ts';

/** Whether wear does not end the edge in the work of the scene, so that its slicing chain is refused. */
export const isRefused = ({ entry }: Scene): boolean => !jobOf(entry).slicingChain;

/**
 * Opens an answer with the headline: whom it covers, the range and its middle. The names stand here and hardly anywhere
 * else in it, so that long ones do not make it long.
 */
export const opening = (scene: Scene): string =>
  `${isRefused(scene) ? 'In clean slicing, which this work is not: ' : ''}${headlineSentence(scene)}`;
