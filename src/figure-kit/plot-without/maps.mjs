/** Stands for Plot's `projection.js` and for `d3-geo`: no drawing is a map. */
import { refuse } from './refuse.mjs';

const no = refuse('maps');

export const createProjection = () => undefined;
export const hasProjection = () => false;
export const projectionAspectRatio = () => undefined;
export {
  no as applyPosition,
  no as geoCentroid,
  no as geoGraticule10,
  no as geoPath,
  no as getGeometryChannels,
  no as project,
  no as xyProjection,
};
