import { scratchDepthUm } from '../../model/index.ts';

/** How far the charts of scratch depth can be off, either way. */
const doubt = 2;

/** The depth of a finish's scratches, µm: the rule's own band, and the widest it may be. */
export function scratchesOf(um: number): { low: number; high: number; least: number; most: number } {
  const { low, high } = scratchDepthUm(um);
  return { low, high, least: low / doubt, most: high * doubt };
}
