import type { Knife, TermId } from '../model/index.ts';
import { factorOf } from '../comparison/found.ts';
import { carbideText, finishText, lengthText, quantityText } from './measures.ts';
import type { Scene } from '../scene/scene.ts';
import { readsAsOne, times, units } from '../scene/show.ts';
import { factorName } from './factor-names.ts';

/** A factor for somebody who has never met it: what is looked at, and why it matters. */
interface FactorWords {
  title: string;
  /** A knife's own measure; empty where there is none in words. */
  measure(knife: Knife): string;
  why: string;
  /** The lesson behind it: the first of these that is written. */
  lessons: readonly string[];
}

const words: Record<TermId, FactorWords> = {
  wedge: {
    title: 'The angle as a wedge',
    measure: ({ angleDeg }) => `${quantityText(angleDeg, units.deg)} per side`,
    why: 'The slimmer the wedge, the less force pushes it through the cut.',
    lessons: ['two-routes'],
  },
  apex: {
    title: 'The angle at the very apex',
    measure: ({ angleDeg, microbevelAngleDeg }) =>
      `${quantityText(microbevelAngleDeg ?? angleDeg, units.deg)} per side`,
    why: 'As an edge wears away, the slimmer apex stays the thinner one.',
    lessons: ['two-routes'],
  },
  thickness: {
    title: 'Thickness behind the edge',
    measure: ({ edgeMm }) => quantityText(edgeMm, units.mm),
    why: 'What is thick behind the edge has to be pushed aside.',
    lessons: ['behind-the-edge'],
  },
  grind: {
    title: 'The primary grind',
    measure: ({ grind }) =>
      `${grind.form}, from ${lengthText(grind.spineMm)} at the spine over ${lengthText(grind.heightMm)}`,
    why: 'The faces above the bevel follow it into the cut and spread it too.',
    lessons: ['behind-the-edge'],
  },
  finish: {
    title: 'The finish of the edge',
    measure: ({ finish }) => finishText(finish),
    why: 'The scratches of the last grit are the teeth of the edge, and teeth go on biting in a slice.',
    lessons: ['what-a-grit-is'],
  },
  hardness: {
    title: 'Hardness',
    measure: ({ hrc }) => quantityText(hrc, units.hrc),
    why: 'A harder steel gives way less at the apex.',
    lessons: ['steel-fairly', 'range-race'],
  },
  carbide: {
    title: 'Carbide',
    measure: ({ carbideVolPercent }) => carbideText(carbideVolPercent),
    why: 'Hard carbides stand in the way of whatever wears the steel around them.',
    lessons: ['steel-fairly', 'range-race'],
  },
};

/** The words for a factor. One that the model's table has and this list does not has its name alone. */
export const factorWords = (id: string): FactorWords =>
  (words as Partial<Record<string, FactorWords>>)[id] ?? {
    title: factorName(id).name,
    measure: () => '',
    why: '',
    lessons: [],
  };

/** One term of the chain: both measures, the reason, and what it makes of the ratio. */
export function termText(scene: Scene, id: TermId): string[] {
  const { entry, row, subject, baseline, subjectKnife, baselineKnife } = scene;
  const { measure, why } = factorWords(id);
  const [own, other] = [measure(subjectKnife), measure(baselineKnife)];
  const factor = factorOf(row[entry.reading], id);
  const measures =
    own === '' || other === ''
      ? ''
      : own === other
        ? `${subject.name} and ${baseline.name} both: ${own}.`
        : `${subject.name}: ${own}. ${baseline.name}: ${other}.`;
  if (factor === null)
    return [
      measures,
      why,
      'It could not be computed here, so it is left out; it is not taken as no difference.',
    ];
  if (readsAsOne(factor))
    return [
      measures,
      why,
      `For ${subject.name} against ${baseline.name} that makes no difference: the factor is 1.`,
    ];
  const ahead = factor > 1 ? subject.name : baseline.name;
  return [
    measures,
    why,
    own !== '' && own === other
      ? 'It starts from another thickness behind the edge, though, and so at another slope.'
      : '',
    `Here that speaks for ${ahead}: the factor of ${subject.name} is ${times(factor)}.`,
  ];
}
