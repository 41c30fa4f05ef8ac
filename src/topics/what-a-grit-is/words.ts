import { grainSizeUm, nominal, parameters } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { finishesOf, gradeOn, gritName, scaleName, scales, sizeOn, spanOf, umOf } from './values.ts';
import type { SeenFinish } from './values.ts';
import { jobOf } from '../../phrases/job.ts';
import { list } from '../../phrases/list.ts';
import { scratchesOf } from './scratches.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** Two numbers of one scale, which tempt to be divided; null where there is no such pair. */
function numbersOf({ subject, baseline }: Record<'subject' | 'baseline', SeenFinish>) {
  return subject.grit && baseline.grit
    ? {
        a: subject.grit.number,
        b: baseline.grit.number,
        oneScale: subject.grit.scale === baseline.grit.scale,
      }
    : null;
}

/** What the numbers say the ratio is, above 1, and how far that is off the ratio of the sizes. */
function quotients(ofNumbers: number, ofSizes: number): { face: number; off: number } {
  const face = Math.max(ofNumbers, 1 / ofNumbers);
  return { face, off: Math.max(ofSizes, 1 / ofSizes) / face };
}

const given: WordsOf = (scene) => {
  const finishes = finishesOf(scene);
  const { subject, baseline } = finishes;
  const numbers = numbersOf(finishes);
  const opening = `${scene.baseline.name} was finished with ${baseline.name}, ${scene.subject.name} with ${subject.name}.`;
  if (!numbers) return [opening, 'A size in µm needs no scale: it can be compared as it stands.'];
  if (!numbers.oneScale)
    return [opening, 'The two numbers belong to two scales, so one divided by the other says nothing.'];
  if (numbers.a === numbers.b) return [opening, 'That is the same number on the same scale.'];
  const { face, off } = quotients(numbers.a / numbers.b, subject.um / baseline.um);
  return [
    opening,
    `Divide ${brief(Math.max(numbers.a, numbers.b))} by ${brief(Math.min(numbers.a, numbers.b))} and you get ${short(face)}: a quick answer, ${readsAsOne(off) ? 'and by luck the right one' : 'and not the right one'}.`,
  ];
};

/** The numbers of both knives read on each scale in turn. */
const byScale: WordsOf = (scene) => {
  const finishes = finishesOf(scene);
  const numbers = numbersOf(finishes);
  const [own, other] = [scene.subject.name, scene.baseline.name];
  if (!numbers) {
    return [
      `${own} has ${finishes.subject.name}, ${other} ${finishes.baseline.name}: a finish given in µm has no number that could be read on a wrong scale.`,
    ];
  }
  const { a, b } = numbers;
  if (a === b) {
    const sizes = scales.flatMap((scale) => sizeOn(scale, a) ?? []);
    return [
      `${own} and ${other} bear one number, ${brief(a)}.`,
      `Read on one scale, whichever it is, that is one size.`,
      sizes.length > 1
        ? `Read on two scales the sizes could be as much as ${times(Math.max(...sizes) / Math.min(...sizes))} apart.`
        : '',
    ];
  }
  return [
    `Take the number of ${own}, ${brief(a)}, against that of ${other}, ${brief(b)}.`,
    ...scales.map((scale) => {
      const [umA, umB] = [sizeOn(scale, a), sizeOn(scale, b)];
      if (umA !== null && umB !== null)
        return `On the scale of ${scaleName[scale]}: ${umOf(umA)} against ${umOf(umB)}, a ratio of ${times(umA / umB)}.`;
      const { first, last } = spanOf(scale);
      const missing = [...new Set([...(umA === null ? [a] : []), ...(umB === null ? [b] : [])])];
      return `${scaleName[scale]}: no answer, since its list here runs from ${first} to ${last} and ${missing.length > 1 ? `neither ${missing.map(brief).join(' nor ')} lies` : `${brief(missing[0] ?? a)} does not lie`} in it.`;
    }),
  ];
};

/** The same grain by its names on the other scales. */
function names(name: string, { um, grit, name: finish }: SeenFinish): string {
  const others = scales
    .filter((scale) => scale !== grit?.scale)
    .map((scale) => ({ scale, grade: gradeOn(scale, um) }));
  const near = others.flatMap(({ scale, grade }) =>
    typeof grade === 'string' ? [] : [`${gritName(scale, grade.grit)} (${umOf(grade.um)})`],
  );
  const beyond = others.flatMap(({ scale, grade }) =>
    typeof grade === 'string' ? [{ scale: scaleName[scale], grade }] : [],
  );
  const none =
    beyond.length > 0
      ? `${list(beyond.map(({ scale }) => scale))} ${beyond.length > 1 ? 'have' : 'has'} ${beyond[0]?.grade ?? ''}`
      : '';
  return `The grain of ${name}, ${grit ? `${finish} at ${umOf(um)}` : finish}, ${[...(near.length > 0 ? [`comes nearest to ${list(near)}`] : []), ...(none === '' ? [] : [near.length > 0 ? none : `lies beyond the lists: ${none}`])].join('; ')}.`;
}

