/** Carbide from a steel's composition: what binds carbon first, and the lever rule for the rest. */

import { carbonWeightPercent, densities, leverRule } from './carbide.ts';
import { within } from './check.ts';
import { checkQuantity, nominal, rangeOf } from './quantities.ts';
import { chromiumRange, hardeningRange, saturationCarbon } from './saturation.ts';
import type { Quantity } from './types.ts';

/** Weight per cent, and the temperature the steel was hardened from. */
export interface Composition {
  /** 0–3 %. */
  carbon: number;
  /** 0–18 %. */
  chromium?: number;
  /** 0–10 %. */
  vanadium?: number;
  /** 0–10 %. */
  molybdenum?: number;
  /** 0–20 %. */
  tungsten?: number;
  /** Hardening temperature, °C; left out, anything usual for the chromium content. */
  austenitizingC?: Quantity;
}

/** The lever of carbon: all in weight % carbon, everything a drawing of the tie line needs. */
export interface TieLine {
  /** The poor end: carbon in austenite, no more than there is. */
  matrix: number;
  /** What the austenite could hold: above `whole` where it holds all the carbon. */
  saturation: number;
  /** Where the steel lies: its carbon, less what vanadium, molybdenum and tungsten have bound. */
  whole: number;
  /** The rich end: carbon in the carbide. */
  carbide: number;
  formula: 'Fe3C' | 'Cr7C3' | 'Cr23C6';
  /** Mass of this carbide over the mass of matrix and this carbide; 0 where the austenite holds all the carbon. */
  massFraction: number;
}

export interface CarbideEstimate {
  volPercent: { Fe3C?: number; CrC?: number; MC?: number; M6C?: number };
  /** How far the sum may be off, volume %: never less than 1, or than 2 where the heat treatment is not known. */
  plusMinus: number;
  /** What the austenite holds, weight %: no more than there is. */
  austeniteCarbon: { value: number; plusMinus: number };
  tieLine: TieLine;
  notes: string[];
}

/** Atomic weights as `carbonWeightPercent` uses them. */
const weight = { C: 12.011, Fe: 55.845, V: 50.9415, Mo: 95.95, W: 183.84 } as const;

/** Molybdenum and half the tungsten, weight %, up to which they are taken as dissolved (assumed). */
const dissolvedMolybdenum = 1;

/** A matrix that hardens keeps about this much carbon, weight %: V, Mo and W bind only what is above (assumed). */
const leastMatrixCarbon = 0.3;

/** cm³ per mole of M6C: 16 formula units in a cube of 1.11 nm (memory). */
const molarVolumeM6C = (6.02214e23 * 1.11e-7 ** 3) / 16;

/** Below this much chromium the carbide is cementite, weight % (memory). */
const cementiteBelow = 3;

/** Chromium over carbon from which the carbide is Cr23C6, below it Cr7C3 (memory; near it either may be). */
const chromiumRichFrom = 12;

/**
 * The usual hardening temperatures of a steel, °C (memory), as far as the saturation table reaches. High-speed steels
 * are hardened hotter than that, some hundred degrees beyond the table.
 *
 * @param chromium weight %, 0–18
 * @throws RangeError outside that
 * @example usualHardening(12) // → { low: 960, high: 1060 }
 */
export function usualHardening(chromium: number): { low: number; high: number } {
  const reach = hardeningRange(chromium);
  const usual = chromium < cementiteBelow ? { low: 780, high: 860 } : { low: 960, high: 1060 };
  return { low: Math.max(reach.low, usual.low), high: Math.min(reach.high, usual.high) };
}

