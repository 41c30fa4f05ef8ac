/** Ends of an axis that a hand on a slider does not keep moving. */
const ends = [1.5, 2.5, 5, 12, 25, 50];

/** The end of a linear axis from 0 that holds a value, in few steps so that the drawing keeps its scale. */
export const steadyTop = (value: number): number => ends.find((end) => end >= value) ?? value * 1.1;
