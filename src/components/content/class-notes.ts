import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** What a teacher needs to know beforehand about one lesson. */
export interface Note {
  aim: string;
  minutes: number;
  bring: string;
  /** What pupils tend to say, and what to ask then. */
  pupils: { says: string; ask: string }[];
  /** Lines for the board. */
  board: string[];
  /** Without computers. */
  activity: string;
  /** Ids of standards. */
  standards: string[];
}

export interface Standard {
  of: 'ccss' | 'england';
  says: string;
}

/** A part of the lesson of fifty minutes. */
export interface Phase {
  minutes: number;
  what: string;
  how: string;
}

const read = (name: string): unknown => parse(readFileSync(`content/class/${name}.yaml`, 'utf8'));

export const notes = read('notes') as Record<string, Note>;
export const standards = read('standards') as Record<string, Standard>;
export const plan = read('plan') as Phase[];

/**
 * A standard as it is named on a page.
 *
 * @throws RangeError for one that content/class/standards.yaml does not have
 */
export function standardName(id: string): string {
  const found = standards[id];
  if (!found) throw new RangeError(`content/class/standards.yaml has no standard "${id}"`);
  return found.of === 'ccss' ? `CCSS ${id}, ${found.says}` : `England key stage 3, ${found.says}`;
}
