import { readFileSync, readdirSync, unlinkSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The script that a file fetches, where it does nothing else; a comment is nothing. */
function onlyFetches(code) {
  const [verb, path = '', rest] = code
    .replaceAll(/^\/\/.*$/gm, '')
    .trim()
    .split('"');
  return verb === 'import' && rest === ';' ? path.replace('./', '') : undefined;
}

/**
 * Names in every page the script it starts with, in place of the file that only fetches it: one request fewer, and the
 * page answers a round trip sooner.
 *
 * @returns {import('astro').AstroIntegration}
 */
export const straightToStart = () => ({
  name: 'straight-to-start',
  hooks: {
    'astro:build:done': ({ dir }) => {
      const folder = fileURLToPath(dir);
      const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
      const [boot, ...others] = files.filter((file) => /_astro[\\/]Boot\.[\w.-]+\.js$/.test(file));
      const start = boot && onlyFetches(readFileSync(join(folder, boot), 'utf8'));
      if (!boot || !start || others.length > 0)
        throw new Error(
          'the script that every page starts with is not fetched by one file that does only that',
        );
      for (const file of files.filter((path) => path.endsWith('.html'))) {
        const page = readFileSync(join(folder, file), 'utf8');
        writeFileSync(join(folder, file), page.replaceAll(basename(boot), start));
      }
      unlinkSync(join(folder, boot));
    },
  },
});
