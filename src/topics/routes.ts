import { routesOf } from '../lineup/routes.ts';
import { routesNumbers } from '../lineup/routes-numbers.ts';
import { routesWords } from '../lineup/routes-words.ts';
import { routesWorked } from '../lineup/routes-worked.ts';
import { twoRoutes } from '../plots/two-routes.ts';
import { twoWedges } from '../plots/two-wedges.ts';
import type { Topic } from './topic.ts';

/** The two routes by which one angle enters a ratio. */
export const topic: Topic = {
  numbers: routesNumbers,
  words: routesWords,
  worked: routesWorked,
  calls: { routes: (scene) => ({ answer: routesOf(scene).close, sum: null }) },
  figures: [twoRoutes, twoWedges],
};
