/** The card line as the chain takes it: bent and continued, so that no steel is refused and nothing jumps. */
import { within } from '../check.ts';
import { parameters } from '../quantities.ts';
import { carbideCardMm, carbideKinds, cardLineMm, regression } from './carbide.ts';
import { rockwellRange, vickersClosedForm } from './hardness.ts';
import type { CarbideKind } from '../types.ts';

/** The included angle the chain takes the line at, degrees. */
const takenAtDeg = 30;

/** Card below which the line bends, mm (assumed). */
const bendMm = 200;

/** Carbide a steel may hold of all kinds together, volume %. */
const mostCarbide = 60;

const { low: softest, high: hardest } = regression.hrc;
const [softestHv, hardestHv] = [vickersClosedForm(softest), vickersClosedForm(hardest)];

/** The published line as long as it is 200 mm or more; below that it bends and never reaches nothing (assumed). */
const bent = (lineMm: number): number =>
  lineMm < bendMm ? bendMm * Math.exp((lineMm - bendMm) / bendMm) : lineMm;

/**
 * Card for the chain on plain numbers and without checks, mm: for the sampler, which has checked what it draws from. See
 * `cardForChainMm`.
 *
 * @param hrc 20–68
 * @param carbideMm what the published line adds for the carbide, mm, 0 or more
 * @param hardnessExponent power of Vickers over Vickers beyond 50–66 HRC
 * @example cardForChain(60, 44.8, 1.2) // → 301.8
 */
export function cardForChain(hrc: number, carbideMm: number, hardnessExponent: number): number {
  if (hrc < softest)
    return (
      bent(cardLineMm(softest, takenAtDeg, carbideMm)) *
      (vickersClosedForm(hrc) / softestHv) ** hardnessExponent
    );
  if (hrc > hardest)
    return (
      bent(cardLineMm(hardest, takenAtDeg, carbideMm)) *
      (vickersClosedForm(hrc) / hardestHv) ** hardnessExponent
    );
  return bent(cardLineMm(hrc, takenAtDeg, carbideMm));
}

/**
 * Card a steel would cut at 30° included, mm, continuous in hardness and carbide and never refused within their ranges:
 * what the chain compares steels by. Within 50–66 HRC and from 200 mm on it is the published line, for which see
 * `cardCutMm`. Below 200 mm the line L bends to 200·exp((L − 200)/200): it never reaches nothing (assumed). Beyond 50–66
 * HRC the card of the nearer end is multiplied by (HV/HV of that end)^`hardnessExponent` (assumed).
 *
 * @param p.hrc 20–68
 * @param p.carbideVolPercent volume % by kind, 60 in all at most
 * @param p.hardnessExponent 1.2 if left out; 0.6–2 is thought likely, 0–5 is taken
 * @throws RangeError outside these ranges, or for a kind of carbide the line does not know
 * @source thomas-2018-card
 * @example cardForChainMm({ hrc: 60, carbideVolPercent: { CrC: 4 } }) // → 301.8
 * @example cardForChainMm({ hrc: 45, carbideVolPercent: {} }) // → 102.07
 */
export function cardForChainMm(p: {
  hrc: number;
  carbideVolPercent: Partial<Record<CarbideKind, number>>;
  hardnessExponent?: number;
}): number {
  const { default: usual, accepts } = parameters.hardnessExponent;
  within('hardness', p.hrc, rockwellRange.low, rockwellRange.high, ' HRC');
  const exponent = within('hardness exponent', p.hardnessExponent ?? usual, accepts.low, accepts.high);
  const carbideMm = carbideCardMm(p.carbideVolPercent);
  const inAll = carbideKinds.reduce((sum, kind) => sum + (p.carbideVolPercent[kind] ?? 0), 0);
  // To twelve figures: what adds up to 60 on paper is not refused for the last bit of a sum.
  within('carbide volume in all', Number(inAll.toPrecision(12)), 0, mostCarbide, '%');
  return cardForChain(p.hrc, carbideMm, exponent);
}
