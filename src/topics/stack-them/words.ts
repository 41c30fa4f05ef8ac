import { runsNeeded } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import { found } from '../../comparison/found.ts';
import { jobOf } from '../../phrases/job.ts';
import { onlyTogether, smallParts } from '../../phrases/only-together.ts';
import { measuresText } from '../../phrases/measures.ts';
import { unknownMeasureNames } from '../../phrases/unknown-measures.ts';
import { limitOf } from './limit.ts';
import { baselinePush, pushes, subjectPush } from './push.ts';
import type { Push } from './push.ts';
import { list } from '../../phrases/list.ts';
import { differs, productOf } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { equalisable } from '../../comparison/entry.ts';
import {
  countInWords,
  percent,
  ratioInWords,
  readAlike,
  readsAsOne,
  short,
  times,
} from '../../scene/show.ts';
import { ends, inOrder, nearest, stackOf, ways } from '../../scene/stack.ts';
import type { Stacked, Way } from '../../scene/stack.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { families, forceIds } from '../../scene/factors.ts';

/** What the baseline is called in a list. */
const mark = ({ isBaseline }: Stacked): string => (isBaseline ? ', the baseline' : '');

const ordered = (knives: readonly Stacked[], way: Way): string =>
  list(knives.map((knife) => `${knife.name} (${times(knife[way])}${mark(knife)})`));

const byWay: Record<Way, string> = {
  quick: 'by the quick sum',
  multiplied: 'if all factors multiply',
  added: 'if the forces add',
  toLimit: 'if the force has a limit',
};

const same = (a: readonly Stacked[], b: readonly Stacked[]): boolean =>
  a.every(({ id }, index) => id === b[index]?.id);

/** A ratio in a sentence: “16 times”. */
const timesInWords = (ratio: number): string => `${short(ratio, 2)} times`;

/** How far apart the first and the last are, and whether the structures and the quick sum agree on the order. */
function apart(scene: Scene): string[] {
  const knives = stackOf(scene);
  const { baseline } = scene;
  if (ways.every((way) => readsAsOne(ends(scene, way).ratio)))
    return [
      `Set against ${baseline.name}, no knife of this comparison differs from any other: every ratio is 1.`,
    ];
  const { first, last, ratio } = ends(scene, 'multiplied');
  const others = ways.filter((way) => way !== 'multiplied');
  const other = (way: Way): string => {
    const { first: top, last: end, ratio: apartBy } = ends(scene, way);
    return top.id === first.id && end.id === last.id
      ? `${byWay[way]}, ${timesInWords(apartBy)}`
      : `${byWay[way]}, with ${top.name} first and ${end.name} last, ${timesInWords(apartBy)}`;
  };
  const orders = others.filter((way) => !same(inOrder(knives, way), knives));
  return [
    `If all factors multiply, the longest-cutting first: ${ordered(knives, 'multiplied')}.`,
    `At the middle settings ${first.name} then cuts ${timesInWords(ratio)} as long as ${last.name}.`,
    ...others.map((way) => `${sentenceCase(other(way))}.`),
    orders.length === 0
      ? 'All four agree on the order.'
      : `The order is another ${orders.map((way) => `${byWay[way]}: ${ordered(inOrder(knives, way), way)}`).join('; ')}.`,
  ];
}

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Scatter from one sharpening to the next, of one knife: assumed, to give a feel for what runs can tell. */
const assumedCv = 0.2;

