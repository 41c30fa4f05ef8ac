/**
 * Simulates the logs that judging is accepted by, ten thousand a row, prints a table and fails where a limit is passed:
 * `npm run simulate`, or `npm run simulate -- 2000 7` for another number of logs and another seed.
 */
import { toppedUpFalseAlarms } from '../../../src/model/index.ts';
import { disjoint, passed, scenarios, simulate } from './judge-scenarios.ts';

const [logs = 10_000, seed = 20] = process.argv.slice(2).map(Number);
const cell = (percent: number): string => percent.toFixed(1).padStart(9);

console.log(`${logs} logs a row, seed ${seed}; all in percent\n`);
console.log(`${'scenario'.padEnd(66)}   usable    false coverage falsely equal`);
const faults: string[] = [];
for (const scenario of scenarios) {
  const outcome = simulate(scenario, logs, seed);
  const { usable, falseAlarms, coverage, falseAlike } = outcome;
  console.log(scenario.name.padEnd(66) + [usable, falseAlarms, coverage, falseAlike].map(cell).join(''));
  faults.push(...passed(scenario, outcome, logs, 0).map((fault) => `${scenario.name}: ${fault}`));
}
const { usable } = simulate(disjoint, logs, seed);
console.log(disjoint.name.padEnd(66) + cell(usable));
if (usable > 0) faults.push(`${disjoint.name}: ${usable}% got an interval`);

console.log('\nfalse alarms where runs are added after a look that showed no difference (4000 logs):');
for (const batches of [0, 3])
  for (const [runs, more] of [
    [3, 1],
    [4, 2],
    [6, 3],
  ] as const) {
    const rates = [[], [more], [more, more]].map(
      (topUps) => 100 * toppedUpFalseAlarms({ runs, topUps, cv: 0.15, batches, seed }),
    );
    const name = `${runs} runs a knife, ${batches || 'no'} batches; with ${more} more once, twice`;
    console.log(name.padEnd(66) + rates.map(cell).join(''));
  }

for (const fault of faults) console.error(fault);
process.exitCode = faults.length > 0 ? 1 : 0;
