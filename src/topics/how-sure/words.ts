import { isUnknown } from '../../model/index.ts';
import { unknownMeasureNames } from '../../phrases/unknown-measures.ts';
import { ofHundred, distinguished, verdict } from '../band/words.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { leftOut } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { percent, plain, ratioInWords, thousands, times } from '../../scene/show.ts';
import { isExact, nearestPairing, samples, sureOf } from '../../scene/sure.ts';
import type { Sure } from '../../scene/sure.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** Where something else stands, seen from the band. */
const seenFrom = ({ low, high }: Sure, value: number): string =>
  value < low ? 'below the band' : value > high ? 'above the band' : 'inside the band';

/** The band in a sentence. */
export function bandSentence(scene: Scene): string {
  const sure = sureOf(scene);
  const { subject, baseline, row } = scene;
  const incomplete = row.careful.complete
    ? ''
    : ` It covers the terms that stand; ${list(leftOut(row.careful))} left out.`;
  if (isExact(sure))
    return `Nothing about ${subject.name} against ${baseline.name} is left uncertain, so the band has no width: ${times(sure.median)}, the close reading itself.${incomplete}`;
  return `${subject.name} against ${baseline.name}: nine samples of ten lie from ${times(sure.low)} to ${times(sure.high)}, with ${times(sure.median)} in the middle.${incomplete}`;
}

/** What all knives share and a visitor may leave open. */
const assumed = {
  angleExponent: 'what an angle is worth',
  thicknessExponent: 'what thickness is worth',
  finishExponent: 'what finish is worth',
  hardnessExponent: 'what hardness is worth',
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
  /** Beside every ratio: its band, whether the two are distinguished, and what the band does not hold. */
  band: (scene) => {
    const sure = sureOf(scene);
    const { row } = scene;
    const missing = unknowns(scene);
    return [
      refusedWork(scene),
      bandSentence(scene),
      isExact(sure) ? '' : verdict(sure, scene),
      missing.length === 0 ? '' : `Not known: ${list(missing)}. The band is as wide as that leaves it.`,
      `${isExact(sure) ? 'A band holds' : 'That is'} the model’s own doubt only, not the error of its form: with the forces added the ratio is ${times(row.careful.rival)}, ${seenFrom(sure, row.careful.rival)}, and the pocket reading says ${times(row.quick.product)}, ${seenFrom(sure, row.quick.product)}.`,
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
    const { figures } = sure.rounding;
    return [
      sure.low < 1 && sure.high > 1
        ? `Of ${subject.name} over ${baseline.name} this band supports no more than which of the two is likely to last longer.`
        : `Of ${subject.name} over ${baseline.name} this band supports “${ratioInWords(sure.rounding.median)}”, and no finer. It carries ${figures === 1 ? 'one figure' : `${figures} figures`} of the ratio; ${times(sure.median, figures + 2)} would pretend to more.`,
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
      `Most of the spread between ${subject.name} and ${baseline.name} comes from ${first.what}: ${percent(first.share)} of it.`,
      next.length === 0
        ? ''
        : `Then ${next.map(({ what, share }) => `${what}, ${percent(share)}`).join('; ')}.`,
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
      `The two of this line-up that lie nearest to each other are ${longer} and ${shorter}. The band of the one over the other runs from ${times(low)} to ${times(high)}, and ${longer} is ahead in ${ofHundred(beats)}: ${beats >= distinguished ? 'even these are told apart' : 'by the model they are not told apart, and saying which is better would be a guess'}.`,
    ];
  },

  /** With a visitor's own knives. */
  sure: (scene) => {
    const { row, subject, baseline } = scene;
    return [
      refusedWork(scene),
      `The close reading has ${subject.name} at ${plain(row.careful.product)} times as long as ${baseline.name}.`,
      bandSentence(scene),
      isExact(sureOf(scene)) ? '' : verdict(sureOf(scene), scene),
      ...sentencesOf(sureWords, 'band-matters', scene),
      ...sentencesOf(sureWords, 'band-rounding', scene),
    ];
  },
};
