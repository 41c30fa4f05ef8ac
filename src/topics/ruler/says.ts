import { aboutJob } from '../../phrases/about-job.ts';
import { headlineSentence } from '../../phrases/headline.ts';
import { jobOf } from '../../phrases/job.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Headline } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { countInWords } from '../../scene/show.ts';
import { markText } from './figures-of-ratio.ts';

/** The range, or null where wear does not end the edge in this work: the slicing estimate is then refused. */
export const rangeOf = (scene: Scene): Headline | null =>
  jobOf(scene.entry).slicingChain ? headlineOf(scene) : null;

/** What an empty ruler says instead. */
export const refused = 'No slicing estimate for this work';

/** What the ruler counts. */
export const stripName = ({ comparison }: Scene): string =>
  comparison.outcome === 'fixed-strokes' ? 'Times as much' : 'Times as long';

/** Why, in one sentence. */
export const refusedCaption = (scene: Scene): string => aboutJob(scene)[0] ?? refused;

/** “All seven reasons”: how many factors there are, in words. */
export const allReasons = ({ row }: Scene): string => `all ${countInWords(row.careful.terms.length)} reasons`;

/** The range with its middle, and what all factors make. */
export const rulerCaption = (scene: Scene): string =>
  rangeOf(scene) === null
    ? refusedCaption(scene)
    : `${headlineSentence(scene).replace(/\.$/, '')}, and ${allReasons(scene)} make ${markText(scene.row.careful.multiplied)} if they multiply.`;
