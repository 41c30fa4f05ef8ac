/** The terms of the close reading over whole runs: ln of what a knife is worth, term by term. */

import { cardLineMm, regression } from './carbide.ts';
import { grainSizeUm } from './finish.ts';
import { edgeAngleRange, grindHalfAngleDeg } from './geometry.ts';
import { vickersFromRockwellC } from './hardness.ts';
import { carbidesOf, gaugeOf, hardnessLimits, steelOwners } from './inputs.ts';
import type { Memory } from './memory.ts';
import { measures, parameters } from './quantities.ts';
import type { Limits } from './sampling.ts';
import { apexExponent } from './terms.ts';
import type { Grind, Knife, LineUp, Quantity } from './types.ts';
import { map, map2, weightedSum, type Values } from './values.ts';

/**
 * What the knives of a line-up are worth in every sample. A ratio is the difference of two worths: every term of the
 * close reading but hardness and carbide is one knife's part over another's, and the product of those two is
 * T(Ha, Ca)/T(Hb, Cb).
 */
export interface Worths {
  /** ln worth by knife, in the line-up's order; not a number in samples the model refuses. */
  knives: Values[];
  /** The logarithm of the regression's residual in it, by knife. */
  residuals: Values[];
  /** ln of the least card any pair of the knives would cut over the least the regression is used from. */
  margin: Values;
}

type Read = (knife: string | null, name: string) => Values;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * The worths of a line-up's knives from the values of its inputs. What `memory` holds is taken again where nothing it
 * hangs on has changed, so that moving one knife's angle computes only the wedge and the apex of that knife.
 *
 * @param lineUp as `compare` accepts it
 * @param regressionSpeaks decided once, at the middle values, for all samples
 * @param read the values of an input, all of one length or a number each
 */
export function worthsOf(lineUp: LineUp, regressionSpeaks: boolean, read: Read, memory: Memory): Worths {
  const owners = steelOwners(lineUp);
  const laid = lineUp.knives.map((knife, k) =>
    layKnife(lineUp, knife, owners[k] ?? knife.id, regressionSpeaks, read, memory),
  );
  const hardnesses = laid.map(({ hrc }) => hrc);
  const carbides = laid.map(({ carbideMm }) => carbideMm);
  const margin = regressionSpeaks
    ? memory.keep<Values>('margin', [...hardnesses, ...carbides], (old) =>
        map2(
          (softest, plainest) => Math.log(cardLineMm(softest, 30, plainest) / regression.leastMm),
          hardnesses.reduce((least, hrc) => map2(Math.min, least, hrc)),
          carbides.reduce((least, mm) => map2(Math.min, least, mm)),
          old,
        ),
      )
    : 0;
  return { knives: laid.map(({ worth }) => worth), residuals: laid.map(({ residual }) => residual), margin };
}

