import { wedgeShare } from '../lineup/push-share.ts';
import { stackNumbers } from '../lineup/stack-numbers.ts';
import { ends, endsAdded } from '../lineup/stack.ts';
import { stackWords } from '../lineup/stack-words.ts';
import { stackWorked } from '../lineup/stack-worked.ts';
import { forces } from '../plots/forces.ts';
import { stack, stackLinear } from '../plots/stack.ts';
import type { Topic } from './topic.ts';

/** The whole chain of every knife of the line-up, both readings and the rival beside each other. */
export const topic: Topic = {
  numbers: stackNumbers,
  words: stackWords,
  worked: stackWorked,
  controls: { 'push.wedge': wedgeShare },
  calls: { stack: (scene) => ({ answer: ends(scene, 'close').ratio, sum: endsAdded(scene) }) },
  figures: [stack, stackLinear, forces],
};
