import { chain } from './chain.ts';
import { drawLevelFigure } from './draw-level.ts';
import type { Figure } from './figure.ts';
import { growingBars } from './growing-bars.ts';
import { rangeRace, rangeRaceLinear } from './range-race.ts';
import { rankingsFigure } from './rankings.ts';
import { readings } from './readings.ts';
import { sections } from './sections.ts';
import { twoRoutes } from './two-routes.ts';
import { twoWedges } from './two-wedges.ts';

/** Every figure of the site. */
export const figures: readonly Figure[] = [
  chain,
  growingBars,
  readings,
  rankingsFigure,
  sections,
  twoRoutes,
  twoWedges,
  drawLevelFigure,
  rangeRace,
  rangeRaceLinear,
];

const byId = new Map(figures.map((figure) => [figure.id, figure]));

/** The figure of that name. An unknown name is a mistake in the page and fails the build. */
export function figureNamed(id: string): Figure {
  const figure = byId.get(id);
  if (!figure)
    throw new RangeError(`there is no figure named "${id}"; the names stand in src/plots/index.ts`);
  return figure;
}
