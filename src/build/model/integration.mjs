import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';
import { dts } from 'rolldown-plugin-dts';

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
  const types = await rolldown({
    input: { model: door },
    checks: { bundlerTimings: false },
    plugins: [dts({ dtsOnly: true, tsconfig, sourcemap: false })],
  });
  await types.write({ dir: folder, format: 'es', entryFileNames: 'model.js' });
  await types.close();
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
