import type { bandBehind } from '../../topics/band/words.ts';

/** What is said of how sure the ratio is, for a text to take along; nothing where it cannot be fetched. */
export const bandOf = (...[scene, depth]: Parameters<typeof bandBehind>): Promise<string[]> =>
  import('../../topics/band/words.ts').then(
    (words) => words.bandBehind(scene, depth),
    () => [],
  );
