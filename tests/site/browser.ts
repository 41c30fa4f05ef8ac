import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

const places = [
  process.env['CHROMIUM'],
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

const run = (command: string, ...args: string[]): void => {
  execFileSync(command, args, { stdio: 'inherit' });
};

/** Finds a browser, or gets one: Playwright's own first, then the system's package where this user may install it. */
export function getBrowser(): void {
  const there = () => existsSync(chromium.executablePath()) || findBrowser() !== undefined;
  if (there()) return;
  const ways: (() => void)[] = [
    () => {
      run('npx', 'playwright', 'install', 'chromium');
    },
    () => {
      run('apt-get', 'update', '-qq');
      run('apt-get', 'install', '-y', '-qq', 'chromium');
    },
  ];
  for (const way of ways) {
    try {
      way();
    } catch (error) {
      console.log(`No browser this way: ${error instanceof Error ? error.message : String(error)}`);
    }
    if (there()) return;
  }
  throw new Error('No browser found: install Chromium, or name one in the environment variable CHROMIUM.');
}
