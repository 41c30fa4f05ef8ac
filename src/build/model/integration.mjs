import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { generateDtsBundle } from 'dts-bundle-generator';
import { rolldown } from 'rolldown';

const door = fileURLToPath(new URL('../../model/index.ts', import.meta.url));
const tsconfig = fileURLToPath(new URL('../../model/tsconfig.json', import.meta.url));

/**
 * Writes the factor model as one plain ES module, `model.js`, with its types, `model.d.ts`, so that a notebook or a page
 * elsewhere can import it.
 *
 * @param {string} folder where the built site is
 */
export async function writeModel(folder) {
  const script = await rolldown({ input: { model: door }, checks: { bundlerTimings: false } });
  await script.write({ dir: folder, format: 'es', entryFileNames: 'model.js' });
  await script.close();
  const [types] = generateDtsBundle(
    // A type that only other types name is not handed out: two of them may have one name.
    [{ filePath: door, output: { exportReferencedTypes: false, noBanner: true } }],
    { preferredConfigPath: tsconfig },
  );
  writeFileSync(join(folder, 'model.d.ts'), types);
}

/** @returns {import('astro').AstroIntegration} */
export const model = () => ({
  name: 'model',
  hooks: {
    'astro:build:done': async ({ dir }) => {
      await writeModel(fileURLToPath(dir));
    },
  },
});
