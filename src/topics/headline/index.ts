import { answerOf } from '../../phrases/answer.ts';
import { headlineOf } from '../../scene/headline.ts';
import { short } from '../../scene/show.ts';
import type { Topic } from '../topic.ts';

/** The answer a page gives first. It takes the samples of the model, so that it can come late. */
export const topic: Topic = {
  numbers: {
    'headline.low': (scene) => short(headlineOf(scene).low),
    'headline.middle': (scene) => short(headlineOf(scene).middle),
    'headline.high': (scene) => short(headlineOf(scene).high),
  },
  words: { answer: answerOf },
};