/** The two that lie nearest, and how many sharpenings it would take to show the difference. */
function near(scene: Scene): string[] {
  const { longer, shorter, ratio } = nearest(scene);
  const { baseline } = scene;
  const against = `counted from ${baseline.name} at 1 they stand at ${times(longer.multiplied)} and ${times(shorter.multiplied)}`;
  if (readsAsOne(ratio))
    return [
      `${longer.name} and ${shorter.name} come out alike; ${against}.`,
      'No number of runs can show a difference that is not there.',
    ];
  const pair = `${longer.name} and ${shorter.name}`;
  const nearby = `${scene.comparison.knives.length > 2 ? `${pair} lie nearest` : `There are only two, ${pair}`}: ${against}, so one cuts ${short(ratio)} times as long as the other.`;
  if (ratio < 1.02)
    return [
      nearby,
      `If runs scatter by ${percent(assumedCv)} from one sharpening to the next (assumed), it would take more than a thousand sharpenings of each to show it. For a loft they are one knife.`,
    ];
  const runs = runsNeeded({ cv: assumedCv, ratio });
  return [
    nearby,
    `If runs scatter by ${percent(assumedCv)} from one sharpening to the next (assumed), it takes about ${short(runs, 2)} sharpenings of each to show it.`,
    ratio < 1.1 ? 'For a day’s work they are one knife.' : '',
  ];
}

/** The push of the two knives, part by part; added against multiplied. */
function forces(scene: Scene): string[] {
  const [own, other] = [subjectPush(scene), baselinePush(scene)];
  const given = 'An ordinary blade’s push counts as a third each of wedge, thickness and grind (assumed).';
  if (forceIds.every((id) => readsAsOne(other.parts[id] / own.parts[id])))
    return [
      given,
      `In all three ${own.name} is like ${other.name}: the push is the same, added or multiplied.`,
    ];
  const partsOf = ({ name, parts, added }: Push): string =>
    `${name} needs ${list(forceIds.map((id) => `${percent(parts[id])} for ${id}`))}: ${percent(added)} in all.`;
  const others = pushes(scene).filter(({ id }) => id !== scene.entry.subject && id !== scene.entry.baseline);
  const added = (push: Push): string => short(other.added / push.added, 2);
  const product = (push: Push): string => short(other.multiplied / push.multiplied, 2);
  return [
    given,
    `In these parts ${partsOf(other)}`,
    partsOf(own),
    `Added, the lighter push of the two makes a factor of ${added(own)}; multiplied, the three make ${product(own)}.`,
    others.length === 0
      ? ''
      : `Added and multiplied for the others: ${list(others.map((push) => `${push.name} ${added(push)} and ${product(push)}`))}.`,
  ];
}

/** The third structure: how much of the last force is left for a blunt edge. */
function limit(scene: Scene): string[] {
  const { share, power, subject, baseline } = limitOf(scene);
  const { row } = scene;
  const [own, other] = [scene.subject.name, scene.baseline.name];
  return [
    `Say that wedging takes ${percent(share)} of the last force for an ordinary blade (assumed, 10 to 60%).`,
    `Then it takes ${percent(baseline.wedging)} of it for ${other} and ${percent(subject.wedging)} for ${own}; the blunt edge has the rest.`,
    readsAsOne(subject.width / baseline.width)
      ? 'Both edges may grow equally wide before the hand gives up.'
      : `So ${own}’s edge may grow ${short(subject.width / baseline.width, 2)} times as wide as ${other}’s before the hand gives up.`,
    `Life grows with that width to the power ${short(power)}, and with the steel behind it. In all, at the middle settings, ${own} cuts ${timesInWords(row.careful.toLimit)} as long as ${other}.`,
  ];
}

const hasUnknown = (knife: Knife): boolean => unknownMeasureNames(knife).length > 0;

