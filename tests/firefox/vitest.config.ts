import { defineConfig } from 'vitest/config';

/** Journeys in Firefox, through the built site: a command of their own, since they need both. */
export default defineConfig({
  test: { include: ['tests/firefox/*.journey.ts'], testTimeout: 60_000, hookTimeout: 60_000 },
});
