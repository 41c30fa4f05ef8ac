import { runsNeeded } from '../../model/index.ts';
import type { Knife } from '../../model/index.ts';
import { found } from '../../comparison/found.ts';
import { jobOf } from '../../phrases/job.ts';
import { onlyTogether, smallParts } from '../../phrases/only-together.ts';
import { measuresText } from '../../phrases/measures.ts';
import { unknownMeasureNames } from '../../phrases/unknown-measures.ts';
import { pushes, pushShares, subjectPush } from './push.ts';
import { list } from '../../phrases/list.ts';
import { differs, leftOut, standing } from '../../scene/terms.ts';
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
import { ends, inOrder, nearest, stackOf } from '../../scene/stack.ts';
import type { Stacked, Way } from '../../scene/stack.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { families, forceIds } from '../../scene/factors.ts';

/** What the baseline is called in a list. */
const mark = ({ isBaseline }: Stacked): string => (isBaseline ? ', the baseline' : '');

const ordered = (knives: readonly Stacked[], way: Way): string =>
  list(knives.map((knife) => `${knife.name} (${times(knife[way])}${mark(knife)})`));

const byWay: Record<Way, string> = {
  quick: 'by the pocket reading',
  careful: 'by the close reading',
  rival: 'with the forces added',
};

const same = (a: readonly Stacked[], b: readonly Stacked[]): boolean =>
  a.every(({ id }, index) => id === b[index]?.id);

/** How far apart the first and the last are, and whether the readings agree on the order. */
function apart(scene: Scene): string[] {
  const knives = stackOf(scene);
  const { baseline } = scene;
  if (ways(scene).every(readsAsOne))
    return [
      `Set against ${baseline.name}, no knife of this line-up differs from any other: every ratio is 1.`,
    ];
  const { first, last, ratio } = ends(scene, 'careful');
  const [quick, rival] = [ends(scene, 'quick'), ends(scene, 'rival')];
  const other = (way: 'quick' | 'rival', { first: top, last: end, ratio: apartBy }: typeof quick) =>
    top.id === first.id && end.id === last.id
      ? `${byWay[way]} ${times(apartBy)}`
      : `${byWay[way]}, where ${top.name} leads and ${end.name} is last, ${times(apartBy)}`;
  const orders = (['quick', 'rival'] as const).filter((way) => !same(inOrder(knives, way), knives));
  return [
    `By the close reading, the longest-cutting first: ${ordered(knives, 'careful')}.`,
    `From ${first.name} down to ${last.name} that is ${times(ratio)}; ${other('quick', quick)}; ${other('rival', rival)}.`,
    orders.length === 0
      ? 'On the order all three agree.'
      : `The order is another ${orders.map((way) => `${byWay[way]}: ${ordered(inOrder(knives, way), way)}`).join('; ')}.`,
    incomplete(knives),
  ];
}

const ways = (scene: Scene): number[] =>
  (['quick', 'careful', 'rival'] as const).map((way) => ends(scene, way).ratio);

/** Which knives stand on fewer terms than there are. */
function incomplete(knives: readonly Stacked[]): string {
  const short = knives.filter(({ rows }) => !rows.careful.complete);
  if (short.length === 0) return '';
  const terms = [...new Set(short.flatMap(({ rows }) => leftOut(rows.careful)))];
  return `In the close reading ${list(terms)} is left out for ${list(short.map(({ name }) => name))}, so the total there covers the other terms only.`;
}

/** Scatter from one sharpening to the next, of one knife: assumed, to give a feel for what runs can tell. */
const assumedCv = 0.2;

/** The two that lie nearest, and how many sharpenings would tell them apart. */
function near(scene: Scene): string[] {
  const { longer, shorter, ratio } = nearest(scene);
  const { baseline } = scene;
  const against = `counted from ${baseline.name} at 1 they stand at ${times(longer.careful)} and ${times(shorter.careful)}`;
  if (readsAsOne(ratio))
    return [
      `By the close reading ${longer.name} and ${shorter.name} come out alike; ${against}.`,
      'No number of runs tells apart what does not differ.',
    ];
  const pair = `${longer.name} and ${shorter.name}`;
  const nearby = `${scene.comparison.knives.length > 2 ? `${pair} lie nearest` : `There are only two, ${pair}`}: ${against}, which is ${times(ratio)} between them.`;
  if (ratio < 1.02)
    return [
      nearby,
      `If runs scatter by ${percent(assumedCv)} from one sharpening to the next (assumed), more than a thousand sharpenings of each would be needed to tell them apart: for a loft they are one knife.`,
    ];
  const runs = runsNeeded({ cv: assumedCv, ratio });
  return [
    nearby,
    `If runs scatter by ${percent(assumedCv)} from one sharpening to the next (assumed), telling them apart takes about ${short(runs, 2)} sharpenings of each.`,
    ratio < 1.1 ? 'By that reading they are one knife for a day’s work.' : '',
  ];
}

