import { isUnknown, nominal } from '../model/index.ts';
import type { Quantity } from '../model/index.ts';
import { lessThan, readLess, shortPercent, thicknessExponentOf } from './less.ts';
import type { Less } from './less.ts';
import { refusedWork } from './refused-work.ts';
import { changes, leftOut, list } from './rows.ts';
import type { Scene } from './scene.ts';
import { brief, fixed, plain, times } from './show.ts';
import type { WordsOf } from './words.ts';

/** One measure that is in the way of the cut, of the knife looked at and of the baseline. */
interface Hindrance {
  name: string;
  subject: Quantity;
  baseline: Quantity;
  show(value: number): string;
}

const degrees = (value: number): string => `${brief(Number(value.toPrecision(3)))}° per side`;
const millimetres = (value: number): string => `${fixed(value, 2)} mm`;

const edge = ({ subjectKnife, baselineKnife }: Scene): Hindrance => ({
  name: 'behind the edge',
  subject: subjectKnife.edgeMm,
  baseline: baselineKnife.edgeMm,
  show: millimetres,
});
const angle = ({ subjectKnife, baselineKnife }: Scene): Hindrance => ({
  name: 'of edge angle',
  subject: subjectKnife.angleDeg,
  baseline: baselineKnife.angleDeg,
  show: degrees,
});

const readings = ({ faceValue, inverse, damped, exponent }: Less): string =>
  `${times(faceValue)} at face value, ${times(inverse)} as the inverse, and ${times(damped)} to the power ${plain(exponent, 2)}`;

/** The hindrance of the two knives as a percentage less, from whichever side it is less, by the three readings. */
function hindered(scene: Scene, { name, subject, baseline, show }: Hindrance, exponent: number): string[] {
  const [a, b] = [nominal(subject), nominal(baseline)];
  const [who, whom] = [scene.subject.name, scene.baseline.name];
  if (!changes({ factor: a / b }))
    return [
      `${who} and ${whom} both have ${show(a)} ${name}: nothing is less, and by every reading it is worth ${times(1)}.`,
    ];
  const less = readLess(lessThan(Math.min(a, b), Math.max(a, b)), exponent);
  const opening = `${who} has ${show(a)} ${name}, ${whom} ${show(b)}.`;
  return a < b
    ? [
        `${opening} That is ${shortPercent(less.percent)} less of what is in the way, worth ${readings(less)}, for ${who}.`,
      ]
    : [
        `${opening} That is ${shortPercent((a / b - 1) * 100)} more of what is in the way for ${who}, but seen from there ${whom} has only ${shortPercent(less.percent)} less: the base is another.`,
        `It is worth ${readings(less)}, for ${whom}; for ${who} turn the number over, and the inverse makes ${times(1 / less.inverse)}.`,
      ];
}

const factorOf = (scene: Scene, id: string): number | null =>
  scene.row.close.terms.find((term) => term.id === id)?.factor ?? null;

/** What of an attribute the close reading makes, where it is the damped reading and where it is not. */
const closely = (scene: Scene, id: string, what: string): string => {
  const factor = factorOf(scene, id);
  return factor === null ? '' : `The close reading ${what}: ${times(factor)} for ${scene.subject.name}.`;
};

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
  'less-angle': (scene) => [
    ...hindered(scene, angle(scene), thicknessExponentOf(scene.entry)).slice(0, 1),
    closely(scene, 'wedge', 'takes friction off the wedge'),
  ],

  /** With a visitor's own knives: what is less, what that is worth, and where these readings have no place. */
  less: (scene) => {
    const exponent = thicknessExponentOf(scene.entry);
    const [thin, slim] = [edge(scene), angle(scene)];
    const same = [thin, slim].every(
      ({ subject, baseline }) => !changes({ factor: nominal(subject) / nominal(baseline) }),
    );
    const helping = (['finish', 'hardness', 'carbide'] as const).filter((id) => {
      const factor = factorOf(scene, id);
      return factor !== null && changes({ factor });
    });
    const missing = leftOut(scene.row.close);
    return [
      refusedWork(scene),
      middles(scene),
      ...hindered(scene, thin, exponent),
      same ? '' : closely(scene, 'thickness', 'raises the inverse of the thickness to that power'),
      ...hindered(scene, slim, exponent),
      same
        ? ''
        : closely(
            scene,
            'wedge',
            'does neither with the angle: as a wedge it goes by tangents, with friction in them',
          ),
      helping.length === 0
        ? `In finish and steel ${scene.subject.name} and ${scene.baseline.name} are alike${missing.length > 0 ? `, as far as they can be computed (${list(missing)} left out)` : ''}.`
        : `In ${list(helping)} ${scene.subject.name} and ${scene.baseline.name} differ as well. But there more is better: nothing is in the way, nothing has to be turned over, and the three readings have no place.`,
    ];
  },
};
