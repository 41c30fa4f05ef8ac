import { carbideWithPlusMinus, hardenedFrom } from '../../phrases/hardened-carbide.ts';
import { hardenedOf, tieSteelOf } from '../../scene/steel.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { leverFigure } from './levers.ts';

/** The tie line of a steel as a lever: pivot at its carbon, one end in the matrix, the other in the carbide. */
export const tieLines: Figure = leverFigure({
  id: 'tie-lines',
  title: (scene) => `The lever of carbon in ${tieSteelOf(scene).designation}`,
  hardenedOf: (scene) => hardenedOf(tieSteelOf(scene)),
  caption(scene) {
    const rows = hardenedOf(tieSteelOf(scene));
    const [cold, , hot, unknown] = rows;
    if (!cold || !hot || !unknown) return '';
    if (unknown.estimate.basis === 'table')
      return `The heavy short arm over the whole lever would be the share of carbide in ${tieSteelOf(scene).designation} by mass. Its volume is taken from the table instead: ${carbideWithPlusMinus(unknown)}.`;
    return `The heavy short arm over the whole lever is the share of carbide in ${tieSteelOf(scene).designation} by mass. By volume, with what is bound besides, it comes to ${carbideWithPlusMinus(cold)} ${hardenedFrom(cold)} and ${carbideWithPlusMinus(hot)} ${hardenedFrom(hot)}; ${hardenedFrom(unknown)}, ${carbideWithPlusMinus(unknown)}.`;
  },
});
