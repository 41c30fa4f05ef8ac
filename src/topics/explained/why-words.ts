import { onlyTogether } from '../../phrases/only-together.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { headlineOf } from '../../scene/headline.ts';
import type { Scene } from '../../scene/scene.ts';
import { fixed, short, whole } from '../../scene/show.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import { differs, temptingSum } from '../../scene/terms.ts';

const inTwo = (ratio: number): string => short(ratio, 2);

/** Where adding comes to nothing or less, which no knife can cut. */
const nothingLeft = (sum: number): string =>
  fixed(sum, 1) === '0.0' ? 'leaves nothing, which can’t be' : 'leaves less than nothing, which can’t be';

/** Both ways come to the same two figures. */
function agree(names: string, both: string): string[] {
  return [
    `For ${names} adding and multiplying come to nearly the same, ${both}.`,
    'With larger gains the two part company.',
  ];
}

/** What adding the gains and losses would say, beside what multiplying says. */
function notAdded(scene: Scene): string[] {
  const { row, subject, baseline } = scene;
  const { careful } = row;
  const felt = careful.terms.filter(differs);
  const names = `${subject.name} and ${baseline.name}`;
  if (felt.length === 0) return [onlyTogether(scene, careful)];
  if (felt.length === 1)
    return [`Only one reason sets ${names} apart, so adding and multiplying come to the same.`];
  const sum = temptingSum(careful);
  const product = inTwo(careful.multiplied);
  if (sum > 0 && inTwo(sum) === product) return agree(names, product);
  const up = felt.filter(({ factor }) => factor > 1).length;
  if (up === felt.length)
    return [
      `Adding up the gains of ${subject.name} makes ${inTwo(sum)}.`,
      `But each gain also works on what the others have gained: if all multiply, they make ${product}.`,
    ];
  if (up === 0)
    return [
      `Adding up the losses of ${subject.name} ${sum > 0 ? `leaves ${inTwo(sum)}` : nothingLeft(sum)}.`,
      `But each loss takes its part of what the others have left: if all multiply, ${product} is left.`,
    ];
  return [
    `Adding the gains and losses of ${subject.name} ${sum > 0 ? `makes ${inTwo(sum)}` : nothingLeft(sum)}.`,
    `But each of them works on what the others have made: if all multiply, they make ${product}.`,
  ];
}

/** That the middle of the range is another number than the product, where it is. */
function middle(scene: Scene): string {
  const { multiplied, added, toLimit } = scene.row.careful;
  const { middle: shown } = headlineOf(scene);
  const same = [added, toLimit].every((other) => inTwo(other) === inTwo(multiplied));
  return same || inTwo(shown) === inTwo(multiplied)
    ? ''
    : `Some of them may not, so the middle is ${short(shown)}.`;
}

/** From this share of the samples on one knife counts as ahead. */
const ahead = 0.95;

/** What the range says, and whether it shows a real difference. */
function chances(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const sure = sureOf(scene);
  if (isExact(sure))
    return [`Nothing about ${subject.name} and ${baseline.name} is left uncertain, so there’s no range.`];
  const { low, high } = headlineOf(scene);
  const { beats } = sure;
  return [
    `If the model is about right, there are nine chances in ten that the true figure lies ${low === high ? `near ${short(low)}` : `between ${short(low)} and ${short(high)}`}.`,
    beats < ahead && beats > 1 - ahead
      ? `${subject.name} comes out ahead ${whole(100 * beats)} times in 100, so the two can’t be told apart.`
      : '',
  ];
}

export const whyWords: Record<string, WordsOf> = {
  /** Why the gains are not added; nothing where there is nothing to add, or no slicing estimate. */
  'explained-surprise': (scene) => {
    if (refusedWork(scene) !== '') return [];
    const said = notAdded(scene);
    return [...said, said.some((sentence) => sentence.includes('if all multiply')) ? middle(scene) : ''];
  },

  /** How sure the range is; nothing where there is no slicing estimate. */
  'explained-chances': (scene) => (refusedWork(scene) === '' ? chances(scene) : []),

  /** What the reasons then are about. */
  'explained-would': (scene) => {
    const { subject, baseline } = scene;
    return refusedWork(scene) === ''
      ? []
      : [
          `What follows is how ${subject.name} and ${baseline.name} would do in slicing, which isn’t this work.`,
        ];
  },
};
