/** What a change to a knife gives for what it costs: ratio, steel, minutes, money and what the edge gives up. */

import { positive, refuse, within } from '../check.ts';
import { compare } from '../chain/compare.ts';
import { finishUm, scratchDepthUm } from '../finish/finish.ts';
import { steelRemovedMm2, toothDepthUm } from '../geometry/apex.ts';
import { vickersFromRockwellC } from '../steel/hardness.ts';
import { angleFloorDeg } from '../chain/limits.ts';
import { checkQuantity, measures, nominal } from '../quantities.ts';
import type { CarbideVolPercent, Comparison, Ends, Finish, Knife, Quantity } from '../types.ts';

/** What is offered. A service is work by someone else: any of the changes, its minutes only those it costs the user. */
export type Offer =
  | { kind: 'refinish'; finish: Finish }
  | { kind: 'regrind'; angleDeg?: number; edgeMm?: number }
  | { kind: 'steel'; hrc: Quantity; carbideVolPercent: CarbideVolPercent; toughness?: Quantity }
  | { kind: 'service'; angleDeg?: number; edgeMm?: number; finish?: Finish };

export interface CostQuestion {
  /** Id of the knife the offer is for. */
  knife: string;
  /** Id of the knife it is compared with. */
  against: string;
  offer: Offer;
  /** Length of the edge that is worked on, mm, above 0. */
  edgeLengthMm: number;
  /** Steel the user takes off in a minute, mm³, above 0: what minutes are derived from where none are given. */
  removalRateMm3PerMin?: number;
  /** Minutes it takes the user, 0 or more. */
  minutes?: number;
  /** Price, 0 or more, in the user's own money. */
  price?: number;
}

/** What is gained per one of something: both 0 where nothing is gained, below 0 where the knife loses. */
export interface Gain {
  /** ln of the ratio gained: adds up over one change after another. */
  log: number;
  /** The ratio gained less 1: what it comes to on this knife alone. */
  plain: number;
}

export interface Cost {
  /** How many times as long the knife cuts as it does now. */
  ratioGained: number;
  /** How many times as long it cuts as the other knife, now and then. */
  overAgainst: { now: number; then: number };
  steelMm3: number;
  /** As given, or steel over the removal rate; null where neither tells. */
  minutes: number | null;
  /** As given; null where none was. */
  price: number | null;
  /** Null where the minutes are 0 or not known: nothing is gained per nothing. */
  gainPerMinute: Gain | null;
  /** Null where the price is 0 or not given. */
  gainPerMoney: Gain | null;
  /** How much nearer the spine the apex stands afterwards, mm. */
  bladeHeightLostMm: number;
  /** Side load to bend the apex, as a ratio to now: both ends. */
  rolling: Ends;
  /** Side load to break pieces out, as a ratio to now; null where a toughness is not known. */
  chipping: Ends | null;
  /** Whether the edge would lie below the floor of its hardness, and break away. */
  belowFloor: boolean;
}

/**
 * What an offer would give and cost, by the careful estimate with all factors multiplied and uncertain inputs at their middle.
 *
 * Steel and height are derived, per mm of edge:
 * - thinning from t₁ to t₂, spine and height H of the grind kept: a wedge off the flanks that ends at the top of the
 *   grind, (t₁ − t₂)·H/2, and the old shoulder below it, (t₁ − t₂)²/(4 tan θ₁). The apex stays.
 * - a lower angle at t: `steelRemovedMm2`, the flanks above the bevel taken as parallel. The apex stays.
 * - a higher angle at t: the same area, but off the apex, which steps back t/2·(cot θ₁ − cot θ₂).
 * - a new finish: a layer as deep as the deeper scratches of the two, 4% of the grain (good to a factor 2), off both
 *   faces of the bevel, t/(2 sin θ) wide each; the apex steps back d/sin θ (assumed: every old scratch is ground out).
 *
 * A microbevel is kept as it is, and the little steel it takes is left out (assumed). Another steel is another knife
 * ground alike: no steel is removed, and nothing is known of its toughness unless it is given.
 *
 * @param comparison as for `compare`
 * @throws RangeError for what `compare` refuses of the knife as it would be, a knife not in the comparison or the same one
 * twice, an offer that changes nothing or would put steel on, and lengths, rates, minutes or prices out of range
 * @example costOf({ knives: [{ id: 'plover', angleDeg: 20, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }, { id: 'dunlin', angleDeg: 10, edgeMm: 0.5, finish: { um: 15 }, grind: { form: 'flat', spineMm: 3, heightMm: 25 }, hrc: 58, carbideVolPercent: {} }], baseline: 'plover' }, { knife: 'plover', against: 'dunlin', offer: { kind: 'regrind', angleDeg: 10 }, edgeLengthMm: 100 }).steelMm3 // → 18.2738
 */
