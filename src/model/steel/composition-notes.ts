/** What is told with an estimate of carbide from composition. */

import { dissolvedMolybdenum, kindOf, leastMatrixCarbon } from './balance.ts';
import type { Balance, Steel } from './balance.ts';
import type { CarbideEstimate } from './carbide-estimate.ts';
import { isTungstenSteel } from './tungsten.ts';

interface Told {
  /** Every steel it may be. */
  steels: readonly Steel[];
  /** What the balances of all these may come to. */
  ends: readonly Balance[];
  knowsTemperature: boolean;
  estimate: Omit<CarbideEstimate, 'notes'>;
}

export function notesOf(told: Told): string[] {
  const { steels, estimate, knowsTemperature } = told;
  const notes = notKnownSaid(told);
  // Only there is nothing of the balance in the volume.
  if (estimate.basis === 'table')
    return [
      ...notes,
      'A balance of carbon cannot say how much carbide a tungsten or molybdenum steel keeps. The range of the table for AISI M2 is used instead, from memory.',
    ];
  if (!knowsTemperature) notes.push('The hardening temperature is not known, which widens the ±.');
  if (estimate.basis === 'both')
    notes.push(
      steels.every(isTungstenSteel)
        ? 'A balance of carbon alone cannot say how much carbide a tungsten or molybdenum steel keeps. The ± covers the balance and the range of the table for AISI M2, from memory.'
        : 'Over these contents it may be a tungsten or molybdenum steel. The ± covers the range of the table for AISI M2 too, from memory.',
    );
  return [...notes, ...balanceSaid(told)];
}

/** Contents that are not known. */
function notKnownSaid({ steels, estimate: { notKnown } }: Told): string[] {
  if (notKnown.length === 0) return [];
  const ranges = notKnown.map((element) => {
    const values = steels.map((steel) => steel[element]);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return `${element} from ${Number(low.toPrecision(2))} to ${Number(high.toPrecision(2))}%`;
  });
  return [
    `Not known, which widens the ±: ${ranges.join(', ')}.`,
    ...(notKnown.includes('carbon') && notKnown.includes('chromium')
      ? ['With neither carbon nor chromium known, this says little more than that it is such a steel.']
      : []),
  ];
}

/** What the balance left open or assumed. */
function balanceSaid({ steels, ends, estimate: { tieLine, volPercent } }: Told): string[] {
  const notes: string[] = [];
  const formulas = [...new Set([tieLine.formula, ...ends.map((end) => end.tieLine.formula)])];
  if (volPercent[kindOf(tieLine.formula)] === undefined)
    notes.push(
      `At the hardening temperature the austenite could hold all the carbon that is left, so no ${tieLine.formula} is found.`,
    );
  if (formulas.length > 1)
    notes.push(
      steels.length > 1
        ? `Over these contents the carbide may be ${formulas.join(' or ')}; the ± covers them.`
        : `With this much chromium and carbon the carbide may be ${formulas.join(' or ')}. The volume is midway between the two, and the ± covers both.`,
    );
  if (steels.some(({ chromium }) => chromium > 5.5 && chromium < 11.5))
    notes.push('Between the rows at 5 and 12% chromium the carbon of the matrix is interpolated.');
  if (ends.some(({ held }) => held))
    notes.push(
      `Vanadium, molybdenum and tungsten could bind more carbon than there is: ${leastMatrixCarbon}% is kept for the matrix (assumed).`,
    );
  if (steels.some(({ molybdenum, tungsten }) => molybdenum + tungsten > 0) && volPercent.M6C === undefined)
    notes.push(
      `Molybdenum and tungsten up to ${dissolvedMolybdenum}% Mo + W/2 are taken as dissolved (assumed).`,
    );
  return notes;
}
