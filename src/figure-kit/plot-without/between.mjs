/** Stands for `d3-interpolate`: nothing between two colours is drawn. */
import { refuse } from './refuse.mjs';

const no = refuse('colours between colours');

export * from 'd3-interpolate';
export {
  no as interpolateCubehelix,
  no as interpolateCubehelixLong,
  no as interpolateHcl,
  no as interpolateHclLong,
  no as interpolateHsl,
  no as interpolateHslLong,
  no as interpolateLab,
};
