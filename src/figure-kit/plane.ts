import type { PlotOptions } from '@observablehq/plot';
import { inFigures } from '../scene/show.ts';

/** The axes of a drawing that is laid out in px: x to the right, y down, as wide and as high as said. */
export const pxPlane = (width: number, height: number) =>
  ({
    width,
    height,
    marginTop: 0,
    marginRight: 0,
    marginBottom: 0,
    marginLeft: 0,
    x: { domain: [0, width], axis: null },
    y: { domain: [height, 0], axis: null },
  }) as const satisfies PlotOptions;

/** A line through these points. */
export type Points = readonly (readonly [x: number, y: number])[];

/** Numbers from 0.001 to some hundreds that begin with one of these. */
const beginningWith = (steps: readonly number[]): readonly number[] =>
  [-3, -2, -1, 0, 1, 2].flatMap((ten) => steps.map((step) => inFigures(step * 10 ** ten, 2)));
const lengths = beginningWith([1, 1.5, 2, 3, 4, 5, 6, 8]);
const ticks = beginningWith([1, 2, 5]);

/** The first of some round lengths that will do; the longest where none does. */
export const roundLength = (will: (length: number) => boolean): number =>
  lengths.find(will) ?? Math.max(...lengths);

/** The first of 1, 2, 5 and their tens and tenths that is no less. */
export const tickStep = (least: number): number => ticks.find((step) => step >= least) ?? Math.max(...ticks);
