import { writeFileSync } from 'node:fs';
import prettier from 'prettier';
import { jsonSchema } from '../../src/comparison/json-schema.ts';

/** Writes public/line-up.schema.json anew; a test fails while it is stale. */
const path = 'public/line-up.schema.json';
writeFileSync(
  path,
  await prettier.format(JSON.stringify(jsonSchema()), {
    ...(await prettier.resolveConfig(path)),
    parser: 'json',
  }),
);
