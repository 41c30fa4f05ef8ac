/** Stands for Plot's `scales/schemes.js`, which is asked whether a scale has a scheme. None of ours has. */
import { refuse } from './refuse.mjs';

const no = refuse('colour schemes');
const unlessScheme = (scheme) => (scheme == null ? false : no());

export { unlessScheme as isCategoricalScheme, unlessScheme as isDivergingScheme };
export { no as maybeBooleanRange, no as ordinalRange, no as ordinalScheme, no as quantitativeScheme };
