import { writeFileSync } from 'node:fs';
import { moved } from '../moved.mjs';

/** The addresses a site map lists, as the text of a `sitemap.xml`; pages that only answer for missing or moved ones are left out. */
const sitemapOf = (addresses) => `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${addresses.map((address) => `  <url><loc>${address}</loc></url>`).join('\n')}
</urlset>
`;

/**
 * Writes `sitemap.xml` and `robots.txt` for the address the site is built for.
 *
 * @returns {import('astro').AstroIntegration}
 */
export function sitemap() {
  let root = '';
  return {
    name: 'sitemap',
    hooks: {
      'astro:config:done': ({ config }) => {
        root = new URL(`${config.base.replace(/\/$/, '')}/`, config.site).href;
      },
      'astro:build:done': ({ dir, pages }) => {
        const addresses = pages
          .map(({ pathname }) => pathname)
          .filter((path) => !path.startsWith('404') && !(path in moved))
          .map((path) => new URL(path, root).href)
          .sort();
        writeFileSync(new URL('sitemap.xml', dir), sitemapOf(addresses));
        writeFileSync(new URL('robots.txt', dir), `User-agent: *\nAllow: /\n\nSitemap: ${root}sitemap.xml\n`);
      },
    },
  };
}
