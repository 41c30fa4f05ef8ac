import { grainSizeUm, isUnknown, nominal } from '../../model/index.ts';
import type { Finish, Knife, Quantity } from '../../model/index.ts';
import { finishText } from '../../phrases/measures.ts';
import type { WordsOf } from '../../phrases/sentences-of.ts';
import { short, units } from '../../scene/show.ts';
import type { Scene } from '../../scene/scene.ts';

/** A measure in a cell: “24°”, or the range it lies in. */
const cell = (value: Quantity, unit: string): string =>
  isUnknown(value)
    ? `${short(value.low)}–${short(value.high)}${unit}, not known`
    : `${short(nominal(value))}${unit}`;

/** How coarse a finish is, by the median size of its grains, µm; common practice, no source. */
const coarseness = (grainUm: number): string =>
  grainUm >= 40 ? 'coarse' : grainUm >= 20 ? 'medium' : grainUm >= 5 ? 'fine' : 'very fine';

const finishCell = (finish: Finish): string => {
  const grain = 'um' in finish ? finish.um : grainSizeUm(finish);
  return isUnknown(grain) ? finishText(finish) : `${coarseness(nominal(grain))}, ${finishText(finish)}`;
};

/** The three measures that say most of an edge, each in a cell, by its name. */
const cells: Readonly<Record<string, (knife: Knife) => string>> = {
  angle: ({ angleDeg }) => cell(angleDeg, units.deg),
  edge: ({ edgeMm }) => cell(edgeMm, units.mm),
  finish: ({ finish }) => finishCell(finish),
};

const sides = {
  baseline: ({ baseline, baselineKnife }: Scene) => ({ name: baseline.name, knife: baselineKnife }),
  subject: ({ subject, subjectKnife }: Scene) => ({ name: subject.name, knife: subjectKnife }),
};

/** Names and measures of the two knives, a cell each: `short-angle-subject`, `short-name-baseline`. */
export const measureWords: Record<string, WordsOf> = Object.fromEntries(
  Object.entries(sides).flatMap(([side, of]): [string, WordsOf][] => [
    [`short-name-${side}`, (scene) => [of(scene).name]],
    ...Object.entries(cells).map(([name, says]): [string, WordsOf] => [
      `short-${name}-${side}`,
      (scene) => [says(of(scene).knife)],
    ]),
  ]),
);
