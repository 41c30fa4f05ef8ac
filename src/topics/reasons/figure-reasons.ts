import type * as Plot from '@observablehq/plot';
import type { Figure } from '../../figure-kit/figure.ts';
import type { Scene } from '../../scene/scene.ts';
import { measureSaid } from './measures.ts';
import { pictureWidth, written } from './drawn.ts';
import type { Picture } from './drawn.ts';
import { barsPicture, pictures } from './pictures.ts';
import { biggestReasons, isNamed, mostTold } from './reasons.ts';
import type { Reason } from './reasons.ts';
import { ratioSaid, titleOf } from './titles.ts';

const places = ['first', 'second', 'third'] as const;

/** Where there are fewer reasons, the drawing says so. */
const none = (index: number): string =>
  index === 0
    ? 'No reason makes a difference of its own.'
    : `There is no ${places[index] ?? 'further'} reason.`;

const pictureOf = (scene: Scene, reason: Reason | undefined, index: number): Picture => {
  if (!reason)
    return { height: 40, marks: [written(pictureWidth / 2, 20, none(index), { className: 'kf-faint' })] };
  return isNamed(reason.id) ? pictures[reason.id](scene) : barsPicture(scene, reason);
};

/** The picture of the reason that comes in this place, counted from 0. */
const figureAt = (index: number): Figure => {
  const reasonOf = (scene: Scene): Reason | undefined => biggestReasons(scene)[index];
  return {
    id: `reason-${index + 1}`,
    title: (scene) => {
      const reason = reasonOf(scene);
      return reason ? titleOf(reason, scene) : none(index);
    },
    units: 'as written',
    scale: 'drawn to show the idea; grains of carbide by their share of the area',
    reading: () => 'careful estimate, middle settings',
    source: 'derived',
    options(scene, { width }) {
      const { height, marks } = pictureOf(scene, reasonOf(scene), index);
      const beside = (width - pictureWidth) / 2;
      return {
        width,
        height,
        marginTop: 0,
        marginBottom: 0,
        marginLeft: beside,
        marginRight: beside,
        x: { domain: [0, pictureWidth], axis: null },
        y: { domain: [height, 0], axis: null },
        marks: marks as Plot.Markish[],
      };
    },
    table(scene) {
      const reason = reasonOf(scene);
      const { baseline, subject, baselineKnife, subjectKnife } = scene;
      return {
        columns: ['Measure', baseline.name, subject.name],
        rows: reason
          ? [
              ['What it has', measureSaid(reason.id, baselineKnife), measureSaid(reason.id, subjectKnife)],
              ['Times as long for this reason', '1', ratioSaid(reason.factor)],
            ]
          : [],
      };
    },
    caption(scene) {
      const reason = reasonOf(scene);
      if (!reason) return none(index);
      const { baseline, subject, baselineKnife, subjectKnife } = scene;
      const [other, own] = [measureSaid(reason.id, baselineKnife), measureSaid(reason.id, subjectKnife)];
      if (other === '' || own === '') return `${titleOf(reason, scene)}.`;
      return other === own
        ? `${baseline.name} and ${subject.name} both have ${own}.`
        : `${baseline.name} has ${other}, ${subject.name} ${own}.`;
    },
  };
};

/** One figure for each place, whatever the reason there. */
export const figures = Array.from({ length: mostTold }, (_, index) => figureAt(index));
