/** What it would cost: offers for one knife, each with what it gives and takes. */

import { costOf } from '../../model/index.ts';
import type { Cost } from '../../model/index.ts';
import type { CostAsked, OfferAsked } from './asked.ts';
import { firstTexts } from './fields.ts';
import { readCost } from './read-cost.ts';
import type { Scene } from '../../scene/scene.ts';
import { asEntered } from '../what-it-takes/values.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';

/** An offer worked out, or why the model refuses it. */
export type Offered = { asked: OfferAsked } & ({ cost: Cost } | { refused: string });

/** The offers that stand in the fields at first, for the baseline against the knife looked at. */
export function costAskedFirst(scene: Scene): CostAsked {
  const { baseline, subject } = scene.entry;
  const read = readCost(firstTexts, scene, { knife: baseline, against: subject });
  // Unreachable: the first texts of the fields are all within their limits.
  if (!read.ok) throw new Error('the offers that stand there at first cannot be read');
  return read.asked;
}

/** Every offer on its own: what one refuses keeps no other from its answer. */
export function costsOf(scene: Scene, asked: CostAsked): Offered[] {
  const { knife, against, edgeLengthMm, rate, offers } = asked;
  return offers.map((one) => {
    const { offer, minutes, price } = one;
    const question = {
      knife,
      against,
      offer,
      edgeLengthMm,
      ...(rate === undefined ? {} : { removalRateMm3PerMin: rate }),
      ...(minutes === undefined ? {} : { minutes }),
      ...(price === undefined ? {} : { price }),
    };
    return orRefusal<Offered, Offered>(
      () => ({ asked: one, cost: costOf(asEntered(scene), question) }),
      (refused) => ({ asked: one, refused }),
    );
  });
}
