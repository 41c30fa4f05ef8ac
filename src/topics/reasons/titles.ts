import { howLong } from '../../phrases/as-long-as.ts';
import { factorName } from '../../phrases/factor-names.ts';
import { plain, readsAsOne, short } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';
import { carbidePercent, grainUm } from './measures.ts';
import { biggestReasons, isNamed } from './reasons.ts';
import type { NamedReason, Reason } from './reasons.ts';

/** How a factor pulls: 1 up, −1 down, 0 where it reads as one. */
export const pull = (factor: number | undefined): -1 | 0 | 1 =>
  factor === undefined || readsAsOne(factor) ? 0 : factor > 1 ? 1 : -1;

/** A ratio in two figures, or in three where two would say that there is no difference. */
export const ratioSaid = (factor: number): string =>
  Number(plain(factor, 2)) === 1 ? plain(factor, 3) : short(factor, 2);

/** A reason in a few words, alone and before “wins some back”. */
interface Name {
  alone: string;
  before: string;
}
const name = (alone: string, before = alone): Name => ({ alone, before });

const behind = (how: string): Name =>
  name(`${how} behind the edge`, `Being ${how.toLowerCase()} behind the edge`);

/** Bevel and apex may pull apart: then the one that wins gives its name. */
function angleName({ factor, parts }: Reason): Name {
  const [wedge, apex] = [pull(parts['wedge']), pull(parts['apex'])];
  const way = factor > 1 ? 1 : -1;
  const what = wedge === apex ? 'angle' : wedge === way ? 'bevel' : 'apex';
  return name(`A ${way > 0 ? 'slimmer' : 'wider'} ${what}`);
}

/** Whether the carbide of the knife looked at is more, less or as much. */
export const moreCarbide = ({ subjectKnife, baselineKnife }: Scene): number =>
  Math.sign(carbidePercent(subjectKnife) - carbidePercent(baselineKnife));

function steelName({ factor, parts }: Reason, scene: Scene): Name {
  const [hardness, carbide] = [pull(parts['hardness']), pull(parts['carbide'])];
  const way = factor > 1 ? 1 : -1;
  if (hardness === way && carbide === way)
    return name(way > 0 ? 'A better steel' : 'A steel that wears faster');
  if (hardness === way) return name(way > 0 ? 'A harder steel' : 'A softer steel');
  if (carbide === way && moreCarbide(scene) === way)
    return name(`A steel with ${way > 0 ? 'more' : 'less'} carbide`);
  return name(way > 0 ? 'A better steel' : 'A steel that wears faster');
}

const names: Record<NamedReason, (reason: Reason, scene: Scene) => Name> = {
  angle: angleName,
  edge: ({ factor }) => behind(factor > 1 ? 'Thinner' : 'Thicker'),
  grind: ({ factor }) => name(`A ${factor > 1 ? 'slimmer' : 'wider'} grind`),
  finish: (_reason, { subjectKnife, baselineKnife }) =>
    name(`A ${grainUm(subjectKnife) > grainUm(baselineKnife) ? 'coarser' : 'finer'} finish`),
  steel: steelName,
};

/** A reason in a few words, with what it makes: a loss takes back what bigger ones give, a gain wins it back. */
export function titleOf(reason: Reason, scene: Scene): string {
  const { id, factor } = reason;
  const { alone, before } = isNamed(id) ? names[id](reason, scene) : name(factorName(id).name);
  const total = pull(scene.row.careful.multiplied);
  const head =
    total === 0 || total === pull(factor) || biggestReasons(scene)[0]?.id === id
      ? alone
      : `${before} ${factor > 1 ? 'wins' : 'takes'} some back`;
  return `${head}: ${howLong(factor)}`;
}
