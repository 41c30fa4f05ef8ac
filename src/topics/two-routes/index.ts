import { routesOf } from '../../scene/routes.ts';
import { routesNumbers } from './numbers.ts';
import { routesWords } from './words.ts';
import { routesWorked } from './worked.ts';
import { frictionSideBySide } from './figure-friction.ts';
import { twoRoutes } from './figure-two-routes.ts';
import { twoWedges } from './figure-two-wedges.ts';
import type { Topic } from '../topic.ts';

/** The two routes by which one angle enters a ratio. */
export const topic: Topic = {
  numbers: routesNumbers,
  words: routesWords,
  worked: routesWorked,
  guesses: { routes: (scene) => ({ answer: routesOf(scene).careful, sum: null }) },
  figures: [twoRoutes, twoWedges, frictionSideBySide],
};
