import { rulerControls } from './controls.ts';
import { rulerNumbers, spanOf } from './numbers.ts';
import { rulerOf } from './values.ts';
import { rulerWords } from './words.ts';
import { rulerWorked } from './worked.ts';
import { ratioRuler } from './figure-ratio-ruler.ts';
import { shareByOrder } from './figure-share-by-order.ts';
import { tenthSteps } from './figure-tenth-steps.ts';
import type { Topic } from '../topic.ts';

/** What share each effect has of a product: the third lesson. */
export const topic: Topic = {
  numbers: rulerNumbers,
  words: rulerWords,
  worked: rulerWorked,
  controls: rulerControls,
  guesses: { ruler: (scene) => ({ answer: spanOf(rulerOf(scene)), sum: null }) },
  figures: [shareByOrder, tenthSteps, ratioRuler],
};
