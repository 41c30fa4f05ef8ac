import { unknownMeasures } from '../model/index.ts';
import type { Knife } from '../model/index.ts';

/** What of a knife the chain takes and nobody knows, each once. */
export const unknownMeasureNames = (knife: Knife): string[] => [
  ...new Set(
    unknownMeasures(knife).flatMap(({ what }) =>
      what === 'toughness' ? [] : [what === 'carbide volume' ? 'carbide' : what],
    ),
  ),
];
