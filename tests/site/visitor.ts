import { encodeLink } from '../../src/comparison/link/codec.ts';
import type { ComparisonEntry } from '../../src/comparison/entry.ts';

/** A visitor's comparison for the tests, invented, in which nothing is as in the pages' own example. */
export const visitorComparison: ComparisonEntry = {
  title: 'Two blades from a drawer',
  knives: [
    {
      id: 'tern',
      name: 'Tern',
      state: 'resharpened',
      angle: { deg: { value: 19, plusMinus: 1 } },
      edgeMm: 0.41,
      finish: { scale: 'JIS', grit: 1000 },
      grind: { form: 'flat', spineMm: 2.2, heightMm: 21 },
      hrc: 60,
      carbide: { volPercent: { CrC: 9 } },
    },
    {
      id: 'knot',
      name: 'Knot',
      state: 'as bought',
      angle: { deg: 21.5 },
      edgeMm: 0.47,
      finish: { scale: 'JIS', grit: 800 },
      grind: { form: 'convex', spineMm: 2.4, heightMm: 22, radiusMm: 400 },
      hrc: 58.5,
      carbide: { volPercent: { CrC: 6 } },
    },
  ],
  baseline: 'knot',
  subject: 'tern',
  reading: 'careful',
  work: 'rope',
  slicePush: 2,
  contactDepthMm: 6,
  friction: 0.3,
  assumptions: {},
  lengthUnit: 'mm',
  madeEqual: [],
  faceValues: null,
};

/** The fragment that carries it. */
export const visitorLink = encodeLink(visitorComparison);
