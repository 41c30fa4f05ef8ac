import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** A common objection and the lesson that goes into it, by the name of its page. */
export interface Objection {
  objection: string;
  /** The answer in a few words, true of any two knives. */
  says: string;
  /** The figure that shows it best. */
  figure: string;
  lesson: string;
}

export const answers = parse(readFileSync('content/answers.yaml', 'utf8')) as Record<string, Objection>;
