import type { Topic } from '../topic.ts';
import { ruler } from './figure-ruler.ts';
import { gainsAdded } from './figure-sum.ts';
import { ways } from './figure-ways.ts';

/** The answer on one ruler: its range, its middle and its factors; the ways to combine them; and their sum. */
export const topic: Topic = { figures: [ruler, ways, gainsAdded] };
