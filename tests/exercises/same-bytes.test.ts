import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { digests } from './digest.ts';

const here = digests();

describe('the same seed gives the same bytes', { timeout: 60_000 }, () => {
  test('as committed', () => {
    const committed: unknown = JSON.parse(readFileSync(new URL('digests.json', import.meta.url), 'utf8'));
    expect(here).toEqual(committed);
  });

  test('in a process of another locale and time zone', () => {
    const program = `
      import { digests } from './tests/exercises/digest.ts';
      console.log(new Intl.NumberFormat().resolvedOptions().locale, JSON.stringify(digests()));`;
    const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '--eval', program], {
      env: { ...process.env, LC_ALL: 'de_DE.UTF-8', TZ: 'Pacific/Apia', NODE_OPTIONS: '' },
      encoding: 'utf8',
    });
    expect(`${stdout}${stderr}`.trim()).toBe(`de-DE ${JSON.stringify(here)}`);
  });

  test('where the last bit of a tangent or a logarithm differs', () => {
    const spies = (['tan', 'sin', 'atan', 'log', 'log1p', 'exp'] as const).map((name) => {
      const original = Math[name];
      return vi.spyOn(Math, name).mockImplementation((x) => original(x) * (1 + Number.EPSILON));
    });
    const after = digests();
    spies.forEach((spy) => {
      expect(spy).toHaveBeenCalled();
      spy.mockRestore();
    });
    expect(after).toEqual(here);
  });
});
