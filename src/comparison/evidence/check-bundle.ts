/** Computes an evidence bundle again: `node src/comparison/evidence/check-bundle.ts file.json`; ends with 1 where it does not hold. */
import { readFileSync } from 'node:fs';
import { checkBundle } from './bundle.ts';

const [path] = process.argv.slice(2);
if (path === undefined) {
  console.error('Which file? node src/comparison/evidence/check-bundle.ts file.json');
  process.exit(2);
}
const checked = await checkBundle(readFileSync(path, 'utf8'));
if (checked.ok) {
  const { entry, modelNumber } = checked.bundle;
  console.log(`${path} holds: “${entry.title}”, ${entry.runs?.length ?? 0} runs, by model ${modelNumber}.`);
} else {
  console.error(`${path} does not hold:`);
  for (const problem of checked.problems)
    console.error(`  ${problem.path === '' ? '' : `${problem.path}: `}${problem.message}`);
  process.exitCode = 1;
}
