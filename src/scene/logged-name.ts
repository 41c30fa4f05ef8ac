import { found } from '../comparison/found.ts';
import type { Scene } from './scene.ts';
import type { ComparisonEntry } from '../comparison/entry.ts';

/** The name a knife of the comparison has in a log. */
export const loggedName = ({ knives }: ComparisonEntry, id: string): string =>
  found(knives, id, 'knife').name.trim().normalize('NFC');

/** Whether a log holds readings of both knives looked at; anyone who has none need not fetch what reads them. */
export const hasSeries = ({ entry }: Pick<Scene, 'entry'>): boolean =>
  [entry.subject, entry.baseline].every((id) =>
    (entry.runs ?? []).some(({ knife, series }) => series !== undefined && knife === loggedName(entry, id)),
  );
