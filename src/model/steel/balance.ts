/** The balance of carbon in one steel of known contents: what binds it first, and the lever rule for the rest. */

import type { LeverCarbide } from './carbide-kinds.ts';
import { carbonWeightPercent, densities, leverRule } from './phases.ts';

/** What of a steel takes part in the balance, weight %. */
export interface Steel {
  carbon: number;
  chromium: number;
  vanadium: number;
  molybdenum: number;
  tungsten: number;
}

/** Volume of carbide by kind, %; what there is none of is left out. */
export interface Volumes {
  Fe3C?: number;
  CrC?: number;
  MC?: number;
  M6C?: number;
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
  formula: LeverCarbide;
  /** Mass of this carbide over the mass of matrix and this carbide; 0 where the austenite holds all the carbon. */
  massFraction: number;
}

export interface Balance {
  volPercent: Volumes;
  tieLine: TieLine;
  /** Whether V, Mo and W could have bound more carbon than they were left. */
  held: boolean;
}

/** Atomic weights as `carbonWeightPercent` uses them. */
const weight = { C: 12.011, Fe: 55.845, V: 50.9415, Mo: 95.95, W: 183.84 } as const;

/** Molybdenum and half the tungsten, weight %, up to which they are taken as dissolved (assumed). */
export const dissolvedMolybdenum = 1;

/** A matrix that hardens keeps about this much carbon, weight %: V, Mo and W bind only what is above (assumed). */
export const leastMatrixCarbon = 0.3;

/** cm³ per mole of M6C: 16 formula units in a cube of 1.11 nm (memory). */
const molarVolumeM6C = (6.02214e23 * 1.11e-7 ** 3) / 16;

/** Molybdenum and half the tungsten, weight %: atom for atom they make one carbide. */
export const molybdenumEquivalent = ({
  molybdenum = 0,
  tungsten = 0,
}: Partial<Pick<Steel, 'molybdenum' | 'tungsten'>>): number => molybdenum + tungsten / 2;

/** The name of the regression for the carbide of a lever. */
export const kindOf = (formula: LeverCarbide): 'Fe3C' | 'CrC' => (formula === 'Fe3C' ? 'Fe3C' : 'CrC');

/** All kinds together. */
export const totalOf = (volumes: Volumes): number =>
  Object.values(volumes).reduce((sum: number, volume: number) => sum + volume, 0);

/** MC and M6C first, then the lever rule for what is left. */
export function balance(steel: Steel, saturation: number, formula: LeverCarbide): Balance {
  const { carbon, vanadium, molybdenum, tungsten } = steel;
  const equivalent = molybdenumEquivalent(steel);
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
    lever: (rest * massFraction) / densities[formula],
    matrix: (rest * (1 - massFraction)) / densities.matrix,
  };
  const all = Object.values(volumes).reduce((sum, volume) => sum + volume, 0);
  const kind = kindOf(formula);
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
