import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/site/**'],
    // Nothing is timed here: a slow or busy machine is no fault.
    testTimeout: 60_000,
    onConsoleLog(_log, type) {
      // An unexpected warning is a failure waiting to be noticed.
      if (type === 'stderr') throw new Error('a test wrote a warning');
    },
  },
});
