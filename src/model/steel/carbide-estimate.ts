import type { TieLine, Volumes } from './balance.ts';
import type { Contents } from './possible-steels.ts';

/** How much carbide a steel of some composition has, and how it was found. */
export interface CarbideEstimate {
  volPercent: Volumes;
  /** How far the sum may be off, volume %: never less than 1, or than 2 where the heat treatment is not known. */
  plusMinus: number;
  /** What the volume rests on: the table of typical volumes stands in for tungsten and molybdenum steels. */
  basis: 'balance' | 'table' | 'both';
  /** What the austenite holds, weight %: no more than there is. */
  austeniteCarbon: { value: number; plusMinus: number };
  /** Of the steel in the middle of what is not known, with the likelier carbide. */
  tieLine: TieLine;
  /** The same with the other carbide, where either may be. */
  otherTieLine?: TieLine;
  /** Contents that are not known beyond a stated range. */
  notKnown: (keyof Contents)[];
  notes: string[];
}
