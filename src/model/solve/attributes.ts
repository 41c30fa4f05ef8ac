/** The attributes that can be solved for: what each is now, where it may lie, and how it is put back. */

import { refuse } from '../check.ts';
import { finishUm } from '../finish/finish.ts';
import { measures, nominal } from '../quantities.ts';
import type { CarbideKind, CarbideVolPercent, Knife, Comparison } from '../types.ts';

/**
 * An attribute that can be solved for. `edgeMm` moves the wedge of the primary grind with it; `finish` is a particle
 * size in µm; `carbide` is the total volume, every kind the knife has scaled alike, or CrC where it has none.
 */
export type SolvableAttribute =
  'angleDeg' | 'microbevelAngleDeg' | 'edgeMm' | 'finish' | 'hrc' | 'grindHeightMm' | 'carbide';

/** Where values are looked for. */
export interface Search {
  low: number;
  high: number;
  /** Whether equal ratios, rather than equal steps, are natural. */
  ratio: boolean;
}

interface Solvable {
  read: (knife: Knife) => number;
  write: (knife: Knife, value: number) => Knife;
  search: (knife: Knife) => Search;
}

const ratio = (low: number, high: number): Search => ({ low, high, ratio: true });

const volumes = (knife: Knife): [CarbideKind, number][] =>
  Object.entries(knife.carbideVolPercent).map(([kind, volume]) => [kind as CarbideKind, nominal(volume)]);

function scaledCarbide(knife: Knife, total: number): CarbideVolPercent {
  const all = volumes(knife);
  const now = all.reduce((sum, [, volume]) => sum + volume, 0);
  if (now === 0) return { CrC: total };
  return Object.fromEntries(all.map(([kind, volume]) => [kind, (volume * total) / now]));
}

const solvable: Record<SolvableAttribute, Solvable> = {
  angleDeg: {
    read: (knife) => nominal(knife.angleDeg),
    write: (knife, angleDeg) => ({ ...knife, angleDeg }),
    search: ({ microbevelAngleDeg }) =>
      ratio(
        measures.angleDeg.low,
        microbevelAngleDeg === undefined ? measures.angleDeg.high : nominal(microbevelAngleDeg),
      ),
  },
  microbevelAngleDeg: {
    read: ({ id, microbevelAngleDeg }) =>
      microbevelAngleDeg === undefined
        ? refuse(`microbevelAngleDeg of ${id} is not given, the knife has no microbevel to change`)
        : nominal(microbevelAngleDeg),
    write: (knife, microbevelAngleDeg) => ({ ...knife, microbevelAngleDeg }),
    search: (knife) => ratio(nominal(knife.angleDeg), measures.microbevelAngleDeg.high),
  },
  edgeMm: {
    read: (knife) => nominal(knife.edgeMm),
    write: (knife, edgeMm) => ({ ...knife, edgeMm }),
    search: ({ grind }) => ratio(measures.edgeMm.low, Math.min(measures.edgeMm.high, nominal(grind.spineMm))),
  },
  finish: {
    read: (knife) => finishUm(knife.finish),
    write: (knife, um) => ({ ...knife, finish: { um } }),
    search: () => ratio(measures.finishUm.low, measures.finishUm.high),
  },
  hrc: {
    read: (knife) => nominal(knife.hrc),
    write: (knife, hrc) => ({ ...knife, hrc }),
    search: () => ({ low: measures.hrc.low, high: measures.hrc.high, ratio: false }),
  },
  grindHeightMm: {
    read: ({ grind }) => nominal(grind.heightMm),
    write: (knife, heightMm) => ({ ...knife, grind: { ...knife.grind, heightMm } }),
    search: ({ grind: { form, radiusMm } }) =>
      ratio(
        measures.heightMm.low,
        form === 'flat' || radiusMm === undefined
          ? measures.heightMm.high
          : Math.min(measures.heightMm.high, 2 * nominal(radiusMm)),
      ),
  },
  carbide: {
    read: (knife) => volumes(knife).reduce((sum, [, volume]) => sum + volume, 0),
    write: (knife, total) => ({ ...knife, carbideVolPercent: scaledCarbide(knife, total) }),
    search: () => ({
      low: measures.carbideVolPercent.low,
      high: measures.carbideVolPercent.high,
      ratio: false,
    }),
  },
};

function entryOf(attribute: SolvableAttribute): Solvable {
  if (!Object.hasOwn(solvable, attribute))
    refuse(`attribute ${String(attribute)} is not one of ${Object.keys(solvable).join(', ')}`);
  return solvable[attribute];
}

/**
 * The present value of an attribute, uncertain ones at their middle.
 *
 * @throws RangeError for an unknown attribute, or a microbevel angle asked of a knife without a microbevel
 */
export const attributeValue = (knife: Knife, attribute: SolvableAttribute): number =>
  entryOf(attribute).read(knife);

/** Where the values of an attribute are looked for, the knife's other measures being as they are. */
export const attributeSearch = (knife: Knife, attribute: SolvableAttribute): Search =>
  entryOf(attribute).search(knife);

/** The knife with one attribute at an exact value. */
export const changedKnife = (knife: Knife, attribute: SolvableAttribute, value: number): Knife =>
  entryOf(attribute).write(knife, value);

/**
 * The comparison with one attribute of one knife at an exact value: what an answer of `whatItTakes` is put back with.
 * The value itself is not checked; `compare` refuses what cannot be.
 *
 * @param value degrees per side, mm, µm, HRC or volume %
 * @throws RangeError for an unknown attribute
 */
export function withAttribute(
  comparison: Comparison,
  id: string,
  attribute: SolvableAttribute,
  value: number,
): Comparison {
  return {
    ...comparison,
    knives: comparison.knives.map((knife) =>
      knife.id === id ? changedKnife(knife, attribute, value) : knife,
    ),
  };
}
