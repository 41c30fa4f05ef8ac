import { frictions, sideBySide } from './values.ts';
import type { UnderFriction } from './values.ts';
import { jobOf } from '../../phrases/job.ts';
import { restSaid } from '../../phrases/the-rest.ts';
import { anglesOf, exponentsOf, routesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { brief, plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';

type RoutesOf = ReturnType<typeof routesOf>;

/** Whether the chain is meant for the work, and what is not plain about the angles. */
function conditions(scene: Scene): string[] {
  const { entry, subject, baseline, subjectKnife, baselineKnife } = scene;
  const knives = [subjectKnife, baselineKnife];
  const angles = anglesOf(scene);
  const sentences: string[] = [];
  const job = jobOf(entry);
  if (!job.slicingChain)
    sentences.push(
      `In ${job.name}, ${job.reason}: for this work the slicing chain is refused, and what follows is only about the angles of ${subject.name} and ${baseline.name} as they would slice.`,
    );
  if (knives.some(({ angleDeg }) => typeof angleDeg === 'object' && 'unknown' in angleDeg))
    sentences.push('Where an angle is not known, the middle of its range stands for it here.');
  if (knives.some(({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined))
    sentences.push(
      'With a microbevel the two routes take two angles: the wedge that of the bevel, the apex that of the microbevel.',
      `At the apex ${subject.name} has ${short(angles.subject.apex)}°, ${baseline.name} ${short(angles.baseline.apex)}°.`,
    );
  return sentences;
}

/** Whether both routes count, and for which of the two. */
function bothRoutes({ wedge, tooth }: RoutesOf, { subject }: Scene): string {
  if (readsAsOne(wedge)) return 'As wedges the two are alike: the angle enters by one route only, the apex.';
  if (readsAsOne(tooth))
    return 'At the apex the two are alike: the angle enters by one route only, the wedge.';
  if ((wedge - 1) * (tooth - 1) < 0)
    return `The two routes pull opposite ways: the wedge counts ${wedge > 1 ? 'for' : 'against'} ${subject.name}, the apex ${tooth > 1 ? 'for it' : 'against it'}.`;
  return wedge > 1
    ? `Both routes count for ${subject.name}, the slimmer edge.`
    : `Both routes count against ${subject.name}, the stouter edge: it pays twice for one angle.`;
}

/** The two routes of the comparison's own angles. */
function twoRoutes(scene: Scene): string[] {
  const { entry, subject, baseline } = scene;
  const angles = anglesOf(scene);
  const routes = routesOf(scene);
  const { wedge, tooth, wear, apex, full, careful } = routes;
  const bevels = `${subject.name} has ${short(angles.subject.bevel)}° per side, ${baseline.name} ${short(angles.baseline.bevel)}°`;
  if (readsAsOne(wedge) && readsAsOne(tooth))
    return [
      ...conditions(scene),
      `${bevels}: the angle is the same, so each route has the factor 1, and so has their product. If anything sets the two knives apart, it lies elsewhere.`,
    ];
  const sentences = [
    ...conditions(scene),
    `${bevels}. As a wedge that makes ${times(wedge)}.`,
    `At the apex in full it makes ${times(tooth)} by tooth depth or ${times(wear)} by steel to wear away.`,
    `Wedge and tooth depth together would be ${times(full)}.`,
    bothRoutes(routes, scene),
    `The careful estimate takes the tooth depth to the power ${plain(exponentsOf(scene).apex, 2)}, which makes ${times(apex)}.`,
    `By its angle alone ${subject.name} should cut ${ratioInWords(careful)} as ${baseline.name}.`,
  ];
  if (!jobOf(entry).slicingChain) return sentences;
  return [...sentences, ...frictionAfter(scene), ...restSaid(scene, careful)];
}

/** How far a ratio is from 1, either way. */
const size = (ratio: number): number => Math.abs(Math.log(ratio));

/** What friction does to the worth of the angle: it brings two edges closer, or drives them apart where they are stout. */
function frictionDoes(none: UnderFriction, much: UnderFriction): string {
  const change = Math.max(none.wedge / much.wedge, much.wedge / none.wedge);
  if (readsAsOne(change)) return 'Friction changes nothing about that.';
  const way = size(much.wedge) < size(none.wedge) ? 'nearer to 1' : 'further from 1';
  return `Friction brings the wedge ${way} and leaves the apex alone.`;
}

/** The worth of the angle without friction and with much of it. */
function friction(scene: Scene): string[] {
  const { subject, baseline } = scene;
  const both = sideBySide(scene);
  const [, most] = frictions;
  if (both === null) return [`At a friction of ${brief(most)} one of these edges could not be driven in.`];
  const [none, much] = both;
  if (readsAsOne(none.angle) && readsAsOne(much.angle))
    return [
      `The angle does not set ${subject.name} apart from ${baseline.name}, whatever the friction: its factor stays at 1.`,
    ];
  return [
    `By its angle alone ${subject.name} should cut ${plain(none.angle, 2)} times as long as ${baseline.name} without friction, ${plain(much.angle, 2)} times at a friction of ${brief(most)}.`,
    frictionDoes(none, much),
  ];
}

/** The same behind a sentence that has said what the angle makes by itself. */
function frictionAfter(scene: Scene): string[] {
  const both = sideBySide(scene);
  if (both === null) return friction(scene);
  const [none, much] = both;
  return [
    `Without friction that would be ${plain(none.angle, 2)} times, and ${plain(much.angle, 2)} times at a friction of ${brief(much.friction)}.`,
    frictionDoes(none, much),
  ];
}

export const routesWords: Record<string, (scene: Scene) => string[]> = {
  'two-routes': twoRoutes,
  'two-routes-given': (scene) => {
    const { subject, baseline } = anglesOf(scene);
    return [
      `${scene.baseline.name} has an edge angle of ${short(baseline.bevel)}° per side, ${scene.subject.name} one of ${short(subject.bevel)}°. Here nothing else about the two counts.`,
    ];
  },
  'routes-friction': friction,
};
