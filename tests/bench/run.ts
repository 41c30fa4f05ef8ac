/**
 * Every measurement, or the parts that are named: `npm run bench`, `npm run bench -- model pages`. Each is a program of
 * its own, which is given the addresses named beside it: `npm run bench -- redraw /compare/`. None of it is a test: times depend on the machine, which is why most are told as ratios within one run.
 */
import { spawnSync } from 'node:child_process';
import { cpus, loadavg } from 'node:os';

const parts: Record<string, string> = {
  model: 'tests/bench/monte-carlo.ts',
  redraw: 'tests/bench/redraw.ts',
  pages: 'tests/bench/pages.ts',
};

const pages = process.argv.slice(2).filter((word) => word.startsWith('/'));
const asked = process.argv.slice(2).filter((word) => !pages.includes(word));
const unknown = asked.filter((name) => !(name in parts));
if (unknown.length > 0)
  throw new Error(`${unknown.join(', ')}: not a part; there are ${Object.keys(parts).join(', ')}`);

const all = cpus();
for (const name of asked.length > 0 ? asked : Object.keys(parts)) {
  const load = loadavg()[0] ?? 0;
  console.log(`\n— ${name}, on ${all.length} cores (${all[0]?.model ?? 'unknown'}), load ${load.toFixed(1)}`);
  if (load > all.length / 2) console.log('  The machine is busy: believe the ratios, not the times.');
  const { status } = spawnSync(process.execPath, [parts[name] ?? '', ...pages], { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