/** Whether the chain is meant for the work, what is evened up, and what is not known. */
function conditions({ entry, subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const sentences: string[] = [];
  const job = jobOf(entry);
  if (!job.slicingChain)
    sentences.push(
      `The work is ${job.name}: ${job.reason}. This estimate is for slicing and is refused for it; what follows would hold for ${subject.name} and ${baseline.name} in clean slicing only.`,
    );
  if (entry.madeEqual.length > 0)
    sentences.push(
      entry.madeEqual.length === equalisable.length
        ? `Everything about ${subject.name} is set equal to ${baseline.name}.`
        : `Part of ${subject.name} is set equal to ${baseline.name}; the rest is what counts here.`,
    );
  if ([subjectKnife, baselineKnife].some(hasUnknown))
    sentences.push('Where a measure is not known, the middle of its range stands for it.');
  return sentences;
}

/** The factors that are not 1: what they make together, which is the strongest, and which pull against each other. */
function factorsThatCount({ row: { careful }, subject, baseline }: Scene): string[] {
  const doing = careful.terms.filter(differs);
  const idle = careful.terms.filter((term) => !differs(term));
  const strongest = doing.reduce((a, b) =>
    Math.abs(Math.log(b.factor)) > Math.abs(Math.log(a.factor)) ? b : a,
  );
  const sentences = [
    `The chain of ${subject.name} against ${baseline.name} has ${doing.length === 1 ? 'one factor that is' : `${countInWords(doing.length)} factors that are`} not 1: ${list(doing.map(({ id, factor }) => `${id} ${times(factor)}`))}.`,
    `If they multiply, they make ${times(careful.multiplied)} at the middle settings${smallParts(doing, careful.multiplied)}: ${subject.name} should cut ${ratioInWords(careful.multiplied)} as ${baseline.name}.`,
  ];
  if (doing.length > 1) sentences.push(`The strongest factor is ${strongest.id}.`);
  if (idle.length > 0)
    sentences.push(
      `Both have the same ${list(idle.map(({ id }) => factorName(id).shared))}, so ${idle.length > 1 ? 'these factors are' : 'this factor is'} 1.`,
    );
  const gain = productOf(doing.filter(({ factor }) => factor > 1));
  const loss = productOf(doing.filter(({ factor }) => factor < 1));
  if (gain > 1 && loss < 1)
    sentences.push(
      `They pull both ways: those for ${subject.name} make ${times(gain)}, those against it ${times(loss)}.`,
    );
  return sentences;
}

/** Whether two ratios stand on different sides of 1, as they are shown. */
const acrossOne = (a: number, b: number): boolean =>
  (a - 1) * (b - 1) < 0 && !readsAsOne(a) && !readsAsOne(b);

/** The same chain by family, by the quick sum, and under the other two structures. */
function otherSums({ row: { careful, quick } }: Scene): string[] {
  const { multiplied, added, toLimit } = careful;
  return [
    `By family: ${list(families.map((family) => `${family} ${times(careful.families[family])}`))}.`,
    `At face value, which is the quick sum, the same knives make ${times(quick.multiplied)}.`,
    readAlike(added, multiplied) && readAlike(toLimit, multiplied)
      ? 'Combining them another way changes nothing to speak of.'
      : `If the forces add, it is ${times(added)}; if the force has a limit, ${times(toLimit)}.`,
    [added, toLimit].some((other) => acrossOne(other, multiplied))
      ? 'The three do not agree which of the two cuts longer: it depends on how the effects combine.'
      : '',
  ];
}

/** The whole lesson about a visitor's two knives, and where the others of the comparison stand. */
function own(scene: Scene): string[] {
  const { entry, row, subject, baseline } = scene;
  const count = countInWords(row.careful.terms.length);
  const others = stackOf(scene).filter(({ id }) => id !== entry.subject && id !== entry.baseline);
  return [
    ...conditions(scene),
    ...(row.careful.terms.some(differs)
      ? [...factorsThatCount(scene), ...otherSums(scene)]
      : [
          onlyTogether(scene, row.careful) ||
            `${subject.name} and ${baseline.name} are alike in all ${count} factors: ${count} times 1 makes 1.`,
        ]),
    ...(others.length > 0
      ? [
          `Against ${baseline.name}, the others of this comparison: ${list(others.map(({ name, multiplied, added, toLimit }) => `${name} ${times(multiplied)} (${times(added)} added, ${times(toLimit)} to a limit)`))}.`,
        ]
      : []),
  ];
}

export const stackWords: Record<string, (scene: Scene) => string[]> = {
  /** The measures of every knife, one sentence a knife. */
  'stack-given': ({ entry, knives, comparison }) =>
    knives.map(
      ({ id, name }) =>
        `${name}${id === entry.baseline ? ', the baseline' : ''}: ${measuresText(found(comparison.knives, id, 'knife'))}.`,
    ),
  'stack-apart': apart,
  'stack-near': near,
  'stack-forces': forces,
  'stack-limit': limit,
  stack: own,
};
