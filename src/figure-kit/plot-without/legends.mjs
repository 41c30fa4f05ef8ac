/** Stands for Plot's `legends.js`: a drawing has its key as marks, and Plot adds none. */
import { refuse } from './refuse.mjs';

const no = refuse('legends');

export const createLegends = () => [];
export const exposeLegends = () => no;
export { no as legend };