const convert: WordsOf = (scene) => {
  const { subject, baseline } = finishesOf(scene);
  return [names(scene.baseline.name, baseline), names(scene.subject.name, subject)];
};

const scratch: WordsOf = (scene) => {
  const { subject, baseline } = finishesOf(scene);
  const [a, b] = [scratchesOf(subject.um), scratchesOf(baseline.um)];
  const band = ({ low, high, least, most }: typeof a) =>
    `${plain(low, 2)} to ${plain(high, 2)} µm deep, perhaps ${plain(least, 2)} to ${plain(most, 2)} µm`;
  const apart = a.least > b.most || b.least > a.most;
  return [
    `${scene.baseline.name}: scratches ${band(b)}.`,
    `${scene.subject.name}: scratches ${band(a)}.`,
    readsAsOne(subject.um / baseline.um)
      ? 'One grain, one depth: there is nothing between them.'
      : apart
        ? 'Even at its widest doubt the one band ends before the other begins.'
        : 'With the whole doubt the bands overlap, so by depth alone one could hardly swear which finish is which.',
  ];
};

const refused: WordsOf = () =>
  orRefusal<string[], string[]>(
    () => [`P3000 is ${umOf(grainSizeUm({ scale: 'FEPA-P', grit: 3000 }))}.`],
    (message) => [`Ask it for P3000 and it says: “${message}”.`],
  );

/** What the grit numbers themselves say of the two finishes. */
function numbersSaid(finishes: ReturnType<typeof finishesOf>, ratio: number): string {
  const numbers = numbersOf(finishes);
  if (!numbers)
    return 'A finish given in µm cannot be misread by its scale, so that half of the lesson does not apply.';
  if (!numbers.oneScale)
    return `Their numbers, ${brief(numbers.a)} and ${brief(numbers.b)}, stand on two scales: only the sizes can be compared.`;
  const { face, off } = quotients(numbers.a / numbers.b, ratio);
  return `Divided as they stand the numbers would say ${short(face)}${readsAsOne(off) ? ', and here that happens to be right' : `, which is ${off < 1 ? 'too much' : 'too little'}`}.`;
}

/** The factor of the finish by both readings. */
function factorSaid({ row, comparison, subject, baseline }: Scene): string {
  const exponent = nominal(comparison.assumptions?.finishExponent ?? parameters.finishExponent.default);
  const [quick, careful] = [factorOf(row.quick, 'finish'), factorOf(row.careful, 'finish')];
  return readsAsOne(careful)
    ? `With the finish exponent at ${brief(exponent)} the careful estimate gives the finish no weight at all. The quick sum still makes it ${times(quick)} for ${subject.name}.`
    : `Raised to the power ${brief(exponent)} that makes a factor of ${times(careful)}: by the finish alone ${subject.name} should cut ${ratioInWords(careful)} as ${baseline.name}. The quick sum takes the sizes at face value, ${times(quick)}.`;
}

/** What the finishes of the comparison's own two knives come to. */
const ownKnives: WordsOf = (scene) => {
  const { entry } = scene;
  const finishes = finishesOf(scene);
  const { subject, baseline } = finishes;
  const [own, other] = [scene.subject.name, scene.baseline.name];
  const sentences: string[] = [];

  const job = jobOf(entry);
  const chainRefused = !job.slicingChain;
  if (chainRefused)
    sentences.push(
      `In ${job.name}, ${job.reason}: for this work no factor of the finish is claimed, and only the grains of ${own} and ${other} are compared.`,
    );

  const notKnown = [...(subject.notKnown ? [own] : []), ...(baseline.notKnown ? [other] : [])];
  if (notKnown.length > 0)
    sentences.push(
      `The finish of ${notKnown.join(' and of ')} is not known: the middle of the stated range stands in, and that is a guess.`,
    );

  const grain = (name: string, { grit, name: finish, um }: SeenFinish) =>
    `${name} has ${grit ? `${finish}, a grain of ${umOf(um)}` : `a grain of ${finish}`}`;
  sentences.push(`${grain(own, subject)}; ${grain(other, baseline)}.`);

  const ratio = subject.um / baseline.um;
  if (readsAsOne(ratio)) {
    sentences.push(
      'Both have the same grain, so the factor of the finish is 1. What this lesson says of ratios does not touch these two.',
    );
    return sentences;
  }
  const [coarse, fine] = ratio > 1 ? [own, other] : [other, own];
  sentences.push(
    `The grain of ${coarse} is ${plain(ratio > 1 ? ratio : 1 / ratio)} times as wide as that of ${fine}.`,
  );
  sentences.push(numbersSaid(finishes, ratio));
  if (chainRefused) return sentences;
  sentences.push(factorSaid(scene));
  return sentences;
};

export const gritsWords: Record<string, WordsOf> = {
  'grits-given': given,
  'grits-by-scale': byScale,
  'grits-convert': convert,
  'grits-scratch': scratch,
  'grits-refused': refused,
  grits: ownKnives,
};
