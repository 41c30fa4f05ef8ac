import type { Family } from '../model/index.ts';

/** What a family of factors is called. */
export interface FamilyName {
  /** Beside a bar and over a column. */
  name: string;
  /** In a sentence. */
  inSentence: string;
  /** In a sentence, with what belongs to it. */
  withParts: string;
}

export const familyName: Record<Family, FamilyName> = {
  geometry: {
    name: 'Geometry',
    inSentence: 'geometry',
    withParts: 'geometry (angle, thickness and grind)',
  },
  finish: { name: 'Finish', inSentence: 'the finish', withParts: 'the finish of the edge' },
  steel: {
    name: 'Steel',
    inSentence: 'the steel',
    withParts: 'the steel (hardness and carbide)',
  },
};
