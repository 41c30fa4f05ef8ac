import { toJsonSchema } from '@valibot/to-json-schema';
import { comparisonSchema } from './schema.ts';

/**
 * The stored document as JSON Schema (draft 2020-12), for other programs. It covers shape and limits; what fields
 * say about each other, and what the model refuses, only `validate` knows.
 */
export function jsonSchema(): object {
  return {
    ...toJsonSchema(comparisonSchema, {
      target: 'draft-2020-12',
      ignoreActions: ['check', 'trim', 'normalize'],
    }),
    title: 'Keenfold line-up',
    description: 'Lengths in mm, angles per side in degrees, carbide in volume per cent.',
  };
}
