import { isUnknown, nominal, parameters } from '../../model/index.ts';
import type { Grind, Knife } from '../../model/index.ts';
import {
  behindAlone,
  behindFactors,
  behindOf,
  contactDepthOf,
  formsOf,
  grindPush,
  regrindOf,
  removedMm2,
  slipMm,
  slippedAngleDeg,
  thicknessAtMm,
  thickerIsLonger,
} from './values.ts';
import type { Behind } from './values.ts';
import { grindText, lengthText } from '../../phrases/measures.ts';
import { unknownMeasureNames } from '../../phrases/unknown-measures.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { restSaid } from '../../phrases/the-rest.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, fixed, percent, plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** As a caliper shows it. */
const mm = (value: number): string => `${fixed(value, 2)} mm`;
/** A part of the other measure, or a multiple of it. */
const ofThat = (ratio: number): string =>
  ratio < 2 ? `${percent(ratio)} of that` : `${short(ratio)} times that`;

const ground = (grind: Grind): string =>
  `a ${grindText(grind)}${grind.form === 'flat' || grind.radiusMm === undefined ? '' : `, radius ${lengthText(grind.radiusMm)}`}`;

const given: WordsOf = (scene) => {
  const { subject, baseline } = behindOf(scene);
  const of = (blade: Behind, { grind }: Knife) =>
    `${blade.name}: ${mm(blade.edgeMm)} thick at the shoulder of its bevel, ${ground(grind)}`;
  return [`${of(baseline, scene.baselineKnife)}.`, `${of(subject, scene.subjectKnife)}.`];
};

/** How far either blade opens the rope, at the depth of contact. */
const opened: WordsOf = (scene) => {
  const { subject, baseline } = behindOf(scene);
  const depth = contactDepthOf(scene);
  const [a, b] = [thicknessAtMm(subject, depth), thicknessAtMm(baseline, depth)];
  const waists = [
    ...(a < subject.edgeMm ? [subject.name] : []),
    ...(b < baseline.edgeMm ? [baseline.name] : []),
  ];
  const atShoulder = readsAsOne(subject.edgeMm / baseline.edgeMm)
    ? `At the shoulder ${subject.name} and ${baseline.name} are equally thick, ${mm(subject.edgeMm)}.`
    : `At the shoulder ${baseline.name} has opened the rope to ${mm(baseline.edgeMm)} and ${subject.name} to ${mm(subject.edgeMm)}, ${ofThat(subject.edgeMm / baseline.edgeMm)}.`;
  return [
    atShoulder,
    readsAsOne(a / b)
      ? `${short(depth)} mm further up ${subject.name} is as thick as ${baseline.name}, ${mm(a)}.`
      : `${short(depth)} mm further up it is ${mm(b)} for ${baseline.name} against ${mm(a)} for ${subject.name}, ${ofThat(a / b)}.`,
    waists.length > 0
      ? `${list(waists)} ${waists.length > 1 ? 'have' : 'has'} a waist: thinner above the shoulder than at it, so that the rope is no further open there than the shoulder made it.`
      : '',
  ];
};

/** The subject's grind in three forms. */
const threeForms: WordsOf = (scene) => {
  const all = formsOf(scene);
  const [hollow, flat, convex] = all;
  const { name, grind } = behindOf(scene).subject;
  const against = (angle: number) => grindPush(scene, flat.grindAngleDeg) / grindPush(scene, angle);
  return [
    `Over ${short(contactDepthOf(scene))} mm from the shoulder ${name} would be a wedge of ${list(all.map(({ form, grindAngleDeg }) => `${short(grindAngleDeg)}° per side ${form}`))}.`,
    `Against the flat one the hollow makes ${times(against(hollow.grindAngleDeg))} and the convex ${times(against(convex.grindAngleDeg))}; ${name} itself is ground ${grind.form}.`,
  ];
};

/** What the caliper says of either blade, rightly and wrongly held. */
const caliper: WordsOf = (scene) => {
  const { subject, baseline } = behindOf(scene);
  const of = (blade: Behind) => {
    const wrong = slippedAngleDeg(blade);
    const slipped = `${slipMm} mm too high the jaws read ${mm(thicknessAtMm(blade, slipMm))}`;
    return `${blade.name}: A ${mm(blade.edgeMm)}, B ${mm(blade.bevelWidthMm)}, C ${mm(blade.bevelHeightMm)} make ${short(blade.angleDeg)}° per side; ${slipped}, which with the same B would make ${wrong === null ? 'no bevel at all' : `${short(wrong)}°`}.`;
  };
  return [of(baseline), of(subject)];
};

