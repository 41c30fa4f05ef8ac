import { attributesOf } from '../model/index.ts';
import type { Family, TermId } from '../model/index.ts';

/** The families, in the order figures, tables and sentences take them. */
export const families = Object.keys(attributesOf) as readonly Family[];

const inChain: Record<TermId, true> = {
  wedge: true,
  apex: true,
  thickness: true,
  grind: true,
  finish: true,
  hardness: true,
  carbide: true,
};

/** The factors, in the order of the chain. */
export const factorIds = Object.keys(inChain) as readonly TermId[];

/** A factor whose force resists the cut, so that it may add to the others of its kind instead of multiplying. */
export type ForceId = Extract<TermId, 'wedge' | 'thickness' | 'grind'>;

/** These factors, in the order of the chain. */
export const forceIds: readonly ForceId[] = ['wedge', 'thickness', 'grind'];

export const isForce = (id: string): id is ForceId => (forceIds as readonly string[]).includes(id);
