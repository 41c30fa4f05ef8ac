import { compare } from '../model/index.ts';
import type { Family, Knife, Comparison, Reading, Row, Term } from '../model/index.ts';
import { ofKnife } from '../comparison/found.ts';
import { families } from './factors.ts';

type Attributes = Omit<Knife, 'id' | 'name'>;

/** A knife in the middle of the ordinary: what a race leaves equal takes its values. */
const middling: Attributes = {
  angleDeg: 18,
  edgeMm: 0.4,
  finish: { scale: 'FEPA-P', grit: 400 },
  grind: { form: 'flat', spineMm: 3, heightMm: 15 },
  hrc: 60,
  carbideVolPercent: { CrC: 5 },
};

/**
 * The worst and the best an ordinary knife has of each family. Assumed: our own choice of what counts as ordinary, not a
 * survey of knives. "Best" means best for slicing alone.
 */
export const ordinary = {
  geometry: {
    worst: { angleDeg: 25, edgeMm: 0.8, grind: { form: 'flat', spineMm: 4, heightMm: 12 } },
    best: { angleDeg: 12, edgeMm: 0.2, grind: { form: 'flat', spineMm: 2, heightMm: 20 } },
  },
  finish: {
    worst: { finish: { scale: 'FEPA-P', grit: 2000 } },
    best: { finish: { scale: 'FEPA-P', grit: 120 } },
  },
  steel: {
    worst: { hrc: 56, carbideVolPercent: { CrC: 0 } },
    best: { hrc: 64, carbideVolPercent: { CrC: 15 } },
  },
} as const satisfies Record<Family, { worst: Partial<Attributes>; best: Partial<Attributes> }>;

/** The room of one family: best over worst, everything else equal. */
export interface Room {
  family: Family;
  /** How many times as long the best cuts as the worst. */
  factor: number;
  /** The same with each factor of the family at the least, or the most, its own parameter's stated range allows. */
  low: number;
  high: number;
  /** The same if the forces of wedge, thickness and grind add, and if the force reaches a limit. */
  added: number;
  toLimit: number;
  terms: Term[];
}

const roomOf = (family: Family, { multiplied, added, toLimit, terms }: Row): Room => {
  const end = (side: 'low' | 'high') => terms.reduce((total, term) => total * term[side], 1);
  return { family, factor: multiplied, low: end('low'), high: end('high'), added, toLimit, terms };
};

/**
 * The room of each family by each reading: two knives at the ends of the ordinary range, all else equal, against each
 * other in the work and under the assumptions given.
 *
 * @param work a comparison, of which only friction, slice and push, contact depth and exponents count; its knives do not
 * @throws RangeError where the model refuses the work
 */
export function roomOfFamilies(work: Omit<Comparison, 'knives' | 'baseline'>): Record<Reading, Room[]> {
  const race = (family: Family, reading: Reading): Room => {
    const { rows } = compare(
      {
        ...work,
        knives: [
          { ...middling, ...ordinary[family].best, id: 'best' },
          { ...middling, ...ordinary[family].worst, id: 'worst' },
        ],
        baseline: 'worst',
      },
      { reading },
    );
    return roomOf(family, ofKnife(rows, 'best'));
  };
  return {
    quick: families.map((family) => race(family, 'quick')),
    careful: families.map((family) => race(family, 'careful')),
  };
}

/** One family's room. */
export function roomIn(rooms: readonly Room[], family: Family): Room {
  const room = rooms.find((candidate) => candidate.family === family);
  if (!room) throw new RangeError(`family ${family} is not among the rooms`);
  return room;
}

/** Geometry and finish together: what a sharpener sets. Each end of the range is reached by both at once. */
export function groundRoom(rooms: readonly Room[]): Omit<Room, 'family' | 'terms'> {
  const [g, f] = [roomIn(rooms, 'geometry'), roomIn(rooms, 'finish')];
  return {
    factor: g.factor * f.factor,
    low: g.low * f.low,
    high: g.high * f.high,
    added: g.added * f.added,
    toLimit: g.toLimit * f.toLimit,
  };
}
