import { stackNumbers } from './numbers.ts';
import { ends, endsAdded } from '../../scene/stack.ts';
import { stackWords } from './words.ts';
import { stackWorked } from './worked.ts';
import { forces } from './figure-forces.ts';
import { stack, stackLinear } from './figure-stack.ts';
import type { Topic } from '../topic.ts';

/** The whole chain of every knife of the comparison, by the quick sum and under the three structures. */
export const topic: Topic = {
  numbers: stackNumbers,
  words: stackWords,
  worked: stackWorked,
  guesses: { stack: (scene) => ({ answer: ends(scene, 'multiplied').ratio, sum: endsAdded(scene) }) },
  figures: [stack, stackLinear, forces],
};
