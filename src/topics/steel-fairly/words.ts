import {
  carbidesByDesignation,
  isUnknown,
  nominal,
  rangeOf,
  regression,
  vickersFromRockwellC,
} from '../../model/index.ts';
import type { Quantity } from '../../model/index.ts';
import { carbideText, quantityText } from '../../phrases/measures.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, percent, plain, readsAsOne, short, times, units } from '../../scene/show.ts';
import { cardOf, middleOf, steelsOf, tieSteelOf, worthAt, worthsOf } from '../../scene/steel.ts';
import type { Steel } from '../../scene/steel.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

export const given: WordsOf = (scene) => {
  const { subjectKnife, baselineKnife } = scene;
  const { subject, baseline } = steelsOf(scene);
  const line = ({ name, designation }: Steel, { hrc, carbideVolPercent }: typeof subjectKnife) =>
    `${name}: ${quantityText(hrc, units.hrc)}, ${designation === null ? '' : `${designation}, which typically means `}${carbideText(carbideVolPercent)}.`;
  return [line(baseline, baselineKnife), line(subject, subjectKnife)];
};

const strength = ({ mpa, vickers }: Steel): string =>
  mpa === null
    ? `${vickers > 650 ? 'harder' : 'softer'} than the table of strengths reaches`
    : `about ${short(mpa)} MPa strong`;

/** What one point more adds, up to the last point of the scale. */
const perPoint = ({ hrc, vickers }: Steel): string => percent(vickersFromRockwellC(hrc + 1) / vickers - 1, 1);

/** Rockwell, Vickers, strength. */
const hardness: WordsOf = (scene) => {
  const { subject, baseline } = steelsOf(scene);
  const steelText = (steel: Steel) =>
    `${steel.name}: ${short(steel.hrc)} HRC is ${plain(steel.vickers)} HV, ${strength(steel)}${steel.hrc <= 67 ? `; one point more would add ${perPoint(steel)}` : ''}.`;
  const ratio = subject.hrc / baseline.hrc;
  const notKnown = [
    ...(isUnknown(scene.subjectKnife.hrc) ? [subject.name] : []),
    ...(isUnknown(scene.baselineKnife.hrc) ? [baseline.name] : []),
  ];
  return [
    steelText(baseline),
    steelText(subject),
    notKnown.length === 0
      ? ''
      : `The hardness of ${list(notKnown)} is not known, and the middle of the stated range stands in.`,
    // The square is what the quick estimate takes.
    readsAsOne(ratio ** 2) && readsAsOne(subject.vickers / baseline.vickers)
      ? `${subject.name} is as hard as ${baseline.name}, by either scale.`
      : `${subject.name} has ${times(ratio)} the HRC of ${baseline.name}, but ${times(subject.vickers / baseline.vickers)} the Vickers. The square of the first, ${times(ratio ** 2)}, is the pocket reading’s stand-in for the second.`,
  ];
};

const content = (scene: Scene): string => {
  const { composition } = tieSteelOf(scene);
  const symbols = { carbon: 'C', chromium: 'Cr', molybdenum: 'Mo', tungsten: 'W', vanadium: 'V' } as const;
  return list(
    Object.entries(symbols).flatMap(([element, symbol]) => {
      const value = composition[element as keyof typeof symbols];
      return value === undefined ? [] : [`${brief(value)} % ${symbol}`];
    }),
  );
};

/** Whose tie line is drawn, and what of. */
function tieWhose(scene: Scene): string {
  const { designation, of } = tieSteelOf(scene);
  const { subject, baseline } = steelsOf(scene);
  if (of === null)
    return `Neither ${subject.name} nor ${baseline.name} was entered by a standard designation, so ${designation} stands in as an example.`;
  if (subject.designation === baseline.designation)
    return `${designation} is the steel of ${subject.name}, and of ${baseline.name} too.`;
  if (of === 'baseline')
    return `The carbide of ${subject.name} was entered by volume, so the steel drawn is that of ${baseline.name}: ${designation}.`;
  return baseline.designation === null
    ? `${designation} is the steel of ${subject.name}; the carbide of ${baseline.name} was entered by volume.`
    : `${designation} is the steel of ${subject.name}; ${baseline.name} is of ${baseline.designation}.`;
}

const plusMinusOf = (quantity: Quantity): string => {
  const { low, high } = rangeOf(quantity);
  return `${short(nominal(quantity))} ± ${short((high - low) / 2)} %`;
};

/** What is typical of a designation; of each kind, where it has several. */
const typicalSaid = (designation: string): string[] =>
  // Unreachable: every steel whose composition is known has its typical volume too.
  Object.values(carbidesByDesignation[designation] ?? {}).map(
    (typical) => `The table of typical volumes, also from memory, has ${plusMinusOf(typical)} for it.`,
  );

/** The steel a lever is drawn of, and what else is said of its carbide. */
const tie: WordsOf = (scene) => {
  const steel = tieSteelOf(scene);
  const middle = middleOf(steel);
  return [
    tieWhose(scene),
    `By weight it is ${content(scene)}, the middle of what the standard allows (from memory).`,
    ...typicalSaid(steel.designation),
    ...middle.estimate.notes.filter((note) => !note.includes('hardening temperature is not known')),
    steel.designation === 'AISI M2'
      ? 'High-speed steels are hardened far hotter than the table reaches.'
      : '',
  ];
};

/** The worth of the better steel as the edge gets blunter. */
export const byAngle: WordsOf = (scene) => {
  const { subject, baseline } = steelsOf(scene);
  const all = worthsOf(scene);
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last)
    return [
      `The published line is used at none of these angles for ${subject.name} and ${baseline.name}: it asks for their hardness to be within its range and for enough card cut.`,
    ];
  const refused =
    last.includedAngleDeg < regression.includedAngleDeg.high
      ? `Beyond ${last.includedAngleDeg}° one of them would cut too little card for the line, and it is not used.`
      : '';
  if (readsAsOne(first.card) && readsAsOne(last.card))
    return [
      `On any of these edges the steel of ${subject.name} is worth what that of ${baseline.name} is.`,
      refused,
    ];
  return [
    `At ${first.includedAngleDeg}° included ${subject.name} would cut ${times(first.card)} the card of ${baseline.name}, at ${last.includedAngleDeg}° ${times(last.card)}: the blunter the edge, the more the difference of steel weighs.`,
    refused,
  ];
};

/** Card in a fixed number of strokes against life to one stop. */
const compressed: WordsOf = (scene) => {
  const { subject, baseline } = steelsOf(scene);
  const there = worthAt(scene, 30);
  const [mm, baselineMm] = [cardOf(subject, subject), cardOf(baseline, baseline)];
  if (!there || mm === null || baselineMm === null)
    return [`For ${subject.name} against ${baseline.name} the line gives no card to count.`];
  return [
    `At 30° included the line has ${subject.name} at ${short(mm)} mm of card and ${baseline.name} at ${short(baselineMm)} mm.`,
    readsAsOne(there.card)
      ? 'No difference is there to be compressed.'
      : `That is ${times(there.card)} in the fixed number of strokes. Had both gone on to one stop it might have been ${times(there.life)}.`,
  ];
};

export const steelWords: Record<string, WordsOf> = {
  'steel-given': given,
  'steel-hardness': hardness,
  'steel-tie': tie,
  'steel-compressed': compressed,
};
