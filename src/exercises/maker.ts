import type { Context } from './contexts.ts';
import type { Draft, ContextId, Level } from './problem.ts';
import type { Dice } from './random.ts';

/** Makes problems of one kind: draws pretty numbers, and sets a problem with given numbers. */
export interface Maker<Numbers> {
  /** The contexts that have words for this kind. */
  contexts: readonly ContextId[];
  /** The numbers of the worked example. */
  example: Numbers;
  draw(dice: Dice, level: Level): Numbers;
  set(numbers: Numbers, scene: { context: Context; level: Level; subject: string; baseline: string }): Draft;
}
