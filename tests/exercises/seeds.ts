import { contextsFor, levels, makeProblem } from '../../src/exercises/index.ts';
import type { Kind, Problem } from '../../src/exercises/index.ts';

/** Every seed once; the levels and the contexts take turns, so that all of them meet. */
export function problems(kind: Kind, seeds: number): Problem[] {
  const allowed = contextsFor(kind);
  return Array.from({ length: seeds }, (_, seed) => {
    const level = levels[seed % levels.length] ?? 1;
    const context = allowed[Math.floor(seed / levels.length) % allowed.length] ?? 'rigging-loft';
    return makeProblem(kind, seed, { context, level });
  });
}
