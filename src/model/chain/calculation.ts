/** What the careful estimate computes a knife from, be it one value for each measure or one a sample. */

import { carbideKinds, regression } from '../steel/carbide.ts';
import { grainSizeUm } from '../finish/finish.ts';
import { exactGrind, measures, nominal, parameters } from '../quantities.ts';
import type { ParameterId } from '../quantities.ts';
import type { CarbideKind, Comparison, Knife, Quantity } from '../types.ts';
import {
  apexExponents,
  grinds,
  grindTangents,
  logCards,
  logs,
  logTangents,
  microbevelSines,
  products,
  sines,
  wedges,
  limited,
} from './loops.ts';
import { weightedSum, type Values } from './values.ts';

/** The parameters a comparison states under `assumptions`. */
export const assumedIds = [
  'angleExponent',
  'thicknessExponent',
  'finishExponent',
  'hardnessExponent',
  'lifeExponent',
  'wedgingShare',
  'limitPower',
  'residualCv',
] as const satisfies readonly ParameterId[];

/** The parameters that are one value for all knives. */
export const sharedIds = ['contactDepthMm', 'friction', ...assumedIds] as const;
export type SharedId = (typeof sharedIds)[number];

/** What a comparison states of a parameter; undefined where the model's own stands. At fixed strokes a life is a card. */
export function stated(comparison: Comparison, id: SharedId): Quantity | undefined {
  if (id === 'lifeExponent' && comparison.outcome === 'fixed-strokes') return 1;
  return id === 'contactDepthMm' || id === 'friction' ? comparison[id] : comparison.assumptions?.[id];
}

/**
 * A knife with its values at hand. `part` keeps what is made under a name for as long as what it is made of stays, so
 * that moving one measure computes only what depends on it.
 */
export interface Calculation {
  knife: Knife;
  slicePush: number;
  /** The value of a measure, such as `angleDeg`, `finish` (µm) or `carbideVolPercent.MC`. */
  measured: (name: string) => Values;
  /** How far its steel lies off the published line, in standard deviations; 0 at the middle values. */
  residual: Values;
  shared: (id: SharedId) => Values;
  part: (name: string, of: readonly unknown[], make: (old?: Values) => Values) => Values;
  /** As `part`, for what is the same for all knives. */
  common: (name: string, of: readonly unknown[], make: (old?: Values) => Values) => Values;
}

/** Fixed: every knife is compared with this one, so that ratios agree whichever knife is the baseline (assumed). */
export const ordinaryBlade: Knife = {
  id: 'ordinary blade',
  angleDeg: 20,
  edgeMm: 0.4,
  finish: { um: 15 },
  grind: { form: 'flat', spineMm: 3, heightMm: 14 },
  hrc: 58,
  carbideVolPercent: {},
};

/** The measures of a knife by name, each at its middle. */
export function middleMeasures(knife: Knife): Record<string, number> {
  const { microbevelAngleDeg, finish } = knife;
  const { spineMm, heightMm, radiusMm } = exactGrind(knife.grind);
  return {
    angleDeg: nominal(knife.angleDeg),
    ...(microbevelAngleDeg === undefined ? {} : { microbevelAngleDeg: nominal(microbevelAngleDeg) }),
    edgeMm: nominal(knife.edgeMm),
    finish: 'um' in finish ? nominal(finish.um) : grainSizeUm(finish),
    spineMm,
    heightMm,
    ...(radiusMm === undefined ? {} : { radiusMm }),
    hrc: nominal(knife.hrc),
    ...Object.fromEntries(
      carbidesOf(knife).map((kind) => [
        `carbideVolPercent.${kind}`,
        nominal(knife.carbideVolPercent[kind] ?? 0),
      ]),
    ),
  };
}

/** The kinds of carbide a knife's entry names. */
export const carbidesOf = (knife: Knife): CarbideKind[] =>
  carbideKinds.filter((kind) => knife.carbideVolPercent[kind] !== undefined);

/** The middle values of what all knives share. */
export const middleShared = (comparison: Comparison): Record<SharedId, number> =>
  Object.fromEntries(
    sharedIds.map((id) => [id, nominal(stated(comparison, id) ?? parameters[id].default)]),
  ) as Record<SharedId, number>;

/** A knife at its middle values, or with some of them changed. */
export function middleCalculation(
  comparison: Comparison,
  knife: Knife,
  shared: Record<SharedId, number> = middleShared(comparison),
): Calculation {
  const values = middleMeasures(knife);
  // One knife at one value each: nothing is asked for often enough to be worth keeping.
  const make = (_name: string, _of: readonly unknown[], of: () => Values): Values => of();
  return {
    knife,
    slicePush: comparison.slicePush ?? 0,
    measured: (name) => values[name] ?? 0,
    residual: 0,
    shared: (id) => shared[id],
    part: make,
    common: make,
  };
}

/** The same knife with another value for one measure at its middle, such as the ordinary blade's. */
export const ordinaryOf = (of: Calculation): Calculation => {
  const values = middleMeasures(ordinaryBlade);
  return { ...of, knife: ordinaryBlade, measured: (name) => values[name] ?? 0, residual: 0, part: of.common };
};

const bevelSine = (k: Calculation): Values => {
  const angle = k.measured('angleDeg');
  return k.part('sine', [angle], (old) => sines(angle, old));
};

