/** Stands for `d3-color`: colours are in the style sheet, so no text in a figure's options is one. */
import { refuse } from './refuse.mjs';

const no = refuse('colours');

export const color = () => null;
export { no as cubehelix, no as hcl, no as hsl, no as lab, no as rgb };
