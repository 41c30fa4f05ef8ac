/** The phases of steel: how much carbon each holds and what each weighs. */

import { refuse, within } from '../check.ts';

/**
 * IUPAC standard atomic weights, abridged.
 *
 * @source iupac-2021-weights
 */
const atomicWeight: Record<string, number> = {
  C: 12.011,
  Fe: 55.845,
  Cr: 51.996,
  V: 50.9415,
  Nb: 92.90637,
  Mo: 95.95,
  W: 183.84,
  N: 14.007,
};

/** Atoms of a formula such as `Cr7C3`, `(Cr4Fe3)C3` or `(Fe3.5Cr3.5)C3`. */
function atoms(formula: string): Map<string, number> {
  const counts = new Map<string, number>();
  const unreadable = (): never => refuse(`formula ${formula} is not a chemical formula such as Cr7C3`);
  const many = (written: string | undefined): number => {
    const count = written ? Number(written) : 1;
    return count > 0 ? count : unreadable();
  };
  const read = (text: string, times: number): void => {
    const pattern = /([A-Z][a-z]?)(\d+(?:\.\d+)?)?|\(([^()]+)\)(\d+(?:\.\d+)?)?/gy;
    let end = 0;
    for (const match of text.matchAll(pattern)) {
      end = match.index + match[0].length;
      if (match[3] !== undefined) read(match[3], times * many(match[4]));
      else {
        const element = match[1] ?? '';
        counts.set(element, (counts.get(element) ?? 0) + times * many(match[2]));
      }
    }
    if (end !== text.length || text === '') unreadable();
  };
  read(formula, 1);
  return counts;
}

/**
 * Carbon in a carbide, weight per cent, from IUPAC standard atomic weights.
 *
 * @param formula of C, Fe, Cr, V, Nb, Mo, W and N, in whole or decimal numbers above 0: `Fe3C`, `(Cr4Fe3)C3`
 * @throws RangeError where the formula cannot be read or holds an element the table lacks
 * @source iupac-2021-weights
 * @example carbonWeightPercent('Fe3C') // → 6.6897
 * @example carbonWeightPercent('(Fe3.5Cr3.5)C3') // → 8.715
 */
export function carbonWeightPercent(formula: string): number {
  const counts = atoms(formula);
  let total = 0;
  for (const [element, count] of counts)
    total +=
      count *
      (atomicWeight[element] ??
        refuse(
          `formula ${formula}: element ${element} is not one of ${Object.keys(atomicWeight).join(', ')}`,
        ));
  return (100 * (counts.get('C') ?? 0) * 12.011) / total;
}

/**
 * Mass fraction of the rich phase in a whole made of a poor and a rich phase: (whole − poor)/(rich − poor).
 *
 * @throws RangeError where the whole is outside poor…rich, or rich is not above poor
 * @example leverRule({ whole: 0.4, poor: 0.022, rich: 6.7 }) // → 0.056604
 */
export function leverRule(p: { whole: number; poor: number; rich: number }): number {
  if (!(p.rich > p.poor)) refuse(`rich phase ${p.rich} is not above the poor phase ${p.poor}`);
  within('whole', p.whole, p.poor, p.rich);
  return (p.whole - p.poor) / (p.rich - p.poor);
}

/** Densities, g/cm³; Cr7C3, Cr23C6 and the matrix from memory. */
export const densities = {
  Fe3C: 7.69,
  VC: 5.77,
  WC: 15.63,
  Mo2C: 9.15,
  Cr7C3: 6.92,
  Cr23C6: 6.97,
  matrix: 7.75,
} as const;

/**
 * Volume per cent of carbide by carbon balance: the lever rule between the carbon austenite holds and the
 * carbide, turned to volume by densities. Where the austenite holds all the carbon there is none.
 *
 * @param p all in weight per cent carbon; densities in g/cm³
 * @example carbideVolumePercent({ carbon: 1.075, austeniteCarbon: 0.32, carbide: 'Cr23C6' }) // → 15.4
 */
export function carbideVolumePercent(p: {
  carbon: number;
  austeniteCarbon: number;
  carbide: 'Fe3C' | 'VC' | 'WC' | 'Mo2C' | 'Cr7C3' | 'Cr23C6';
}): number {
  within('carbon', p.carbon, 0, 6, '%');
  within('carbon in austenite', p.austeniteCarbon, 0, 6, '%');
  if (p.carbon <= p.austeniteCarbon) return 0;
  const mass = leverRule({ whole: p.carbon, poor: p.austeniteCarbon, rich: carbonWeightPercent(p.carbide) });
  const volume = mass / densities[p.carbide];
  return (100 * volume) / (volume + (1 - mass) / densities.matrix);
}

type Point = readonly [celsius: number, carbon: number];

/** Carbon that austenite holds in a plain carbon steel, the Acm line, ±0.1 weight % (from memory). */
const acm: readonly [Point, ...Point[]] = [
  [727, 0.76],
  [800, 0.95],
  [900, 1.24],
  [1000, 1.6],
  [1100, 1.97],
];

/**
 * Carbon that austenite holds at the hardening temperature in a plain carbon steel, weight %, ±0.1 (from memory).
 *
 * @param celsius 727–1100 °C
 * @example austeniteCarbonPercent(850).value // → 1.095
 */
export function austeniteCarbonPercent(celsius: number): { value: number; plusMinus: number } {
  within('hardening temperature', celsius, 727, 1100, ' °C');
  const above = Math.max(
    1,
    acm.findIndex(([row]) => row >= celsius),
  );
  const [tA, cA] = acm[above - 1] ?? refuse('Acm table is empty');
  const [tB, cB] = acm[above] ?? refuse('Acm table is empty');
  return { value: cA + ((cB - cA) * (celsius - tA)) / (tB - tA), plusMinus: 0.1 };
}
