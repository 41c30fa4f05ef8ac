/**
 * Mutates the model file by file, each against the tests that hold it (see vitest.config.ts), and prints what share of
 * the mutants they find. Without names it takes all of src/model, which takes hours; with names those files, several at
 * once with commas between them: `npm run mutation -- src/model/ratio.ts,src/model/check.ts`. What was found before is
 * kept in `.stryker` and only tried again where code or tests have changed. It runs at a low priority.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { join } from 'node:path';

setPriority(10);

interface Report {
  files: Record<string, { mutants: { status: string }[] }>;
}

const stryker = join('tests', 'mutation', 'node_modules', '.bin', 'stryker');

/** Types, the door, and tables: nothing in them can be mutated to any purpose. */
const aside = ['index.ts', 'number.ts', 'standard-compositions.ts', 'types.ts'];
const all = readdirSync('src/model', { recursive: true, encoding: 'utf8' })
  .map((name) => `src/model/${name.replaceAll('\\', '/')}`)
  .filter((file) => file.endsWith('.ts') && !aside.some((name) => file.endsWith(`/${name}`)));
const asked = process.argv.slice(2);

const rows: Record<string, string | number>[] = [];
for (const file of asked.length > 0 ? asked : all) {
  const kept = `.stryker/${file.replaceAll(/[/,]/g, '-')}.json`;
  const { status } = spawnSync(
    stryker,
    ['run', 'tests/mutation/stryker.json', '--mutate', file, '--incrementalFile', kept],
    { stdio: 'inherit', env: { ...process.env, MUTATED: file }, shell: process.platform === 'win32' },
  );
  if (status !== 0) throw new Error(`${file} could not be mutated`);
  const report = JSON.parse(readFileSync('.stryker/report.json', 'utf8')) as Report;
  for (const [name, { mutants }] of Object.entries(report.files)) {
    const count = (...fates: string[]): number =>
      mutants.filter(({ status: fate }) => fates.includes(fate)).length;
    const found = count('Killed', 'Timeout');
    const tried = found + count('Survived', 'NoCoverage');
    const share = tried === 0 ? '–' : ((100 * found) / tried).toFixed(0);
    rows.push({ file: name.replace('src/model/', ''), found, tried, '%': share });
  }
  console.table(rows);
}
