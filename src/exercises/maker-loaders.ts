import type { Maker } from './maker.ts';
import type { Kind, NumbersOf } from './numbers.ts';

/** The maker of each kind, fetched when it is wanted: for the browser, where a page needs a few of them at most. */
export const makerLoaders: { [K in Kind]: () => Promise<Maker<NumbersOf[K]>> } = {
  'times-or-more': async () => (await import('./kinds/times-or-more.ts')).timesOrMore,
  'multiply-or-add': async () => (await import('./kinds/multiply-or-add.ts')).multiplyOrAdd,
  'fair-pair': async () => (await import('./kinds/fair-pair.ts')).fairPair,
  'forward-chain': async () => (await import('./kinds/forward-chain.ts')).forwardChain,
  'equivalent-change': async () => (await import('./kinds/equivalent-change.ts')).equivalentChange,
  'missing-factor': async () => (await import('./kinds/missing-factor.ts')).missingFactor,
  'reverse-base': async () => (await import('./kinds/reverse-base.ts')).reverseBase,
  undo: async () => (await import('./kinds/undo.ts')).undo,
  'inverse-proportion': async () => (await import('./kinds/inverse-proportion.ts')).inverseProportion,
  'even-up': async () => (await import('./kinds/even-up.ts')).evenUp,
  'grit-by-scale': async () => (await import('./kinds/grit-by-scale.ts')).gritByScale,
  'two-routes': async () => (await import('./kinds/two-routes.ts')).twoRoutes,
  'rounding-bands': async () => (await import('./kinds/rounding-bands.ts')).roundingBands,
  'mean-growth': async () => (await import('./kinds/mean-growth.ts')).meanGrowth,
  'share-of-factor': async () => (await import('./kinds/share-of-factor.ts')).shareOfFactor,
  'range-product': async () => (await import('./kinds/range-product.ts')).rangeProduct,
};
