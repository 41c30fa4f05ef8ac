import { defineConfig } from 'vitest/config';

const mutatesSolving = (process.env['MUTATED'] ?? '').includes('/solve/');

/**
 * The tests of the model. Simulations are left out, and so are the solvers' tests unless a solver is mutated: they call
 * every file of the model and take longer than all the others together.
 */
export default defineConfig({
  test: {
    include: ['tests/model/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    exclude: ['**/*coverage.test.ts', ...(mutatesSolving ? [] : ['tests/model/solve/**'])],
    isolate: false,
    // Nothing is timed here: a slow or busy machine is no fault.
    testTimeout: 60_000,
  },
});
