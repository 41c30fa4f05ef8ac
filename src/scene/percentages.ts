import type { Scene } from './scene.ts';

/**
 * The chain of percentages a scene covers: the one typed, where there is one; otherwise the terms of the
 * careful estimate turned into percentages, leaving out those that change nothing.
 */
export function percentagesOf(scene: Scene): number[] {
  if (scene.entry.faceValues) return [...scene.entry.faceValues];
  return scene.row.careful.terms.flatMap(({ factor }) =>
    factor === null || Math.abs(factor - 1) < 5e-4 ? [] : [(factor - 1) * 100],
  );
}
