/** Stands for `d3-scale`: axes are linear, logarithmic, of a root, or of names. */
import { refuse } from './refuse.mjs';

const no = refuse('scales of steps');

export * from 'd3-scale';
export { no as scaleQuantile, no as scaleQuantize, no as scaleSymlog, no as scaleThreshold };