export function costOf(comparison: Comparison, question: CostQuestion): Cost {
  const { knife: id, against, offer } = question;
  const lengthMm = within('edge length', question.edgeLengthMm, 0.1, 5000, ' mm');
  const now = comparison.knives.find((knife) => knife.id === id);
  if (now === undefined) return refuse(`knife ${id} is not one of the comparison's`);
  if (id === against) refuse(`against ${against} is the knife itself, another is needed`);
  if (!comparison.knives.some((knife) => knife.id === against))
    refuse(`against ${against} is not one of the comparison's knives`);
  // What is wrong with the comparison is told of the knife as it is.
  compare(comparison);

  const then = offered(now, offer);
  const { areaMm2, heightMm } = removed(now, then);
  const steelMm3 = areaMm2 * lengthMm;
  const minutes = minutesOf(question, steelMm3);
  const price = question.price === undefined ? null : within('price', question.price, 0, 1e9);

  const other = comparison.knives.map((knife) => knife.id).join(' ') + ' offered';
  const { rows } = compare({
    ...comparison,
    baseline: id,
    knives: [...comparison.knives, { ...then, id: other, name: `${now.name ?? id} as offered` }],
  });
  // Unreachable: both are among the knives that were compared.
  const row = (of: string) => rows.find(({ knife }) => knife === of) ?? refuse(`no row of ${of}`);
  const [gained, opponent] = [row(other), row(against)];
  return {
    ratioGained: gained.multiplied,
    overAgainst: { now: 1 / opponent.multiplied, then: gained.multiplied / opponent.multiplied },
    steelMm3,
    minutes,
    price,
    gainPerMinute: gainPer(gained.multiplied, minutes),
    gainPerMoney: gainPer(gained.multiplied, price),
    bladeHeightLostMm: heightMm,
    ...gained.sideLoad,
    belowFloor:
      nominal(then.microbevelAngleDeg ?? then.angleDeg) <
      angleFloorDeg(vickersFromRockwellC(nominal(then.hrc))).low,
  };
}

/** The knife as it would be. */
function offered(now: Knife, offer: Offer): Knife {
  if (offer.kind === 'refinish') return { ...now, finish: offer.finish };
  if (offer.kind === 'steel') {
    const { toughness: _left, ...rest } = now;
    const { hrc, carbideVolPercent, toughness } = offer;
    return { ...rest, hrc, carbideVolPercent, ...(toughness === undefined ? {} : { toughness }) };
  }
  if (offer.kind !== 'regrind' && offer.kind !== 'service')
    refuse(`offer ${String((offer as Offer).kind)} is not one of refinish, regrind, steel, service`);
  const { kind: _kind, ...changes } = offer;
  if (Object.values(changes).every((change) => change === undefined))
    refuse(`offer ${offer.kind} changes nothing: an angle, a thickness or, of a service, a finish is needed`);
  const { angleDeg = now.angleDeg, edgeMm = now.edgeMm } = offer;
  const finish = offer.kind === 'service' ? (offer.finish ?? now.finish) : now.finish;
  return { ...now, angleDeg, edgeMm, finish };
}

/** Section area ground off and height lost, per mm of edge: the derivation stands with `costOf`. */
function removed(now: Knife, then: Knife): { areaMm2: number; heightMm: number } {
  const [t1, t2] = [
    nominal(now.edgeMm),
    nominal(checkQuantity(measures.edgeMm.name, then.edgeMm, measures.edgeMm)),
  ];
  const [from, to] = [nominal(now.angleDeg), nominal(then.angleDeg)];
  if (t2 > t1)
    refuse(
      `new thickness behind the edge, ${t2} mm, is more than the present ${t1} mm: steel can’t be put on`,
    );
  const thinning = ((t1 - t2) * nominal(now.grind.heightMm)) / 2 + ((t1 - t2) ** 2 * cot(from)) / 4;
  const bevel = steelRemovedMm2({
    edgeMm: t2,
    fromAngleDeg: Math.max(from, to),
    toAngleDeg: Math.min(from, to),
  });
  const setBack = Math.max(0, (t2 / 2) * (cot(from) - cot(to)));
  if (then.finish === now.finish) return { areaMm2: thinning + bevel, heightMm: setBack };

  const layerMm = Math.max(...[now, then].map((knife) => scratchMm(finishUm(knife.finish))));
  const faces = t2 / Math.sin(radians(to));
  const apexMm = toothDepthUm({ scratchUm: layerMm * 1000, angleDeg: to, bevels: 2 }) / 1000;
  return { areaMm2: thinning + bevel + faces * layerMm, heightMm: setBack + apexMm };
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const cot = (degrees: number): number => 1 / Math.tan(radians(degrees));

function scratchMm(um: number): number {
  const { low, high } = scratchDepthUm(um);
  return (low + high) / 2 / 1000;
}

function minutesOf(
  { minutes, removalRateMm3PerMin: rate, offer }: CostQuestion,
  steelMm3: number,
): number | null {
  if (rate !== undefined) positive('removal rate', rate, ' mm³ a minute');
  if (minutes !== undefined) return within('minutes', minutes, 0, 1e6);
  // Someone else's grinding, or another knife, takes no grinding of the user's.
  return rate === undefined || offer.kind === 'service' || offer.kind === 'steel' ? null : steelMm3 / rate;
}

const gainPer = (ratio: number, cost: number | null): Gain | null =>
  cost === null || cost === 0 ? null : { log: Math.log(ratio) / cost, plain: (ratio - 1) / cost };
