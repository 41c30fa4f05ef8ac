import { additiveGuess, compound } from '../../model/index.ts';
import { list } from '../../phrases/list.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { percentagesOf } from '../../scene/percentages.ts';
import { fixed, short, whole } from '../../scene/show.ts';

/** A percentage as it was typed, closed up: “+40%”. Of one that was worked out, the whole per cent. */
const typed = (percentage: number, exact: boolean): string =>
  `${percentage < 0 ? '−' : '+'}${exact ? short(Math.abs(percentage), 4) : whole(Math.abs(percentage))}%`;

/** How much more or less than the start: “109% more”. */
function moreOrLess(ratio: number): string {
  const per = whole((ratio - 1) * 100);
  return per === 0 ? 'no more and no less' : `${Math.abs(per)}% ${per > 0 ? 'more' : 'less'}`;
}

/** A short answer in words: what they make multiplied, beside what adding says. */
function answer(percentages: readonly number[]): string {
  const [product, sum] = [compound(percentages), additiveGuess(percentages)];
  const head = `${short(product, 2)} times as long: ${moreOrLess(product)}`;
  if (percentages.length < 2 || moreOrLess(product) === moreOrLess(sum)) return `${head}.`;
  if (sum <= 0) return `${head}. Added up, nothing would be left.`;
  return sum > 1 === product > 1
    ? `${head}, not ${Math.abs(whole((sum - 1) * 100))}%.`
    : `${head}, not ${moreOrLess(sum)}.`;
}

/** The first two, one after the other, from 100. */
function firstTwo([one = 0, other = 0]: readonly number[]): string[] {
  const after = 100 + one;
  const part = fixed((after * Math.abs(other)) / 100, 1).replace(/\.0$/, '');
  const size = short(Math.abs(other), 4);
  return [
    `Start with 100: ${short(Math.abs(one), 4)}% ${one < 0 ? 'less' : 'more'} makes ${short(after, 4)}.`,
    part === size
      ? `Then ${size}% of ${short(after, 4)} is ${part}.`
      : `Then ${size}% of ${short(after, 4)} is ${part}, not ${size}.`,
  ];
}

/** The page of percentages alone: its question, its answer and why. */
export const pageWords: Record<string, WordsOf> = {
  'percentages-question': (scene) => {
    const percentages = percentagesOf(scene);
    const said = list(percentages.map((one) => typed(one, scene.entry.faceValues !== null)));
    if (percentages.length === 0) return ['What do percentages make together?'];
    return [percentages.length === 1 ? `What does ${said} make?` : `What do ${said} make together?`];
  },
  'percentages-answer': (scene) => [answer(percentagesOf(scene))],
  'percentages-why': (scene) => {
    const percentages = percentagesOf(scene);
    const exact = scene.entry.faceValues !== null;
    if (percentages.length === 0) return ['This comparison has no percentages to put together.'];
    if (percentages.length === 1) return ['One percentage alone has nothing to work on but the start.'];
    return [
      'Each percentage works on what is there already, not on the start.',
      ...firstTwo(exact ? percentages : percentages.map(whole)),
    ];
  },
};
