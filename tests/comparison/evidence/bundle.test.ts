import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import { checkBundle, evidenceBundle } from '../../../src/comparison/evidence/bundle.ts';
import type { EvidenceQuestion } from '../../../src/comparison/evidence/evidence.ts';
import { loftRuns } from '../../../src/runs/invented.ts';
import { loft } from '../entries.ts';

const question: EvidenceQuestion = {
  knife: 'dunlin',
  against: 'plover',
  // Few: the results are computed again for every cell.
  samples: 100,
  seed: 7,
};
const entry = { ...loft(), runs: loftRuns() };
const text = await evidenceBundle(entry, question);

/** Every number, word and yes or no of a parsed file, as a path. */
function cells(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) => cells(inner, [...path, key]));
}

function altered(path: readonly string[]): string {
  const file = JSON.parse(text) as Record<string, unknown>;
  let at: Record<string, unknown> = file;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string, unknown>;
  const last = path.at(-1) ?? '';
  const value = at[last];
  at[last] =
    typeof value === 'number'
      ? value === 0
        ? 1
        : value * 1.001
      : typeof value === 'boolean'
        ? !value
        : `${String(value)}x`;
  return JSON.stringify(file);
}

describe('an evidence bundle', () => {
  test('holds as it was made, however it is laid out', async () => {
    expect(await checkBundle(text)).toMatchObject({ ok: true, bundle: { question, entry } });
    expect(await checkBundle(JSON.stringify(JSON.parse(text)))).toMatchObject({ ok: true });
  });

  test('states a measured ratio, a prediction and what is left between them', async () => {
    const checked = await checkBundle(text);
    const results = checked.ok ? checked.bundle.results : null;
    expect(results).toMatchObject({ judged: { verdict: 'longer', family: 6, unit: 'cuts' } });
    const { predicted, judged, predictionCheck } = results ?? {};
    const ratio = judged?.ratio ?? NaN;
    expect(predictionCheck?.leftover.ratio).toBeCloseTo(ratio / (predicted?.median ?? NaN), 9);
  });

  test('does not hold with one altered cell, wherever it is', { timeout: 120_000 }, async () => {
    const all = cells(JSON.parse(text));
    expect(all.length).toBeGreaterThan(400);
    for (const path of all)
      expect(await checkBundle(altered(path)), path.join('.')).toMatchObject({ ok: false });
  });

  test('names the cell that differs, though its digest was made to fit', async () => {
    const file = JSON.parse(text) as { results: { judged: { ratio: number } }; digest?: string };
    file.results.judged.ratio *= 1.01;
    delete file.digest;
    const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(file)));
    file.digest = Buffer.from(hash).toString('hex');
    const checked = await checkBundle(JSON.stringify(file));
    expect(checked.ok ? [] : checked.problems.map(({ path }) => path)).toEqual(['results.judged.ratio']);
  });

  test.each(['', 'no json', '[]', 'null', '{}', '{"kind":"keenfold evidence"}'])(
    'is not %j',
    async (other) => {
      expect(await checkBundle(other)).toMatchObject({ ok: false });
    },
  );

  test('without runs says why nothing is measured, and holds', async () => {
    const { runs: _runs, ...bare } = entry;
    const checked = await checkBundle(await evidenceBundle(bare, question));
    expect(checked).toMatchObject({
      ok: true,
      bundle: {
        results: {
          judged: { verdict: 'too few runs', method: 'none: a knife has no run that can be compared' },
          predictionCheck: null,
        },
      },
    });
  });

  test('is checked by a command', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'bundle-'));
    try {
      const [good, bad] = [join(folder, 'good.json'), join(folder, 'bad.json')];
      await writeFile(good, text);
      await writeFile(bad, altered(['results', 'judged', 'ratio']));
      const run = promisify(execFile);
      const { stdout } = await run(process.execPath, ['src/comparison/evidence/check-bundle.ts', good]);
      expect(stdout).toContain('holds: “The rigging loft’s rope knives”, 36 runs, by model');
      await expect(
        run(process.execPath, ['src/comparison/evidence/check-bundle.ts', bad]),
      ).rejects.toMatchObject({
        code: 1,
        stderr: expect.stringContaining('results.judged.ratio') as string,
      });
    } finally {
      await rm(folder, { recursive: true });
    }
  });
});
