import type { Knife, TermId } from '../model/index.ts';
import { factorOf } from '../comparison/found.ts';
import { carbideSaid, finishSaid, lengthSaid, said } from './measures-said.ts';
import { differs } from '../scene/terms.ts';
import type { Scene } from '../scene/scene.ts';
import { times } from '../scene/show.ts';

/** A term told to somebody who has never met it: what is looked at, and why it matters. */
interface Described {
  title: string;
  measure(knife: Knife): string;
  why: string;
}

export const described: Record<TermId, Described> = {
  wedge: {
    title: 'The angle as a wedge',
    measure: ({ angleDeg }) => `${said(angleDeg, '°')} per side`,
    why: 'The slimmer the wedge, the less force pushes it through the cut.',
  },
  apex: {
    title: 'The angle at the very apex',
    measure: ({ angleDeg, microbevelAngleDeg }) => `${said(microbevelAngleDeg ?? angleDeg, '°')} per side`,
    why: 'As an edge wears away, the slimmer apex stays the thinner one.',
  },
  thickness: {
    title: 'Thickness behind the edge',
    measure: ({ edgeMm }) => said(edgeMm, ' mm'),
    why: 'What is thick behind the edge has to be pushed aside.',
  },
  grind: {
    title: 'The primary grind',
    measure: ({ grind }) =>
      `${grind.form}, from ${lengthSaid(grind.spineMm)} at the spine over ${lengthSaid(grind.heightMm)}`,
    why: 'The faces above the bevel follow it into the cut and spread it too.',
  },
  finish: {
    title: 'The finish of the edge',
    measure: ({ finish }) => finishSaid(finish),
    why: 'The scratches of the last grit are the teeth of the edge, and teeth go on biting in a slice.',
  },
  hardness: {
    title: 'Hardness',
    measure: ({ hrc }) => said(hrc, ' HRC'),
    why: 'A harder steel gives way less at the apex.',
  },
  carbide: {
    title: 'Carbide',
    measure: ({ carbideVolPercent }) => carbideSaid(carbideVolPercent),
    why: 'Hard carbides stand in the way of whatever wears the steel around them.',
  },
};

/** One term of the chain: both measures, the reason, and what it makes of the ratio. */
export function termText(scene: Scene, id: TermId): string[] {
  const { entry, row, subject, baseline, subjectKnife, baselineKnife } = scene;
  const { measure, why } = described[id];
  const [own, other] = [measure(subjectKnife), measure(baselineKnife)];
  const factor = factorOf(row[entry.reading], id);
  const measures =
    own === other
      ? `${subject.name} and ${baseline.name} both: ${own}.`
      : `${subject.name}: ${own}. ${baseline.name}: ${other}.`;
  if (factor === null)
    return [
      measures,
      why,
      'It could not be computed here, so it is left out; it is not taken as no difference.',
    ];
  if (!differs({ factor }))
    return [
      measures,
      why,
      `For ${subject.name} against ${baseline.name} that makes no difference: the factor is 1.`,
    ];
  const ahead = factor > 1 ? subject.name : baseline.name;
  return [
    measures,
    why,
    own === other ? 'It starts from another thickness behind the edge, though, and so at another slope.' : '',
    `Here that speaks for ${ahead}: the factor of ${subject.name} is ${times(factor)}.`,
  ];
}
