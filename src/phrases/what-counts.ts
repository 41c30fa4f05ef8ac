import type { JobProfile } from '../model/index.ts';
import type { Scene } from '../scene/scene.ts';
import { jobOf } from './job.ts';

/** What is cut, in one word. */
const stuff: Readonly<Record<JobProfile['id'], string>> = {
  card: 'card',
  rope: 'rope',
  wood: 'wood',
  boards: 'food',
  prying: 'material',
};

/** What “as long” counts, for the work that is chosen. */
export function whatCounts({ entry, comparison }: Pick<Scene, 'entry' | 'comparison'>): string {
  if (comparison.outcome === 'fixed-strokes')
    return '“As much” counts the card cut in a fixed number of strokes.';
  return `“As long” counts the ${stuff[jobOf(entry).id]} cut until the edge is blunt.`;
}
