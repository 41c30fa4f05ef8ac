import { additiveGuess, compound } from '../../model/index.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { differs, effectsIn, productOf } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import {
  inFigures,
  percent,
  plain,
  ratioInWords,
  readsAsOne,
  signedPercent,
  times,
  typedPercent,
} from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { isForce } from '../../scene/factors.ts';

/** A term of the chain as the lesson covers effects: a percentage of what is already there. */
interface Effect {
  id: string;
  factor: number;
  /** As it is written: two figures, with its sign. */
  percent: string;
}

const effectsOf = ({ row }: Scene): Effect[] =>
  effectsIn(row.careful.terms).map(({ id, factor }) => ({
    id,
    factor,
    percent: typedPercent(inFigures((factor - 1) * 100, 2)),
  }));

const named = ({ id, percent: worth }: Effect): string => `${id} ${worth}`;

/** What all effects make together, multiplied and, for the contrast, added. */
function together(effects: readonly Effect[]): string {
  const percents = effects.map(({ factor }) => (factor - 1) * 100);
  if (percents.length === 1)
    return `With one percentage there is nothing to add or multiply: ${times(compound(percents))}.`;
  return additiveGuess(percents) > 0
    ? `Added, that would be ${times(additiveGuess(percents))}; multiplied it is ${times(compound(percents))}.`
    : `Added, that would leave less than nothing; multiplied it is ${times(compound(percents))}.`;
}

/** The two largest effects alone, as the lesson takes two: the second works on what the first left. */
function firstTwo(effects: readonly Effect[], { baseline }: Scene): string {
  const [one, other] = [...effects].sort(
    (a, b) => Math.abs(Math.log(b.factor)) - Math.abs(Math.log(a.factor)),
  );
  // Unreachable: it is asked of three effects or more.
  if (!one || !other) return '';
  const [product, sum] = [
    plain(100 * one.factor * other.factor),
    plain(100 * (one.factor + other.factor - 1)),
  ];
  return `Take the two that weigh most. Of 100 cuts of ${baseline.name} ${one.id} makes ${plain(100 * one.factor)}, and ${other.id} then works on those: ${product}. The sum of the two would say ${sum}, ${product === sum ? 'hardly another number' : `and misses by ${percent(Math.abs(other.factor - 1))} of ${plain(Math.abs(100 * (one.factor - 1)))}`}.`;
}

/** Effects that pull against each other do not cancel by their percentages. */
function opposed(effects: readonly Effect[], { subject, baseline }: Scene): string {
  const shown = effects.filter(differs);
  const falls = shown.filter(({ factor }) => factor < 1);
  if (falls.length === 0) return '';
  if (falls.length === shown.length)
    return shown.length === 1
      ? ''
      : `All of them pull against ${subject.name}. Each fall is taken of what is left, so they take less together than their sum says.`;
  const rises = shown.filter(({ factor }) => factor > 1);
  const [up, down] = [productOf(rises), productOf(falls)];
  const whole = up * down;
  const end = readsAsOne(whole)
    ? `${subject.name} and ${baseline.name} come out level`
    : `${signedPercent(whole - 1)} is left`;
  return `Not all pull one way: ${list(rises.map(({ id }) => id))} for ${subject.name} (${times(up)}), ${list(falls.map(({ id }) => id))} for ${baseline.name} (${times(down)}). To set off a rise of ${percent(up - 1)} takes a fall of ${percent(1 - 1 / up)}, not of ${percent(up - 1)}. Here ${end}.`;
}

/** Where adding may be right: in the part of the chain whose forces stand side by side. */
function sideBySide(effects: readonly Effect[], { row, subject, baseline }: Scene): string {
  const forces = effects.filter(({ id }) => isForce(id));
  return forces.length < 2
    ? ''
    : [
        `One part of this chain may add after all: ${list(forces.map(({ id }) => id))} stand side by side in one push.`,
        `If those forces add, ${subject.name} should cut ${ratioInWords(row.careful.added)} as ${baseline.name} at the middle settings.`,
        `Nobody has measured which holds.`,
      ].join(' ');
}

/** The first lesson's arithmetic on the comparison's own factors. */
export const percentagesWords: Record<string, WordsOf> = {
  percentages: (scene) => {
    const { entry, subject, baseline } = scene;
    const effects = effectsOf(scene);
    if (effects.length === 0)
      return [
        `${subject.name} and ${baseline.name} do not differ in any factor, so there is nothing to multiply.`,
      ];
    return [
      refusedWork(scene),
      `By the careful estimate ${subject.name} differs from ${baseline.name} by these effects: ${list(effects.map(named))}.`,
      together(effects),
      effects.length > 2 ? firstTwo(effects, scene) : '',
      opposed(effects, scene),
      sideBySide(effects, scene),
      entry.faceValues ? 'The bars above show the percentages that were typed.' : '',
    ];
  },
};
