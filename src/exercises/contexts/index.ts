import type { ContextId } from '../problem.ts';
import { bicycleGears } from './bicycle-gears.ts';
import type { Context } from './context.ts';
import { riggingLoft } from './rigging-loft.ts';
import { seedTrays } from './seed-trays.ts';
import { sourdough } from './sourdough.ts';
import { tides } from './tides.ts';

export const contexts: Record<ContextId, Context> = {
  'rigging-loft': riggingLoft,
  'seed-trays': seedTrays,
  'bicycle-gears': bicycleGears,
  sourdough,
  tides,
};

export const contextIds = Object.keys(contexts) as ContextId[];
