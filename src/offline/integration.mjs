import { createHash } from 'node:crypto';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Read by hosts and search engines, or by nobody on the site: not needed without a network. */
const leftOut = new Set([
  'offline.js',
  '_headers',
  'robots.txt',
  'sitemap.xml',
  'picture.png',
  'model.js',
  'model.d.ts',
]);

const sha256 = (bytes) => createHash('sha256').update(bytes).digest('base64');

/** Every file of a built site with its hash, by the address it is asked for below the site's own. */
function filesOf(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => [file.slice(join(folder, '/').length).replaceAll('\\', '/'), sha256(readFileSync(file))])
    .filter(([path]) => !leftOut.has(path) && !path.startsWith('.') && !path.startsWith('previews/'))
    .map(([path, hash]) => [encodeURI(path.replace(/(^|\/)index\.html$/, '$1')), hash])
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Writes the service worker of the site built in `folder`. */
export function writeWorker(folder) {
  const worker = readFileSync(new URL('./worker.js', import.meta.url), 'utf8');
  const all = filesOf(folder);
  const isVisited = ([path]) => path.startsWith('embed/');
  const files = JSON.stringify(all.filter((file) => !isVisited(file)));
  const visited = JSON.stringify(all.filter(isVisited));
  const version = sha256(files + visited + worker).slice(0, 12);
  writeFileSync(
    join(folder, 'offline.js'),
    `const version = '${version}';\nconst files = ${files};\nconst visited = ${visited};\n${worker}`,
  );
}

/** @returns {import('astro').AstroIntegration} */
export const offline = () => ({
  name: 'offline',
  hooks: {
    'astro:build:done': ({ dir }) => {
      writeWorker(fileURLToPath(dir));
    },
  },
});
