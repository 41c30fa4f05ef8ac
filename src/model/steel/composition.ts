/** Carbide from a steel's composition: what binds carbon first, and the lever rule for the rest. */

import { carbonWeightPercent, densities, leverRule } from './phases.ts';
import { within } from '../check.ts';
import { checkQuantity, isUnknown, nominal, rangeOf } from '../quantities.ts';
import { chromiumRange, hardeningRange, saturationCarbon } from './saturation.ts';
import type { Quantity } from '../types.ts';

/** What of a steel takes part in the balance, weight %; of what is left out it has none. */
export interface Contents<Of = number> {
  /** 0–3 %. */
  carbon: Of;
  /** 0–18 %. */
  chromium?: Of;
  /** 0–10 %. */
  vanadium?: Of;
  /** 0–10 %. */
  molybdenum?: Of;
  /** 0–20 %. */
  tungsten?: Of;
}

/** A steel, each content known or not, and the temperature it was hardened from. */
export interface Composition extends Contents<Quantity> {
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
  /** Of the steel in the middle of what is not known. */
  tieLine: TieLine;
  /** Contents that are not known beyond a stated range. */
  notKnown: (keyof Contents)[];
  notes: string[];
}

/** The contents the balance takes, weight %. */
const limits: Record<keyof Contents, { low: number; high: number }> = {
  carbon: { low: 0, high: 3 },
  chromium: chromiumRange,
  vanadium: { low: 0, high: 10 },
  molybdenum: { low: 0, high: 10 },
  tungsten: { low: 0, high: 20 },
};
const elements = Object.keys(limits) as (keyof Contents)[];

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
 * are close. A content with a ± or a range is looked at from end to end, together with every other; chromium only where
 * the table reaches the temperature. Where one is not known, the volumes are the middles of what they may come to.
 *
 * @throws RangeError naming the range for contents or temperatures the tables do not reach
 * @source iupac-2021-weights
 * @example carbideFromComposition({ carbon: 1.075, chromium: 17, molybdenum: 0.8, austenitizingC: 1000 }).volPercent.CrC // → 15.4
 */
export function carbideFromComposition(composition: Composition): CarbideEstimate {
  const { middle, all } = steelsOf(composition);
  const formula = carbideOf(middle);
  const held = saturations(middle.chromium, composition.austenitizingC);
  const here = balance(middle, held.middle, formula);
  const ends = all.flatMap((steel) => endsOf(steel, composition.austenitizingC));
  const notKnown = unknownMeasureNames(composition);

  const volPercent = notKnown.length === 0 ? here.volPercent : middleVolumes(ends, kindOf(formula));
  const sum = total(volPercent);
  const off = (of: (end: Balance) => number, from: number): number =>
    ends.reduce((most, end) => Math.max(most, Math.abs(of(end) - from)), 0);
  const bound = all.reduce((most, steel) => Math.max(most, boundOf(steel, composition.austenitizingC)), 0);
  const estimate = {
    volPercent,
    tieLine: here.tieLine,
    plusMinus: Math.max(
      knowsTemperature(composition) ? 1 : 2,
      off((end) => total(end.volPercent), sum) + 0.3 * bound,
    ),
    austeniteCarbon: {
      value: here.tieLine.matrix,
      plusMinus: Math.max(
        off(({ tieLine }) => tieLine.matrix, here.tieLine.matrix),
        held.middle - held.low,
        held.high - held.middle,
      ),
    },
    notKnown,
  };
  return { ...estimate, notes: notesOf(composition, all, estimate, ends) };
}

type Steel = Required<Contents>;
type Balance = Pick<CarbideEstimate, 'volPercent' | 'tieLine'> & { held: boolean };

const knowsTemperature = ({ austenitizingC }: Composition): boolean =>
  austenitizingC !== undefined && !isUnknown(austenitizingC);

const unknownMeasureNames = (composition: Composition): (keyof Contents)[] =>
  elements.filter((element) => isUnknown(composition[element] ?? 0));

