import { list } from '../../phrases/list.ts';
import { leftOut } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { sentencesOf } from '../../phrases/sentences-of.ts';
import { readsAsNone, times, whole } from '../../scene/show.ts';
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

/** Which of the two outlasts the other, as far as the samples tell. */
export function verdict({ beats }: Sure, { subject, baseline }: Scene): string {
  if (beats >= distinguished) return `${subject.name} outlasts ${baseline.name} in ${ofHundred(beats)}.`;
  if (beats <= 1 - distinguished)
    return `${subject.name} outlasts ${baseline.name} in ${ofHundred(beats)}: it is the shorter-lived one.`;
  return `The model does not tell ${subject.name} and ${baseline.name} apart: ${subject.name} is ahead in ${ofHundred(beats)}.`;
}

const between = ({ low, high }: Sure): string => `sure only to between ${times(low)} and ${times(high)}`;

/** What the band spans, as the end of a sentence that names the ratio. */
function sureTo(sure: Sure, { row }: Scene): string {
  const missing = row.careful.complete ? '' : `, ${list(leftOut(row.careful))} left out`;
  return `${between(sure)}: there nine samples of ten lie when all that is not known exactly is drawn at once${missing}`;
}

export const bandWords: Record<string, WordsOf> = {
  /** Behind the one sentence that is the answer: how sure it is. */
  'answer-band': (scene) => {
    // Where the work refuses the chain there is no ratio for a band to stand about.
    if (refusedWork(scene) !== '') return [];
    const sure = sureOf(scene);
    const { entry, subject, baseline } = scene;
    const quick = entry.reading === 'quick';
    const whose = quick ? 'The close reading' : 'That';
    if (isExact(sure))
      return [
        `${quick ? `The close reading has ${times(sure.median)}. ` : ''}Nothing about ${subject.name} against ${baseline.name} is left uncertain, so the model puts no band about it.`,
      ];
    return [
      `${whose} is ${sureTo(sure, scene)}.`,
      verdict(sure, scene),
      quick ? 'The pocket reading has no band of its own.' : '',
    ];
  },

  /** The whole of the two where parts of them were spoken of: the ratio with its band, whichever way it is read. */
  'whole-band': (scene) => {
    const sure = sureOf(scene);
    const { row, subject, baseline } = scene;
    const whole = `${refusedWork(scene) === '' ? 'Taken whole' : 'In clean slicing, which this work is not'}, ${subject.name} against ${baseline.name} makes ${times(row.careful.product)} by the close reading`;
    return isExact(sure)
      ? [`${whole}, and as nothing about the two is left uncertain the model puts no band about it.`]
      : [`${whole}, ${sureTo(sure, scene)}.`, verdict(sure, scene)];
  },
};

/**
 * How sure the ratio is, for a text to take along: sentences to stand behind the answer, or, where that is one sentence,
 * the words that end it.
 */
export function bandBehind(scene: Scene, depth: 'a sentence' | 'more'): string[] {
  if (depth === 'more')
    return sentencesOf(bandWords, 'answer-band', scene).filter((sentence) => sentence !== '');
  const sure = sureOf(scene);
  if (refusedWork(scene) !== '' || isExact(sure)) return [];
  return [
    scene.entry.reading === 'quick'
      ? `where the close reading has ${times(scene.row.careful.product)}, ${between(sure)}`
      : between(sure),
  ];
}
