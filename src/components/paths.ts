const base = import.meta.env.BASE_URL.endsWith('/')
  ? import.meta.env.BASE_URL
  : `${import.meta.env.BASE_URL}/`;

/** The address of a page of this site below whatever base it is served from: `to('compare/')`. */
export const to = (path: string): string => `${base}${path}`;

/**
 * A path of this site with the host before it; nothing where the build was not told where it will be published, for an
 * address that is made up would be worse than none. Names that end in `.example` are nobody's (RFC 2606).
 */
export function published(path: string): string | undefined {
  const site: unknown = import.meta.env.SITE;
  return typeof site === 'string' && !new URL(site).hostname.endsWith('.example')
    ? new URL(path, site).href
    : undefined;
}
