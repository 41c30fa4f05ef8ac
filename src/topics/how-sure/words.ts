import { isUnknown } from '../../model/index.ts';
import { chancesOfRange, ofHundred, distinguished, verdict } from '../band/words.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { headlineInWords, headlineSentence, rangeInWords } from '../../phrases/headline.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, readAlike, short, thousands } from '../../scene/show.ts';
import { isExact, nearestPairing, structureMatter, sureOf } from '../../scene/sure.ts';
import type { Sure } from '../../scene/sure.ts';
import { samples } from '../../comparison/predicted.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** The range in two sentences: how likely it holds the answer, and its middle. */
export function bandSentences(scene: Scene): string[] {
  const { subject, baseline } = scene;
  if (isExact(sureOf(scene))) return [exactSaid(scene)];
  const headline = headlineOf(scene);
  return [
    `If the model is about right, there are nine chances in ten that ${subject.name} cuts ${rangeInWords(headline)} as long as ${baseline.name}.`,
    `The middle is ${short(headline.middle)}.`,
  ];
}

/** That there is no range. */
export const exactSaid = (scene: Scene): string =>
  `Nothing about ${scene.subject.name} and ${scene.baseline.name} is left uncertain, so there is one number and no range: ${short(sureOf(scene).median, 2)}.`;

/** Where the middle lies under each structure, and that the weights are a choice. */
export function structureSentences(scene: Scene): string[] {
  const { multiplied, added, toLimit } = sureOf(scene).byStructure;
  const middle = ({ median }: { median: number }): string => short(median, 2);
  const weights = scene.comparison.assumptions?.structureWeights;
  return [
    readAlike(multiplied.median, added.median) && readAlike(multiplied.median, toLimit.median)
      ? 'The middle is the same whichever way the effects combine.'
      : middle(multiplied) === middle(added) && middle(multiplied) === middle(toLimit)
        ? `The middle is near ${middle(multiplied)} whichever way the effects combine.`
        : `One by one, the middle is near ${middle(multiplied)} if the factors multiply, ${middle(added)} if the forces add and ${middle(toLimit)} if the force has a limit.`,
    `Nobody has measured which of the three holds, and there may be others. ${weights ? `Here they have the weights ${weights.map((weight) => short(weight)).join(' to ')}` : 'We give each a third'}: a choice, not a finding.`,
  ];
}

/** What all knives share and a visitor may leave open. */
const assumed = {
  angleExponent: 'what an angle is worth',
  thicknessExponent: 'what thickness is worth',
  finishExponent: 'what finish is worth',
  hardnessExponent: 'what hardness is worth beyond the published line',
  lifeExponent: 'how card turns into life',
  wedgingShare: 'wedging’s share of the last force',
  limitPower: 'how life grows with the width of the edge',
  residualCv: 'how far steels lie off the published line',
} as const;

/** Which assumptions a visitor left open; what is not known of the knives stands in their notes. */
function leftOpenSaid({ entry }: Scene): string {
  const open = (Object.keys(assumed) as (keyof typeof assumed)[]).flatMap((id) =>
    isUnknown(entry.assumptions[id] ?? 0) ? [assumed[id]] : [],
  );
  return open.length > 0 ? `Left open for all knives: ${list(open)}.` : '';
}

/** Two numbers in two figures, or in three where two would make them one. */
function shownApart(one: number, other: number): [string, string] {
  const figures = plain(one, 2) === plain(other, 2) ? 3 : 2;
  return [plain(one, figures), plain(other, figures)];
}

/** Why the answer is not given to more figures. */
function whyNoFiner(scene: Scene): string {
  const { low, high } = sureOf(scene);
  const { subject, baseline } = scene;
  return low < 1 && high > 1
    ? `As the range holds 1, it doesn’t say for sure which of ${subject.name} and ${baseline.name} lasts longer.`
    : 'More figures would claim more than the range supports.';
}

