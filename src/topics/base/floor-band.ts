import * as Plot from '@observablehq/plot';
import { edgeAngleRange } from '../../model/index.ts';

/** Where the floor of edge angles is looked for ends here, degrees per side: common practice. */
export const floorEndDeg = 6;

/** The stretch of slim angles in which an edge of hardened steel may fold, over the whole height of a drawing. */
export const floorBand = (low: number, high: number): Plot.RenderableMark =>
  Plot.rect([{ x1: edgeAngleRange.low, x2: floorEndDeg, y1: low, y2: high }], {
    x1: 'x1',
    x2: 'x2',
    y1: 'y1',
    y2: 'y2',
    className: 'kf-floor',
  });
