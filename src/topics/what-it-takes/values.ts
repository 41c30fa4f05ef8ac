/** What it would take: one attribute of one knife at a time, until it cuts a multiple as long as another. */

import { compare, ratioCurve, whatItTakes, withAttribute } from '../../model/index.ts';
import type { Answer, Comparison, SolvableAttribute } from '../../model/index.ts';
import { found, ofKnife } from '../../comparison/found.ts';
import type { Scene } from '../../scene/scene.ts';
import { toModel } from '../../comparison/to-model.ts';
import { validate } from '../../comparison/validate.ts';
import type { ComparisonEntry } from '../../comparison/entry.ts';
import { attributeNamed, takesAttributes } from './attributes.ts';
import { inFigures } from '../../scene/show.ts';

/** The question: this knife is to cut so many times as long as that one. */
export interface Asked {
  knife: string;
  against: string;
  /** 1 draws level. */
  target: number;
}

/** What it takes of one attribute. */
export interface Take {
  attribute: SolvableAttribute;
  now: number;
  answer: Answer;
  /** How near the attribute alone comes where the multiple is not in reach; null where the model tells nothing. */
  nearest: { value: number; ratio: number } | null;
  /** Whether a comparison can hold the value. */
  holds: boolean;
}

/** The baseline against the knife looked at, until level. */
export const askedFirst = ({ entry }: Scene): Asked => ({
  knife: entry.baseline,
  against: entry.subject,
  target: 1,
});

/** The knives as entered: what is made equal would move along with the knife that changes. */
export const asEntered = ({ entry, comparison }: Scene): Comparison =>
  entry.madeEqual.length === 0 ? comparison : toModel({ ...entry, madeEqual: [] });

/** How many times as long the knife of the question cuts as the other now, if the factors multiply, at the middle settings. */
export function ratioNow(comparison: Comparison, { knife, against }: Asked): number {
  const { rows } = compare({ ...comparison, baseline: against });
  return ofKnife(rows, knife).multiplied;
}

/**
 * What it takes of every attribute, if the factors multiply, at the middle settings.
 *
 * @throws RangeError for a question the model refuses
 */
export function takesOf(scene: Scene, asked: Asked): Take[] {
  const comparison = asEntered(scene);
  const now = ratioNow(comparison, asked);
  const changing = found(comparison.knives, asked.knife, 'knife');
  return takesAttributes.map(({ attribute, now: read }) => {
    const answer = whatItTakes(comparison, { ...asked, attribute });
    return {
      attribute,
      now: read(changing),
      answer,
      nearest: answer.value === null ? nearestOf(comparison, asked, attribute, now) : null,
      holds: answer.value !== null && validate(putInto(scene, asked, attribute, answer.value)).ok,
    };
  });
}

/** Looked for at so many values: near enough to be said to two figures. */
const looks = 120;

/** The value within a comparison's limits at which the knife comes nearest to a multiple it cannot reach. */
function nearestOf(
  comparison: Comparison,
  { knife, against, target }: Asked,
  attribute: SolvableAttribute,
  now: number,
): Take['nearest'] {
  const { low, high } = attributeNamed(attribute);
  const values = Array.from({ length: looks + 1 }, (_, index) => {
    const share = index / looks;
    return low > 0 ? low * (high / low) ** share : low + (high - low) * share;
  });
  const found = ratioCurve(comparison, { knife, against, attribute, values }).flatMap((ratio, index) =>
    ratio === null ? [] : [{ value: values[index] ?? low, ratio }],
  );
  const off = ({ ratio }: { ratio: number }): number => Math.abs(Math.log(ratio / target));
  const best = found.reduce<Take['nearest']>((a, b) => (a && off(a) <= off(b) ? a : b), null);
  // Where it stands now may be as near as it comes.
  return best && off(best) < Math.abs(Math.log(now / target)) - 1e-3 ? best : null;
}

/** The comparison with the value in the place of the knife's own, exact, whatever was known of it before. */
export function putInto(
  scene: Scene,
  { knife }: Asked,
  attribute: SolvableAttribute,
  value: number,
): ComparisonEntry {
  const { entry } = scene;
  // Six figures give the multiple to a hundred-thousandth, and can still be read.
  const changed = withAttribute(asEntered(scene), knife, attribute, inFigures(value, 6));
  const own = found(changed.knives, knife, 'knife');
  const named = attributeNamed(attribute);
  return {
    ...entry,
    knives: entry.knives.map((one) => (one.id === knife ? named.back(one, own) : one)),
  };
}
