import { defineConfig } from 'vitest/config';

/** The tests that hold the model, and no others: each is run again and again. */
export default defineConfig({
  test: { include: ['tests/model/**/*.test.ts', 'tests/reference/**/*.test.ts'], testTimeout: 60_000 },
});
