/** The terms of the careful estimate over whole runs: ln of what a knife is worth, term by term. */

import { regression } from '../steel/carbide.ts';
import { grainSizeUm } from '../finish/finish.ts';
import { edgeAngleRange } from '../geometry/geometry.ts';
import { carbidesOf, gaugeOf, hardnessLimits, steelOwners } from './inputs.ts';
import type { Memory } from './memory.ts';
import {
  apexExponents,
  apexLogSines,
  biased,
  cards,
  grinds,
  grindTangents,
  logs,
  logVickers,
  lowest,
  products,
  sines,
  wedges,
} from './parts.ts';
import { measures } from '../quantities.ts';
import type { Limits } from './sampling.ts';
import type { Knife, Comparison, Quantity } from '../types.ts';
import { weightedSum, type Values } from './values.ts';

/**
 * What the knives of a comparison are worth in every sample. A ratio is the difference of two worths: every term of the
 * careful estimate but hardness and carbide is one knife's part over another's, and the product of those two is
 * T(Ha, Ca)/T(Hb, Cb).
 */
export interface Worths {
  /** ln worth by knife, in the comparison's order; not a number in samples the model refuses. */
  knives: Values[];
  /** The logarithm of the regression's residual in it, by knife. */
  residuals: Values[];
  /** ln of the least card any pair of the knives would cut over the least the regression is used from. */
  margin: Values;
}

type Read = (knife: string | null, name: string) => Values;

/**
 * The worths of a comparison's knives from the values of its inputs. What `memory` holds is taken again where nothing it
 * depends on has changed, so that moving one knife's angle computes only the wedge and the apex of that knife.
 *
 * @param lineUp as `compare` accepts it
 * @param regressionSpeaks decided once, at the middle values, for all samples
 * @param read the values of an input, all of one length or a number each
 */
export function worthsOf(
  comparison: Comparison,
  regressionSpeaks: boolean,
  read: Read,
  memory: Memory,
): Worths {
  const owners = steelOwners(comparison);
  const laid = comparison.knives.map((knife, k) =>
    worthOf(comparison, knife, owners[k] ?? knife.id, regressionSpeaks, read, memory),
  );
  const hardnesses = laid.map(({ hrc }) => hrc);
  const carbides = laid.map(({ carbideMm }) => carbideMm);
  const margin = regressionSpeaks
    ? memory.keep<Values>('margin', [...hardnesses, ...carbides], (old) =>
        cards(lowest(hardnesses), lowest(carbides), old),
      )
    : 0;
  return { knives: laid.map(({ worth }) => worth), residuals: laid.map(({ residual }) => residual), margin };
}

/**
 * What one knife is worth, and what of it a change of any input would move.
 *
 * @param steelOwner the knife whose residual it takes, as `steelOwners` says
 */
