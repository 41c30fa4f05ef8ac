import { writeFileSync } from 'node:fs';
import prettier from 'prettier';
import { jsonSchema, schemaFiles } from '../../src/comparison/json-schema.ts';

/** Writes the published schema anew, under each of its names; a test fails while one is stale. */
for (const file of schemaFiles) {
  const path = `public/${file}`;
  writeFileSync(
    path,
    await prettier.format(JSON.stringify(jsonSchema(file)), {
      ...(await prettier.resolveConfig(path)),
      parser: 'json',
    }),
  );
}
