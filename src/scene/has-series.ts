import type { Scene } from './scene.ts';

/** Whether a log holds readings of both knives looked at; anyone who has none need not fetch what reads them. */
export const hasSeries = ({ entry }: Pick<Scene, 'entry'>): boolean =>
  [entry.subject, entry.baseline].every((id) =>
    (entry.runs ?? []).some(({ knife, series }) => series !== undefined && knife === id),
  );
