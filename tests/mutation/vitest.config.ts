import { defineConfig } from 'vitest/config';

/**
 * The tests that hold the model, and no others: each is run again and again. Those that draw whole populations take too
 * long for every mutant; what they alone would find counts as not found.
 */
export default defineConfig({
  test: {
    include: ['tests/model/**/*.test.ts', 'tests/reference/**/*.test.ts', 'tests/runs/curves.test.ts'],
    exclude: ['runs-measured', 'solve-band', 'solve', 'uncertainty-coverage', 'uncertainty-samples'].map(
      (name) => `tests/model/${name}.test.ts`,
    ),
    testTimeout: 60_000,
  },
});
