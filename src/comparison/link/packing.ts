import { comparisonFields } from '../comparison-fields.ts';
import type { ComparisonEntry } from '../entry.ts';
import { packFields, unpackFields } from './packed.ts';
import type { Packed } from './packed.ts';

/** The comparison as lists without field names. */
export const pack = (entry: ComparisonEntry): Packed[] =>
  packFields<ComparisonEntry>(comparisonFields, entry);

/** The document the lists stand for, not yet checked. */
export const unpack = (packed: unknown): unknown => unpackFields<ComparisonEntry>(comparisonFields, packed);
