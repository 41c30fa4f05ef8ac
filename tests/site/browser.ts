import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

// The shell first: the same engine without a window, it takes half the processor's time of the whole browser.
const shell = '/usr/bin/chromium-headless-shell';
const places = [
  process.env['CHROMIUM'],
  shell,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** A browser on this machine: one already there, or undefined where Playwright's own is to be used or got. */
export function findBrowser(): string | undefined {
  const own = chromium.executablePath();
  if (existsSync(own)) return undefined;
  return places.find((place): place is string => place !== undefined && existsSync(place));
}

/** No way may hold the tests up for long: a machine without a network has to go on with what it has. */
const patienceMs = 600_000;
const run = (command: string, ...args: string[]): void => {
  execFileSync(command, args, { stdio: 'inherit', timeout: patienceMs });
};

const apt = (): void => {
  const hasty = ['-qq', '-o', 'Acquire::Retries=0', '-o', 'Acquire::http::Timeout=15'];
  run('apt-get', 'update', ...hasty);
  run('apt-get', 'install', '-y', ...hasty, 'chromium-headless-shell');
};

/**
 * Finds a browser, or gets one: Playwright's own first, then the system's package where this user may install it. In
 * a container that has the whole browser only, the shell is got as well; where that fails, what is there will do.
 */
export function getBrowser(): void {
  const own = (): boolean => existsSync(chromium.executablePath());
  const named = process.env['CHROMIUM'] !== undefined;
  const there = (): boolean => own() || findBrowser() !== undefined;
  const inContainer = process.platform === 'linux' && process.getuid?.() === 0;
  const ways: (() => void)[] = [];
  if (!there()) ways.push(() => run('npx', 'playwright', 'install', 'chromium'));
  if (!there() || (inContainer && !own() && !named && !existsSync(shell))) ways.push(apt);
  for (const way of ways) {
    try {
      way();
    } catch (error) {
      console.log(`No browser this way: ${error instanceof Error ? error.message : String(error)}`);
    }
    if (own()) return;
  }
  if (there()) return;
  throw new Error('No browser found: install Chromium, or name one in the environment variable CHROMIUM.');
}
