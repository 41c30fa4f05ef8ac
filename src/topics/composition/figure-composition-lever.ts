import { carbideWithPlusMinus, hardenedFrom } from '../../phrases/hardened-carbide.ts';
import { list } from '../../phrases/list.ts';
import type { Hardened } from '../../scene/steel.ts';
import type { Figure } from '../../figure-kit/figure.ts';
import { leverFigure } from '../steel-fairly/levers.ts';
import { short } from '../../scene/show.ts';

/** The lever of carbon in a steel as typed. It is of that steel alone, whatever knives a page covers. */
export const compositionLever = (hardened: Hardened): Figure =>
  leverFigure({
    id: 'composition-lever',
    title: () => 'The lever of carbon in the steel as typed',
    hardenedOf: () => [hardened],
    caption: () => {
      const { tieLine, otherTieLine, basis, notKnown } = hardened.estimate;
      const { matrix, whole, carbide, formula } = tieLine;
      const percent = (value: number): string => `${short(value, 2)}%`;
      const volume = `${carbideWithPlusMinus(hardened)} by volume, ${hardenedFrom(hardened)}`;
      return [
        `The steel’s free carbon, ${percent(whole)}, lies between the ${percent(matrix)} its matrix keeps and the ${percent(carbide)} of ${formula}.`,
        otherTieLine === undefined
          ? ''
          : `It may be ${otherTieLine.formula} instead, which has ${percent(otherTieLine.carbide)}.`,
        basis === 'table'
          ? `The volume is not read off this lever but taken from the table: ${volume}.`
          : `With what else is bound the carbide comes to ${volume}.`,
        notKnown.length > 0 ? `Of ${list(notKnown)}, not known, the middle is drawn.` : '',
      ]
        .filter((sentence) => sentence !== '')
        .join(' ');
    },
  });
