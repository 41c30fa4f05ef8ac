import { compare, makeEqual, isUnknown, nominal, runsNeeded } from '../../model/index.ts';
import type { Ends, Row, TermId } from '../../model/index.ts';
import { called, isRefused, opening } from './opening.ts';
import { factorOf, ofKnife, termOf } from '../../comparison/found.ts';
import { resists } from '../../phrases/about-job.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { jobDone, jobOf } from '../../phrases/job.ts';
import { onlyTogether, smallParts } from '../../phrases/only-together.ts';
import { capital, list } from '../../phrases/list.ts';
import { sideOf } from '../../phrases/side-load.ts';
import { differs, temptingSum } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import {
  brief,
  countInWords,
  inFigures,
  plain,
  readAlike,
  readsAsOne,
  short,
  shownRatio,
} from '../../scene/show.ts';
import { isExact, sureOf } from '../../scene/sure.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** Scatter of one knife's runs an objection is answered with: assumed, and said. */
const cv = 0.2;

const chosen = ({ row, entry }: Scene): Row => row[entry.reading];

/** How the factors of an answer are meant. */
const meant = ({ entry }: Scene): string =>
  entry.reading === 'quick' ? 'By the quick sum' : 'At the middle settings';

/** Two figures, or three where two would make a difference read as none. */
const two = (ratio: number): string => short(ratio, inFigures(ratio, 2) === 1 && !readsAsOne(ratio) ? 3 : 2);

/** The three totals as a range. */
const totals = ({ multiplied, added, toLimit }: Row): Ends => ({
  low: Math.min(multiplied, added, toLimit),
  high: Math.max(multiplied, added, toLimit),
});

/** The totals once it is sharpened as the baseline is; null where the two measures do not go together. */
const sharpenedAlike = ({ comparison, entry }: Scene): Ends | null =>
  unlessRefused(() => {
    const equalised = makeEqual(comparison, entry.subject, ['angleDeg', 'edgeMm', 'finish']);
    return totals(ofKnife(compare(equalised, { reading: entry.reading }).rows, entry.subject));
  });

const range = ({ low, high }: Ends): string =>
  two(low) === two(high) ? two(low) : `${two(low)} to ${two(high)}`;

/** Which of the two edges bears more side load before it gives, in a sentence. */
const bears = (load: Ends, what: 'rolling' | 'chipping', scene: Scene): string => {
  const { subject, baseline } = called(scene);
  return capital(`${resists(load, what, subject, baseline)}.`);
};

/** The factors' own names behind “the”: what two knives differ in alone. */
const theFactor = (id: TermId): string => factorName(id).own.replaceAll(/\bits\b/g, 'the');

/** What is made of a thin edge's price, by which way slicing and side load speak. */
function priceOf(slicing: Ends, load: Ends, name: string): string {
  const [cut, roll] = [sideOf(slicing), sideOf(load)];
  if (roll === 'same') return 'So here there’s no such price to pay.';
  if (roll === 'open') return 'The model doesn’t say which of the two rolls first.';
  if (roll === 'less' && cut === 'more')
    return `So yes, that is the price: ${name} slices longer and rolls sooner. Whether that matters depends on the work.`;
  if (roll === 'more' && cut === 'less')
    return `Here it’s the other way round: ${name} rolls later, and pays for it in slicing.`;
  if (roll === 'less') return `So ${name} rolls sooner, and may gain nothing in slicing for it.`;
  return 'So here it isn’t so: the edge that slices longer doesn’t roll sooner.';
}

/** Geometry against steel by each way to combine, where the way turns their order round. */
function turnedRound({ terms, added, multiplied, toLimit, families: { geometry, steel } }: Row): string {
  const rest = multiplied / geometry;
  const larger = (factor: number) => Math.abs(Math.log(factor)) > Math.abs(Math.log(steel));
  if (terms.length === 0 || readsAsOne(steel) || readsAsOne(geometry)) return '';
  const other = [
    ...(larger(added / rest) === larger(geometry) ? [] : [`if the forces add (${two(added / rest)})`]),
    ...(larger(toLimit / rest) === larger(geometry)
      ? []
      : [`if the force has a limit (${two(toLimit / rest)})`]),
  ];
  if (other.length === 0) return '';
  return `But geometry has a ${larger(geometry) ? 'smaller' : 'larger'} effect than steel ${list(other)}.`;
}

/** What the finish makes of the answer, with both ends where they read differently. */
function finishSaid(scene: Scene, factor: number, [least, most]: [number, number]): string {
  const range = readAlike(least, most)
    ? `${two(factor)} times as long`
    : `${two(least)} to ${two(most)} times as long; ${two(factor)} is the middle`;
  return `For its ${factor > 1 ? 'coarser' : 'finer'} finish alone ${called(scene).subject} should cut ${range}.`;
}

