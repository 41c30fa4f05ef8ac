import { plain } from '../scene/show.ts';
import type { Hardened } from '../scene/steel.ts';

/** Volume with its ±, or that there is none. */
export const carbideWithPlusMinus = ({ percent: volume, estimate: { plusMinus } }: Hardened): string =>
  volume === 0 ? `none, at most ${plain(plusMinus, 2)}%` : `${plain(volume, 2)} ± ${plain(plusMinus, 2)}%`;

/** The carbide of the lever by its formula; both, where either of two may be. */
export const leverFormula = ({ estimate: { tieLine, otherTieLine } }: Hardened): string =>
  otherTieLine === undefined ? tieLine.formula : `${tieLine.formula} or ${otherTieLine.formula}`;

/** Where it was hardened from. */
export const hardenedFrom = ({ celsius }: Hardened): string =>
  celsius === null ? 'with the temperature not known' : `hardened from ${celsius} °C`;
