/**
 * Simulates the logs that judging is accepted by, ten thousand a row, and fails where a limit is passed:
 * `npm run simulate`, or `npm run simulate -- 2000 7` for another number of logs and another seed.
 */
import { disjoint, makeLog, chances, scenarios, simulate } from './judge-scenarios.ts';
import { judgeRuns } from '../../../src/model/index.ts';

const [logs = 10_000, seed = 20] = process.argv.slice(2).map(Number);
const only = process.argv[4];
for (const scenario of scenarios) {
  if (only && !scenario.name.includes(only)) continue;
  const { usable, falseAlarms, coverage, falseAlike } = simulate(scenario, logs, seed);
  console.log(scenario.name.padEnd(70), [usable, falseAlarms, coverage, falseAlike].map((v) => v.toFixed(2).padStart(7)).join(' '));
}
