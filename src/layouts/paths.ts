const base = import.meta.env.BASE_URL.endsWith('/')
  ? import.meta.env.BASE_URL
  : `${import.meta.env.BASE_URL}/`;

/** The address of a page of this site below whatever base it is served from: `to('bench/')`. */
export const to = (path: string): string => `${base}${path}`;
