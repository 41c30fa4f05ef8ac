import { readdirSync, readFileSync } from 'node:fs';
import { readPublished } from '../../comparison/published.ts';
import type { PublishedComparison } from '../../comparison/published.ts';

const folder = 'content/comparisons';

/** The comparison of a file in `content/comparisons`; a damaged one fails the build and says what to mend. */
export const publishedComparison = (file: string): PublishedComparison =>
  readPublished(`${folder}/${file}`, readFileSync(`${folder}/${file}`, 'utf8'));

/** Every comparison there is, by title. */
export function publishedComparisons(): PublishedComparison[] {
  const all = readdirSync(folder)
    .filter((file) => !file.startsWith('.'))
    .map(publishedComparison);
  const twice = all.find(({ name }, index) => all.findIndex((other) => other.name === name) < index);
  if (twice)
    throw new Error(`${folder}: two files are named “${twice.name}”, so both want its page. Rename one.`);
  return all.sort((one, other) => one.entry.title.localeCompare(other.entry.title, 'en'));
}
