import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/site/**'],
    onConsoleLog(_log, type) {
      // An unexpected warning is a failure waiting to be noticed.
      if (type === 'stderr') throw new Error('a test wrote a warning');
    },
  },
});