/**
 * Volume of carbide in a hardened steel by carbon balance, from its composition: an estimate for steels nobody has
 * counted, always with its ±.
 *
 * 1. Vanadium binds carbon as VC; molybdenum and tungsten, atom for atom, as M6C of the make Fe3W3C, of which what the
 *    first 1 % of Mo + W/2 would make is taken as dissolved. Both bind only carbon above 0.3 %.
 * 2. Of the rest, austenite holds what the saturation table gives for the chromium content and the temperature
 *    (`saturationCarbon`); by the lever rule what is above becomes Fe3C below 3 % Cr, Cr23C6 from twelve times as much
 *    chromium as carbon, Cr7C3 between.
 * 3. Masses become volumes by densities.
 *
 * The lever rule is equilibrium and short soaks fall behind it: plain steels hardened for minutes keep more carbide than
 * this. The ± spans the table's own ±, the temperatures, 30 % of MC and M6C, and either chromium carbide where the two
 * are close.
 *
 * @throws RangeError naming the range for contents or temperatures the tables do not reach
 * @source iupac-2021-weights
 * @example carbideFromComposition({ carbon: 1.075, chromium: 17, molybdenum: 0.8, austenitizingC: 1000 }).volPercent.CrC // → 15.4
 */
export function carbideFromComposition(composition: Composition): CarbideEstimate {
  const steel = {
    carbon: within('carbon', composition.carbon, 0, 3, ' %'),
    chromium: within('chromium', composition.chromium ?? 0, chromiumRange.low, chromiumRange.high, ' %'),
    vanadium: within('vanadium', composition.vanadium ?? 0, 0, 10, ' %'),
    molybdenum: within('molybdenum', composition.molybdenum ?? 0, 0, 10, ' %'),
    tungsten: within('tungsten', composition.tungsten ?? 0, 0, 20, ' %'),
  };
  const { value: celsius, low, high, known } = temperatures(steel.chromium, composition.austenitizingC);
  const formula = carbideOf(steel);
  const middle = saturationCarbon({ chromium: steel.chromium, celsius });
  const here = balance(steel, middle.value, formula);

  const hot = saturationCarbon({ chromium: steel.chromium, celsius: high });
  const cold = saturationCarbon({ chromium: steel.chromium, celsius: low });
  const formulas = [formula, ...alternatives(steel)];
  const sums = formulas.flatMap((of) =>
    [cold.value - cold.plusMinus, hot.value + hot.plusMinus].map((carbon) =>
      total(balance(steel, Math.max(0, carbon), of).volPercent),
    ),
  );
  const sum = total(here.volPercent);
  const bound = (here.volPercent.MC ?? 0) + (here.volPercent.M6C ?? 0);
  const spread = Math.max(...sums.map((other) => Math.abs(other - sum))) + 0.3 * bound;
  return {
    volPercent: here.volPercent,
    tieLine: here.tieLine,
    plusMinus: Math.max(known ? 1 : 2, spread),
    austeniteCarbon: {
      value: here.tieLine.matrix,
      plusMinus: Math.max(
        middle.value - (cold.value - cold.plusMinus),
        hot.value + hot.plusMinus - middle.value,
      ),
    },
    notes: notesOf(steel, here, formulas, known),
  };
}

type Steel = Required<Omit<Composition, 'austenitizingC'>>;
type Balance = Pick<CarbideEstimate, 'volPercent' | 'tieLine'> & { held: boolean };

const total = (volumes: CarbideEstimate['volPercent']): number =>
  Object.values(volumes).reduce((sum, volume) => sum + volume, 0);

/** The temperatures to look at; refused where the table does not reach. */
function temperatures(chromium: number, given: Quantity | undefined) {
  const reach = hardeningRange(chromium);
  const limit = (celsius: number): number => Math.min(reach.high, Math.max(reach.low, celsius));
  if (given === undefined) {
    const { low, high } = usualHardening(chromium);
    return { value: (low + high) / 2, low, high, known: false };
  }
  const name = `hardening temperature at ${chromium} % chromium`;
  const value = nominal(checkQuantity(name, given, { ...reach, unit: ' °C' }));
  const ends = rangeOf(given);
  const known = typeof given === 'number' || !('unknown' in given);
  return { value, low: limit(ends.low), high: limit(ends.high), known };
}

function carbideOf({ chromium, carbon }: Steel): TieLine['formula'] {
  if (chromium < cementiteBelow) return 'Fe3C';
  return chromium >= chromiumRichFrom * carbon ? 'Cr23C6' : 'Cr7C3';
}

