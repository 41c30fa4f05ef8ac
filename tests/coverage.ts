/** Prints what share of each folder's branches and lines the unit tests reach; `npm run coverage` calls it. */
import { readFileSync } from 'node:fs';

interface Share {
  total: number;
  covered: number;
}
type Summary = Record<string, { branches: Share; lines: Share }>;

const summary = JSON.parse(readFileSync('test-results/coverage/coverage-summary.json', 'utf8')) as Summary;

function shareOf(folder: string, what: 'branches' | 'lines'): string {
  const shares = Object.entries(summary)
    .filter(([file]) => file.replaceAll('\\', '/').includes(`/${folder}/`))
    .map(([, file]) => file[what]);
  const sum = (of: keyof Share) => shares.reduce((all, share) => all + share[of], 0);
  return `${((100 * sum('covered')) / sum('total')).toFixed(1)} % of ${sum('total')} ${what}`;
}

for (const folder of ['src/model', 'src/lineup', 'src/exercises'])
  console.log(`${folder}: ${shareOf(folder, 'branches')}, ${shareOf(folder, 'lines')}`);
