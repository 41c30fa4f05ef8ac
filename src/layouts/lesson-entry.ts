import { loft } from '../figures/scene.ts';
import type { LineUpEntry } from '../lineup/schema.ts';

/** What a lesson's head changes in the loft's line-up. */
export type LessonLineUp = { [Part in keyof LineUpEntry]?: LineUpEntry[Part] | undefined } & {
  /** Toughness by the id of a knife. */
  toughness?: Record<string, number> | undefined;
};

/** The line-up a lesson opens with: the invented loft with what the lesson's head changes. */
export function lessonEntry({ toughness = {}, ...changes }: LessonLineUp): LineUpEntry {
  const example = { ...loft(), ...(changes as Partial<LineUpEntry>) };
  return {
    ...example,
    knives: example.knives.map((knife) => {
      const invented = toughness[knife.id];
      return invented === undefined ? knife : { ...knife, toughness: invented };
    }),
  };
}
