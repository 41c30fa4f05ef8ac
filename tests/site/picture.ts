/** Takes the picture of the README from the built and served site: `npm run picture`. */
import { spawn } from 'node:child_process';
import { chromium } from '@playwright/test';
import { findBrowser, getBrowser } from './browser.ts';

const port = 4330;
const address = `http://127.0.0.1:${port}/`;

getBrowser();
const server = spawn('astro', ['preview', '--port', String(port), '--host', '127.0.0.1'], {
  stdio: 'ignore',
});
const executablePath = findBrowser();
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ['--no-sandbox'],
});
try {
  const page = await browser.newPage({ viewport: { width: 1100, height: 1120 }, colorScheme: 'light' });
  for (let tries = 0; ; tries += 1) {
    try {
      await page.goto(address);
      break;
    } catch (error) {
      if (tries === 50) throw error;
      await new Promise((later) => setTimeout(later, 200));
    }
  }
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: 'public/picture.png' });
  console.log('public/picture.png is the front page as it is now');
} finally {
  await browser.close();
  server.kill();
}
