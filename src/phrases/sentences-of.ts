import type { Scene } from '../scene/scene.ts';
import type { WordsOf } from '../topics/overview/words.ts';

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
