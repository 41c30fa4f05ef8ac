import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** A card of the sort "multiply or not?". */
export interface Card {
  text: string;
  way: 'multiply' | 'add' | 'neither';
  /** The sum that answers it, where there is one. */
  works?: string;
  why: string;
}

/** Read at build only: the browser has no need of them. */
export const cards = parse(readFileSync('content/class/cards.yaml', 'utf8')) as Card[];