/** One steel at both ends of what its austenite may hold, with either chromium carbide where the two are close. */
function endsOf(steel: Steel, temperature: Quantity | undefined): Balance[] {
  const { low, high } = saturations(steel.chromium, temperature);
  return [carbideOf(steel), ...alternatives(steel)].flatMap((formula) =>
    [low, high].map((saturation) => balance(steel, Math.max(0, saturation), formula)),
  );
}

/** MC and M6C together, volume %. */
function boundOf(steel: Steel, temperature: Quantity | undefined): number {
  const { middle } = saturations(steel.chromium, temperature);
  const { MC = 0, M6C = 0 } = balance(steel, middle, carbideOf(steel)).volPercent;
  return MC + M6C;
}

/** Each kind at the middle of what it may come to; what the lever gives goes by one kind. */
function middleVolumes(ends: readonly Balance[], lever: 'Fe3C' | 'CrC'): CarbideEstimate['volPercent'] {
  const kinds = {
    [lever]: ({ Fe3C = 0, CrC = 0 }: CarbideEstimate['volPercent']) => Fe3C + CrC,
    MC: ({ MC = 0 }: CarbideEstimate['volPercent']) => MC,
    M6C: ({ M6C = 0 }: CarbideEstimate['volPercent']) => M6C,
  };
  return Object.fromEntries(
    Object.entries(kinds).flatMap(([kind, of]) => {
      const volumes = ends.map(({ volPercent }) => of(volPercent));
      const most = volumes.reduce((high, volume) => Math.max(high, volume), 0);
      const least = volumes.reduce((low, volume) => Math.min(low, volume), most);
      return most > 0 ? [[kind, (least + most) / 2]] : [];
    }),
  );
}

/**
 * The steel in the middle of what is not known, and every steel it may be: each value of a content with each of the
 * others'.
 */
function steelsOf(composition: Composition): { middle: Steel; all: Steel[] } {
  const none: Steel = { carbon: 0, chromium: 0, vanadium: 0, molybdenum: 0, tungsten: 0 };
  // The more are open the fewer places each is looked at, so that all together stay below a thousand.
  const open = elements.filter((element) => typeof (composition[element] ?? 0) !== 'number').length;
  const [few, many] = open > 2 ? [3, 9] : [9, 35];
  let [middle, all] = [none, [none]];
  for (const element of elements) {
    const given = checkContent(element, composition[element] ?? 0);
    const values = valuesOf(element, given, element === 'chromium' ? many : few);
    const possible = element === 'chromium' ? reached(values, composition.austenitizingC) : values;
    middle = { ...middle, [element]: nearest(possible, nominal(given)) };
    all = all.flatMap((steel) => possible.map((value) => ({ ...steel, [element]: value })));
  }
  return { middle, all };
}

const checkContent = (element: keyof Contents, given: Quantity): Quantity => {
  const { low, high } = limits[element];
  return typeof given === 'number'
    ? within(element, given, low, high, ' %')
    : checkQuantity(element, given, { low, high, unit: ' %' });
};

/** The values a content is looked at: its middle, and what lies evenly from end to end of what may be. */
function valuesOf(element: keyof Contents, given: Quantity, places: number): number[] {
  const { low, high } = limits[element];
  const ends = rangeOf(given);
  const [from, to] = [Math.max(low, ends.low), Math.min(high, ends.high)];
  const even = Array.from({ length: places }, (_, place) => from + ((to - from) * place) / (places - 1));
  return [...new Set([nominal(given), ...even])];
}

const nearest = (values: readonly number[], to: number): number =>
  values.reduce((best, value) => (Math.abs(value - to) < Math.abs(best - to) ? value : best));

