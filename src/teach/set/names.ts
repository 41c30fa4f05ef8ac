import type { ContextId, Kind } from '../../exercises/index.ts';

/** What each kind of problem is called on the pages for teachers. */
export const kindNames: Record<Kind, string> = {
  'times-or-more': '“times as much” or “per cent more”',
  'multiply-or-add': 'where adding is right',
  'fair-pair': 'choose the fair pair',
  'forward-chain': 'effects one on another',
  'equivalent-change': 'one change for several',
  'missing-factor': 'the missing effect',
  'reverse-base': 'back to the start',
  undo: 'undo a percentage',
  'inverse-proportion': 'inverse proportion',
  'even-up': 'even up',
  'grit-by-scale': 'grits on two scales',
  'two-routes': 'one angle by two routes',
  'rounding-bands': 'what rounding leaves open',
  'mean-growth': 'mean growth',
  'share-of-factor': 'the share of an effect',
  'range-product': 'ranges multiplied',
};

/** What each context is called, and whether it covers blades. */
export const contextNames: Record<ContextId, string> = {
  'seed-trays': 'Seed trays (no blades)',
  'bicycle-gears': 'Bicycle gears (no blades)',
  sourdough: 'Sourdough (no blades)',
  tides: 'Tides (no blades)',
  'rigging-loft': 'Rigging loft (blades)',
};
