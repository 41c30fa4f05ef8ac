import { compare, makeEqual, isUnknown, nominal, runsNeeded } from '../../model/index.ts';
import { isRefused, opening } from './opening.ts';
import { factorOf, ofKnife, termOf } from '../../comparison/found.ts';
import { jobOf } from '../../phrases/job.ts';
import { onlyTogether, smallParts } from '../../phrases/only-together.ts';
import { list } from '../../phrases/list.ts';
import { differs, standing, temptingSum } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, readsAsOne, times } from '../../scene/show.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** Scatter of one knife's runs an objection is answered with: assumed, and said. */
const cv = 0.2;

/** Whether one knife is ahead of the other, or behind it, by more than reads as none. */
const isAhead = (ratio: number): boolean => ratio > 1 && !readsAsOne(ratio);
const isBehind = (ratio: number): boolean => ratio < 1 && !readsAsOne(ratio);

const chosen = ({ row, entry }: Scene) => row[entry.reading];

/** The ratio once it is sharpened as the baseline is; null where the two measures do not go together. */
const sharpenedAlike = ({ comparison, entry }: Scene): number | null =>
  unlessRefused(() => {
    const equalised = makeEqual(comparison, entry.subject, ['angleDeg', 'edgeMm', 'finish']);
    return ofKnife(compare(equalised, { reading: entry.reading }).rows, entry.subject).product;
  });

/**
 * Answers to common objections with the comparison's own numbers, short enough to be posted: each under 500 characters
 * for names of usual length. An answer owns up where the objection is right for these two knives.
 */
