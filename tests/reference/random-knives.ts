import type { Comparison, Knife } from '../../src/model/index.ts';
import { uniformStream } from '../../src/model/statistics/random.ts';
import { middleWork, type PlainKnife, type PlainWork } from './by-hand.ts';

/** Draws between two limits, the same for the same seed. */
export const random = uniformStream;
type Uniform = () => number;

const between = (uniform: Uniform, low: number, high: number): number => low + (high - low) * uniform();
const ratioBetween = (uniform: Uniform, low: number, high: number): number =>
  Math.exp(between(uniform, Math.log(low), Math.log(high)));

/** Any knife the model takes: all forms, with a microbevel or without, soft and hard, poor and rich. */
export function randomKnife(uniform: Uniform): PlainKnife {
  const form = (['flat', 'hollow', 'convex'] as const)[Math.floor(3 * uniform())] ?? 'flat';
  const angle = between(uniform, 4, 40);
  const spine = between(uniform, 1.5, 6);
  const height = between(uniform, 5, 40);
  const edge = ratioBetween(uniform, 0.05, Math.min(2, spine));
  // A hollow must not grind the blade through: its sagitta, about H²/8R, stays well below half the edge.
  const least =
    form === 'hollow' ? Math.max(1.01 * (height / 2), height ** 2 / (3 * edge)) : 1.01 * (height / 2);
  const kinds = ['Fe3C', 'CrC', 'CrVC', 'MC', 'M6C', 'MN', 'CrN'];
  const chosen = kinds.filter(() => uniform() < 0.25);
  return {
    angle,
    ...(uniform() < 0.3 ? { microbevel: between(uniform, angle, 45) } : {}),
    edge,
    um: ratioBetween(uniform, 0.5, 300),
    form,
    spine,
    height,
    ...(form === 'flat' ? {} : { radius: Math.min(1e5, least * ratioBetween(uniform, 1, 20)) }),
    hrc: between(uniform, 40, 68),
    carbide: Object.fromEntries(chosen.map((kind) => [kind, between(uniform, 0, 8)])),
  };
}

/** Any work: every parameter over its stated range. */
export const randomWork = (uniform: Uniform): PlainWork => ({
  friction: between(uniform, 0, 0.6),
  slicePush: uniform() < 0.3 ? 0 : between(uniform, 0, 10),
  depth: between(uniform, 1, 20),
  angleExponent: between(uniform, 0.83, 2.4),
  thicknessExponent: between(uniform, 0.2, 1),
  finishExponent: between(uniform, 0, 0.7),
  hardnessExponent: between(uniform, 0.6, 2),
  lifeExponent: between(uniform, 0.5, 2.2),
  wedgingShare: between(uniform, 0.1, 0.6),
  limitPower: between(uniform, 1, 2),
});

/** The knife as the model takes it. */
export const knifeOf = (id: string, plain: PlainKnife): Knife => ({
  id,
  angleDeg: plain.angle,
  ...(plain.microbevel === undefined ? {} : { microbevelAngleDeg: plain.microbevel }),
  edgeMm: plain.edge,
  finish: { um: plain.um },
  grind: {
    form: plain.form,
    spineMm: plain.spine,
    heightMm: plain.height,
    ...(plain.radius === undefined ? {} : { radiusMm: plain.radius }),
  },
  hrc: plain.hrc,
  carbideVolPercent: plain.carbide,
});

/** The work as a comparison takes it. */
export const workOf = (work: PlainWork = middleWork): Omit<Comparison, 'knives' | 'baseline'> => ({
  friction: work.friction,
  slicePush: work.slicePush,
  contactDepthMm: work.depth,
  assumptions: {
    angleExponent: work.angleExponent,
    thicknessExponent: work.thicknessExponent,
    finishExponent: work.finishExponent,
    hardnessExponent: work.hardnessExponent,
    lifeExponent: work.lifeExponent,
    wedgingShare: work.wedgingShare,
    limitPower: work.limitPower,
  },
});

/** Two knives at one work, both as the model takes them and plain. */
export function randomPair(uniform: Uniform) {
  const [a, b, work] = [randomKnife(uniform), randomKnife(uniform), randomWork(uniform)];
  const comparison: Comparison = {
    knives: [knifeOf('a', a), knifeOf('b', b)],
    baseline: 'b',
    ...workOf(work),
  };
  return { comparison, a, b, work };
}
