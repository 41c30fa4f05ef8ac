import { additiveGuess, compound } from '../model/index.ts';
import { changes, leftOut, list, standing } from './rows.ts';
import { times, typedPercent } from './show.ts';
import type { WordsOf } from './words.ts';

/** The first lesson's arithmetic on the line-up's own factors. */
export const percentagesWords: Record<string, WordsOf> = {
  percentages: (scene) => {
    const { entry, row, subject, baseline } = scene;
    const missing = leftOut(row.close);
    const factors = standing(row.close).filter(changes);
    if (factors.length === 0)
      return [
        `${subject.name} and ${baseline.name} do not differ in any term, so there is nothing to multiply.`,
      ];
    const percents = factors.map(({ factor }) => (factor - 1) * 100);
    const parts = factors.map(
      ({ id }, index) => `${id} ${typedPercent(Number((percents[index] ?? 0).toPrecision(2)))}`,
    );
    return [
      `By the close reading ${subject.name} differs from ${baseline.name} by ${list(parts)}${missing.length > 0 ? `; ${list(missing)} ${missing.length > 1 ? 'are' : 'is'} left out` : ''}.`,
      factors.length === 1
        ? `With one percentage there is nothing to add or multiply: ${times(compound(percents))}.`
        : additiveGuess(percents) > 0
          ? `Added, that would be ${times(additiveGuess(percents))}; multiplied it is ${times(compound(percents))}.`
          : `Added, that would leave less than nothing; multiplied it is ${times(compound(percents))}.`,
      entry.faceValues ? 'The bars above show the percentages typed on the bench.' : '',
    ];
  },
};
