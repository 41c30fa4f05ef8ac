import { existsSync } from 'node:fs';

const places = [
  process.env['FIREFOX'],
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
];

/** The Firefox of this machine: the one named in the environment variable FIREFOX, or where packages put it. */
export const findFirefox = (): string | undefined =>
  places.find((place): place is string => place !== undefined && existsSync(place));
