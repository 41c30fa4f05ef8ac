import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { bidiAt } from './bidi.ts';
import type { Bidi } from './bidi.ts';

export interface Firefox {
  bidi: Bidi;
  /** Where files saved by a page go. */
  downloads: string;
  close: () => Promise<void>;
}

/** A new profile that asks nobody anything: no updates, no experiments, no question where to save a file. */
function writeProfile(folder: string, downloads: string): void {
  const settings = {
    'app.normandy.enabled': false,
    'app.update.disabledForTesting': true,
    'browser.download.dir': downloads,
    'browser.download.folderList': 2,
    'browser.download.useDownloadDir': true,
    'browser.download.always_ask_before_handling_new_types': false,
    'browser.shell.checkDefaultBrowser': false,
    'datareporting.policy.dataSubmissionEnabled': false,
    'network.captive-portal-service.enabled': false,
    'network.connectivity-service.enabled': false,
    'services.settings.server': 'data:,',
    'toolkit.telemetry.enabled': false,
  };
  const lines = Object.entries(settings).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`,
  );
  writeFileSync(join(folder, 'user.js'), lines.join(''));
}

/** Starts a Firefox without a window, with a profile of its own that is gone afterwards. */
export async function startFirefox(program: string): Promise<Firefox> {
  const folder = mkdtempSync(join(tmpdir(), 'firefox-'));
  const downloads = join(folder, 'downloads');
  mkdirSync(downloads);
  writeProfile(folder, downloads);
  const firefox = spawn(
    program,
    ['--headless', '--no-remote', '--profile', folder, '--remote-debugging-port', '0'],
    { stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const ended = once(firefox, 'exit');
  const address = await new Promise<string>((found, fail) => {
    createInterface(firefox.stderr).on('line', (line) => {
      const listening = /listening on (ws:\S+)/.exec(line)?.[1];
      if (listening !== undefined) found(listening);
    });
    firefox.on('error', fail);
    ended.then(
      () => fail(new Error(`${program} ended before it listened`)),
      () => undefined,
    );
  });
  const bidi = await bidiAt(address);
  await bidi.send('session.new', { capabilities: {} });
  return {
    bidi,
    downloads,
    close: async () => {
      await bidi.send('browser.close', {}).catch(() => firefox.kill());
      await ended;
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
