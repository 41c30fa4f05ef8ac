import type { Scene } from '../../scene/scene.ts';

/** How many measured runs go along with a comparison: of all knives, of the one asked about and of the baseline. */
export function runsOf({ entry }: Pick<Scene, 'entry'>): { all: number; own: number; other: number } {
  const { runs = [] } = entry;
  const of = (id: string): number => runs.filter(({ knife }) => knife === id).length;
  return { all: runs.length, own: of(entry.subject), other: of(entry.baseline) };
}
