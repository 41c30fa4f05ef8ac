import { memoizeByObject } from '../model/index.ts';
import type { Scene } from './scene.ts';

/** The scenes that a guess was added to. */
const without = new WeakMap<Scene, Scene>();

/**
 * A scene with what the reader expects of it, times as long. All else is what it was: nothing is computed anew.
 *
 * @param guess above 0; null takes it away
 */
export function withGuess(scene: Scene, guess: number | null): Scene {
  const bare = without.get(scene) ?? scene;
  if (guess === null) return bare;
  // Not copied: that would compute what nobody has asked for yet.
  const guessed = Object.create(bare, { guess: { value: guess, enumerable: true } }) as Scene;
  without.set(guessed, bare);
  return guessed;
}

/** Computed once for each scene, whatever the reader expects of it. */
export function memoizeByScene<T>(compute: (scene: Scene) => T): (scene: Scene) => T {
  const known = memoizeByObject(compute);
  return (scene) => known(without.get(scene) ?? scene);
}
