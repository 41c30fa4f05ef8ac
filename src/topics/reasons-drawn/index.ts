import { figures } from '../reasons/figure-reasons.ts';
import type { Topic } from '../topic.ts';

/** The pictures of the biggest reasons, which a page needs only for other knives than it was built with. */
export const topic: Topic = { figures };
