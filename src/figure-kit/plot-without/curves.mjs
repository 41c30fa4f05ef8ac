/** Stands for Plot's `curve.js`: lines are straight from point to point. */
import { curveLinear } from 'd3';
import { refuse } from './refuse.mjs';

const no = refuse('curves');

export const curveAuto = curveLinear;
export const maybeCurve = (curve = curveLinear) => (curve === curveLinear ? curve : no());
export { maybeCurve as maybeCurveAuto };
