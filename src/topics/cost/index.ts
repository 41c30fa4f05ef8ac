import { levelBandWords, levelOffersWords } from './level-band.ts';
import { priceGain } from './figure-price-gain.ts';
import type { Topic } from '../topic.ts';

/** What offers would give and cost, and how well the angle of drawing level is known: slow, so pages fetch it late. */
export const topic: Topic = {
  words: { 'level-band': levelBandWords, 'level-offers': levelOffersWords },
  figures: [priceGain],
};
