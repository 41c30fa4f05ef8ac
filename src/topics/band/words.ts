import { headlineSentence } from '../../phrases/headline.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import { readsAsNone, short, whole } from '../../scene/show.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import type { Sure } from '../../scene/sure.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** Above this chance one knife is distinguished from the other, by the model alone. */
export const distinguished = 0.95;

/** How many of a hundred samples, never rounded up to all or down to none of them. */
export const ofHundred = (share: number): string =>
  share === 1
    ? 'every sample'
    : share === 0
      ? 'no sample'
      : readsAsNone(1 - share)
        ? 'more than 99 of 100 samples'
        : readsAsNone(share)
          ? 'fewer than 1 of 100 samples'
          : `${whole(share * 100)} of 100 samples`;

/** How likely the range holds the answer. */
export const chancesOfRange =
  'If the model is about right, there are nine chances in ten that it lies in that range.';

/** Which of the two outlasts the other, as far as the samples say. */
export function verdict({ beats }: Sure, { subject, baseline }: Scene): string {
  if (beats >= distinguished) return `${subject.name} outlasts ${baseline.name} in ${ofHundred(beats)}.`;
  if (beats <= 1 - distinguished)
    return `${subject.name} outlasts ${baseline.name} in ${ofHundred(beats)}: it is the shorter-lived one.`;
  return `By the model ${subject.name} and ${baseline.name} can’t be told apart: ${subject.name} is ahead in ${ofHundred(beats)}.`;
}

/** The three totals at the middle settings; once where they read alike. */
const threeWays = ([multiplied, added, toLimit]: string[]): string[] =>
  multiplied === added && multiplied === toLimit
    ? [`At the middle settings it is ${multiplied} whichever way the effects combine.`]
    : [
        `At the middle settings it is ${multiplied} if all factors multiply.`,
        `It is ${added} if the forces add, and ${toLimit} if the force has a limit.`,
      ];

export const bandWords: Record<string, WordsOf> = {
  /** Behind the one sentence that is the answer: how sure it is. */
  'answer-band': (scene) => {
    if (refusedWork(scene) !== '') return [];
    const sure = sureOf(scene);
    const { subject, baseline } = scene;
    if (isExact(sure))
      return [
        `Nothing about ${subject.name} and ${baseline.name} is left uncertain, so there is one number and no range.`,
      ];
    const { quick, careful } = scene.row;
    return [
      chancesOfRange,
      verdict(sure, scene),
      ...threeWays([careful.multiplied, careful.added, careful.toLimit].map((total) => short(total, 2))),
      `The quick sum says ${short(quick.multiplied, 2)}.`,
    ];
  },

  /** The whole of the two where parts of them were spoken of. */
  'whole-band': (scene) => {
    const sure = sureOf(scene);
    const { subject, baseline } = scene;
    const whole = refusedWork(scene) === '' ? 'All in all' : 'All in all, though only for clean slicing';
    const answer = `${whole}: ${headlineSentence(scene)}`;
    return isExact(sure)
      ? [
          answer,
          `Nothing about ${subject.name} and ${baseline.name} is left uncertain, so there is one number and no range.`,
        ]
      : [answer, verdict(sure, scene)];
  },
};

/**
 * How sure the ratio is, for a text to take along: sentences to stand behind the answer, or, where that is one sentence,
 * the words that end it.
 */
export function bandBehind(scene: Scene, depth: 'a sentence' | 'more'): string[] {
  if (depth === 'more')
    return sentencesOf(bandWords, 'answer-band', scene).filter((sentence) => sentence !== '');
  if (refusedWork(scene) !== '' || isExact(sureOf(scene))) return [];
  const { low, middle, high } = headlineOf(scene);
  return [`${short(low)} to ${short(high)}, ${short(middle)} the middle`];
}
