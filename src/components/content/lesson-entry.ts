import type { ComparisonEntry } from '../../comparison/entry.ts';
import { loft } from '../scene.ts';

/** What a lesson's example changes in the loft's comparison, as its head says it. */
export type LessonComparison = { [Part in keyof ComparisonEntry]?: ComparisonEntry[Part] | undefined } & {
  toughness?: Record<string, number> | undefined;
};

/** The comparison a lesson opens with. */
export function lessonEntry({ toughness = {}, ...changes }: LessonComparison): ComparisonEntry {
  const example = { ...loft(), ...(changes as Partial<ComparisonEntry>) };
  return {
    ...example,
    knives: example.knives.map((knife) => {
      const invented = toughness[knife.id];
      return invented === undefined ? knife : { ...knife, toughness: invented };
    }),
  };
}