/**
 * Answers to common objections with the comparison's own numbers, short enough to be posted: each under 500 characters
 * for names of usual length. An answer owns up where the objection is right for these two knives.
 */
export const answersWords: Record<string, WordsOf> = {
  'answer-just-add': (scene) => {
    const row = chosen(scene);
    const factors = row.terms.filter(differs);
    const sum = temptingSum(row);
    if (factors.length < 2)
      return [
        opening(scene),
        factors.length === 0
          ? onlyTogether(scene, row) || 'They differ in nothing that counts here, so there is nothing to add.'
          : `They differ in ${list(factors.map(({ id }) => theFactor(id)))} alone, so adding and multiplying agree.`,
      ];
    return [
      opening(scene),
      `${meant(scene)} the ${countInWords(factors.length)} factors are ${list(factors.map(({ factor }) => two(factor)))}.`,
      sum > 0 && two(sum) === two(row.multiplied)
        ? `Multiplied or added up as percentages, they make ${two(sum)}${smallParts(factors, row.multiplied)}.`
        : `Multiplied they make ${two(row.multiplied)}${smallParts(factors, row.multiplied)}. Added up as percentages they make ${sum > 0 ? two(sum) : 'less than nothing'}.`,
      'Effects multiply when each works on what the others leave. Forces side by side add, but as forces.',
    ];
  },

  'answer-all-steel': (scene) => {
    const row = chosen(scene);
    const { geometry, finish, steel } = row.families;
    const size = (factor: number) => Math.abs(Math.log(factor));
    const rest = Math.max(size(geometry), size(finish));
    const alone = readsAsOne(geometry) && readsAsOne(finish);
    return [
      opening(scene),
      readsAsOne(steel) && alone
        ? ''
        : `${meant(scene)}, multiplied, steel makes ${two(steel)}, geometry ${two(geometry)} and finish ${two(finish)}.`,
      readsAsOne(steel) && alone
        ? 'Neither steel nor geometry nor finish sets them apart.'
        : readsAsOne(steel)
          ? 'So here none of it is steel: the grinding makes the difference.'
          : alone
            ? 'So for these two it is the steel, and nothing else.'
            : size(steel) > rest
              ? 'So steel is the largest of the three here, but not all of it.'
              : 'So steel counts. If all factors multiply, it isn’t the largest of the three.',
      scene.entry.reading === 'quick' ? '' : turnedRound(row),
    ];
  },

  'answer-sharpen-alike': (scene) => {
    const left = sharpenedAlike(scene);
    const { subject, baseline } = called(scene);
    const same = left !== null && sideOf(left) === 'same';
    return [
      opening(scene),
      left === null
        ? `${capital(subject)} can’t take the angle and thickness of ${baseline} as measured, so the sum can’t be done.`
        : `${meant(scene)}, with the angle, thickness and finish of ${baseline}, ${subject} would cut ${same ? `as long as ${baseline}` : `${range(left)} times as long`}.`,
      left === null
        ? ''
        : same
          ? 'So yes: sharpened alike, the model sees no difference.'
          : 'So sharpening alike does not make them equal: what is left is the primary grind and the steel.',
    ];
  },

  'answer-thin-rolls': (scene) => {
    const { sideLoad } = chosen(scene);
    const { rolling, chipping } = sideLoad;
    return [
      opening(scene),
      bears(rolling, 'rolling', scene),
      chipping === null
        ? 'Chipping can’t be compared without the toughness of both.'
        : bears(chipping, 'chipping', scene),
      priceOf(totals(scene.row.careful), rolling, called(scene).subject),
    ];
  },

  'answer-polish': (scene) => {
    const { factor, low, high } = termOf(chosen(scene), 'finish');
    const [least, most] = [Math.min(low, high), Math.max(low, high)];
    return [
      opening(scene),
      readsAsOne(factor)
        ? 'Polish makes no difference between these two: that factor is 1.'
        : finishSaid(scene, factor, [least, most]),
      'That coarse scratches keep biting in a slice is assumed. A card study of 2018 reports that finish matters; its numbers were not at hand. In a push cut it’s the other way round.',
    ];
  },

  'answer-angle-twice': (scene) => {
    const [wedge, apex] = [factorOf(chosen(scene), 'wedge'), factorOf(chosen(scene), 'apex')];
    return [
      opening(scene),
      readsAsOne(wedge) && readsAsOne(apex)
        ? 'Both have the same angle, so counted once or twice it makes no difference between them.'
        : `As a wedge that opens the cut the angle makes ${two(wedge)}, at the apex that wears ${two(apex)}. Multiplied that is ${two(wedge * apex)}.`,
      scene.entry.reading === 'quick'
        ? 'The angle works in two places, so both count. The quick sum takes both in full, and so may say too much.'
        : 'The angle works in two places, so both count. The apex counts for less. How much less is assumed, after a published card test.',
    ];
  },

  'answer-only-a-model': (scene) => {
    const { quick, careful } = scene.row;
    const { multiplied, added, toLimit } = careful;
    const side = sideOf(totals(careful));
    return [
      opening(scene),
      `Yes, it is only a model. At the middle settings ${two(multiplied) === two(added) && two(multiplied) === two(toLimit) ? `all three ways give ${two(multiplied)}` : `it is ${two(multiplied)} if they multiply, ${two(added)} if the forces add and ${two(toLimit)} if the force has a limit`}. The quick sum says ${two(quick.multiplied)}.`,
      side === 'same'
        ? 'None of the three sees a difference.'
        : side === 'open'
          ? 'The three do not agree on which cuts longer, so only cutting can tell.'
          : 'All three name the same knife. How far it leads, cutting has to show.',
    ];
  },

  'answer-too-exact': (scene) => {
    const sure = sureOf(scene);
    const open = sure.low < 1 && sure.high > 1;
    return [
      opening(scene),
      isExact(sure)
        ? 'Nothing was given with a ±, so no band comes out. That isn’t the same as being sure.'
        : 'Nobody can. That is why it is a range. If the model is about right, there are nine chances in ten that the true figure lies in it.',
      isExact(sure)
        ? ''
        : `Before rounding it runs from ${two(sure.low)} to ${two(sure.high)}. ${open ? 'It holds 1, so the order of the two is not sure.' : 'It does not hold 1, so the order is fairly sure even if the number is not.'}`,
    ];
  },

  'answer-harder-lasts': (scene) => {
    const { subjectKnife, baselineKnife } = scene;
    const row = chosen(scene);
    const factor = factorOf(row, 'hardness');
    const [own, other] = [nominal(subjectKnife.hrc), nominal(baselineKnife.hrc)];
    const { geometry, finish } = row.families;
    const unknown = isUnknown(subjectKnife.hrc) || isUnknown(baselineKnife.hrc);
    return [
      opening(scene),
      `${own === other ? `Both have ${brief(own)} HRC` : `It’s ${brief(own)} against ${brief(other)} HRC`}${unknown ? ', with a middle value where it isn’t known' : ''}.`,
      readsAsOne(factor)
        ? `${meant(scene)} that makes no difference: here hardness decides nothing.`
        : `${meant(scene)}, multiplied, that makes ${two(factor)} of ${two(row.multiplied)} in all. Geometry and finish make ${two(geometry * finish)}.`,
    ];
  },

  'answer-forces-add': (scene) => {
    const { multiplied, added, toLimit } = scene.row.careful;
    const { byStructure } = sureOf(scene);
    const middle = (of: keyof typeof byStructure): string => short(shownRatio(byStructure[of].median));
    const same = readAlike(multiplied, added) && readAlike(multiplied, toLimit);
    return [
      opening(scene),
      'Nobody has measured which holds. So the range has three ways in it, each with a third of the chances: a choice, not a finding.',
      same
        ? 'For these two all three say the same.'
        : `Taken alone, their middles are near ${middle('multiplied')} if all factors multiply, ${middle('added')} if the forces add and ${middle('toLimit')} if the force has a limit.`,
    ];
  },

  'answer-other-work': (scene) => {
    const job = jobOf(scene.entry);
    const { rolling } = scene.row.careful.sideLoad;
    const [cut, roll] = [sideOf(totals(scene.row.careful)), sideOf(rolling)];
    return [
      opening(scene),
      isRefused(scene)
        ? `Right. ${capital(job.reason)}. So that range doesn’t hold for ${jobDone(scene.entry)}.`
        : `This is for ${job.name}: ${job.reason}. Where edges bend instead, side load counts.`,
      bears(rolling, 'rolling', scene),
      (cut === 'more' && roll === 'less') || (cut === 'less' && roll === 'more')
        ? 'So slicing and side load put them in opposite order.'
        : '',
    ];
  },

  'answer-no-difference': (scene) => {
    const middle = sureOf(scene).median;
    const ratio = Math.max(middle, 1 / middle);
    // Below a tenth it takes hundreds of runs, and nobody cuts those.
    if (ratio < 1.1)
      return [
        opening(scene),
        'The middle is so near to 1 that nobody would feel it, and hardly any test would show it.',
      ];
    const runs = runsNeeded({ cv, ratio });
    return [
      opening(scene),
      `If one knife’s runs scatter by ${plain(cv * 100, 2)}% (assumed), it takes ${runs} runs of each to find a ratio of ${two(middle)}, four times in five.`,
      runs <= 3
        ? 'That much should show in a handful of cuts. If it doesn’t, the model is wrong here.'
        : 'With fewer, two knives that differ so much may well feel alike.',
    ];
  },
};
