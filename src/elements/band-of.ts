import type { bandBehind } from '../lineup/band-words.ts';

/** What is said of how sure the ratio is, for a text to take along; nothing where it cannot be fetched. */
export const bandOf = (...[scene, depth]: Parameters<typeof bandBehind>): Promise<string[]> =>
  import('../lineup/band-words.ts').then(
    (words) => words.bandBehind(scene, depth),
    () => [],
  );
