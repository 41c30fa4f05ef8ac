import { endPointsWords } from './words.ts';
import { bluntingCurves, bluntingRests } from './figure-blunting.ts';
import { ratioByLoss, ratioByEndPoint } from './figure-ratio-by-stop.ts';
import type { Topic } from '../topic.ts';

/** At which stop two knives are compared: readings along their edges, curves through them, and the ratio by stop. */
export const topic: Topic = {
  words: endPointsWords,
  figures: [bluntingCurves, bluntingRests, ratioByEndPoint, ratioByLoss],
};
