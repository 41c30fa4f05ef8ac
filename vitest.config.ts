import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // Tests keep nothing between files: one worker may run many of them.
    isolate: false,
    // As many as there are cores: the runner itself only waits.
    maxWorkers: '100%',
    include: ['tests/**/*.test.ts'],
    exclude: ['**/node_modules/**', 'tests/site/**'],
    // A missing snapshot is a failure, not a new one; `-u` writes them.
    update: 'none',
    // Nothing is timed here: a slow or busy machine is no fault.
    testTimeout: 60_000,
    coverage: {
      include: ['src/model/**', 'src/comparison/**', 'src/scene/**', 'src/topics/**', 'src/exercises/**'],
      reporter: ['text-summary', 'json', 'html'],
      reportsDirectory: 'test-results/coverage',
    },
    onConsoleLog(_log, type) {
      // An unexpected warning is a failure waiting to be noticed.
      if (type === 'stderr') throw new Error('a test wrote a warning');
    },
  },
});
