import { comparisonFields } from './comparison-fields.ts';
import { schemaOf } from './field-table.ts';

/** The shape of the stored document. Checks between fields and the model's own are in `validate`. */
export const comparisonSchema = schemaOf(comparisonFields);
