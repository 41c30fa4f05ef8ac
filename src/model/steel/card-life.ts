import { positive, within } from '../check.ts';

/** Cycles of the test of ISO 8442-5. */
const cycles = 60;

/** Card a sharp edge cuts in its first cycle, mm (assumed): the nearer the results come to 60 times this, the more it counts. */
const firstCycleMm = 45;

/**
 * How many times as long one knife cuts as another **to one blunting stop**, from the card each cut in 60 cycles. A fixed
 * number of cycles compresses ratios. This is an upper view: a plain reading takes the card as it is.
 *
 * Derived, card a cycle falling with the card X already cut as c₀/(1 + kX): dX/dn = c₀/(1 + kX), so after n cycles
 * X + kX²/2 = c₀ n, and k = 2 (c₀ n − X)/X². At the stop 1 + kX has one value for both knives, so that their lives in
 * card, and in cycles, are as 1/k: ((c₀ n − Xb)/(c₀ n − Xa))·(Xa/Xb)². That the law holds, and that both start at the
 * same c₀, is assumed; a start without limit gives (Xa/Xb)², the least the law can give.
 *
 * @param p.mm card of the knife looked at in 60 cycles, mm, above 0 and below what an edge that never blunts would cut
 * @param p.baselineMm the same of the baseline
 * @param p.firstMm card in the first cycle, mm, 5–1000000; 45 if left out
 * @throws RangeError outside these ranges
 * @source iso-8442-5-card
 * @example lifeRatioFromCardMm({ mm: 500, baselineMm: 250 }) // → 4.4545
 */
export function lifeRatioFromCardMm(p: { mm: number; baselineMm: number; firstMm?: number }): number {
  const most = cycles * within('card in the first cycle', p.firstMm ?? firstCycleMm, 5, 1e6, ' mm');
  const blunting = (name: string, mm: number): number => {
    within(name, positive(name, mm, ' mm'), 0, most * 0.99, ' mm');
    return (2 * (most - mm)) / (mm * mm);
  };
  return blunting('card of the baseline', p.baselineMm) / blunting('card', p.mm);
}
