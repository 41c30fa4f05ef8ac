/** What offers would give and cost, as the reader is told: a table with a column an offer, and a verdict. */

import type { Cost, Ends, Gain } from '../../model/index.ts';
import type { CostAsked, OfferAsked } from './asked.ts';
import type { Offered } from './values.ts';
import { asLongAs } from '../../phrases/as-long-as.ts';
import { capital } from '../../phrases/list.ts';
import { finishText } from '../../phrases/measures.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, ratioInWords, readsAsOne, short, signedPercent, times } from '../../scene/show.ts';
import { knifeName } from '../what-it-takes/words.ts';

const names = { refinish: 'Refinish', regrind: 'Regrind', steel: 'Another steel' } as const;

export const offerName = ({ of }: OfferAsked): string => names[of];

/** What is done to the knife: `to 16° and 0.4 mm`. */
function doneSaid({ offer, designation }: OfferAsked): string {
  if (offer.kind === 'refinish') return `to ${finishText(offer.finish)}`;
  if (offer.kind === 'steel') return `${designation ?? 'steel'} at ${short(offer.hrc as number)} HRC`;
  const { angleDeg, edgeMm } = offer;
  return `to ${[
    ...(angleDeg === undefined ? [] : [`${short(angleDeg)}° per side`]),
    ...(edgeMm === undefined ? [] : [`${short(edgeMm)} mm behind the edge`]),
  ].join(' and ')}`;
}

const gainSaid = (gain: Gain | null): string =>
  gain === null ? 'not known' : signedPercent(gain.plain, Math.abs(gain.plain) < 0.1 ? 1 : 0);

/** A side load as a share of what the edge stands now, both ends. */
const sideLoad = (range: Ends | null): string =>
  range === null
    ? 'not known, without the toughness'
    : percent(range.low) === percent(range.high)
      ? percent(range.low)
      : `${percent(range.low)} to ${percent(range.high)}`;

/** Minutes as a time of something: a derived one holds no more than the taking off of steel. */
function timeSaid(minutes: number, { minutes: typed }: OfferAsked): string {
  const time =
    minutes < 1
      ? 'under a minute'
      : minutes === 1
        ? 'a minute'
        : `${short(minutes, typed === undefined ? 2 : 3)} minutes`;
  return `${time} of ${typed === undefined ? 'taking off steel' : 'work'}`;
}

type Row = readonly [head: string, cell: (cost: Cost, asked: OfferAsked) => string];

const rows = (scene: Scene, { against }: CostAsked): readonly Row[] => [
  ['What you do', (_, asked) => doneSaid(asked)],
  ['Cuts, now as 1, if the factors multiply', ({ ratioGained }) => times(ratioGained)],
  [
    `Against ${knifeName(scene, against)}`,
    ({ overAgainst: { now, then } }) => `${times(then)}, now ${times(now)}`,
  ],
  ['Steel taken off', ({ steelMm3 }) => `${short(steelMm3)} mm³`],
  [
    'Minutes',
    ({ minutes }, { minutes: typed }) =>
      minutes === null
        ? 'not known'
        : `${short(minutes)}${typed === undefined ? ', for the steel alone' : ''}`,
  ],
  ['Price', ({ price }) => (price === null ? 'not given' : short(price))],
  ['Gain for each minute', ({ gainPerMinute }) => gainSaid(gainPerMinute)],
  ['Gain for each unit of money', ({ gainPerMoney }) => gainSaid(gainPerMoney)],
  ['Blade height lost', ({ bladeHeightLostMm }) => `${short(bladeHeightLostMm)} mm`],
  ['Side load before it rolls, of now', ({ rolling }) => sideLoad(rolling)],
  ['Side load before it chips, of now', ({ chipping }) => sideLoad(chipping)],
  ['Floor of the edge angle', ({ belowFloor }) => (belowFloor ? 'below it: the edge breaks away' : 'kept')],
];

