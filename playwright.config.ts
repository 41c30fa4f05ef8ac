import { defineConfig, devices } from '@playwright/test';
import { findBrowser } from './tests/site/browser.ts';

const executablePath = findBrowser();

export default defineConfig({
  testDir: 'tests/site',
  outputDir: 'test-results',
  fullyParallel: true,
  timeout: 90_000,
  // A busy machine may need longer than the usual 5 s; what is right at once does not wait for it.
  expect: { timeout: 15_000 },
  retries: 1,
  forbidOnly: Boolean(process.env['CI']),
  // One more than the cores the tests reckon with: half of their time is waiting.
  workers: 3,
  reporter: [['list'], ['json', { outputFile: 'test-results/site.json' }]],
  use: {
    baseURL: 'http://127.0.0.1:4329/',
    ...devices['Desktop Chrome'],
    // Only the tests of the kept site keep it; elsewhere it would be kept anew in every test.
    serviceWorkers: 'block',
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        '--no-sandbox',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        // Without a window letters would stand at whole dots, wider than on a reader's screen.
        '--font-render-hinting=none',
      ],
    },
  },
  webServer: {
    command: 'node tests/site/serve.ts 4329',
    url: 'http://127.0.0.1:4329/',
    reuseExistingServer: !process.env['CI'],
  },
});
