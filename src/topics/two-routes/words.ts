import { jobOf } from '../../phrases/job.ts';
import { anglesOf, exponentsOf, routesOf } from '../../scene/routes.ts';
import type { Scene } from '../../scene/scene.ts';
import { plain, ratioInWords, readsAsOne, short, times } from '../../scene/show.ts';

/** The two routes of the comparison's own angles. */
function twoRoutes(scene: Scene): string[] {
  const { entry, row, subject, baseline, subjectKnife, baselineKnife } = scene;
  const angles = anglesOf(scene);
  const { wedge, tooth, wear, apex, full, careful } = routesOf(scene);
  const sentences: string[] = [];

  const job = jobOf(entry);
  const refused = !job.slicingChain;
  if (refused)
    sentences.push(
      `In ${job.name}, ${job.reason}: for this work the slicing chain is refused, and what follows speaks only of the angles of ${subject.name} and ${baseline.name} as they would slice.`,
    );

  const bevels = `${subject.name} has ${short(angles.subject.bevel)}° per side, ${baseline.name} ${short(angles.baseline.bevel)}°`;
  const notKnown = [subjectKnife, baselineKnife].some(
    ({ angleDeg }) => typeof angleDeg === 'object' && 'unknown' in angleDeg,
  );
  if (notKnown) sentences.push('Where an angle is not known, the middle of its range stands for it here.');
  const microbevels = [subjectKnife, baselineKnife].some(
    ({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined,
  );
  if (microbevels)
    sentences.push(
      `With a microbevel the two routes take two angles: the wedge that of the bevel, the apex that of the microbevel. At the apex ${subject.name} has ${short(angles.subject.apex)}°, ${baseline.name} ${short(angles.baseline.apex)}°.`,
    );

  if (readsAsOne(wedge) && readsAsOne(tooth)) {
    sentences.push(
      `${bevels}: the angle is the same, so each route has the factor 1, and so has their product. If anything sets the two knives apart, it lies elsewhere.`,
    );
    return sentences;
  }

  sentences.push(
    `${bevels}. As a wedge that makes ${times(wedge)}; at the apex in full it makes ${times(tooth)} by tooth depth or ${times(wear)} by steel to wear away. Wedge and tooth depth together would be ${times(full)}.`,
  );
  const opposed = (wedge - 1) * (tooth - 1) < 0;
  if (readsAsOne(wedge))
    sentences.push('As wedges the two are alike: the angle enters by one route only, the apex.');
  else if (readsAsOne(tooth))
    sentences.push('At the apex the two are alike: the angle enters by one route only, the wedge.');
  else if (opposed)
    sentences.push(
      `The two routes pull opposite ways: ${wedge > 1 ? 'the wedge speaks for' : 'the wedge speaks against'} ${subject.name}, the apex ${tooth > 1 ? 'for it' : 'against it'}.`,
    );
  else
    sentences.push(
      wedge > 1
        ? `Both routes speak for ${subject.name}, the slimmer edge.`
        : `Both routes speak against ${subject.name}, the stouter edge: it pays twice for one angle.`,
    );
  sentences.push(
    `The close reading takes the tooth depth to the power ${plain(exponentsOf(scene).apex, 2)}, which makes ${times(apex)}, and arrives at ${times(careful)} for the angle: by its angle alone ${subject.name} should cut ${ratioInWords(careful)} as ${baseline.name}.`,
  );
  if (refused) return sentences;
  const rest = row.careful.product / careful;
  sentences.push(
    readsAsOne(rest)
      ? 'Nothing else sets the two apart.'
      : `Everything else about the two makes ${times(rest)}, and all together ${times(row.careful.product)}${row.careful.complete ? '' : ', as far as the terms that stand go'}.`,
  );
  return sentences;
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
