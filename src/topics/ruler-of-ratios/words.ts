import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { fullName, largest, rulerOf, rulerOfTerms } from './values.ts';
import type { Ruler } from './values.ts';
import { shareText } from './numbers.ts';
import { percent, signedPercent, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { families } from '../../scene/factors.ts';

/** The ruler's shares in a sentence, or that there are none to be had. */
function shares({ effects, cancel, product }: Ruler): string[] {
  if (effects.length === 0) return ['There is no effect, so there is nothing to share out.'];
  if (!cancel)
    return [
      `On the ruler the shares are ${list(effects.map((effect) => `${fullName(effect)} (${percent(effect.share)})`))}.`,
      effects.some(({ share }) => share < 0)
        ? 'A share below nothing works against the whole; the others then have more than all of it.'
        : '',
    ];
  return [
    `These effects nearly undo each other: together they make ${times(product)}. A share of next to nothing says nothing, so none is given.`,
    `What can be said is what part of all the length laid out, forward and back, each one has: ${list(effects.map((effect) => `${fullName(effect)} (${signedPercent(effect.share)})`))}.`,
  ];
}

export const rulerWords: Record<string, WordsOf> = {
  'ruler-shares': (scene) => shares(rulerOf(scene)),

  /** What of the largest effect's part depends on the order. */
  'ruler-orders': (scene) => {
    const ruler = rulerOf(scene);
    const big = largest(ruler);
    if (!big || ruler.effects.length < 2) return ['With fewer than two effects there is only one order.'];
    if (big.gain === null)
      return [
        'What they add and take away comes to next to nothing, so in no order is there a part of it to give out.',
      ];
    return [
      `In this order ${fullName(big)} comes to ${shareText(big.gain)} of all that was added. In other orders it comes to anything from ${shareText(big.least)} to ${shareText(big.most)}.`,
    ];
  },

  /** With a visitor's own knives. */
  ruler: (scene) => {
    const { row, subject, baseline } = scene;
    const ruler = rulerOfTerms(row.careful);
    const { effects, cancel } = ruler;
    const idle = row.careful.terms.flatMap(({ id }) => (effects.some(({ name }) => name === id) ? [] : [id]));
    const big = largest(ruler);
    const byFamily = families.flatMap((family) => {
      const own = effects.filter(({ name }) =>
        row.careful.terms.some((term) => term.id === name && term.family === family),
      );
      const share = own.reduce((sum, effect) => sum + effect.share, 0);
      return own.length === 0 ? [] : [`${family} ${percent(share)}`];
    });
    return [
      refusedWork(scene),
      effects.length === 0
        ? `${subject.name} and ${baseline.name} do not differ in any factor: there is no length on the ruler to share out.`
        : `If all factors multiply, ${subject.name} against ${baseline.name} comes to ${times(ruler.product)} at the middle settings.`,
      ...(effects.length === 1
        ? [`All of it is ${effects.map(fullName).join('')}: it has the whole ruler to itself.`]
        : effects.length > 1
          ? shares(ruler)
          : []),
      !cancel && byFamily.length > 1 ? `By family: ${list(byFamily)}.` : '',
      big?.gain != null && effects.length > 1
        ? `Counted by what it adds, ${big.name} could be given from ${shareText(big.least)} to ${shareText(big.most)}, by the order alone. Set ${baseline.name} against ${subject.name} instead: those two numbers change, the shares on the ruler do not.`
        : '',
      idle.length > 0 && effects.length > 0
        ? `Between ${subject.name} and ${baseline.name} the factor is 1 for ${list(idle)}, and a factor of 1 has no length.`
        : '',
    ];
  },
};
