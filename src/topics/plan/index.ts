import { planNumbers } from './numbers.ts';
import { planWords } from './words.ts';
import { planCurve } from './figure-plan-curve.ts';
import type { Topic } from '../topic.ts';

/** The runs to be cut next: how many would tell, and the sheet they are written on. */
export const topic: Topic = { numbers: planNumbers, words: planWords, figures: [planCurve] };
