import { appendFileSync } from 'node:fs';

/** What no page may be but those made for it: in a frame of somebody else's page. */
const unframed = ["Content-Security-Policy: frame-ancestors 'none'", 'X-Frame-Options: DENY'];

/** Pages made for frames. */
const framed = 'embed';

/**
 * The rules that keep every page out of frames but the figures alone. Hosts join the headers of all rules that fit an
 * address, and of two policies the stricter wins: so no rule may fit the figures and the rest at once, and the rest is
 * named folder by folder.
 *
 * @param {readonly string[]} addresses the addresses of all pages below the site's own, without the slash before them
 */
export function frameRules(addresses) {
  const paths = new Set(['/']);
  for (const address of addresses) {
    const [folder = '', rest] = address.split('/');
    if (folder !== '' && folder !== framed) paths.add(rest === undefined ? `/${folder}` : `/${folder}/*`);
  }
  return [...paths].map((path) => `\n${path}\n${unframed.map((line) => `  ${line}\n`).join('')}`).join('');
}

/**
 * Adds to the built `_headers` what keeps pages out of frames.
 *
 * @returns {import('astro').AstroIntegration}
 */
export const headers = () => ({
  name: 'headers',
  hooks: {
    'astro:build:done': ({ dir, pages }) => {
      const addresses = pages.map(({ pathname }) => pathname).concat('404.html', 'index.html');
      appendFileSync(new URL('_headers', dir), frameRules(addresses.sort()));
    },
  },
});
