/** Every input of a comparison that a run draws, and how it scatters. */

import { refuse } from '../check.ts';
import { carbidesOf, sharedIds, stated, type SharedId } from '../chain/calculation.ts';
import { regression } from '../steel/carbide.ts';
import { isUnknown, measures, nominal, parameters, rangeOf } from '../quantities.ts';
import { NORMAL_95, spreadOf, type Limits, type Spread } from './sampling.ts';
import type { Comparison, Knife, Quantity } from '../types.ts';

/** One input; one known exactly has a spread of no width. */
export interface Input {
  /** Id of the knife it belongs to, or null where all knives share one sample. */
  knife: string | null;
  /** The name it is reported under, such as `angleDeg`, `carbideVolPercent.MC` or `gauge.hrc`. */
  name: string;
  spread: Spread;
}

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

/** All inputs, those of the knives first. */
export function inputsOf(comparison: Comparison): Input[] {
  const inputs: Input[] = [];
  for (const knife of comparison.knives) {
    for (const [name, quantity, allowed] of measuresOf(knife)) {
      // Under a gauge's bias it is the sum that must be allowed, not the reading.
      const limits = gaugeOf(comparison, name, quantity) === null ? allowed : anything;
      inputs.push({ knife: knife.id, name, spread: spreadOf(quantity, limits) });
    }
  }
  for (const name of sharedIds) inputs.push({ knife: null, name, spread: sharedSpread(comparison, name) });
  for (const name of gaugeNames) {
    const plusMinus = comparison.gaugeBias?.[name] ?? 0;
    if (!(plusMinus >= 0 && plusMinus <= measures[name].high))
      refuse(
        `gauge bias of ${measures[name].name} ± ${String(plusMinus)}${measures[name].unit} is not between 0 and ${measures[name].high}${measures[name].unit}`,
      );
    const spread = spreadOf({ value: 0, plusMinus }, anything);
    if (plusMinus > 0) inputs.push({ knife: null, name: `gauge.${name}`, spread });
  }
  return [...inputs, ...residualsOf(comparison), { knife: null, name: 'structure', spread: evenly }];
}

/** The structure is drawn like any other input: a number between 0 and 1, of which each structure takes its share. */
const evenly: Spread = { shape: 'uniform', low: 0, middle: 0.5, high: 1, allowed: anything };

/** How a parameter that all knives share scatters. */
function sharedSpread(comparison: Comparison, name: SharedId): Spread {
  const { default: middle, low, high, accepts: allowed, ...entry } = parameters[name];
  const given = stated(comparison, name);
  const fixed = (value: number): Spread => spreadOf(value, allowed);
  if (name === 'contactDepthMm') return spreadOf(given ?? middle, allowed);
  const shape = 'shape' in entry ? entry.shape : 'triangular';
  // How far steels lie off the line is one size unless a comparison says how well it is known.
  if (name === 'residualCv' && given === undefined) return fixed(middle);
  // Where no knife leaves the published line, what holds beyond it moves nothing.
  if (name === 'hardnessExponent' && !comparison.knives.some(mayLeaveTheLine(comparison)))
    return fixed(given === undefined ? middle : nominal(given));
  return given === undefined ? { shape, low, middle, high, allowed } : spreadOf(given, allowed, shape);
}

/** Whether a knife may be softer or harder than the published line covers. */
const mayLeaveTheLine =
  ({ gaugeBias }: Comparison) =>
  ({ hrc }: Knife): boolean => {
    const { low, high } = rangeOf(hrc);
    const bias = gaugeBias?.hrc ?? 0;
    const reach = typeof hrc === 'object' && 'shape' in hrc && hrc.shape === 'normal' ? (high - low) * 3 : 0;
    return low - bias - reach < regression.hrc.low || high + bias + reach > regression.hrc.high;
  };

/** The residual belongs to the steel: one standard normal draw for every steel. */
function residualsOf(comparison: Comparison): Input[] {
  const { low, high } = rangeOf(comparison.assumptions?.residualCv ?? parameters.residualCv.default);
  if (low === 0 && high === 0) return [];
  const spread = spreadOf({ value: 0, plusMinus: NORMAL_95, shape: 'normal' }, anything);
  return [...new Set(steelOwners(comparison))].map((knife) => ({ knife, name: 'residual', spread }));
}

/** For every knife the first one of the same steel: of the same entries for hardness and carbide. */
export function steelOwners({ knives }: Comparison): string[] {
  const owners = new Map<string, string>();
  return knives.map((knife) => {
    const carbides = carbidesOf(knife)
      .map((kind) => [kind, knife.carbideVolPercent[kind]] as const)
      .filter(([, volume]) => volume !== 0);
    const steel = JSON.stringify([knife.hrc, carbides]);
    const owner = owners.get(steel) ?? knife.id;
    owners.set(steel, owner);
    return owner;
  });
}

type Measured = readonly [name: string, quantity: Quantity, allowed: Limits];

function measuresOf(knife: Knife): Measured[] {
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
    ['hrc', knife.hrc, measures.hrc],
    ...carbidesOf(knife).map((kind): Measured => [
      `carbideVolPercent.${kind}`,
      knife.carbideVolPercent[kind] ?? 0,
      measures.carbideVolPercent,
    ]),
  ];
}
