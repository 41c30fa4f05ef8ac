import { limitsControls } from './controls.ts';
import { halved } from './values.ts';
import { limitsWords } from './words.ts';
import { limitsWorked } from './worked.ts';
import { threeLimits } from './figure-three-limits.ts';
import { turningOver } from './figure-turning-over.ts';
import type { Topic } from '../topic.ts';

/** Where a lower angle stops paying: rolling, chipping, the floor, and work that wear does not end. */
export const topic: Topic = {
  words: limitsWords,
  worked: limitsWorked,
  controls: limitsControls,
  // At one depth from the tip: a quarter, which the square of a small angle makes, where half the angle is too low.
  guesses: { limits: (scene) => ({ answer: halved(scene)?.rolling.low ?? 0.25, sum: null }) },
  figures: [threeLimits, turningOver],
};
