import { priceGain } from '../plots/price-gain.ts';
import type { Topic } from './topic.ts';

/** What the offers that stand in the fields at first would give and cost; the bench shows it of those typed there. */
export const topic: Topic = { figures: [priceGain] };
