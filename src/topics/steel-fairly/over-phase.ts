import { times } from '../../scene/show.ts';

/** How many times as hard as a phase quartz is, to the two figures the hardness of quartz is good for. */
export const overPhaseSaid = ({ low, high }: { low: number; high: number }): string =>
  `${times(low, 2)} to ${times(high, 2)}`;