/** The steel a lower bevel costs either knife. */
const regrind: WordsOf = (scene) => {
  const { subject, baseline } = behindOf(scene);
  const job = regrindOf(scene);
  const [a, b] = [removedMm2(subject.edgeMm, job), removedMm2(baseline.edgeMm, job)];
  return [
    job.madeUp
      ? `${subject.name} and ${baseline.name} have one angle, so take a bevel of ${short(job.fromDeg)}° down to three quarters of it, ${short(job.toDeg)}°.`
      : `Take a bevel from ${short(job.fromDeg)}° down to ${short(job.toDeg)}° per side, the two angles of ${baseline.name} and ${subject.name}.`,
    `At the thickness of ${baseline.name} that costs ${plain(b)} mm² of the section, at that of ${subject.name} ${plain(a)} mm².`,
    readsAsOne(a / b)
      ? 'That is the same work.'
      : `The thicker edge takes ${short(Math.max(a / b, b / a))} times the work, the square of ${short(Math.max(subject.edgeMm / baseline.edgeMm, baseline.edgeMm / subject.edgeMm))}.`,
  ];
};

/** Which of the two a factor supports. */
const favoured = (factor: number, { subject, baseline }: Scene): string =>
  factor > 1 ? subject.name : baseline.name;

/** Measures this lesson covers. */
const behindIt = new Set([
  'thickness behind the edge',
  'thickness at the spine',
  'height of the grind',
  'radius of the grind',
]);

/** Thickness and grind together, by all three structures. */
function together(scene: Scene): string[] {
  const { subject, baseline } = behindOf(scene);
  const { multiplied, added, toLimit } = behindAlone(scene);
  if ([multiplied, added, toLimit].every(readsAsOne))
    return [
      `Together the two come to 1: what lies behind the bevel does not set ${subject.name} apart from ${baseline.name}.`,
    ];
  return [
    `By what lies behind the bevel alone ${subject.name} should cut ${ratioInWords(multiplied)} as ${baseline.name}, if the two multiply.`,
    `If the forces add, it should cut ${ratioInWords(added)}. If the force has a limit, it should cut ${ratioInWords(toLimit)}.`,
  ];
}

/** Where the model has more thickness cut longer, which nobody should rely on. */
function thickEdges(scene: Scene): string[] {
  const { subjectKnife, baselineKnife, subject, baseline } = scene;
  const thick = [
    ...(thickerIsLonger(scene, subjectKnife) ? [subject.name] : []),
    ...(thickerIsLonger(scene, baselineKnife) ? [baseline.name] : []),
  ];
  return thick.length === 0
    ? []
    : [
        `With all factors multiplied the model would have a thicker edge on ${list(thick)} cut longer: as the edge gets thicker, the grind above it gets flatter.`,
        'Do not rely on the thickness there.',
      ];
}

/** What lies behind the edges of the comparison's own two knives. */
const ownKnives: WordsOf = (scene) => {
  const { comparison, subjectKnife, baselineKnife } = scene;
  const { subject, baseline } = behindOf(scene);
  const { quick, careful } = behindFactors(scene);
  const refused = refusedWork(scene);
  const notKnown = [
    ...[
      { knife: subjectKnife, ...subject },
      { knife: baselineKnife, ...baseline },
    ].flatMap(({ knife, name }) =>
      unknownMeasureNames(knife)
        .filter((what) => behindIt.has(what))
        .map((what) => `the ${what} of ${name}`),
    ),
    ...(isUnknown(scene.entry.contactDepthMm) ? ['the depth of contact'] : []),
  ];
  const exponent = brief(
    nominal(comparison.assumptions?.thicknessExponent ?? parameters.thicknessExponent.default),
  );
  const edges = `${subject.name} is ${mm(subject.edgeMm)} thick behind the edge, ${baseline.name} ${mm(baseline.edgeMm)}`;
  const angles = `Over the depth of contact the grind of ${subject.name} is a wedge of ${short(subject.grindAngleDeg)}° per side, that of ${baseline.name} one of ${short(baseline.grindAngleDeg)}°`;
  const sentences = [
    refused,
    notKnown.length > 0
      ? `Not known: ${list(notKnown)}. The middle of each range stands in, and that is a guess.`
      : '',
    readsAsOne(careful.thickness) && readsAsOne(quick.thickness)
      ? `${edges}: both are equally thick there, so the factor of the thickness is 1.`
      : readsAsOne(careful.thickness)
        ? `${edges}. With the thickness exponent at ${exponent} the careful estimate gives that no weight. The quick sum makes it ${times(quick.thickness)}.`
        : `${edges}. To the power ${exponent} that makes a factor of ${times(careful.thickness)}, in favour of ${favoured(careful.thickness, scene)}. The quick sum makes it ${times(quick.thickness)}.`,
    readsAsOne(careful.grind)
      ? `${angles}: the factor of the grind is 1.`
      : `${angles}. That makes a factor of ${times(careful.grind)}, in favour of ${favoured(careful.grind, scene)}.`,
    ...together(scene),
    ...thickEdges(scene),
  ];
  if (refused !== '') return sentences;
  return [...sentences, ...restSaid(scene, careful.both)];
};

export const behindWords: Record<string, WordsOf> = {
  'behind-given': given,
  'behind-opened': opened,
  'behind-forms': threeForms,
  'behind-caliper': caliper,
  'behind-regrind': regrind,
  behind: ownKnives,
};