/** ln tan(θ + φ) of the bevel: what it takes to drive it. */
export function lnBevelForce(k: Calculation): Values {
  const [sine, friction] = [bevelSine(k), k.shared('friction')];
  return k.part('bevel force', [sine, friction, k.slicePush], (old) =>
    wedges(sine, friction, k.slicePush, old),
  );
}

/** ln tan θ of the bevel. */
export function lnBevelTangent(k: Calculation): Values {
  const sine = bevelSine(k);
  return k.part('ln bevel tangent', [sine], (old) => logTangents(sine, old));
}

/** The sine of the angle at the very apex: the microbevel's where there is one. */
function apexSine(k: Calculation): Values {
  if (k.knife.microbevelAngleDeg === undefined) return bevelSine(k);
  const [angle, apex] = [k.measured('angleDeg'), k.measured('microbevelAngleDeg')];
  return k.part('apex sine', [angle, apex], (old) => microbevelSines(angle, apex, old));
}

/** ln sin θ at the apex. */
export function lnApexSine(k: Calculation): Values {
  const sine = apexSine(k);
  return k.part('ln apex sine', [sine], (old) => logs(sine, old));
}

/** e · ln sin θ at the apex. */
export function lnApex(k: Calculation): Values {
  const total = k.shared('angleExponent');
  const exponent = k.common('apex exponent', [total], (old) => apexExponents(total, old));
  const log = lnApexSine(k);
  return k.part('apex', [log, exponent], (old) => products(log, exponent, old));
}

/** ln tan θ at the apex. */
export function lnApexTangent(k: Calculation): Values {
  const sine = apexSine(k);
  return k.part('ln apex tangent', [sine], (old) => logTangents(sine, old));
}

/** e · ln t, the thickness behind the edge in mm. */
export function lnThickness(k: Calculation): Values {
  const [edge, exponent] = [k.measured('edgeMm'), k.shared('thicknessExponent')];
  const log = k.part('ln edge', [edge], (old) => logs(edge, old));
  return k.part('thickness', [log, exponent], (old) => products(log, exponent, old));
}

/** ln tan(α + φ) of the primary grind over the depth of contact. */
export function lnGrindForce(k: Calculation): Values {
  const { form, radiusMm } = k.knife.grind;
  const [edge, spine, height] = [k.measured('edgeMm'), k.measured('spineMm'), k.measured('heightMm')];
  const radius = radiusMm === undefined ? null : k.measured('radiusMm');
  const depth = k.shared('contactDepthMm');
  const flank = k.part('flank', [edge, form, spine, height, radius, depth], (old) =>
    grindTangents({ form, edge, spine, height, radius, depth }, old),
  );
  const friction = k.shared('friction');
  return k.part('grind', [flank, friction, k.slicePush], (old) => grinds(flank, friction, k.slicePush, old));
}

/** e · ln d, the size of the abrasive's grains in µm. */
export function lnFinish(k: Calculation): Values {
  const [size, exponent] = [k.measured('finish'), k.shared('finishExponent')];
  const log = k.part('ln size', [size], (old) => logs(size, old));
  return k.part('finish', [log, exponent], (old) => products(log, exponent, old));
}

/** What its carbide adds in the published regression, mm of card. */
export function carbideMmOf(k: Calculation): Values {
  const kinds = carbidesOf(k.knife);
  const volumes = kinds.map((kind) => k.measured(`carbideVolPercent.${kind}`));
  const sum = k.part('carbide', [...kinds, ...volumes], (old) =>
    weightedSum(
      kinds.map((kind, i) => [regression.perVolPercent[kind], volumes[i] ?? 0]),
      old,
    ),
  );
  if (kinds.length < 2) return sum;
  const total = k.part('carbide in all', volumes, (old) =>
    weightedSum(
      volumes.map((volume) => [1, volume]),
      old,
    ),
  );
  return k.part('carbide within 60', [sum, total], (old) =>
    limited(sum, total, measures.carbideVolPercent.high, old),
  );
}

/** ln of card for a hardness and a carbide addition, to the power that makes a life of it. */
export function lnLife(k: Calculation, name: string, hrc: Values, carbideMm: Values): Values {
  const beyond = k.shared('hardnessExponent');
  const card = k.part(`${name} card`, [hrc, carbideMm, beyond], (old) =>
    logCards(hrc, carbideMm, beyond, old),
  );
  const power = k.shared('lifeExponent');
  return k.part(`${name} life`, [card, power], (old) => products(card, power, old));
}

/** p times how far the steel lies off the published line, in the logarithm. */
export function lnResidual(k: Calculation): Values {
  if (k.residual === 0) return 0;
  const [score, cv, power] = [k.residual, k.shared('residualCv'), k.shared('lifeExponent')];
  const spread = k.common('residual spread', [cv, power], (old) => products(cv, power, old));
  return k.part('residual', [score, spread], (old) => products(score, spread, old));
}

/** ln of the life of the steel: hardness and carbide together. */
export function lnSteel(k: Calculation): Values {
  const life = lnLife(k, 'own', k.measured('hrc'), carbideMmOf(k));
  const residual = lnResidual(k);
  if (residual === 0) return life;
  return k.part('steel', [life, residual], (old) =>
    weightedSum(
      [
        [1, life],
        [1, residual],
      ],
      old,
    ),
  );
}
