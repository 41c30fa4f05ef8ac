/** Stands for `d3-shape`: dots are round, or diamonds, squares and triangles. */
import { symbolCircle } from 'd3-shape';
import { refuse } from './refuse.mjs';

const other = { draw: refuse('other symbols') };

export * from 'd3-shape';
export const symbolsFill = [symbolCircle];
export const symbolsStroke = [symbolCircle];
export {
  other as symbolAsterisk,
  other as symbolCross,
  other as symbolDiamond2,
  other as symbolPlus,
  other as symbolSquare2,
  other as symbolStar,
  other as symbolTimes,
  other as symbolTriangle2,
  other as symbolWye,
};
