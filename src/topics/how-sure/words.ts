import { isUnknown } from '../../model/index.ts';
import { unknownMeasureNames } from '../../phrases/unknown-measures.ts';
import { ofHundred, distinguished, verdict } from '../band/words.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { headlineInWords, headlineSentence, rangeInWords } from '../../phrases/headline.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, readAlike, short, thousands, times } from '../../scene/show.ts';
import { isExact, nearestPairing, structureMatter, sureOf } from '../../scene/sure.ts';
import { samples } from '../../comparison/predicted.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** The band in a sentence. */
export function bandSentence(scene: Scene): string {
  const sure = sureOf(scene);
  const { subject, baseline } = scene;
  if (isExact(sure))
    return `Nothing about ${subject.name} against ${baseline.name} is left uncertain, so the band has no width: ${times(sure.median)}.`;
  const headline = headlineOf(scene);
  return `If the model is about right, there are nine chances in ten that ${subject.name} cuts ${rangeInWords(headline)} as long as ${baseline.name}; ${short(headline.middle)} is the middle.`;
}

/** Where the middle lies under each structure, and that the weights are a choice. */
export function structureSentences(scene: Scene): string[] {
  const { multiplied, added, toLimit } = sureOf(scene).byStructure;
  const middle = ({ median }: { median: number }): string => short(median, 2);
  const weights = scene.comparison.assumptions?.structureWeights;
  return [
    readAlike(multiplied.median, added.median) && readAlike(multiplied.median, toLimit.median)
      ? 'The middle is the same whichever way the effects combine.'
      : `The middle is near ${middle(multiplied)} if the factors multiply, ${middle(added)} if the forces add and ${middle(toLimit)} if the force has a limit.`,
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

/** What is not known of the two, in words. */
function unknowns({ subjectKnife, baselineKnife, subject, baseline, entry }: Scene): string[] {
  return [
    ...[[subjectKnife, subject.name] as const, [baselineKnife, baseline.name] as const].flatMap(
      ([knife, name]) => unknownMeasureNames(knife).map((what) => `the ${what} of ${name}`),
    ),
    ...(isUnknown(entry.contactDepthMm) ? ['the depth of contact'] : []),
    ...(isUnknown(entry.friction) ? ['the friction'] : []),
    ...(Object.keys(assumed) as (keyof typeof assumed)[]).flatMap((id) =>
      isUnknown(entry.assumptions[id] ?? 0) ? [assumed[id]] : [],
    ),
  ];
}

export const sureWords: Record<string, WordsOf> = {
  /** Beside every ratio: its band, whether the two are distinguished, and what the structures have to do with it. */
  band: (scene) => {
    const sure = sureOf(scene);
    const missing = unknowns(scene);
    return [
      refusedWork(scene),
      bandSentence(scene),
      isExact(sure) ? '' : verdict(sure, scene),
      missing.length === 0 ? '' : `Not known: ${list(missing)}. The band is as wide as that leaves it.`,
      ...(isExact(sure) ? [] : structureSentences(scene)),
      `The quick sum says ${short(scene.row.quick.multiplied, 2)}: it takes every effect at face value and has no band.`,
    ];
  },

  /** How it may honestly be said. */
  'band-rounding': (scene) => {
    const sure = sureOf(scene);
    const { subject, baseline } = scene;
    if (isExact(sure))
      return [
        `With no band about it, ${times(sure.median)} for ${subject.name} over ${baseline.name} could be written to as many figures as one likes. Nobody knows a knife that well.`,
      ];
    return [
      `Say “${headlineInWords(headlineOf(scene))}”, and no finer.`,
      sure.low < 1 && sure.high > 1
        ? `As the range holds 1, it does not say for sure which of ${subject.name} and ${baseline.name} lasts longer.`
        : `The middle of the samples is ${times(sure.median)}; to write so many figures would pretend to more than the band supports.`,
    ];
  },

  /** What matters most, largest first. */
  'band-matters': (scene) => {
    const { matters } = sureOf(scene);
    const { subject, baseline } = scene;
    const [first, ...others] = matters;
    if (!first)
      return [
        `Nothing about ${subject.name} and ${baseline.name} is uncertain, so nothing matters to the band.`,
      ];
    const next = others.slice(0, 2);
    return [
      `The largest part of the doubt about ${subject.name} and ${baseline.name} is ${first.what}: ${percent(first.share)} of it.`,
      next.length === 0 ? '' : `Then ${list(next.map(({ what, share }) => `${what} (${percent(share)})`))}.`,
      first.what === structureMatter && !scene.comparison.assumptions?.structureWeights
        ? 'That share follows from giving each of the three ways a third.'
        : '',
    ];
  },

  /** The sum by hand beside the sampling, and where the two part. */
  'band-line': (scene) => {
    const sure = sureOf(scene);
    const { subject, baseline } = scene;
    if (isExact(sure)) return [];
    const { line, low, high } = sure;
    const widths = Math.log(line.high / line.low) / Math.log(high / low);
    const agree = Math.abs(widths - 1) < 0.05;
    const ends = [
      { name: 'lower', hand: line.low, sampled: low },
      { name: 'upper', hand: line.high, sampled: high },
    ].map((end) => ({ ...end, apart: Math.abs(Math.log(end.hand / end.sampled)) }));
    const [widest] = ends.sort((a, b) => b.apart - a.apart);
    return [
      `By hand, to first order, the band of ${subject.name} over ${baseline.name} comes to ${times(line.low)}–${times(line.high)}: ${agree ? 'as wide as' : widths > 1 ? `${percent(widths - 1)} wider on a log axis than` : `${percent(1 - widths)} narrower on a log axis than`} that of ${thousands(samples)} samples.`,
      !widest || widest.apart < 0.01
        ? 'The two ends agree as well.'
        : `The two part most at the ${widest.name} end: ${times(widest.hand)} by hand, ${times(widest.sampled)} by the samples.`,
      agree
        ? ''
        : widths > 1
          ? 'The sum by hand is taken as bell-shaped; where one range spread evenly matters most, the band ends sooner, as the samples show.'
          : 'Where a range is wide or lopsided, the straight line misses the bend of the curve; the samples do not.',
    ];
  },

  /** The two of the comparison that lie nearest to each other: where "not distinguished" mostly belongs. */
  'band-nearest': (scene) => {
    const pairing = nearestPairing(scene);
    if (!pairing) return [];
    const { longer, shorter, low, high, beats } = pairing;
    return [
      `The two that lie nearest to each other are ${longer} and ${shorter}. The band of the one over the other runs from ${times(low)} to ${times(high)}.`,
      `${longer} is ahead in ${ofHundred(beats)}: ${beats >= distinguished ? 'the model sees a real difference even here' : 'by the model the two can’t be told apart, and saying which is better would be a guess'}.`,
    ];
  },

  /** With a visitor's own knives. */
  sure: (scene) => {
    return [
      refusedWork(scene),
      headlineSentence(scene),
      bandSentence(scene),
      isExact(sureOf(scene)) ? '' : verdict(sureOf(scene), scene),
      ...sentencesOf(sureWords, 'band-matters', scene),
      ...sentencesOf(sureWords, 'band-rounding', scene),
    ];
  },
};
