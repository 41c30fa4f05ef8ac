import { isUnknown, nominal } from '../../model/index.ts';
import type { Quantity } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { lessThan, readLess, shortPercent, thicknessExponentOf } from './values.ts';
import type { Less } from './values.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import { leftOut } from '../../scene/terms.ts';
import type { Scene } from '../../scene/scene.ts';
import { fixed, plain, readsAsOne, short, times } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** One measure that is in the way of the cut, of the knife looked at and of the baseline. */
interface Hindrance {
  subject: Quantity;
  baseline: Quantity;
  show(value: number): string;
  /** What so much less of it is worth. */
  worth(less: Less): string;
  /** What the careful estimate makes of it, before the number. */
  term: 'thickness' | 'wedge';
  closely: string;
}

const edge = ({ subjectKnife, baselineKnife }: Scene): Hindrance => ({
  subject: subjectKnife.edgeMm,
  baseline: baselineKnife.edgeMm,
  show: (value) => `${fixed(value, 2)} mm behind the edge`,
  worth: ({ faceValue, inverse, damped, exponent }) =>
    `${times(faceValue)} at face value, ${times(inverse)} as the inverse, and ${times(damped)} with the inverse to the power ${plain(exponent, 2)}`,
  term: 'thickness',
  closely: 'The close reading takes the last of these',
});
const angle = ({ subjectKnife, baselineKnife }: Scene): Hindrance => ({
  subject: subjectKnife.angleDeg,
  baseline: baselineKnife.angleDeg,
  show: (value) => `an edge angle of ${short(value)}° per side`,
  worth: ({ faceValue, inverse }) => `${times(faceValue)} at face value and ${times(inverse)} as the inverse`,
  term: 'wedge',
  closely: 'As a wedge, with its friction, the close reading makes it',
});

/** The hindrance of the two knives as a percentage less, from whichever side it is less, by its readings. */
function hindered(scene: Scene, { subject, baseline, show, worth, term, closely }: Hindrance): string[] {
  const [a, b] = [nominal(subject), nominal(baseline)];
  const [who, whom] = [scene.subject.name, scene.baseline.name];
  if (readsAsOne(a / b))
    return [
      `${who} and ${whom} both have ${show(a)}: nothing is less, so by every reading this is worth ${times(1)}.`,
    ];
  const less = readLess(lessThan(Math.min(a, b), Math.max(a, b)), thicknessExponentOf(scene.entry));
  const factor = factorOf(scene.row.careful, term);
  const careful = `${closely}: ${times(factor)} for ${who}.`;
  const opening = `${who} has ${show(a)}, ${whom} ${show(b)}.`;
  return a < b
    ? [
        `${opening} That is ${shortPercent(less.percent)} less of what is in the way, worth ${worth(less)}.`,
        careful,
      ]
    : [
        `${opening} That is ${shortPercent((a / b - 1) * 100)} more of what is in the way for ${who}. Seen from there, ${whom} has only ${shortPercent(less.percent)} less: the base is another.`,
        `For ${whom} that is worth ${worth(less)}; for ${who} turn the number over, and the inverse makes ${times(1 / less.inverse)}.`,
        careful,
      ];
}

const middles = (scene: Scene): string => {
  const unknown = [edge(scene), angle(scene)].filter(
    ({ subject, baseline }) => isUnknown(subject) || isUnknown(baseline),
  );
  return unknown.length === 0
    ? ''
    : 'Where a measure is not known, the middle of its range stands for it here.';
};

export const lessWords: Record<string, WordsOf> = {
  /** The angle alone, in the lesson's own text. */
  'less-angle': (scene) => hindered(scene, angle(scene)),

  /** With a visitor's own knives: what is less, what that is worth, and where these readings have no place. */
  less: (scene) => {
    const { subject, baseline, row } = scene;
    const missing = leftOut(row.careful);
    const helping = (['finish', 'hardness', 'carbide'] as const).filter((id) => {
      const factor = factorOf(scene.row.careful, id);
      return factor !== null && !readsAsOne(factor);
    });
    return [
      refusedWork(scene),
      middles(scene),
      ...hindered(scene, edge(scene)),
      ...hindered(scene, angle(scene)),
      helping.length === 0
        ? `In finish and steel ${subject.name} and ${baseline.name} are alike${missing.length > 0 ? `, as far as they can be computed (${list(missing)} left out)` : ''}.`
        : `In ${list(helping)} ${subject.name} and ${baseline.name} differ as well. But there more is better: nothing is in the way, nothing has to be turned over, and the three readings have no place.`,
    ];
  },
};