export function worthOf(
  comparison: Comparison,
  knife: Knife,
  steelOwner: string,
  regressionSpeaks: boolean,
  read: Read,
  { keep }: Memory,
) {
  const { id } = knife;
  const slicePush = comparison.slicePush ?? 0;
  /** A part, kept under its name for as long as what it is made of stays. */
  const part = (name: string, of: readonly unknown[], make: (old?: Values) => Values): Values =>
    keep<Values>(`${id}/${name} part`, of, make);
  const measured = (name: string, quantity: Quantity, allowed: Limits): Values => {
    const own = read(id, name);
    const gauge = gaugeOf(comparison, name, quantity);
    if (gauge === null) return own;
    const bias = read(null, `gauge.${gauge}`);
    return part(name, [own, bias, allowed.low, allowed.high], (old) => biased(own, bias, allowed, old));
  };
  /** ln of a measure times its exponent. */
  const power = (name: string, log: Values, exponent: Values): Values =>
    part(name, [log, exponent], (old) => products(log, exponent, old));
  const log = (name: string, of: Values): Values => part(`ln ${name}`, [of], (old) => logs(of, old));

  const friction = read(null, 'friction');
  const angle = measured('angleDeg', knife.angleDeg, edgeAngleRange);
  const sine = part('sine', [angle], (old) => sines(angle, old));
  const wedge = part('wedge', [sine, friction, slicePush], (old) => wedges(sine, friction, slicePush, old));

  const ofMicrobevel = (quantity: Quantity): Values => {
    const apexAngle = measured('microbevelAngleDeg', quantity, edgeAngleRange);
    return part('ln apex sine', [angle, apexAngle], (old) => apexLogSines(angle, apexAngle, old));
  };
  const microbevel = knife.microbevelAngleDeg;
  const lnSine = microbevel === undefined ? log('sine', sine) : ofMicrobevel(microbevel);
  const total = read(null, 'angleExponent');
  const exponent = keep<Values>('apex exponent', [total, friction, slicePush], (old) =>
    apexExponents(total, friction, slicePush, old),
  );
  const apex = power('apex', lnSine, exponent);

  const edge = measured('edgeMm', knife.edgeMm, measures.edgeMm);
  const thickness = power('thickness', log('edge', edge), read(null, 'thicknessExponent'));

  const { form, radiusMm } = knife.grind;
  const spine = read(id, 'spineMm');
  const height = read(id, 'heightMm');
  const radius = radiusMm === undefined ? null : read(id, 'radiusMm');
  const depth = read(null, 'contactDepthMm');
  const flank = part('flank', [edge, form, spine, height, radius, depth], (old) =>
    grindTangents({ form, edge, spine, height, radius, depth }, old),
  );
  const grind = part('grind', [flank, friction, slicePush], (old) => grinds(flank, friction, slicePush, old));

  const um = 'um' in knife.finish ? read(id, 'finish') : grainSizeUm(knife.finish);
  const finish = power('finish', log('size', um), read(null, 'finishExponent'));

  const hrc = measured('hrc', knife.hrc, hardnessLimits(regressionSpeaks));
  const kinds = carbidesOf(knife).map(([kind]) => kind);
  const volumes = kinds.map((kind) => read(id, `carbideVolPercent.${kind}`));
  const carbideMm = part('carbide', [...kinds, ...volumes], (old) =>
    weightedSum(
      kinds.map((kind, i) => [regression.perVolPercent[kind], volumes[i] ?? 0]),
      old,
    ),
  );
  const steel = regressionSpeaks
    ? part('steel', [hrc, carbideMm], (old) => cards(hrc, carbideMm, old))
    : power(
        'hardness',
        part('ln Vickers', [hrc], (old) => logVickers(hrc, old)),
        read(null, 'hardnessExponent'),
      );
  const score = read(steelOwner, 'residual');
  const residual = score === 0 ? 0 : power('residual', score, read(null, 'residualCv'));

  const lost = [wedge, apex, thickness, grind];
  const won = [finish, steel, residual];
  const worth = keep<Values>(`${id}/worth`, [...lost, ...won], (old) =>
    weightedSum([...won.map((ln) => [1, ln] as const), ...lost.map((ln) => [-1, ln] as const)], old),
  );
  return { worth, residual, hrc, carbideMm };
}

/** The samples in which the model refuses a knife, or the regression a pair of them. */
export function refusedSamples({ knives, margin }: Worths, samples: number): Uint32Array {
  const out = new Uint8Array(samples);
  // A number less itself is 0 unless it is not finite.
  for (const worth of knives) {
    if (typeof worth === 'number') {
      if (worth - worth !== 0) out.fill(1);
    } else for (let i = 0; i < samples; i += 1) if ((worth[i] ?? 0) - (worth[i] ?? 0) !== 0) out[i] = 1;
  }
  if (typeof margin === 'number') {
    if (!(margin >= 0)) out.fill(1);
  } else for (let i = 0; i < samples; i += 1) if (!((margin[i] ?? 0) >= 0)) out[i] = 1;
  const places: number[] = [];
  for (let i = out.indexOf(1); i >= 0; i = out.indexOf(1, i + 1)) places.push(i);
  return Uint32Array.from(places);
}
