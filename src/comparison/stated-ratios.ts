import { compared } from './compared.ts';
import type { ComparisonEntry } from './entry.ts';
import { ofKnife } from './found.ts';
import { toModel } from './to-model.ts';

/** The subject's ratio to the baseline as a link or a seal states it, by both readings and by the rival. */
export interface StatedRatios {
  careful: number;
  quick: number;
  rival: number;
}

const fourFigures = (ratio: number): number => Number(ratio.toPrecision(4));

/**
 * What the model makes of a comparison now, to four figures.
 *
 * @throws RangeError where the model refuses the comparison
 */
export function statedRatios(entry: ComparisonEntry): StatedRatios {
  const rows = compared(toModel(entry));
  const [careful, quick] = [ofKnife(rows.careful, entry.subject), ofKnife(rows.quick, entry.subject)];
  return {
    careful: fourFigures(careful.product),
    quick: fourFigures(quick.product),
    rival: fourFigures(careful.rival),
  };
}
