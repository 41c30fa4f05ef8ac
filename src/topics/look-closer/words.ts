import { attributeName } from '../../phrases/attribute-names.ts';
import { rangeInWords } from '../../phrases/headline.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { headlineOf } from '../../scene/headline.ts';
import { percent, readsAsOne } from '../../scene/show.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import { orRefusal } from '../../comparison/unless-refused.ts';
import { costAskedFirst, costsOf } from '../cost/values.ts';
import { attributeNamed, valueSaid } from '../what-it-takes/attributes.ts';
import { askedFirst, takesOf } from '../what-it-takes/values.ts';

/** A share of the doubt as people say it. */
function shareInWords(share: number): string {
  if (share >= 0.9) return 'nearly all';
  if (share >= 0.6) return 'most';
  if (share >= 0.45) return 'half';
  if (share >= 0.29 && share <= 0.38) return 'a third';
  return percent(share);
}

/** The three offers, as they begin an answer. */
const offers = { refinish: 'a new finish', regrind: 'a new grind', steel: 'another steel' } as const;

export const words: Record<string, WordsOf> = {
  'short-sure': (scene) => {
    const sure = sureOf(scene);
    if (isExact(sure)) return ['nothing is left uncertain'];
    const [first] = sure.matters;
    const range = rangeInWords(headlineOf(scene));
    return [first ? `${range}: ${shareInWords(first.share)} of the doubt is ${first.what}` : range];
  },

  'short-takes': (scene) => {
    const said = orRefusal(
      () => {
        const { multiplied } = scene.row.careful;
        if (readsAsOne(multiplied)) return 'nothing: they are level, if all multiply';
        const one = takesOf(scene, askedFirst(scene)).find(
          ({ answer, holds }) => answer.value !== null && holds && answer.note !== 'below the floor',
        );
        if (!one) return 'no single change would do it';
        const named = attributeNamed(one.attribute);
        return `${attributeName[one.attribute].name} alone: ${valueSaid(named, one.answer.value ?? 0, scene.entry)}, if all multiply`;
      },
      () => 'this can’t be asked of these two',
    );
    return [said];
  },

  'short-cost': (scene) => {
    const gains = costsOf(scene, costAskedFirst(scene)).flatMap((one) =>
      'cost' in one && one.cost.ratioGained > 1 && !readsAsOne(one.cost.ratioGained) && !one.cost.belowFloor
        ? [one]
        : [],
    );
    const [best] = [...gains].sort(
      (a, b) => (b.cost.gainPerMoney?.plain ?? 0) - (a.cost.gainPerMoney?.plain ?? 0),
    );
    return [
      best
        ? `${offers[best.asked.of]} first, at the invented prices`
        : 'none of the three offers makes it cut longer',
    ];
  },
};
