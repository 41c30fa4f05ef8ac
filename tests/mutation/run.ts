/**
 * Mutates the model with Stryker, runs the tests that reach each mutant, and prints what share of the mutants of each
 * file they find. Without names it takes all of src/model, which is a night's work; with names those files:
 * `npm run mutation -- src/model/ratio/percent.ts src/model/check.ts`. It runs at the lowest priority.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { join } from 'node:path';

setPriority(19);

interface Report {
  files: Record<string, { mutants: { status: string }[] }>;
}

/** Types, the door, and tables: nothing in them can be mutated to any purpose. */
const aside = ['index.ts', 'number.ts', 'standard-compositions.ts', 'types.ts'];
const all = readdirSync('src/model', { recursive: true, encoding: 'utf8' })
  .map((name) => `src/model/${name.replaceAll('\\', '/')}`)
  .filter((file) => file.endsWith('.ts') && !aside.some((name) => file.endsWith(`/${name}`)));
const named = process.argv.slice(2);
for (const file of named) if (!existsSync(file)) throw new Error(`there is no file ${file} to mutate`);
const mutated = named.length > 0 ? named : all;

const { status } = spawnSync(
  join('tests', 'mutation', 'node_modules', '.bin', 'stryker'),
  ['run', 'tests/mutation/stryker.json', '--mutate', mutated.join(',')],
  {
    stdio: 'inherit',
    env: { ...process.env, MUTATED: mutated.join(',') },
    shell: process.platform === 'win32',
  },
);
if (status !== 0) throw new Error('the model could not be mutated');

const report = JSON.parse(readFileSync('.stryker/report.json', 'utf8')) as Report;
const rows = Object.entries(report.files).map(([name, { mutants }]) => {
  const count = (...fates: string[]): number =>
    mutants.filter(({ status: fate }) => fates.includes(fate)).length;
  const found = count('Killed', 'Timeout');
  return { file: name.replace('src/model/', ''), found, tried: found + count('Survived', 'NoCoverage') };
});
const sum = (of: 'found' | 'tried'): number => rows.reduce((total, row) => total + row[of], 0);
console.table(
  [...rows, { file: 'all', found: sum('found'), tried: sum('tried') }].map((row) => ({
    ...row,
    '%': row.tried === 0 ? '–' : ((100 * row.found) / row.tried).toFixed(0),
  })),
);
