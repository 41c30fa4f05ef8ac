import type { Scene } from '../scene/scene.ts';

/** Sentences of the scene. Every sentence that depends on the comparison has its name in one of the topics. */
export type WordsOf = (scene: Scene) => string[];

/**
 * The sentences of one name.
 *
 * @throws RangeError where no sentences have it
 */
export function sentencesOf(all: Record<string, WordsOf>, name: string, scene: Scene): string[] {
  const say = all[name];
  if (!say) throw new RangeError(`no sentences are named ${name}`);
  return say(scene);
}