/** How the range worked by hand lies beside that of the samples. */
function byHandSaid({ line, low, high }: Sure): string[] {
  const widths = Math.log(line.high / line.low) / Math.log(high / low);
  const agree = Math.abs(widths - 1) < 0.05;
  const [widest] = [
    { name: 'lower', hand: line.low, sampled: low },
    { name: 'upper', hand: line.high, sampled: high },
  ]
    .map((end) => ({ ...end, apart: Math.abs(Math.log(end.hand / end.sampled)) }))
    .sort((a, b) => b.apart - a.apart);
  const ends = widest ? shownApart(widest.hand, widest.sampled) : [];
  return [
    agree
      ? `That is as wide as the range of ${thousands(samples)} samples.`
      : `On a ruler of ratios that is ${percent(Math.abs(widths - 1))} ${widths > 1 ? 'wider' : 'narrower'} than the range of ${thousands(samples)} samples.`,
    !widest || widest.apart < 0.01
      ? 'The ends agree as well.'
      : `The two part most at the ${widest.name} end: ${ends[0]} by hand, ${ends[1]} by the samples.`,
    ...(agree
      ? []
      : widths > 1
        ? [
            'The sum by hand assumes a bell curve.',
            'Where one evenly spread range matters most, the samples end sooner.',
          ]
        : [
            'Where a range is wide or lopsided, a straight line misses the bend of the curve. The samples don’t.',
          ]),
  ];
}

export const sureWords: Record<string, WordsOf> = {
  /** Beside every ratio: its range, whether it shows a real difference, and what the structures have to do with it. */
  band: (scene) => {
    const sure = sureOf(scene);
    return [
      refusedWork(scene),
      ...bandSentences(scene),
      ...(isExact(sure) ? [] : [verdict(sure, scene), ...structureSentences(scene)]),
      leftOpenSaid(scene),
      `The quick sum says ${short(scene.row.quick.multiplied, 2)}. It takes every effect at face value and has no range.`,
    ];
  },

  /** How it may honestly be said. */
  'band-rounding': (scene) => {
    const { subject, baseline } = scene;
    if (isExact(sureOf(scene)))
      return [
        `With no range, you could write ${subject.name} against ${baseline.name} to as many figures as you like.`,
        'Nobody knows a knife that well.',
      ];
    return [`Say “${headlineInWords(headlineOf(scene))}”, and no finer.`, whyNoFiner(scene)];
  },

  /** What matters most, largest first. */
  'band-matters': (scene) => {
    const { matters } = sureOf(scene);
    const { subject, baseline } = scene;
    const [first, ...others] = matters;
    if (!first)
      return [
        `Nothing about ${subject.name} and ${baseline.name} is uncertain, so nothing widens the range.`,
      ];
    const next = others.slice(0, 2);
    return [
      `The largest part of the doubt about ${subject.name} and ${baseline.name} is ${first.what}: ${percent(first.share)} of it.`,
      first.what === structureMatter && !scene.comparison.assumptions?.structureWeights
        ? 'That share follows from giving each of the three ways a third.'
        : '',
      next.length === 0 ? '' : `Then ${list(next.map(({ what, share }) => `${what} (${percent(share)})`))}.`,
    ];
  },

  /** The sum by hand beside the sampling, and where the two part. */
  'band-line': (scene) => {
    const sure = sureOf(scene);
    if (isExact(sure)) return [];
    const [from, to] = shownApart(sure.line.low, sure.line.high);
    return [
      `Worked by hand, to first order, the range of ${scene.subject.name} over ${scene.baseline.name} is ${from} to ${to}.`,
      ...byHandSaid(sure),
    ];
  },

  /** The two of the comparison that lie nearest to each other: these are the likeliest to show no real difference. */
  'band-nearest': (scene) => {
    const pairing = nearestPairing(scene);
    if (!pairing) return [];
    const { longer, shorter, low, high, beats } = pairing;
    const range = [...new Set([plain(low, 2), plain(high, 2)])].join(' to ');
    return [
      `Nearest to each other are ${longer} and ${shorter}.`,
      `${longer} cuts ${range} times as long as ${shorter}, and is ahead in ${ofHundred(beats)}.`,
      beats >= distinguished
        ? 'By the model that is a real difference.'
        : 'By the model the two can’t be told apart, so naming the better one would be a guess.',
    ];
  },

  /** With a visitor's own knives. */
  sure: (scene) => {
    return [
      refusedWork(scene),
      headlineSentence(scene),
      ...(isExact(sureOf(scene)) ? [exactSaid(scene)] : [chancesOfRange, verdict(sureOf(scene), scene)]),
      ...sentencesOf(sureWords, 'band-matters', scene),
      isExact(sureOf(scene)) ? '' : whyNoFiner(scene),
    ];
  },
};
