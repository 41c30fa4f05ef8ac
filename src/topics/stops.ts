import { stopsWords } from '../lineup/stops-words.ts';
import { bluntingCurves, bluntingRests } from '../plots/blunting.ts';
import { ratioByLoss, ratioByStop } from '../plots/ratio-by-stop.ts';
import type { Topic } from './topic.ts';

/** At which stop two knives are compared: readings along their edges, curves through them, and the ratio by stop. */
export const topic: Topic = {
  words: stopsWords,
  figures: [bluntingCurves, bluntingRests, ratioByStop, ratioByLoss],
};
