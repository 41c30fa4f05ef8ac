import type { Scene } from './scene.ts';
import { effectsIn } from './terms.ts';

/**
 * The chain of percentages a scene covers: the one typed, where there is one; otherwise the terms of the
 * careful estimate turned into percentages, leaving out those that read as one.
 */
export function percentagesOf(scene: Scene): number[] {
  if (scene.entry.faceValues) return [...scene.entry.faceValues];
  return effectsIn(scene.row.careful.terms).map(({ factor }) => (factor - 1) * 100);
}
