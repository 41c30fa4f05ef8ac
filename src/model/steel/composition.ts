/** Carbide from a steel's composition: what binds carbon first, and the lever rule for the rest. */

import { balance, kindOf, totalOf } from './balance.ts';
import type { Balance, Steel, Volumes } from './balance.ts';
import type { CarbideEstimate } from './carbide-estimate.ts';
import { cementiteBelow, leverCarbides } from './carbide-kinds.ts';
import type { LeverCarbide } from './carbide-kinds.ts';
import { notesOf } from './composition-notes.ts';
import { notKnownOf, steelsOf } from './possible-steels.ts';
import type { Composition } from './possible-steels.ts';
import { isUnknown, nominal, rangeOf } from '../quantities.ts';
import { hardeningRange, saturationCarbon } from './saturation.ts';
import { isLikeM2, isTungstenSteel, typicalM6C } from './tungsten.ts';
import type { Quantity } from '../types.ts';

export type { TieLine } from './balance.ts';
export type { CarbideEstimate } from './carbide-estimate.ts';
export type { Composition, Contents } from './possible-steels.ts';

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
  const usual =
    chromium < cementiteBelow
      ? { low: 780, high: 860 }
      : chromium < 9
        ? { low: 940, high: 1000 }
        : { low: 960, high: 1060 };
  return { low: Math.max(reach.low, usual.low), high: Math.min(reach.high, usual.high) };
}

/**
 * Volume of carbide in a hardened steel by carbon balance, from its composition: an estimate for steels nobody has
 * counted, always with its ±.
 *
 * 1. Vanadium binds carbon as VC; molybdenum and tungsten, atom for atom, as M6C of the make Fe3W3C, of which what the
 *    first 1% of Mo + W/2 would make is taken as dissolved. Both bind only carbon above 0.3%.
 * 2. Of the rest, austenite holds what the saturation table gives (`saturationCarbon`, from memory); by the lever rule
 *    what is above becomes the carbide that chromium and carbon make (`leverCarbides`, from memory). Where either of two
 *    may be, the volume is midway between them.
 * 3. Masses become volumes by densities.
 *
 * From 4% Mo + W/2 on, carbon alone does not say how much carbide there is: for steels like AISI M2 the table of typical
 * volumes is used, for others the ± covers both that and the balance.
 *
 * The ± spans the table's own ±, the temperatures, 30% of MC and M6C, and either carbide where two may be. A content with
 * a ± or a range is looked at from end to end, together with every other; chromium only where the table reaches the
 * temperature. Where one is not known, the volumes are the middles of what they may come to.
 *
 * @throws RangeError naming the range for contents or temperatures the tables do not reach
 * @source iupac-2021-weights
 * @example carbideFromComposition({ carbon: 0.68, chromium: 17, austenitizingC: 1050 }).volPercent.CrC // → 5.5
 */
export function carbideFromComposition(composition: Composition): CarbideEstimate {
  const { austenitizingC } = composition;
  const { middle, all } = steelsOf(composition);
  const notKnown = notKnownOf(composition);
  const knowsTemperature = austenitizingC !== undefined && !isUnknown(austenitizingC);
  const basis = basisOf(all);
  const ends = basis === 'table' ? [] : all.flatMap((steel) => endsOf(steel, austenitizingC));
  const levers = leverCarbides(middle).map((formula) => ({
    ...balance(middle, saturations(middle.chromium, formula, austenitizingC).middle, formula),
    formula,
  }));
  const [here, other] = levers as [(typeof levers)[number], (typeof levers)[number]?];

  const possible = [
    ...ends.map(({ volPercent }) => volPercent),
    ...(basis === 'balance' ? [] : [{ M6C: typicalM6C.low }, { M6C: typicalM6C.high }]),
  ];
  const kind = kindOf(here.formula);
  const volPercent =
    basis === 'balance' && notKnown.length === 0
      ? meanVolumes(
          levers.map((lever) => lever.volPercent),
          kind,
        )
      : middleVolumes(possible, kind);
  const sum = totalOf(volPercent);
  const bound = ends.reduce((most, { volPercent: { MC = 0, M6C = 0 } }) => Math.max(most, MC + M6C), 0);
  const estimate = {
    volPercent,
    plusMinus: Math.max(knowsTemperature ? 1 : 2, furthest(possible.map(totalOf), sum) + 0.3 * bound),
    basis,
    austeniteCarbon: matrixOf(composition, middle, here, ends),
    tieLine: here.tieLine,
    ...(other === undefined ? {} : { otherTieLine: other.tieLine }),
    notKnown,
  };
  return { ...estimate, notes: notesOf({ steels: all, ends, knowsTemperature, estimate }) };
}

