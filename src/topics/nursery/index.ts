import { nurseryNumbers } from './numbers.ts';
import type { Topic } from '../topic.ts';

/** A nursery's numbers, for the lessons in a context without knives. */
export const topic: Topic = { numbers: nurseryNumbers };