/** The chromium contents for which the table reaches the temperature; refused where it does for none. */
function reached(chromium: readonly number[], given: Quantity | undefined): number[] {
  if (given === undefined) return [...chromium];
  const ranges = chromium.map(hardeningRange);
  const low = Math.min(...ranges.map((range) => range.low));
  const high = Math.max(...ranges.map((range) => range.high));
  const name = `hardening temperature at ${[...new Set([Math.min(...chromium), Math.max(...chromium)])].join('–')} % chromium`;
  const celsius = nominal(checkQuantity(name, given, { low, high, unit: ' °C' }));
  // All rows share 950 to 1000 °C, so that no temperature between the ends is out of reach of all of them.
  return chromium.filter((content) => {
    const range = hardeningRange(content);
    return range.low <= celsius && celsius <= range.high;
  });
}

/** Carbon the austenite may hold at a chromium content, weight %: in the middle, and at the ends of all ±. */
function saturations(
  chromium: number,
  given: Quantity | undefined,
): { low: number; middle: number; high: number } {
  const reach = hardeningRange(chromium);
  const limit = (celsius: number): number => Math.min(reach.high, Math.max(reach.low, celsius));
  const temperature: Quantity = given ?? { unknown: true, ...usualHardening(chromium) };
  const at = (celsius: number) => saturationCarbon({ chromium, celsius: limit(celsius) });
  const ends = rangeOf(temperature);
  const [cold, hot] = [at(ends.low), at(ends.high)];
  return {
    low: cold.value - cold.plusMinus,
    middle: at(nominal(temperature)).value,
    high: hot.value + hot.plusMinus,
  };
}

const total = (volumes: CarbideEstimate['volPercent']): number =>
  Object.values(volumes).reduce((sum, volume) => sum + volume, 0);

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

const kindOf = (formula: TieLine['formula']): 'Fe3C' | 'CrC' => (formula === 'Fe3C' ? 'Fe3C' : 'CrC');

const densityOf = (formula: TieLine['formula']): number => densities[formula];

function notesOf(
  composition: Composition,
  steels: readonly Steel[],
  { tieLine, volPercent, notKnown }: Omit<CarbideEstimate, 'notes'>,
  ends: readonly Balance[],
): string[] {
  const notes: string[] = [];
  const formulas = [...new Set([tieLine.formula, ...ends.map((end) => end.tieLine.formula)])];
  if (notKnown.length > 0) {
    const ranges = notKnown.map((element) => {
      const values = steels.map((steel) => steel[element]);
      const [low, high] = [Math.min(...values), Math.max(...values)];
      return `${element} from ${Number(low.toPrecision(2))} to ${Number(high.toPrecision(2))} %`;
    });
    notes.push(`Not known, which widens the ±: ${ranges.join(', ')}.`);
  }
  if (notKnown.includes('carbon') && notKnown.includes('chromium'))
    notes.push('With neither carbon nor chromium known, this says little more than that it is such a steel.');
  if (!knowsTemperature(composition))
    notes.push('The hardening temperature is not known, which widens the ±.');
  if (volPercent[kindOf(tieLine.formula)] === undefined)
    notes.push(
      `At the hardening temperature the austenite could hold all the carbon that is left, so no ${tieLine.formula} is found; a short soak leaves some.`,
    );
  if (formulas.length > 1)
    notes.push(
      steels.length > 1
        ? `Over these contents the carbide may be ${formulas.join(' or ')}; the ± spans them.`
        : `With this much chromium to carbon the carbide may be ${formulas.join(' or ')}; the ± spans both.`,
    );
  if (steels.some(({ chromium }) => chromium > 2 && chromium < 10))
    notes.push('Between 2 and 10 % chromium the table has one value, from memory: the ± is wide for that.');
  if (ends.some(({ held }) => held))
    notes.push(
      `Vanadium, molybdenum and tungsten could bind more carbon than there is: ${leastMatrixCarbon} % is kept for the matrix (assumed).`,
    );
  if (steels.some(({ molybdenum, tungsten }) => molybdenum + tungsten > 0) && volPercent.M6C === undefined)
    notes.push(
      `Molybdenum and tungsten up to ${dissolvedMolybdenum} % Mo + W/2 are taken as dissolved (assumed).`,
    );
  return notes;
}
