/** The lives of a comparison's knives over a whole run: the careful estimate of every knife in every sample. */

import { grainSizeUm } from '../finish/finish.ts';
import { measures } from '../quantities.ts';
import { lnResidual, type Calculation } from '../chain/calculation.ts';
import { biased } from '../chain/loops.ts';
import type { Memory } from '../chain/memory.ts';
import { lnLifeOf, weightsOf } from '../chain/structures.ts';
import { roomFor, type Values } from '../chain/values.ts';
import type { Comparison, Knife, Quantity } from '../types.ts';
import { gaugeOf, steelOwners } from './inputs.ts';

export interface Lives {
  /** ln of how long each knife cuts, in the comparison's order; not a number in samples the model refuses. */
  knives: Values[];
  /** What of it is due to the steel lying off the published line, by knife. */
  residuals: Values[];
  /** The place of the structure of each sample in `structures`. */
  structure: Values;
}

/** The values of an input by knife and name. */
export type Read = (knife: string | null, name: string) => Values;

/**
 * The lives of a comparison's knives from the values of its inputs.
 *
 * @param comparison as `compare` accepts it
 * @param read the values of an input, all of one length or a number each
 * @param structure a structure to hold in all samples; drawn if left out
 */
export function livesOf(comparison: Comparison, read: Read, memory: Memory, structure?: number): Lives {
  const owners = steelOwners(comparison);
  const which = structure ?? structureOf(comparison, read, memory);
  const calculations = comparison.knives.map((knife, k) =>
    calculationOf(comparison, knife, owners[k] ?? knife.id, read, memory),
  );
  return {
    knives: calculations.map((k) => lnLifeOf(k, which)),
    residuals: calculations.map(lnResidual),
    structure: which,
  };
}

/** The place of the structure in every sample: each takes its share of the numbers between 0 and 1. */
function structureOf(comparison: Comparison, read: Read, memory: Memory): Values {
  const [multiplied, added] = weightsOf(comparison.assumptions);
  for (const [place, share] of [multiplied, added, 1 - multiplied - added].entries())
    if (share > 1 - 1e-12) return place;
  const even = read(null, 'structure');
  if (typeof even === 'number') return even < multiplied ? 0 : even < multiplied + added ? 1 : 2;
  return memory.keep<Values>('structures', [even, multiplied, added], (old) => {
    const out = roomFor(even.length, old);
    for (let i = 0; i < out.length; i += 1) {
      const u = even[i] ?? 0;
      out[i] = u < multiplied ? 0 : u < multiplied + added ? 1 : 2;
    }
    return out;
  });
}

/** One knife with its values over the run. */
function calculationOf(
  comparison: Comparison,
  knife: Knife,
  steelOwner: string,
  read: Read,
  { keep }: Memory,
): Calculation {
  const { id, finish } = knife;
  const part: Calculation['part'] = (name, of, make) => keep<Values>(`${id}/${name} part`, of, make);
  const measured = (name: string): Values => {
    if (name === 'finish' && !('um' in finish)) return grainSizeUm(finish);
    const own = read(id, name);
    const measure =
      name === 'angleDeg' || name === 'microbevelAngleDeg' || name === 'edgeMm' || name === 'hrc';
    if (!measure) return own;
    const quantity: Quantity = knife[name] ?? 0;
    const gauge = gaugeOf(comparison, name, quantity);
    if (gauge === null) return own;
    const bias = read(null, `gauge.${gauge}`);
    return part(name, [own, bias], (old) => biased(own, bias, measures[name], old));
  };
  return {
    knife,
    slicePush: comparison.slicePush ?? 0,
    measured,
    residual: read(steelOwner, 'residual'),
    shared: (name) => read(null, name),
    part,
    common: (name, of, make) => keep<Values>(`/${name} common`, of, make),
  };
}

/** The samples in which the model refuses a knife. */
export function refusedSamples({ knives }: Lives, samples: number): Uint32Array {
  const out = new Uint8Array(samples);
  // A number less itself is 0 unless it is not finite.
  for (const life of knives) {
    if (typeof life === 'number') {
      if (life - life !== 0) out.fill(1);
    } else for (let i = 0; i < samples; i += 1) if ((life[i] ?? 0) - (life[i] ?? 0) !== 0) out[i] = 1;
  }
  const places: number[] = [];
  for (let i = out.indexOf(1); i >= 0; i = out.indexOf(1, i + 1)) places.push(i);
  return Uint32Array.from(places);
}
