/**
 * How fast predictions are: a whole run beside the same algorithm in C, one angle moved, quantiles beside a library of
 * statistics, and how `compare` grows with the knives. Each time is the least of several in this one run, so that what
 * else the machine does counts little; what matters are the ratios.
 *
 * A measurement, not a test: `node tests/bench/monte-carlo.ts`.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { quantile } from 'simple-statistics';
import { compare, createPredictor, type Knife, type Comparison } from '../../src/model/index.ts';
import { createMemory } from '../../src/model/chain/memory.ts';
import { differences } from '../../src/model/chain/values.ts';
import { pieces } from '../../src/model/statistics/normal-score.ts';
import { quantiles } from '../../src/model/statistics/quantiles.ts';
import { sorted } from '../../src/model/statistics/sorted.ts';
import { runOf } from '../../src/model/uncertainty/sampled-run.ts';

// Invented knives of an invented harbour rigging loft, the same as in monte-carlo.c.
const within = (value: number, plusMinus: number) => ({ value, plusMinus });
const knife = (id: string, angleDeg: number, hrc: number, carbide: number): Knife => ({
  id,
  angleDeg: within(angleDeg, 1),
  edgeMm: within(0.4, 0.03),
  finish: { um: within(15, 2) },
  grind: { form: 'flat', spineMm: 3, heightMm: 20 },
  hrc: within(hrc, 1),
  carbideVolPercent: { CrC: within(carbide, 2) },
});
const loft = (angleDeg: number): Comparison => ({
  knives: [knife('plover', 20, 59, 6), knife('curlew', angleDeg, 61, 8)],
  baseline: 'plover',
});
const samples = 100_000;
const shares = [0.05, 0.5, 0.95];

/** The least time of many, in ms. */
function least(times: number, work: (i: number) => unknown): number {
  let best = Infinity;
  for (let i = 0; i < times; i += 1) {
    const start = performance.now();
    work(i);
    best = Math.min(best, performance.now() - start);
  }
  return best;
}
const ms = (value: number): string => `${value.toFixed(2)} ms`;
const times = (value: number): string => `×${value.toFixed(2)}`;

const memory = createMemory();
/** What the C program does: all draws, all factors, the three structures, the ratio and its quantiles; another seed, so all is made anew. */
function wholeRun(seed: number): number[] {
  const [plover = 0, curlew = 0] = runOf(loft(14), samples, seed, memory).lives.knives;
  const logs = differences(curlew, plover) as Float64Array;
  return quantiles(sorted(logs), shares).map(Math.exp);
}

/** The C program's own times and band, or why there are none. */
function inC(): { ms: number; quantilesMs: number; band: number[] } | string {
  if (spawnSync('cc', ['--version']).status !== 0)
    return 'no C compiler here: the comparison with C is left out';
  const folder = mkdtempSync(join(tmpdir(), 'monte-carlo-'));
  try {
    const defines = Object.entries(pieces).flatMap(([name, { above, below }]) => [
      `-D${name.toUpperCase()}_ABOVE={${above.join(',')}}`,
      `-D${name.toUpperCase()}_BELOW={${below.join(',')}}`,
    ]);
    const program = join(folder, 'run');
    execFileSync('cc', ['-O2', ...defines, 'tests/bench/monte-carlo.c', '-o', program, '-lm']);
    return JSON.parse(execFileSync(program, [String(samples), '20'], { encoding: 'utf8' })) as ReturnType<
      typeof inC
    >;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const rows: Record<string, string>[] = [];
const band = wholeRun(100);
const whole = least(20, wholeRun);
const c = inC();
if (typeof c === 'string') console.log(c);
else {
  // Other draws of the same distribution: a band that is off would mean that not the same is measured.
  c.band.forEach((value, i) => {
    if (Math.abs(value / (band[i] ?? 0) - 1) > 0.01)
      throw new Error(`C finds ${c.band.join(', ')}, not ${band.join(', ')}`);
  });
  rows.push({
    what: `${samples} samples, 20 inputs, 7 factors, 3 structures, 3 quantiles`,
    here: ms(whole),
    beside: `C ${ms(c.ms)}`,
    ratio: times(whole / c.ms),
  });
}

const logs = createPredictor({ samples, seed: 1 }).logRatios(loft(14), 'curlew');
for (let i = logs.length - 1; i > 0; i -= 1) {
  // They come sorted: mixed up again.
  const j = (i * 7919) % (i + 1);
  [logs[i], logs[j]] = [logs[j] ?? 0, logs[i] ?? 0];
}
const own = least(20, () => quantiles(sorted(logs), shares));
const plain = Array.from(logs);
const library = least(20, () => quantile(plain, shares));
rows.push({
  what: `3 quantiles of ${samples}`,
  here: ms(own),
  beside: `simple-statistics ${ms(library)}`,
  ratio: times(own / library),
});

for (const size of [20_000, samples]) {
  const predictor = createPredictor({ samples: size, seed: 1 });
  predictor.predict(loft(14));
  const moved = least(100, (i) => predictor.predict(loft(12 + i / 50)));
  const fresh = least(5, () => createPredictor({ samples: size, seed: 1 }).predict(loft(14)));
  rows.push({
    what: `predict, ${size} samples, one angle moved`,
    here: ms(moved),
    beside: `afresh ${ms(fresh)}`,
    ratio: times(moved / fresh),
  });
}

let one = Number.NaN;
for (const count of [1, 10, 100, 1000]) {
  const knives = Array.from({ length: count }, (_, k) => knife(`knife ${k}`, 10 + (k % 20), 58, 4));
  const each = least(200, () => compare({ knives, baseline: 'knife 0' })) / count;
  if (count === 10) one = each;
  rows.push({
    what: `compare, ${count} knives`,
    here: `${(1000 * each).toFixed(1)} µs a knife`,
    beside: count === 10 ? '' : '10 knives',
    ratio: Number.isNaN(one) ? '' : times(each / one),
  });
}
console.table(rows);
