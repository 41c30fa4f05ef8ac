import { basename } from 'node:path';
import { defineConfig } from 'vitest/config';

/** Tests that ask of the whole model and take little time: for every file. */
const quick = [
  'model/{compare,cost,edges,examples,index,left-out,number,parallel-grind,position,ranges,ratio,refused}',
  'reference/{carbide-card,chain,composition,terms}',
];
/** The file that is mutated; tests that begin with its name hold it too, whatever time they take. */
const own = (process.env['MUTATED'] ?? '')
  .split(',')
  .map((file) => `{model,reference}/*${basename(file, '.ts')}*`);

export default defineConfig({
  test: {
    include: [...quick, ...own].map((name) => `tests/${name}.test.ts`),
    testTimeout: 60_000,
  },
});
