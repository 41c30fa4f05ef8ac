import type { Family } from '../model/index.ts';

/** Three families, three inks; each also has a hatch and a letter, so that colour never carries the meaning alone. */
export const ink = (family: Family): string => `var(--${family})`;
export const hatch = (family: Family): string => `url(#hatch-${family})`;
