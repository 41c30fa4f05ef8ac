import { factorName } from '../../phrases/factor-names.ts';
import { factorWords } from '../../phrases/factor-words.ts';
import { jobOf } from '../../phrases/job.ts';
import { list } from '../../phrases/list.ts';
import { onlyTogether } from '../../phrases/only-together.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { unknownMeasureNames } from '../../phrases/unknown-measures.ts';
import { countInWords, readsAsOne, short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { nominal } from '../../model/index.ts';
import { grainUm } from './measures.ts';
import { biggestReasons, isNamed, mostTold, reasonsOf, restOf } from './reasons.ts';
import type { NamedReason, Reason } from './reasons.ts';
import { moreCarbide, pull, ratioSaid, titleOf } from './titles.ts';

/** What bevel and apex do, and a microbevel where the two part. */
function angleSaid({ parts }: Reason, { subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const [wedge, apex] = [pull(parts['wedge']), pull(parts['apex'])];
  const force = wedge === 0 ? '' : `takes ${wedge > 0 ? 'less' : 'more'} force to push through`;
  const wear = apex === 0 ? '' : apex > 0 ? 'stays thin as it wears' : 'gets thick sooner as it wears';
  const joined = wedge === apex ? ', and ' : ', but ';
  const microbevels =
    wedge === apex
      ? []
      : [
          { name: subject.name, at: subjectKnife.microbevelAngleDeg },
          { name: baseline.name, at: baselineKnife.microbevelAngleDeg },
        ].flatMap(({ name, at }) =>
          at === undefined
            ? []
            : [`A microbevel makes ${name} ${short(nominal(at))}° per side at the very edge.`],
        );
  return [`It ${[force, wear].filter(Boolean).join(joined)}.`, ...microbevels];
}

/** Which of two grinds spreads the cut less, by their forms where these differ. */
function grindSaid({ factor }: Reason, { subjectKnife, baselineKnife }: Scene): string[] {
  const [own, other] = [subjectKnife.grind.form, baselineKnife.grind.form];
  const less = factor > 1 ? 'less' : 'more';
  return own === other
    ? [
        `Above the bevel its faces open ${factor > 1 ? 'more slowly' : 'faster'}, so they spread the cut ${less}.`,
      ]
    : [`Above the bevel its ${own} grind spreads the cut ${less} than the other’s ${other} one.`];
}

function finishSaid({ factor }: Reason, { subjectKnife, baselineKnife }: Scene): string[] {
  const coarser = grainUm(subjectKnife) > grainUm(baselineKnife);
  if (coarser !== factor > 1)
    return [
      `With the exponent set here, ${coarser ? 'coarser' : 'finer'} scratches count ${coarser ? 'against' : 'for'} it.`,
    ];
  return [
    `We take scratches to act as teeth: ${coarser ? 'bigger teeth go on biting' : 'smaller teeth stop biting sooner'} in a slice.`,
  ];
}

/** What hardness and carbide do, together or against each other. */
function steelSaid({ factor, parts }: Reason, scene: Scene): string[] {
  const [hardness, carbide] = [pull(parts['hardness']), pull(parts['carbide'])];
  const is = hardness > 0 ? 'harder' : 'softer';
  const grains = 'hard grains that protect the steel around them';
  // Of two steels with as much carbide, the kinds make the difference.
  const byKind = carbide !== 0 && moreCarbide(scene) !== carbide;
  const holds = byKind
    ? `its kinds of carbide wear ${carbide > 0 ? 'better' : 'worse'}`
    : carbide > 0
      ? `it holds more carbide, ${grains}`
      : 'it holds less carbide, so fewer hard grains protect it';
  if (carbide === 0)
    return [
      hardness > 0
        ? 'It’s harder, so it gives way less at the apex.'
        : 'It’s softer, so it gives way sooner at the apex.',
    ];
  if (hardness === 0) return [`${holds.charAt(0).toUpperCase()}${holds.slice(1)}.`];
  if (hardness === carbide) return [`It’s ${is} and ${byKind ? holds : holds.replace(/^it /, '')}.`];
  // The two pull apart, and the one that wins goes first.
  const carbideHas = byKind ? 'its kinds of carbide' : `having ${carbide > 0 ? 'more' : 'less'} carbide`;
  return hardness === pull(factor)
    ? [`It’s ${is}, and that counts for more here than ${carbideHas}.`]
    : [`It’s ${is}, but ${holds}.`];
}

const reasons: Record<NamedReason, (reason: Reason, scene: Scene) => string[]> = {
  angle: angleSaid,
  edge: ({ factor }) => [`There’s ${factor > 1 ? 'less' : 'more'} steel to push aside in every cut.`],
  grind: grindSaid,
  finish: finishSaid,
  steel: steelSaid,
};

/** The measures behind each reason, as they are named where they are not known. */
const measured: Record<NamedReason, readonly string[]> = {
  angle: ['edge angle', 'microbevel angle'],
  edge: ['thickness behind the edge'],
  grind: ['thickness at the spine', 'height of the grind', 'radius of the grind'],
  finish: ['finish'],
  steel: ['hardness', 'carbide'],
};

/** That a middle value stands in for what is not known of a knife, or of both. */
function unknownSaid(id: NamedReason, { subject, baseline, subjectKnife, baselineKnife }: Scene): string[] {
  const of = (knife: Scene['subjectKnife']): string[] =>
    unknownMeasureNames(knife).filter((what) => measured[id].includes(what));
  const [other, own] = [of(baselineKnife), of(subjectKnife)];
  const both = own.length > 0 && list(own) === list(other);
  if (both)
    return [
      `Neither ${baseline.name}’s nor ${subject.name}’s ${list(own)} ${own.length > 1 ? 'are' : 'is'} known, so middle values stand in.`,
    ];
  const say = (whose: string, what: readonly string[]): string =>
    what.length > 1
      ? `${whose}’s ${list(what)} aren’t known, so middle values stand in.`
      : `${whose}’s ${list(what)} isn’t known, so a middle value stands in.`;
  return [
    ...(other.length > 0 ? [say(baseline.name, other)] : []),
    ...(own.length > 0 ? [say(subject.name, own)] : []),
  ];
}

/** One reason, in a sentence or two. */
function reasonSaid(reason: Reason, scene: Scene): string[] {
  const { id } = reason;
  if (isNamed(id)) return [...reasons[id](reason, scene), ...unknownSaid(id, scene)];
  return [factorWords(id).why || `The model takes ${factorName(id).own} as a reason of its own.`];
}

/** What is said where no reason makes a difference that can be seen. */
const nothing = (scene: Scene): string[] => [
  `Nothing sets ${scene.subject.name} apart from ${scene.baseline.name}: no reason makes a difference of its own.`,
  onlyTogether(scene, scene.row.careful),
];

/** That there is one reason only, or that all of them are losses. */
function pulledOneWay(all: readonly Reason[], { subject, baseline }: Scene): string[] {
  if (all.length === 1) return [`Nothing else sets ${subject.name} apart from ${baseline.name}.`];
  const lost = all.length > 0 && all.every(({ factor }) => factor < 1);
  return lost ? [`${all.length === 2 ? 'Both' : 'All of them'} count against ${subject.name}.`] : [];
}

const place = (index: number): Record<string, WordsOf> => ({
  [`reason-${index + 1}-title`]: (scene) => {
    const reason = biggestReasons(scene)[index];
    return reason ? [titleOf(reason, scene)] : [];
  },
  [`reason-${index + 1}`]: (scene) => {
    const reason = biggestReasons(scene)[index];
    if (reason) return reasonSaid(reason, scene);
    return index === 0 ? nothing(scene) : [];
  },
});

export const words: Record<string, WordsOf> = {
  'reasons-heading': (scene) => {
    const all = reasonsOf(scene).length;
    if (all === 0) return [];
    if (all > mostTold) return [`The ${countInWords(mostTold)} biggest reasons`];
    return [all === 1 ? 'The reason' : 'The reasons'];
  },
  ...Object.assign({}, ...Array.from({ length: mostTold }, (_, index) => place(index))),

  /** What the reasons that are not told one by one make together. */
  'reasons-rest': (scene) => {
    const others = reasonsOf(scene).slice(mostTold);
    if (others.length === 0) return [];
    const rest = restOf(scene);
    const which = others.length === 1 ? 'One smaller reason' : 'The smaller reasons together';
    return [
      readsAsOne(rest)
        ? `${which}: no difference for ${scene.subject.name}.`
        : `${which}: ${ratioSaid(rest)} times as long.`,
    ];
  },

  /** Where there is one reason only, all are losses, or the work is not the one they hold in. */
  'reasons-note': (scene) => {
    const all = reasonsOf(scene);
    const clean =
      all.length === 0 || jobOf(scene.entry).slicingChain
        ? ''
        : `All this holds for ${scene.subject.name} and ${scene.baseline.name} in clean slicing, which this work is not.`;
    return [...pulledOneWay(all, scene), clean];
  },
};
