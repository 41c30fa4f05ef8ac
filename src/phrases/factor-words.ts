import type { Knife, TermId } from '../model/index.ts';
import { factorOf } from '../comparison/found.ts';
import { carbideText, finishText, lengthText, quantityText } from './measures.ts';
import type { Scene } from '../scene/scene.ts';
import { readsAsOne, units } from '../scene/show.ts';
import { asLongAs } from './as-long-as.ts';
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
    why: 'A slimmer wedge needs less force to push through.',
    lessons: ['two-routes'],
  },
  apex: {
    title: 'The angle at the very apex',
    measure: ({ angleDeg, microbevelAngleDeg }) =>
      `${quantityText(microbevelAngleDeg ?? angleDeg, units.deg)} per side`,
    why: 'As an edge wears, a slimmer apex stays thinner.',
    lessons: ['two-routes'],
  },
  thickness: {
    title: 'Thickness behind the edge',
    measure: ({ edgeMm }) => quantityText(edgeMm, units.mm),
    why: 'A blade that is thick behind the edge has to push its way through.',
    lessons: ['behind-the-edge'],
  },
  grind: {
    title: 'The primary grind',
    measure: ({ grind }) =>
      `${grind.form}, from ${lengthText(grind.spineMm)} at the spine over ${lengthText(grind.heightMm)}`,
    why: 'The faces above the bevel go into the cut as well, and spread it.',
    lessons: ['behind-the-edge'],
  },
  finish: {
    title: 'The finish of the edge',
    measure: ({ finish }) => finishText(finish),
    why: 'We assume that the scratches of the last grit act as teeth, which go on biting in a slice.',
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
    why: 'Hard grains of carbide protect the steel around them.',
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

/** What both knives have of a factor: “Plover 24° per side, Dunlin 14° per side”. Empty where it has no measure. */
export function hasInWords(
  {
    subject,
    baseline,
    subjectKnife,
    baselineKnife,
  }: Pick<Scene, 'subject' | 'baseline' | 'subjectKnife' | 'baselineKnife'>,
  id: string,
): string {
  const { measure } = factorWords(id);
  const [own, other] = [measure(subjectKnife), measure(baselineKnife)];
  if (own === '' || other === '') return '';
  return own === other
    ? `${baseline.name} and ${subject.name} both: ${own}`
    : `${baseline.name}: ${other}. ${subject.name}: ${own}`;
}

/** One factor: both measures, why it matters, and what it makes of the answer. */
export function termText(scene: Scene, id: TermId): string[] {
  const { row, subject, baseline, subjectKnife, baselineKnife } = scene;
  const { measure, why } = factorWords(id);
  const has = hasInWords(scene, id);
  const factor = factorOf(row.careful, id);
  const measures = has === '' ? '' : `${has}.`;
  if (factor === null)
    return [
      measures,
      why,
      'It couldn’t be worked out here, so it’s left out; that doesn’t mean it makes no difference.',
    ];
  if (readsAsOne(factor))
    return [measures, why, `Between ${subject.name} and ${baseline.name} it makes no difference.`];
  return [
    measures,
    why,
    measure(subjectKnife) !== '' && measure(subjectKnife) === measure(baselineKnife)
      ? 'But it starts from another thickness behind the edge, and so has another slope.'
      : '',
    `For this reason alone ${subject.name} should cut ${asLongAs(factor, baseline.name)}.`,
  ];
}
