import { wedgeShare } from './push-share.ts';
import { stackNumbers } from './numbers.ts';
import { ends, endsAdded } from '../../scene/stack.ts';
import { stackWords } from './words.ts';
import { stackWorked } from './worked.ts';
import { forces } from './figure-forces.ts';
import { stack, stackLinear } from './figure-stack.ts';
import type { Topic } from '../topic.ts';

/** The whole chain of every knife of the comparison, both readings and the rival beside each other. */
export const topic: Topic = {
  numbers: stackNumbers,
  words: stackWords,
  worked: stackWorked,
  controls: { 'push.wedge': wedgeShare },
  guesses: { stack: (scene) => ({ answer: ends(scene, 'careful').ratio, sum: endsAdded(scene) }) },
  figures: [stack, stackLinear, forces],
};