/** The push of the knife looked at, part by part; added against multiplied. */
function forces(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const shares = pushShares(scene);
  const { parts, added, multiplied } = subjectPush(scene);
  const given = list(forceIds.map((id) => `${percent(shares[id])} ${id}`));
  if (forceIds.every((id) => readsAsOne(shares[id] / parts[id])))
    return [
      `The push of ${baseline.name} is taken as ${given}. In all three ${subject.name} is like it: the push is the same, added or multiplied.`,
    ];
  const others = pushes(scene).filter(({ id }) => id !== scene.entry.subject && id !== scene.entry.baseline);
  return [
    `The push of ${baseline.name} is taken as ${given}.`,
    `${subject.name} needs ${list(forceIds.map((id) => `${percent(parts[id])} for ${id}`))}: ${percent(added)} in all, a factor of ${times(1 / added)}.`,
    `Multiplied, the three factors would leave ${percent(multiplied)}, a factor of ${times(1 / multiplied)}.`,
    others.length === 0
      ? ''
      : `Added and multiplied for the others: ${list(others.map((push) => `${push.name} ${times(1 / push.added)} and ${times(1 / push.multiplied)}`))}.`,
  ];
}

const hasUnknown = (knife: Knife): boolean => unknownMeasureNames(knife).length > 0;

/** Whether the chain is meant for the work, what is evened up, and what is not known. */
function conditions({ entry, subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const sentences: string[] = [];
  const job = jobOf(entry);
  if (!job.slicingChain)
    sentences.push(
      `The work is ${job.name}: ${job.reason}. The slicing chain is refused for it, and what follows would hold for ${subject.name} and ${baseline.name} in clean slicing only.`,
    );
  if (entry.madeEqual.length > 0)
    sentences.push(
      entry.madeEqual.length === equalisable.length
        ? `Everything about ${subject.name} is evened up with ${baseline.name}.`
        : `Part of ${subject.name} is evened up with ${baseline.name}; the rest is what counts here.`,
    );
  if ([subjectKnife, baselineKnife].some(hasUnknown))
    sentences.push('Where a measure is not known, the middle of its range stands for it.');
  return sentences;
}

const multiplied = (links: readonly { factor: number }[]): number =>
  links.reduce((product, { factor }) => product * factor, 1);

/** The links that are not 1: what they make together, which is the strongest, and which pull against each other. */
function linksThatCount({ row: { careful }, subject, baseline }: Scene): string[] {
  const terms = standing(careful);
  const doing = terms.filter(differs);
  const idle = terms.filter((term) => !differs(term));
  const strongest = doing.reduce((a, b) =>
    Math.abs(Math.log(b.factor)) > Math.abs(Math.log(a.factor)) ? b : a,
  );
  const sentences = [
    `The chain of ${subject.name} against ${baseline.name} has ${doing.length === 1 ? 'one link that is' : `${doing.length} links that are`} not 1: ${list(doing.map(({ id, factor }) => `${id} ${times(factor)}`))}.`,
    `Multiplied they make ${times(careful.product)} by the close reading${smallParts(doing, careful.product)}: ${subject.name} should cut ${ratioInWords(careful.product)} as ${baseline.name}.`,
  ];
  if (doing.length > 1) sentences.push(`The strongest link is ${strongest.id}.`);
  if (idle.length > 0)
    sentences.push(
      `Both have ${list(idle.map(({ id }) => factorName(id).shared))}, so ${idle.length > 1 ? 'these factors are' : 'this factor is'} 1.`,
    );
  const gain = multiplied(doing.filter(({ factor }) => factor > 1));
  const loss = multiplied(doing.filter(({ factor }) => factor < 1));
  if (gain > 1 && loss < 1)
    sentences.push(
      `The links pull both ways: those for ${subject.name} make ${times(gain)}, those against it ${times(loss)}.`,
    );
  return sentences;
}

/** The same chain by family, by the quick sum, and with the forces added. */
function otherSums({ row: { careful, quick } }: Scene): string[] {
  return [
    `By family: ${list(families.map((family) => `${family} ${times(careful.families[family])}`))}.`,
    `At face value, which is the pocket reading, the same knives make ${times(quick.product)}.`,
    readAlike(careful.rival, careful.product)
      ? 'Adding the forces instead changes nothing to speak of.'
      : `If the forces add, the close reading becomes ${times(careful.rival)}${(careful.rival - 1) * (careful.product - 1) < 0 && !readsAsOne(careful.rival) && !readsAsOne(careful.product) ? ', on the other side of 1: which of the two cuts longer then hangs on the form of the model' : ''}.`,
  ];
}

/** The whole lesson about a visitor's two knives, and where the others of the comparison stand. */
function own(scene: Scene): string[] {
  const { entry, row, subject, baseline } = scene;
  const missing = leftOut(row.careful);
  const links = countInWords(row.careful.terms.length);
  const others = stackOf(scene).filter(({ id }) => id !== entry.subject && id !== entry.baseline);
  return [
    ...conditions(scene),
    ...(standing(row.careful).some(differs)
      ? [...linksThatCount(scene), ...otherSums(scene)]
      : [
          onlyTogether(scene, row.careful) ||
            `${subject.name} and ${baseline.name} are alike in ${missing.length > 0 ? 'every term that stands' : `all ${links} terms`}: ${links} links of 1 make a chain of 1.`,
        ]),
    ...(missing.length > 0
      ? [
          `Left out, and not taken as 1: ${list(missing)}. The chain is that much shorter than the truth of ${subject.name} against ${baseline.name}.`,
        ]
      : []),
    ...(others.length > 0
      ? [
          `Against ${baseline.name}, the others of this line-up: ${list(others.map(({ name, careful: c, rival }) => `${name} ${times(c)} (forces added ${times(rival)})`))}.`,
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
  stack: own,
};
