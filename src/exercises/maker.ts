import type { Context } from './contexts/context.ts';
import type { Draft, ContextId, Level } from './problem.ts';
import type { Dice } from './random.ts';

/** Who is compared, where, and how hard it is. */
export interface Scene {
  context: Context;
  level: Level;
  subject: string;
  baseline: string;
  third: string;
}

/** Makes problems of one kind: draws pretty numbers, and sets a problem with given numbers. */
export interface Maker<Numbers> {
  /** The contexts that have words for this kind. */
  contexts: readonly ContextId[];
  /** True where the effects add and a product is wrong. */
  adds?: true;
  /** The numbers of the worked example. */
  example: Numbers;
  draw(dice: Dice, level: Level): Numbers;
  set(numbers: Numbers, scene: Scene): Draft;
}
