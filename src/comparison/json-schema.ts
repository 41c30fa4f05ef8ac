import { toJsonSchema } from '@valibot/to-json-schema';
import { comparisonSchema } from './schema.ts';

/** The names it is published under, in `public/`: the first, and the one it had before, for programs that have that. */
export const schemaFiles = ['comparison.schema.json', 'line-up.schema.json'] as const;
type SchemaFile = (typeof schemaFiles)[number];

/**
 * The stored document as JSON Schema (draft 2020-12), for other programs. It covers shape and limits; what fields
 * say about each other, and what the model refuses, only `validate` knows.
 */
export function jsonSchema(id: SchemaFile): object {
  return {
    $id: id,
    ...toJsonSchema(comparisonSchema, {
      target: 'draft-2020-12',
      ignoreActions: ['check', 'trim', 'normalize'],
    }),
    title: 'Keenfold comparison',
    description: 'Lengths in mm, angles per side in degrees, carbide in volume per cent.',
  };
}
