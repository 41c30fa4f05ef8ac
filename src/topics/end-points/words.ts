import type { FittedValue } from '../../runs/curves.ts';
import type { EndPointRatio } from '../../runs/equal-sharpness.ts';
import { firstPlan } from '../../comparison/first-plan.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, percent, plain, short, times } from '../../scene/show.ts';
import { endPointsOf } from './values.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { counted } from '../../phrases/counted.ts';

const banded = ({ low, high }: EndPointRatio): string =>
  low === null || high === null ? '' : `, with 95 % confidence between ${times(low)} and ${times(high)}`;

const between = ({ low, high }: FittedValue): string =>
  low === null || high === null ? '' : ` (${plain(low)} to ${plain(high)})`;

/** Where the two can be compared with each other, or why nowhere. */
function where(scene: Scene): string {
  const { subject, baseline } = scene;
  const { bySharpness, read } = endPointsOf(scene);
  const [first, last] = [bySharpness[0], bySharpness.at(-1)];
  if (read === null)
    return `Some of these readings fall and some rise: the sharpness of one edge and the force of another cannot be held against each other, so ${subject.name} and ${baseline.name} have no stop in common.`;
  if (!first || !last)
    return `${subject.name} and ${baseline.name} have no stop in common: no ${read} was passed by all of their edges.`;
  const [from, to] = [first, last].map(({ endPoint }) => short(endPoint));
  const passed =
    read === 'force'
      ? `All of these edges asked for no more than ${from} once, and for ${to} in the end`
      : `All of these edges were as sharp as ${from} once, and as blunt as ${to} in the end`;
  return `${passed}: between the two lies every stop at which ${subject.name} and ${baseline.name} can be compared.`;
}

/** The ratio at the two ends, where the stop matters. */
function ends(scene: Scene): string {
  const { bySharpness } = endPointsOf(scene);
  const [first, last] = [bySharpness[0], bySharpness.at(-1)];
  if (!first || !last) return '';
  const drift = Math.max(first.ratio / last.ratio, last.ratio / first.ratio);
  const [sharp, blunt] = [times(first.ratio, 2), times(last.ratio, 2)];
  return drift < 1.05
    ? `At every stop between them it is about the same, ${sharp === blunt ? sharp : `${sharp} to ${blunt}`}.`
    : `At a sharp stop, ${short(first.endPoint)}, it is ${times(first.ratio)}; at a blunt one, ${short(last.endPoint)}, ${times(last.ratio)}. The stop is part of the result.`;
}

/** The one number, by curve and without one. */
function atChosen(scene: Scene): string {
  const { subject, baseline, entry } = scene;
  const { chosen, read, subject: own, baseline: other } = endPointsOf(scene);
  const endPoint = (entry.plan ?? firstPlan).endPoint;
  // Where some readings fall and some rise there is no stop to choose.
  if (!chosen || read === null)
    return endPoint === undefined
      ? ''
      : `At the stop you chose, ${brief(endPoint)}, there is no ratio: it is not between them.`;
  const single = own.series.length < 2 || other.series.length < 2;
  return [
    `At a ${read} of ${brief(chosen.endPoint)} ${subject.name} has cut ${times(chosen.ratio)} as much as ${baseline.name}${banded(chosen)}.`,
    single ? ' One series of a knife shows no scatter, so this has no interval.' : '',
    chosen.curveFree === null
      ? ' Without curves there is no such number: the readings themselves do not all pass it.'
      : ` Without any curve, from one reading straight to the next, it is ${times(chosen.curveFree)}.`,
  ].join('');
}

export const endPointsWords: Record<string, WordsOf> = {
  /** Whose readings these are. */
  'stops-given': (scene) => {
    const { subject, baseline } = scene;
    const { origin, subject: own, baseline: other } = endPointsOf(scene);
    return [
      origin === 'imagined'
        ? `These readings are imagined: ${counted(own.series.length, 'sharpening')} of ${subject.name} and ${counted(other.series.length, 'sharpening')} of ${baseline.name}, made so that at half of their start they stand as the close reading has it, ${times(scene.row.careful.product)}. Nobody cut them.`
        : `The log has readings along ${counted(own.series.length, 'sharpening')} of ${subject.name} and ${counted(other.series.length, 'sharpening')} of ${baseline.name}.`,
      ...[...own.leftOut, ...other.leftOut].slice(0, 5),
    ];
  },

  /** The ratio at the chosen stop, and how it depends on it. */
  'stops-ratio': (scene) => [atChosen(scene), where(scene), ends(scene)],

  /** At equal relative loss. */
  'stops-loss': (scene) => {
    const { subject, baseline } = scene;
    const { half, byLoss, read } = endPointsOf(scene);
    const [first, last] = [byLoss[0], byLoss.at(-1)];
    if (half)
      return [
        `Where ${read === 'force' ? 'each edge asks for twice its first force' : 'each edge has lost half of its own start'}, ${subject.name} has cut ${times(half.ratio)} as much as ${baseline.name}${banded(half)}.`,
      ];
    return [
      !first || !last
        ? ''
        : read === 'force'
          ? `No stop at twice the first force is common to all edges of ${subject.name} and ${baseline.name}; at ${times(1 / last.endPoint)} that force the ratio is ${times(last.ratio)}.`
          : `No stop at half of the start is common to all edges of ${subject.name} and ${baseline.name}; with ${percent(last.endPoint)} of it left the ratio is ${times(last.ratio)}.`,
    ];
  },

  /** Every curve with its values and their 95 % intervals. */
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
