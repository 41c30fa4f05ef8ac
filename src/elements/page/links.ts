import type * as Links from '../../comparison/link/codec.ts';

/**
 * What makes links and opens them. It is fetched at the first need: most readers neither change a comparison nor bring one,
 * and the ratios that a link states take the samples of the model.
 */
let here: typeof Links | undefined;
let asked: Promise<typeof Links> | undefined;

/** Fetches it. A fetch that failed is tried again at the next asking. */
export function fetchLinks(): Promise<typeof Links> {
  asked ??= import('../../comparison/link/codec.ts').then((links) => (here = links));
  asked.catch(() => (asked = undefined));
  return asked;
}

/** It, where it has been fetched. */
export const linksAtHand = (): typeof Links | undefined => here;