/** Where the volume comes from: the table where every steel it may be is like its one steel. */
function basisOf(steels: readonly Steel[]): CarbideEstimate['basis'] {
  if (steels.every(isLikeM2)) return 'table';
  return steels.some(isTungstenSteel) ? 'both' : 'balance';
}

const furthest = (values: readonly number[], from: number): number =>
  values.reduce((most, value) => Math.max(most, Math.abs(value - from)), 0);

/** Carbon in the matrix and how far it may be off: by the ends of what may be, and at least by the table's own ±. */
function matrixOf(
  { austenitizingC }: Composition,
  middle: Steel,
  { tieLine: { matrix, formula } }: Balance,
  ends: readonly Balance[],
): CarbideEstimate['austeniteCarbon'] {
  const held = saturations(middle.chromium, formula, austenitizingC);
  return {
    value: matrix,
    plusMinus: Math.max(
      furthest(
        ends.map(({ tieLine }) => tieLine.matrix),
        matrix,
      ),
      held.middle - held.low,
      held.high - held.middle,
    ),
  };
}

/** One steel at both ends of what its austenite may hold, with every carbide it may have. */
const endsOf = (steel: Steel, temperature: Quantity | undefined): Balance[] =>
  leverCarbides(steel).flatMap((formula) => {
    const { low, high } = saturations(steel.chromium, formula, temperature);
    return [low, high].map((saturation) => balance(steel, Math.max(0, saturation), formula));
  });

/** What each kind comes to; what the levers give goes by one kind. */
const byKind = (lever: 'Fe3C' | 'CrC') => ({
  [lever]: ({ Fe3C = 0, CrC = 0 }: Volumes) => Fe3C + CrC,
  MC: ({ MC = 0 }: Volumes) => MC,
  M6C: ({ M6C = 0 }: Volumes) => M6C,
});

const volumesBy = (lever: 'Fe3C' | 'CrC', come: (of: (volumes: Volumes) => number) => number): Volumes =>
  Object.fromEntries(
    Object.entries(byKind(lever)).flatMap(([kind, of]) => {
      const volume = come(of);
      return volume > 0 ? [[kind, volume]] : [];
    }),
  );

/** Each kind at the mean of what it comes to. */
const meanVolumes = (each: readonly Volumes[], lever: 'Fe3C' | 'CrC'): Volumes =>
  volumesBy(lever, (of) => each.reduce((sum, volumes) => sum + of(volumes), 0) / each.length);

/** Each kind at the middle of what it may come to. */
const middleVolumes = (possible: readonly Volumes[], lever: 'Fe3C' | 'CrC'): Volumes =>
  volumesBy(lever, (of) => {
    const volumes = possible.map(of);
    return (Math.min(...volumes) + Math.max(...volumes)) / 2;
  });

/** Carbon the austenite may hold at a chromium content, weight %: in the middle, and at the ends of all ±. */
function saturations(
  chromium: number,
  carbide: LeverCarbide,
  given: Quantity | undefined,
): { low: number; middle: number; high: number } {
  const reach = hardeningRange(chromium);
  const limit = (celsius: number): number => Math.min(reach.high, Math.max(reach.low, celsius));
  const temperature: Quantity = given ?? { unknown: true, ...usualHardening(chromium) };
  const at = (celsius: number) => saturationCarbon({ chromium, celsius: limit(celsius), carbide });
  const ends = rangeOf(temperature);
  const [cold, hot] = [at(ends.low), at(ends.high)];
  return {
    low: cold.value - cold.plusMinus,
    middle: at(nominal(temperature)).value,
    high: hot.value + hot.plusMinus,
  };
}
