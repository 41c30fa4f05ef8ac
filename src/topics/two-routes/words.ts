import { jobOf } from '../../phrases/job.ts';
import { anglesOf, exponentsOf, routesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';

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
      `In ${job.name}, ${job.reason}: for this work the slicing chain is refused, and what follows speaks only of the angles of ${subject.name} and ${baseline.name} as they would slice.`,
    );
  if (knives.some(({ angleDeg }) => typeof angleDeg === 'object' && 'unknown' in angleDeg))
    sentences.push('Where an angle is not known, the middle of its range stands for it here.');
  if (knives.some(({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined))
    sentences.push(
      `With a microbevel the two routes take two angles: the wedge that of the bevel, the apex that of the microbevel. At the apex ${subject.name} has ${short(angles.subject.apex)}°, ${baseline.name} ${short(angles.baseline.apex)}°.`,
    );
  return sentences;
}

/** Whether both routes count, and for which of the two. */
function bothRoutes({ wedge, tooth }: RoutesOf, { subject }: Scene): string {
  if (readsAsOne(wedge)) return 'As wedges the two are alike: the angle enters by one route only, the apex.';
  if (readsAsOne(tooth))
    return 'At the apex the two are alike: the angle enters by one route only, the wedge.';
  if ((wedge - 1) * (tooth - 1) < 0)
    return `The two routes pull opposite ways: ${wedge > 1 ? 'the wedge speaks for' : 'the wedge speaks against'} ${subject.name}, the apex ${tooth > 1 ? 'for it' : 'against it'}.`;
  return wedge > 1
    ? `Both routes speak for ${subject.name}, the slimmer edge.`
    : `Both routes speak against ${subject.name}, the stouter edge: it pays twice for one angle.`;
}

/** The two routes of the comparison's own angles. */
function twoRoutes(scene: Scene): string[] {
  const { entry, row, subject, baseline } = scene;
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
    `${bevels}. As a wedge that makes ${times(wedge)}; at the apex in full it makes ${times(tooth)} by tooth depth or ${times(wear)} by steel to wear away. Wedge and tooth depth together would be ${times(full)}.`,
    bothRoutes(routes, scene),
    `The close reading takes the tooth depth to the power ${plain(exponentsOf(scene).apex, 2)}, which makes ${times(apex)}, and arrives at ${times(careful)} for the angle: by its angle alone ${subject.name} should cut ${ratioInWords(careful)} as ${baseline.name}.`,
  ];
  if (!jobOf(entry).slicingChain) return sentences;
  const rest = row.careful.product / careful;
  return [
    ...sentences,
    readsAsOne(rest)
      ? 'Nothing else sets the two apart.'
      : `Everything else about the two makes ${times(rest)}, and all together ${times(row.careful.product)}${row.careful.complete ? '' : ', as far as the terms that stand go'}.`,
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
};