function layKnife(
  lineUp: LineUp,
  knife: Knife,
  steelOwner: string,
  regressionSpeaks: boolean,
  read: Read,
  { keep }: Memory,
) {
  const { id } = knife;
  const slicePush = lineUp.slicePush ?? 0;
  const depthMm = lineUp.contactDepthMm ?? parameters.contactDepthMm.default;
  /** A part made of one or two others, and kept; `besides` is what else it hangs on. */
  const one = (key: string, a: Values, f: (a: number) => number, ...besides: unknown[]): Values =>
    keep<Values>(`${id}/${key} part`, [a, ...besides], (old) => map(f, a, old));
  const two = (
    key: string,
    a: Values,
    b: Values,
    f: (a: number, b: number) => number,
    ...besides: unknown[]
  ): Values => keep<Values>(`${id}/${key} part`, [a, b, ...besides], (old) => map2(f, a, b, old));
  const measured = (name: string, quantity: Quantity, allowed: Limits): Values => {
    const own = read(id, name);
    const gauge = gaugeOf(lineUp, name, quantity);
    if (gauge === null) return own;
    const { low, high } = allowed;
    const bias = read(null, `gauge.${gauge}`);
    return two(name, own, bias, (value, off) => inside(value + off, allowed), low, high);
  };

  const friction = read(null, 'friction');
  const lnForce = (tangent: number, µ: number): number => lnWedge(tangent, µ, slicePush);
  const angle = measured('angleDeg', knife.angleDeg, edgeAngleRange);
  const wedge = two('wedge', angle, friction, (deg, µ) => lnForce(Math.tan(radians(deg)), µ), slicePush);

  const microbevel = knife.microbevelAngleDeg;
  const sine =
    microbevel === undefined
      ? one('sine', angle, lnSine)
      : two('sine', angle, measured('microbevelAngleDeg', microbevel, edgeAngleRange), (deg, apexDeg) =>
          apexDeg < deg ? Number.NaN : lnSine(apexDeg),
        );
  const total = read(null, 'angleExponent');
  const exponent = keep<Values>('apex exponent', [total, friction, slicePush], (old) =>
    map2((e, µ) => apexExponent(e, µ, slicePush), total, friction, old),
  );
  const apex = two('apex', sine, exponent, times);

  const edge = measured('edgeMm', knife.edgeMm, measures.edgeMm);
  const thickness = two('thickness', one('log edge', edge, Math.log), read(null, 'thicknessExponent'), times);

  const { form, spineMm, heightMm, radiusMm } = knife.grind;
  const tangentAt = (edgeMm: number): number => grindTangent(knife.grind, edgeMm, depthMm);
  const flank = one('flank', edge, tangentAt, form, spineMm, heightMm, radiusMm, depthMm);
  const grind = two('grind', flank, friction, lnForce, slicePush);

  const um = 'um' in knife.finish ? read(id, 'finish') : grainSizeUm(knife.finish);
  const finish = two('finish', one('log size', um, Math.log), read(null, 'finishExponent'), times);

  const hrc = measured('hrc', knife.hrc, hardnessLimits(regressionSpeaks));
  const kinds = carbidesOf(knife).map(([kind]) => kind);
  const volumes = kinds.map((kind) => read(id, `carbideVolPercent.${kind}`));
  const carbideMm = keep<Values>(`${id}/carbide`, [...kinds, ...volumes], (old) =>
    weightedSum(
      kinds.map((kind, i) => [regression.perVolPercent[kind], volumes[i] ?? 0]),
      old,
    ),
  );
  const steel = regressionSpeaks
    ? two('steel', hrc, carbideMm, (hardness, mm) => Math.log(cardLineMm(hardness, 30, mm)))
    : two('hardness', one('log Vickers', hrc, lnVickers), read(null, 'hardnessExponent'), times);
  const score = read(steelOwner, 'residual');
  const residual = score === 0 ? 0 : two('residual', read(null, 'residualCv'), score, times);

  const lost = [wedge, apex, thickness, grind];
  const won = [finish, steel, residual];
  const worth = keep<Values>(`${id}/worth`, [...lost, ...won], (old) =>
    weightedSum([...won.map((part) => [1, part] as const), ...lost.map((part) => [-1, part] as const)], old),
  );
  return { worth, residual, hrc, carbideMm };
}

const times = (a: number, b: number): number => a * b;

const lnSine = (deg: number): number => Math.log(Math.sin(radians(deg)));

/** Not a number where a gauge's bias carries the hardness off the scale. */
const lnVickers = (hrc: number): number =>
  Number.isNaN(hrc) ? Number.NaN : Math.log(vickersFromRockwellC(hrc));

const inside = (value: number, { low, high }: Limits): number =>
  value >= low && value <= high ? value : Number.NaN;

/** ln tan(θ + φ) from tan θ and µ₀: `wedgeResistance` without its trip to degrees; not a number where it refuses. */
function lnWedge(tangent: number, friction: number, slicePush: number): number {
  const µ =
    slicePush === 0 ? friction : friction / Math.sqrt(1 + (slicePush * slicePush) / (1 + tangent * tangent));
  const below = 1 - µ * tangent;
  return below > 0 ? Math.log((tangent + µ) / below) : Number.NaN;
}

/** tan of the grind's wedge half angle; not a number where there is no such section. */
function grindTangent(grind: Grind, edgeMm: number, contactDepthMm: number): number {
  const { form, spineMm, heightMm } = grind;
  if (!(edgeMm > 0 && edgeMm <= spineMm)) return Number.NaN;
  if (form === 'flat')
    return ((spineMm - edgeMm) * Math.min(1, contactDepthMm / heightMm)) / (2 * contactDepthMm);
  try {
    return Math.tan(radians(grindHalfAngleDeg({ ...grind, edgeMm, contactDepthMm })));
  } catch (error) {
    if (error instanceof RangeError) return Number.NaN;
    throw error;
  }
}

/** The samples in which the model refuses a knife, or the regression a pair of them. */
export function refusedSamples({ knives, margin }: Worths, samples: number): Uint32Array {
  const out = new Uint8Array(samples);
  for (const worth of knives) mark(out, worth, (value) => !Number.isFinite(value));
  mark(out, margin, (value) => !(value >= 0));
  const places: number[] = [];
  for (let i = out.indexOf(1); i >= 0; i = out.indexOf(1, i + 1)) places.push(i);
  return Uint32Array.from(places);
}

function mark(out: Uint8Array, values: Values, refused: (value: number) => boolean): void {
  if (typeof values === 'number') {
    if (refused(values)) out.fill(1);
  } else for (let i = 0; i < out.length; i += 1) if (refused(values[i] ?? Number.NaN)) out[i] = 1;
}
