import { rulerControls } from '../lineup/ruler-controls.ts';
import { rulerNumbers, spanOf } from '../lineup/ruler-numbers.ts';
import { rulerOf } from '../lineup/ruler.ts';
import { rulerWords } from '../lineup/ruler-words.ts';
import { rulerWorked } from '../lineup/ruler-worked.ts';
import { ratioRuler } from '../plots/ratio-ruler.ts';
import { shareByOrder } from '../plots/share-by-order.ts';
import { tenthSteps } from '../plots/tenth-steps.ts';
import type { Topic } from './topic.ts';

/** What share each effect has of a product: the third lesson. */
export const topic: Topic = {
  numbers: rulerNumbers,
  words: rulerWords,
  worked: rulerWorked,
  controls: rulerControls,
  calls: { ruler: (scene) => ({ answer: spanOf(rulerOf(scene)), sum: null }) },
  figures: [shareByOrder, tenthSteps, ratioRuler],
};
