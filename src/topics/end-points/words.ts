import type { FittedValue } from '../../runs/curves.ts';
import type { EndPointRatio } from '../../runs/equal-sharpness.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import type { Scene } from '../../scene/scene.ts';
import { ratioSaid, rangeSaid } from '../../phrases/judged-runs.ts';
import { brief, percent, plain, short } from '../../scene/show.ts';
import { endPointsOf } from './values.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { counted } from '../../phrases/counted.ts';

const banded = ({ low, high }: EndPointRatio): string =>
  low === null || high === null ? '' : `, ${rangeSaid(low, high)} with 95% confidence`;

const between = ({ low, high }: FittedValue): string =>
  low === null || high === null ? '' : ` (${plain(low)} to ${plain(high)})`;

/** Where the two can be compared with each other, or why nowhere. */
function where(scene: Scene): string {
  const { subject, baseline } = scene;
  const { bySharpness, read } = endPointsOf(scene);
  const [first, last] = [bySharpness[0], bySharpness.at(-1)];
  if (read === null)
    return `Some of these readings fall and some rise: the sharpness of one edge and the force of another cannot be compared, so ${subject.name} and ${baseline.name} have no end point in common.`;
  if (!first || !last)
    return `${subject.name} and ${baseline.name} have no end point in common: no ${read} was passed by all of their edges.`;
  const [from, to] = [first, last].map(({ endPoint }) => short(endPoint));
  const passed =
    read === 'force'
      ? `All of these edges asked for no more than ${from} once, and for ${to} in the end`
      : `All of these edges were as sharp as ${from} once, and as blunt as ${to} in the end`;
  return `${passed}. Between the two lies every end point at which ${subject.name} and ${baseline.name} can be compared.`;
}

/** The ratio at the two ends, where the stop matters. */
function ends(scene: Scene): string {
  const { bySharpness } = endPointsOf(scene);
  const [first, last] = [bySharpness[0], bySharpness.at(-1)];
  if (!first || !last) return '';
  const drift = Math.max(first.ratio / last.ratio, last.ratio / first.ratio);
  return drift < 1.05
    ? `At every end point between them it is about the same, ${rangeSaid(Math.min(first.ratio, last.ratio), Math.max(first.ratio, last.ratio))}.`
    : `At a sharp end point, ${short(first.endPoint)}, it is ${ratioSaid(first.ratio)}; at a blunt one, ${short(last.endPoint)}, ${ratioSaid(last.ratio)}. The end point is part of the result.`;
}

/** The one number, by curve and without one. */
function atChosen(scene: Scene): string[] {
  const { subject, baseline, entry } = scene;
  const { chosen, read, origin, subject: own, baseline: other } = endPointsOf(scene);
  const endPoint = (entry.plan ?? firstPlan).endPoint;
  // Where some readings fall and some rise there is no end point to choose.
  if (read === null) return [];
  if (!chosen)
    return endPoint === undefined
      ? [
          'No end point is chosen. Choose one before you look at the curve below: the reading at which your work would stop.',
        ]
      : [`At the end point you chose, ${brief(endPoint)}, there is no ratio.`];
  const single = own.series.length < 2 || other.series.length < 2;
  return [
    `At a ${read} of ${brief(chosen.endPoint)} ${subject.name} has cut ${ratioSaid(chosen.ratio)} times as much as ${baseline.name}${banded(chosen)}.`,
    origin === 'own' && entry.plan?.endPointLate === true
      ? 'This end point was set with readings already in the log. One picked for its result proves nothing.'
      : '',
    single ? 'One series of a knife shows no scatter, so this has no interval.' : '',
    chosen.curveFree === null
      ? 'Without curves there is no such number: the readings themselves do not all pass it.'
      : `Without any curve, from one reading straight to the next, it is ${ratioSaid(chosen.curveFree)}.`,
  ];
}

export const endPointsWords: Record<string, WordsOf> = {
  /** Whose readings these are. */
  'stops-given': (scene) => {
    const { subject, baseline } = scene;
    const { origin, subject: own, baseline: other } = endPointsOf(scene);
    return [
      origin === 'imagined'
        ? `These readings are imagined: ${counted(own.series.length, 'sharpening')} of ${subject.name} and ${counted(other.series.length, 'sharpening')} of ${baseline.name}. At half of their start they stand as the careful estimate has it with all factors multiplied, ${ratioSaid(scene.row.careful.multiplied)} times as long. Nobody cut them.`
        : `The log has readings along ${counted(own.series.length, 'sharpening')} of ${subject.name} and ${counted(other.series.length, 'sharpening')} of ${baseline.name}.`,
      ...[...own.leftOut, ...other.leftOut].slice(0, 5),
    ];
  },

  /** The ratio at the chosen stop, and how it depends on it. */
  'stops-ratio': (scene) => [...atChosen(scene), where(scene), ends(scene)],

  /** At equal relative loss. */
  'stops-loss': (scene) => {
    const { subject, baseline } = scene;
    const { half, byLoss, read } = endPointsOf(scene);
    const [first, last] = [byLoss[0], byLoss.at(-1)];
    if (half)
      return [
        `Where ${read === 'force' ? 'each edge asks for twice its first force' : 'each edge has lost half of its own start'}, ${subject.name} has cut ${ratioSaid(half.ratio)} times as much as ${baseline.name}${banded(half)}.`,
      ];
    return [
      !first || !last
        ? ''
        : read === 'force'
          ? `No end point at twice the first force is common to all edges of ${subject.name} and ${baseline.name}. At ${ratioSaid(1 / last.endPoint)} times that force the ratio is ${ratioSaid(last.ratio)}.`
          : `No end point at half of the start is common to all edges of ${subject.name} and ${baseline.name}. With ${percent(last.endPoint)} of it left the ratio is ${ratioSaid(last.ratio)}.`,
    ];
  },

  /** Every curve with its values and their 95% intervals. */
  'stops-curves': (scene) => {
    const { subject, baseline } = scene;
    const { subject: own, baseline: other, stretch } = endPointsOf(scene);
    const all = [
      ...own.series.map((one) => ({ ...one, name: subject.name, by: stretch.subject })),
      ...other.series.map((one) => ({ ...one, name: baseline.name, by: stretch.baseline })),
    ];
    const shown = all.slice(0, 12).map(({ name, sharpening, curve, by }) => {
      // Stretched k times along the cuts, the rate is that of the shorter curve over k to the power b.
      const shrink = by ** -curve.b.value;
      const rate = {
        value: curve.a.value * shrink,
        low: curve.a.low && curve.a.low * shrink,
        high: curve.a.high && curve.a.high * shrink,
      };
      return `${name}, sharpening ${sharpening}: ${curve.kind === 'rising' ? 'y₀' : 'S₀'} = ${plain(curve.start.value)}${between(curve.start)}, a = ${plain(rate.value)}${between(rate)}, b = ${plain(curve.b.value)}${between(curve.b)}.`;
    });
    return all.length > shown.length ? [...shown, `… and ${all.length - shown.length} more.`] : shown;
  },
};
