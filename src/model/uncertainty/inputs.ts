/** Every input of a comparison that a run draws, and how it scatters. */

import { refuse } from '../check.ts';
import { regression } from '../steel/carbide.ts';
import { isUnknown, measures, parameters, rangeOf } from '../quantities.ts';
import { NORMAL_95, spreadOf, type Limits, type Spread } from './sampling.ts';
import type { CarbideKind, Knife, Comparison, Quantity } from '../types.ts';

/** One input; one known exactly has a spread of no width. */
export interface Input {
  /** Id of the knife it belongs to, or null where all knives share one sample. */
  knife: string | null;
  /** The name it is reported under, such as `angleDeg`, `carbideVolPercent.MC` or `gauge.hrc`. */
  name: string;
  spread: Spread;
}

export const sharedNames = [
  'friction',
  'angleExponent',
  'thicknessExponent',
  'finishExponent',
  'hardnessExponent',
  'residualCv',
] as const;

/** What one gauge measures: a bias of its own goes into each of these of every knife. */
export const gaugeNames = ['angleDeg', 'edgeMm', 'hrc'] as const;
export type GaugeName = (typeof gaugeNames)[number];

const anything: Limits = { low: -Infinity, high: Infinity };

/** The gauge a measure is read from, or null where it has none or was never measured. */
export function gaugeOf(comparison: Comparison, name: string, quantity: Quantity): GaugeName | null {
  const gauge = gaugeNames.find((of) => name === of || (name === 'microbevelAngleDeg' && of === 'angleDeg'));
  if (gauge === undefined || isUnknown(quantity) || (comparison.gaugeBias?.[gauge] ?? 0) === 0) return null;
  return gauge;
}

/** What a value may be for the model to take it; hardness stays where the regression, if it speaks, is used. */
export const hardnessLimits = (regressionSpeaks: boolean): Limits =>
  regressionSpeaks ? regression.hrc : measures.hrc;

/** All inputs, those of the knives first. */
export function inputsOf(comparison: Comparison, regressionSpeaks: boolean): Input[] {
  const inputs: Input[] = [];
  for (const knife of comparison.knives) {
    for (const [name, quantity, allowed] of measuresOf(knife, regressionSpeaks)) {
      // Under a gauge's bias it is the sum that must be allowed, not the reading.
      const limits = gaugeOf(comparison, name, quantity) === null ? allowed : anything;
      inputs.push({ knife: knife.id, name, spread: spreadOf(quantity, limits) });
    }
  }
  const { default: depthMm, accepts } = parameters.contactDepthMm;
  inputs.push({
    knife: null,
    name: 'contactDepthMm',
    spread: spreadOf(comparison.contactDepthMm ?? depthMm, accepts),
  });
  for (const name of sharedNames) {
    const given = name === 'friction' ? comparison.friction : comparison.assumptions?.[name];
    const { default: middle, low, high, accepts: allowed } = parameters[name];
    const spread: Spread =
      given === undefined
        ? { shape: 'triangular', low, middle, high, allowed }
        : spreadOf(given, allowed, 'triangular');
    inputs.push({ knife: null, name, spread });
  }
  for (const name of gaugeNames) {
    const plusMinus = comparison.gaugeBias?.[name] ?? 0;
    if (!(plusMinus >= 0 && plusMinus <= measures[name].high))
      refuse(
        `gauge bias of ${measures[name].name} ± ${String(plusMinus)}${measures[name].unit} is not between 0 and ${measures[name].high}${measures[name].unit}`,
      );
    const spread = spreadOf({ value: 0, plusMinus }, anything);
    if (plusMinus > 0) inputs.push({ knife: null, name: `gauge.${name}`, spread });
  }
  return [...inputs, ...residualsOf(comparison, regressionSpeaks)];
}

/** The residual belongs to the steel: one standard normal draw for every steel, where the regression speaks at all. */
function residualsOf(comparison: Comparison, regressionSpeaks: boolean): Input[] {
  const cv = comparison.assumptions?.residualCv ?? parameters.residualCv.default;
  const { low, high } = rangeOf(cv);
  if (!regressionSpeaks || (low === 0 && high === 0)) return [];
  const spread = spreadOf({ value: 0, plusMinus: NORMAL_95, shape: 'normal' }, anything);
  return [...new Set(steelOwners(comparison))].map((knife) => ({ knife, name: 'residual', spread }));
}

/** For every knife the first one of the same steel: of the same entries for hardness and carbide. */
export function steelOwners({ knives }: Comparison): string[] {
  const owners = new Map<string, string>();
  return knives.map((knife) => {
    const carbides = carbidesOf(knife).filter(([, volume]) => volume !== 0);
    const steel = JSON.stringify([knife.hrc, carbides.sort(([a], [b]) => (a < b ? -1 : 1))]);
    const owner = owners.get(steel) ?? knife.id;
    owners.set(steel, owner);
    return owner;
  });
}

type Measured = readonly [name: string, quantity: Quantity, allowed: Limits];

function measuresOf(knife: Knife, regressionSpeaks: boolean): Measured[] {
  const { microbevelAngleDeg, finish, grind } = knife;
  return [
    ['angleDeg', knife.angleDeg, measures.angleDeg],
    ...(microbevelAngleDeg === undefined
      ? []
      : [['microbevelAngleDeg', microbevelAngleDeg, measures.microbevelAngleDeg] as const]),
    ['edgeMm', knife.edgeMm, measures.edgeMm],
    ['spineMm', grind.spineMm, measures.spineMm],
    ['heightMm', grind.heightMm, measures.heightMm],
    ...(grind.form === 'flat' || grind.radiusMm === undefined
      ? []
      : [['radiusMm', grind.radiusMm, measures.radiusMm] as const]),
    ...('um' in finish ? [['finish', finish.um, measures.finishUm] as const] : []),
    ['hrc', knife.hrc, hardnessLimits(regressionSpeaks)],
    ...carbidesOf(knife).map(([kind, volume]): Measured => [
      `carbideVolPercent.${kind}`,
      volume,
      measures.carbideVolPercent,
    ]),
  ];
}

/** The kinds of carbide a knife's entry names, with their volumes. */
export const carbidesOf = (knife: Knife): [CarbideKind, Quantity][] =>
  Object.entries(knife.carbideVolPercent) as [CarbideKind, Quantity][];
