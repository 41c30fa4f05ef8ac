import { equivalentChange } from './kinds/equivalent-change.ts';
import { evenUp } from './kinds/even-up.ts';
import { fairPair } from './kinds/fair-pair.ts';
import { forwardChain } from './kinds/forward-chain.ts';
import { gritByScale } from './kinds/grit-by-scale.ts';
import { inverseProportion } from './kinds/inverse-proportion.ts';
import { meanGrowth } from './kinds/mean-growth.ts';
import { missingFactor } from './kinds/missing-factor.ts';
import { multiplyOrAdd } from './kinds/multiply-or-add.ts';
import { rangeProduct } from './kinds/range-product.ts';
import { reverseBase } from './kinds/reverse-base.ts';
import { roundingBands } from './kinds/rounding-bands.ts';
import { shareOfFactor } from './kinds/share-of-factor.ts';
import { timesOrMore } from './kinds/times-or-more.ts';
import { twoRoutes } from './kinds/two-routes.ts';
import { undo } from './kinds/undo.ts';
import type { Maker } from './maker.ts';
import type { Kind, NumbersOf } from './numbers.ts';

/** The maker of each kind, from the easier kinds to the harder. */
export const makers: { [K in Kind]: Maker<NumbersOf[K]> } = {
  'times-or-more': timesOrMore,
  'multiply-or-add': multiplyOrAdd,
  'fair-pair': fairPair,
  'forward-chain': forwardChain,
  'equivalent-change': equivalentChange,
  'missing-factor': missingFactor,
  'reverse-base': reverseBase,
  undo,
  'inverse-proportion': inverseProportion,
  'even-up': evenUp,
  'grit-by-scale': gritByScale,
  'two-routes': twoRoutes,
  'rounding-bands': roundingBands,
  'mean-growth': meanGrowth,
  'share-of-factor': shareOfFactor,
  'range-product': rangeProduct,
};
