import { isUnknown, nominal } from '../../model/index.ts';
import type { Quantity } from '../../model/index.ts';
import { factorOf } from '../../comparison/found.ts';
import { lessThan, readLess, shortPercent, thicknessExponentOf } from './values.ts';
import type { Less } from './values.ts';
import { refusedWork } from '../../phrases/refused-work.ts';
import { list } from '../../phrases/list.ts';
import type { Scene } from '../../scene/scene.ts';
import { fixed, plain, readsAsOne, short } from '../../scene/show.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';

/** One measure that is in the way of the cut, of the knife looked at and of the baseline. */
interface Hindrance {
  subject: Quantity;
  baseline: Quantity;
  show(value: number): string;
  term: 'thickness' | 'wedge';
  /** What the careful estimate makes of it, before the number. */
  careful: string;
}

const edge = ({ subjectKnife, baselineKnife, entry }: Scene): Hindrance => ({
  subject: subjectKnife.edgeMm,
  baseline: baselineKnife.edgeMm,
  show: (value) => `${fixed(value, 2)} mm behind the edge`,
  term: 'thickness',
  careful: `The careful estimate raises the inverse to the power ${plain(thicknessExponentOf(entry), 2)}:`,
});
const angle = ({ subjectKnife, baselineKnife }: Scene): Hindrance => ({
  subject: subjectKnife.angleDeg,
  baseline: baselineKnife.angleDeg,
  show: (value) => `an edge angle of ${short(value)}° per side`,
  term: 'wedge',
  careful: 'As a wedge, with its friction, the careful estimate makes it',
});

const worth = ({ faceValue, inverse }: Less): string =>
  `${plain(faceValue)} at face value and ${plain(inverse)} as the inverse`;

/** The hindrance of the two knives as a percentage less, from whichever side it is less, by its readings. */
function hindered(scene: Scene, { subject, baseline, show, term, careful }: Hindrance): string[] {
  const [a, b] = [nominal(subject), nominal(baseline)];
  const [who, whom] = [scene.subject.name, scene.baseline.name];
  if (readsAsOne(a / b))
    return [`${who} and ${whom} both have ${show(a)}: nothing is less, so by every reading the factor is 1.`];
  const less = readLess(lessThan(Math.min(a, b), Math.max(a, b)), thicknessExponentOf(scene.entry));
  const factor = factorOf(scene.row.careful, term);
  const carefully = `${careful} ${plain(factor)} for ${who}, at the middle settings.`;
  const opening = `${who} has ${show(a)}, ${whom} ${show(b)}.`;
  return a < b
    ? [
        `${opening} That is ${shortPercent(less.percent)} less of what is in the way, worth ${worth(less)}.`,
        carefully,
      ]
    : [
        `${opening} That is ${shortPercent((a / b - 1) * 100)} more of what is in the way for ${who}. Seen from there, ${whom} has only ${shortPercent(less.percent)} less: the base is another.`,
        `For ${whom} that is worth ${worth(less)}.`,
        `For ${who} turn the number over: the inverse makes ${plain(1 / less.inverse)}.`,
        carefully,
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
    const { subject, baseline } = scene;
    const helping = (['finish', 'hardness', 'carbide'] as const).filter(
      (id) => !readsAsOne(factorOf(scene.row.careful, id)),
    );
    return [
      refusedWork(scene),
      middles(scene),
      ...hindered(scene, edge(scene)),
      ...hindered(scene, angle(scene)),
      helping.length === 0
        ? `In finish and steel ${subject.name} and ${baseline.name} are alike.`
        : `In ${list(helping)} ${subject.name} and ${baseline.name} differ as well. There more is better: nothing is in the way, and the three readings have no place.`,
    ];
  },
};
