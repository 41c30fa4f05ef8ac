import {
  carbidesByDesignation,
  isUnknown,
  lifeRatioFromCardMm,
  nominal,
  rangeOf,
  regression,
  vickersFromRockwellC,
} from '../../model/index.ts';
import type { Quantity } from '../../model/index.ts';
import { carbideText, quantityText } from '../../phrases/measures.ts';
import { unlessRefused } from '../../comparison/unless-refused.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, fixed, percent, plain, readsAsOne, short, units } from '../../scene/show.ts';
import {
  carbideAddsMm,
  chainCardOf,
  lifeExponentOf,
  middleOf,
  steelsOf,
  takenAtDeg,
  tieSteelOf,
  worthsOf,
} from '../../scene/steel.ts';
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
    // The square is what the quick sum takes.
    readsAsOne(ratio ** 2) && readsAsOne(subject.vickers / baseline.vickers)
      ? `${subject.name} is as hard as ${baseline.name}, by either scale.`
      : `${subject.name} has ${short(ratio)} times the HRC of ${baseline.name}, but ${short(subject.vickers / baseline.vickers)} times the Vickers. The quick sum squares the first, which makes ${short(ratio ** 2)}, and lets that stand for the second.`,
  ];
};

const content = (scene: Scene): string => {
  const { composition } = tieSteelOf(scene);
  const symbols = { carbon: 'C', chromium: 'Cr', molybdenum: 'Mo', tungsten: 'W', vanadium: 'V' } as const;
  return list(
    Object.entries(symbols).flatMap(([element, symbol]) => {
      const value = composition[element as keyof typeof symbols];
      return value === undefined ? [] : [`${brief(value)}% ${symbol}`];
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
  return `${short(nominal(quantity))} ± ${short((high - low) / 2)}%`;
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
    middle.estimate.basis === 'table'
      ? 'Such steels are hardened far hotter than the table of saturation reaches.'
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
    `At ${first.includedAngleDeg}° included ${subject.name} would cut ${plain(first.card)} times the card of ${baseline.name}, and ${plain(last.card)} times at ${last.includedAngleDeg}°: the blunter the edge, the more the difference of steel weighs.`,
    refused,
  ];
};

/** Card in a fixed number of strokes against life to one end point. */
const compressed: WordsOf = (scene) => {
  const { subject, baseline } = steelsOf(scene);
  const [mm, baselineMm] = [subject, baseline].map((steel) => chainCardOf(scene, steel.hrc, steel)) as [
    number,
    number,
  ];
  const card = mm / baselineMm;
  const opening = `At ${takenAtDeg}° included ${subject.name} counts with ${short(mm)} mm of card and ${baseline.name} with ${short(baselineMm)} mm.`;
  if (readsAsOne(card)) return [opening, 'No difference is there to be compressed.'];
  const ratio = `That is ${plain(card)} times in the fixed number of strokes`;
  if (scene.comparison.outcome === 'fixed-strokes')
    return [opening, `${ratio}, and this comparison asks for just that.`];
  const p = lifeExponentOf(scene);
  const life = unlessRefused(() => lifeRatioFromCardMm({ mm, baselineMm }));
  return [
    opening,
    `${ratio}. To one end point the careful estimate takes ${plain(card ** p)} times, by the power ${brief(p)}.`,
    life === null ? '' : `By the law of even blunting it would be ${plain(life)} times.`,
  ];
};

/** Card on either side of the end of the published line: nothing jumps there. */
const noJump: WordsOf = (scene) => {
  const { subject, baseline } = steelsOf(scene);
  const { low } = regression.hrc;
  const cards = (carbide: Steel): string =>
    list(
      [low - 0.1, low].map((hrc) => `${fixed(chainCardOf(scene, hrc, carbide), 1)} mm at ${brief(hrc)} HRC`),
    );
  return [
    `With the carbide of ${baseline.name} a knife counts with ${cards(baseline)}.`,
    sameCarbide(subject, baseline) ? '' : `With that of ${subject.name} it is ${cards(subject)}.`,
  ];
};

/** Whether two steels have the same card of their carbide. */
export const sameCarbide = (a: Steel, b: Steel): boolean => carbideAddsMm(a) === carbideAddsMm(b);

export const steelWords: Record<string, WordsOf> = {
  'steel-given': given,
  'steel-hardness': hardness,
  'steel-tie': tie,
  'steel-compressed': compressed,
  'steel-no-jump': noJump,
};