/** The other chromium carbide, where the steel lies within a quarter of the line between them. */
function alternatives({ chromium, carbon }: Steel): TieLine['formula'][] {
  if (chromium < cementiteBelow || carbon === 0) return [];
  const over = chromium / (chromiumRichFrom * carbon);
  if (over < 0.8 || over > 1.25) return [];
  return [over >= 1 ? 'Cr7C3' : 'Cr23C6'];
}

/** MC and M6C first, then the lever rule for what is left. */
function balance(steel: Steel, saturation: number, formula: TieLine['formula']): Balance {
  const { carbon, vanadium, molybdenum, tungsten } = steel;
  const equivalent = molybdenum + tungsten / 2;
  const undissolved = equivalent > dissolvedMolybdenum ? 1 - dissolvedMolybdenum / equivalent : 0;
  // Moles in 100 g: one C to a V, one C to three of Mo and W.
  const wanted = {
    MC: vanadium / weight.V,
    M6C: (undissolved * (molybdenum / weight.Mo + tungsten / weight.W)) / 3,
  };
  const demand = (wanted.MC + wanted.M6C) * weight.C;
  const free = Math.max(0, carbon - leastMatrixCarbon);
  const share = demand > free ? free / demand : 1;
  const moles = { MC: share * wanted.MC, M6C: share * wanted.M6C };

  const metal = undissolved * share * (molybdenum + tungsten);
  const masses = {
    MC: moles.MC * (weight.V + weight.C),
    M6C: metal + moles.M6C * (3 * weight.Fe + weight.C),
  };
  const rest = 100 - masses.MC - masses.M6C;
  const whole = (100 * (carbon - (moles.MC + moles.M6C) * weight.C)) / rest;
  const rich = carbonWeightPercent(formula);
  const matrix = Math.min(whole, saturation);
  const massFraction = whole > matrix ? leverRule({ whole, poor: matrix, rich }) : 0;
  const volumes = {
    MC: masses.MC / densities.VC,
    M6C: moles.M6C * molarVolumeM6C,
    lever: (rest * massFraction) / densityOf(formula),
    matrix: (rest * (1 - massFraction)) / densities.matrix,
  };
  const all = Object.values(volumes).reduce((sum, volume) => sum + volume, 0);
  const kind = formula === 'Fe3C' ? 'Fe3C' : 'CrC';
  const percents = [
    [kind, volumes.lever],
    ['MC', volumes.MC],
    ['M6C', volumes.M6C],
  ] as const;
  return {
    volPercent: Object.fromEntries(
      percents.filter(([, volume]) => volume > 0).map(([of, volume]) => [of, (100 * volume) / all]),
    ),
    tieLine: { matrix, saturation, whole, carbide: rich, formula, massFraction },
    held: share < 1,
  };
}

const densityOf = (formula: TieLine['formula']): number => densities[formula];

function notesOf(
  { chromium, molybdenum, tungsten }: Steel,
  { tieLine, held, volPercent }: Balance,
  formulas: readonly TieLine['formula'][],
  known: boolean,
): string[] {
  const notes: string[] = [];
  if (!known) notes.push('The hardening temperature is not known, which widens the ±.');
  if (tieLine.massFraction === 0)
    notes.push(
      `At the hardening temperature the austenite could hold all the carbon that is left, so no ${tieLine.formula} is found; a short soak leaves some.`,
    );
  if (formulas.length > 1)
    notes.push(
      `With this much chromium to carbon the carbide may be ${formulas.join(' or ')}; the ± spans both.`,
    );
  if (chromium > 2 && chromium < 10)
    notes.push('Between 2 and 10 % chromium the table has one value, from memory: the ± is wide for that.');
  if (held)
    notes.push(
      `Vanadium, molybdenum and tungsten could bind more carbon than there is: ${leastMatrixCarbon} % is kept for the matrix (assumed).`,
    );
  if (molybdenum + tungsten > 0 && volPercent.M6C === undefined)
    notes.push(
      `Molybdenum and tungsten up to ${dissolvedMolybdenum} % Mo + W/2 are taken as dissolved (assumed).`,
    );
  return notes;
}
