import { describe, expect, test } from 'vitest';
import { keptComesBack } from '../../../src/elements/page/kept-comes-back.ts';
import { loft } from '../../comparison/entries.ts';
import { aRun } from '../../runs/runs.ts';

describe('a log kept on this machine', () => {
  const kept = { ...loft(), runs: [aRun()] };
  const { runs: _runs, ...without } = kept;

  test('comes back to an address without a comparison', () => {
    expect(keptComesBack(kept, null)).toBe(true);
  });
  test('gives a link back the runs that were too many for it', () => {
    expect(keptComesBack(kept, { entry: without, runsLeftBehind: true })).toBe(true);
  });
  test('stays away from a link that has all its runs', () => {
    expect(keptComesBack(kept, { entry: without })).toBe(false);
  });
  test('stays away from a link with another comparison', () => {
    const other = { ...without, title: 'Another day' };
    expect(keptComesBack(kept, { entry: other, runsLeftBehind: true })).toBe(false);
  });
});
