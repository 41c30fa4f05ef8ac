import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

export interface Source {
  title: string;
  authors?: string;
  year?: number | string;
  where?: string;
  kind: string;
  taken: string;
  seen: string;
}

export interface Word {
  word: string;
  meaning: string;
  /** True for words of our own; the others are the trade's. */
  ours?: boolean;
}

const read = <T>(file: string): T => parse(readFileSync(file, 'utf8')) as T;

export const sources = read<Record<string, Source>>('content/sources.yaml');
export const words = read<Record<string, Word>>('content/words.yaml');

export function source(id: string): Source {
  const found = sources[id];
  if (!found) throw new RangeError(`content/sources.yaml has no source "${id}"`);
  return found;
}

export const shortName = ({ authors, title, year }: Source): string =>
  `${authors ? authors.split(/[,&]/)[0]?.trim() : title}${year ? ` ${year}` : ''}`;

/** The id of a glossary word. */
export function word(name: string): string {
  const found = Object.entries(words).find(([, entry]) => entry.word.toLowerCase() === name.toLowerCase());
  if (!found) throw new RangeError(`content/words.yaml has no word "${name}"`);
  return found[0];
}
