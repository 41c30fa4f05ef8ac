import type { Family, TermId } from '../model/index.ts';

/** Three families, three inks; each also has a hatch and a letter, so that colour never carries the meaning alone. */
export const familyName: Record<Family, string> = { geometry: 'Geometry', finish: 'Finish', steel: 'Steel' };
export const familyLetter: Record<Family, string> = { geometry: 'G', finish: 'F', steel: 'S' };
export const ink = (family: Family): string => `var(--${family})`;
export const hatch = (family: Family): string => `url(#hatch-${family})`;

export const termName: Record<TermId, string> = {
  wedge: 'Wedge',
  apex: 'Apex',
  thickness: 'Thickness',
  grind: 'Grind',
  finish: 'Finish',
  hardness: 'Hardness',
  carbide: 'Carbide',
};