export const answersWords: Record<string, WordsOf> = {
  'answer-just-add': (scene) => {
    const factors = standing(chosen(scene)).filter(differs);
    const sum = temptingSum(chosen(scene));
    if (factors.length < 2)
      return [
        opening(scene),
        factors.length === 0
          ? onlyTogether(scene, chosen(scene)) ||
            'They differ in nothing that counts here, so there is nothing to add.'
          : `They differ in ${list(factors.map(({ id }) => id))} alone (${times(chosen(scene).product)}), so adding and multiplying agree.`,
      ];
    return [
      opening(scene),
      `${factors.length} effects, ${factors.map(({ factor }) => times(factor)).join(', ')}. Multiplied: ${times(chosen(scene).product)}${smallParts(factors, chosen(scene).product)}. Added up as percentages: ${sum > 0 ? times(sum) : 'less than nothing'}.`,
      'Each effect works on what the others leave, not on the start. Then only the product is right, and it does not hang on the order.',
    ];
  },

  'answer-all-steel': (scene) => {
    const { geometry, finish, steel } = chosen(scene).families;
    const size = (factor: number) => Math.abs(Math.log(factor));
    const rest = Math.max(size(geometry), size(finish));
    const alone = readsAsOne(geometry) && readsAsOne(finish);
    return [
      opening(scene),
      `Steel makes ${times(steel)}, geometry ${times(geometry)}, finish ${times(finish)}.`,
      readsAsOne(steel) && alone
        ? 'None of the three sets them apart.'
        : readsAsOne(steel)
          ? 'So here none of it is steel: the grinding makes the difference.'
          : alone
            ? 'So for these two it is the steel, and nothing else.'
            : size(steel) > rest
              ? 'So steel is the largest of the three here, but not all of it.'
              : 'So steel counts, but here grinding counts for more.',
    ];
  },

  'answer-sharpen-alike': (scene) => {
    const left = sharpenedAlike(scene);
    return [
      opening(scene),
      left === null
        ? 'The one’s blade cannot take the other’s angle, thickness and finish as measured, so the sum cannot be done.'
        : `Given the other’s angle, thickness and finish it would be ${times(left)}.`,
      left === null
        ? ''
        : readsAsOne(left)
          ? 'So yes: sharpened alike, the model sees no difference.'
          : 'So sharpening alike does not make them equal: what is left is the primary grind and the steel.',
    ];
  },

  'answer-thin-rolls': (scene) => {
    const { rolling, chipping } = chosen(scene).sideLoad;
    const { product } = chosen(scene);
    return [
      opening(scene),
      `In slicing ${times(product)}; in side load before the edge rolls ${times(rolling)}; before it chips ${chipping === null ? 'not known, for that takes the toughness of both' : times(chipping)}.`,
      isBehind(rolling) && isAhead(product)
        ? 'So yes, that is the price: it slices for longer and bends sooner. Whether that matters is a question of the work.'
        : readsAsOne(rolling)
          ? 'Both edges bend at the same load, so here that price is not paid.'
          : isAhead(rolling) && isBehind(product)
            ? 'The other way about it holds here: this one bends later, and pays for it in slicing.'
            : isBehind(rolling)
              ? 'So it bends sooner, and gains nothing in slicing for it.'
              : 'So here it does not: nothing in slicing is bought with an edge that bends sooner.',
    ];
  },

  'answer-polish': (scene) => {
    const { factor, low, high } = termOf(chosen(scene), 'finish');
    const [least, most] = [Math.min(low, high), Math.max(low, high)];
    return [
      opening(scene),
      readsAsOne(factor)
        ? 'Both have the same finish, so polish cannot tell them apart: that factor is 1.'
        : `The ${factor > 1 ? 'coarser' : 'finer'} finish of the first is worth ${times(factor)}${least === most ? '' : `, from ${times(least)} to ${times(most)} over what is thought possible`}.`,
      'Coarse scratches keep biting in a slice; that is assumed, and no published table of it is known. In a push cut it turns round.',
    ];
  },

  'answer-angle-twice': (scene) => {
    const [wedge, apex] = [factorOf(chosen(scene), 'wedge'), factorOf(chosen(scene), 'apex')];
    return [
      opening(scene),
      readsAsOne(wedge) && readsAsOne(apex)
        ? 'Both have the same angle, so counted once or twice it makes no difference between them.'
        : `As a wedge that opens the cut the angle makes ${times(wedge)}, at the apex that wears ${times(apex)}: together ${times(wedge * apex)}.`,
      scene.entry.reading === 'quick'
        ? 'They are two places, so both count. This reading takes both in full and so may say too much; the close one damps the second.'
        : 'They are two places, so both count. The second is damped, so that both together stay near what published tests found.',
    ];
  },

  'answer-only-a-model': (scene) => {
    const { quick, careful } = scene.row;
    const values = [quick.product, careful.product, careful.rival];
    return [
      opening(scene),
      `Yes, it is only a model. Read three ways it says ${times(quick.product)} (pocket), ${times(careful.product)} (close) and ${times(careful.rival)} (forces added).`,
      values.every(readsAsOne)
        ? 'All three see no difference.'
        : values.every(isAhead) || values.every(isBehind)
          ? 'All three name the same knife. How far it leads, cutting has to show.'
          : 'They do not agree on which lasts longer, so only cutting can tell.',
    ];
  },

  'answer-too-exact': (scene) => {
    const sure = sureOf(scene);
    return [
      opening(scene, 'careful'),
      isExact(sure)
        ? 'As everything was given without a ±, no band comes out. That is not the same as being sure.'
        : 'Nobody does. The band holds nine of ten samples drawn from the ± of measures and assumptions, and one of ten lies outside it.',
      isExact(sure)
        ? ''
        : sure.low < 1 && sure.high > 1
          ? 'It holds 1, so the order of the two is not sure.'
          : 'It does not hold 1, so the order is fairly sure even if the number is not.',
    ];
  },

  'answer-harder-lasts': (scene) => {
    const { subjectKnife, baselineKnife } = scene;
    const factor = factorOf(chosen(scene), 'hardness');
    const [own, other] = [nominal(subjectKnife.hrc), nominal(baselineKnife.hrc)];
    const { geometry, finish } = chosen(scene).families;
    const unknown = isUnknown(subjectKnife.hrc) || isUnknown(baselineKnife.hrc);
    return [
      opening(scene),
      `${brief(own)} against ${brief(other)} HRC${unknown ? ', the middle standing in where it is not known' : ''}.`,
      readsAsOne(factor)
        ? `That is worth ${times(factor)} of ${times(chosen(scene).product)} in all: here hardness decides nothing.`
        : `That is worth ${times(factor)} of ${times(chosen(scene).product)} in all. Geometry and finish make ${times(geometry * finish)}.`,
    ];
  },

  'answer-forces-add': (scene) => {
    const { product, rival } = scene.row.careful;
    return [
      opening(scene, 'careful'),
      `Where wedge, thickness and grind resist side by side, adding is right, so both are shown: multiplied ${times(product)}, with these forces added ${times(rival)}.`,
      Math.abs(Math.log(product / rival)) < 0.05
        ? 'Here it makes next to no difference.'
        : `Here ${product > rival ? 'multiplying says more' : 'adding says more'}. Only a test can tell which is nearer.`,
    ];
  },

  'answer-other-work': (scene) => {
    const job = jobOf(scene.entry);
    const { product, sideLoad } = chosen(scene);
    return [
      opening(scene),
      isRefused(scene)
        ? `Right: in ${job.name}, ${job.reason}. Then ${times(product)} from slicing does not hold. Side load before rolling is ${times(sideLoad.rolling)}.`
        : `This is for ${job.name}: ${job.reason}. There it is ${times(product)}. Where edges bend instead, look at side load before rolling: ${times(sideLoad.rolling)}.`,
      (isAhead(product) && isBehind(sideLoad.rolling)) || (isBehind(product) && isAhead(sideLoad.rolling))
        ? 'The order turns over between the two.'
        : '',
    ];
  },

  'answer-no-difference': (scene) => {
    const { product } = chosen(scene);
    const ratio = Math.max(product, 1 / product);
    // Below a tenth it takes hundreds of runs, and nobody cuts those.
    if (ratio < 1.1)
      return [
        opening(scene),
        `The model says ${times(product)}. So little nobody feels, and hardly any test would show it.`,
      ];
    const runs = runsNeeded({ cv, ratio });
    return [
      opening(scene),
      `The model says ${times(product)}. If one knife’s runs scatter by ${plain(cv * 100, 2)} % (assumed), it takes ${runs} runs of each to find that, four times in five.`,
      runs <= 3
        ? 'So much should show in a handful of cuts. If it does not, the model is wrong here.'
        : 'With fewer, two knives that differ so much may well feel alike.',
    ];
  },
};