/** The table: a column an offer, a row a measure. An offer that is refused has its reason where what is done stands. */
export function costTable(
  scene: Scene,
  asked: CostAsked,
  offered: readonly Offered[],
): { columns: string[]; rows: string[][] } {
  return {
    columns: ['', ...offered.map(({ asked: own }) => offerName(own))],
    rows: rows(scene, asked).map(([head, cell], index) => [
      head,
      ...offered.map((one) =>
        'cost' in one ? cell(one.cost, one.asked) : index === 0 ? `can’t be done: ${one.refused}` : '–',
      ),
    ]),
  };
}

/** An offer in a sentence: what is done, what it gives, what it costs. */
export function offerInWords(one: Offered): string {
  const name = `${offerName(one.asked)} ${one.asked.of === 'steel' ? `(${doneSaid(one.asked)})` : doneSaid(one.asked)}`;
  if ('refused' in one) return `${name}: this can’t be done, since the ${one.refused}.`;
  const { ratioGained, minutes, price } = one.cost;
  const costs = [
    ...(price === null ? [] : [`a price of ${short(price)}`]),
    ...(minutes === null ? [] : [timeSaid(minutes, one.asked)]),
  ].join(' and ');
  return `${name}: ${asLongAs(ratioGained, 'now')}, for ${costs === '' ? 'a price not given' : costs}.`;
}

type Known = { asked: OfferAsked; cost: Cost };

/** The one of a few gains that gives most for one of something, if that is known of any. */
function most(all: readonly Known[], gain: (cost: Cost) => Gain | null): Known | undefined {
  const known = all.flatMap((one) => {
    const of = gain(one.cost);
    return of === null ? [] : [{ one, of: of.plain }];
  });
  const best = known.reduce<(typeof known)[number] | undefined>(
    (first, next) => (first === undefined || next.of > first.of ? next : first),
    undefined,
  );
  return best?.one;
}

const wins = { refinish: 'a new finish', regrind: 'a new grind', steel: 'another steel' } as const;

/** What an offer is called within a sentence. */
const named = ({ of }: OfferAsked): string => wins[of];

/** Which offer gives most, for money and for minutes, and what must not be missed. */
export function costVerdict(scene: Scene, asked: CostAsked, offered: readonly Offered[]): string[] {
  const name = knifeName(scene, asked.knife);
  const worked = offered.filter((one): one is Offered & Known => 'cost' in one);
  if (worked.length === 0) return [`None of the offers can be worked out for ${name}.`];
  const gains = worked.filter(
    ({ cost }) => cost.ratioGained > 1 && !readsAsOne(cost.ratioGained) && !cost.belowFloor,
  );
  if (gains.length === 0) return [`None of these makes ${name} cut longer and keeps its edge.`];
  const first = gains.reduce((a, b) => (b.cost.ratioGained > a.cost.ratioGained ? b : a));
  const byMoney = most(gains, ({ gainPerMoney }) => gainPerMoney);
  const byMinute = most(gains, ({ gainPerMinute }) => gainPerMinute);
  const broken = worked.filter(({ cost }) => cost.belowFloor);
  return [
    `The best of these offers is ${named(first.asked)}, at the middle settings, if the factors multiply.`,
    `${name} would cut ${asLongAs(first.cost.ratioGained, 'now')}. That is ${ratioInWords(first.cost.overAgainst.then)} as ${knifeName(scene, asked.against)}${scene.entry.madeEqual.length > 0 ? ', both as entered' : ''}.`,
    byMoney
      ? `Most for your money: ${named(byMoney.asked)}, which gains ${gainSaid(byMoney.cost.gainPerMoney).replace('+', '')} for each unit of money.`
      : '',
    byMinute
      ? `Most for your time: ${named(byMinute.asked)}, ${
          // Under a minute a gain for each minute would be more than the whole gain.
          byMinute.cost.minutes !== null && byMinute.cost.minutes < 1
            ? `in ${timeSaid(byMinute.cost.minutes, byMinute.asked)}`
            : `which gains ${gainSaid(byMinute.cost.gainPerMinute).replace('+', '')} for each minute`
        }.`
      : '',
    ...broken.map(
      ({ asked: own }) => `${capital(named(own))} doesn’t count: the edge would lie below its floor.`,
    ),
  ].filter((sentence) => sentence !== '');
}
