/** A plan of runs on paper: which knife is sharpened and cut next, on which batch, under which code. */

import { uniformStream } from '../statistics/random.ts';
import { codeDigits, codeLetters } from './sheet-code.ts';

export interface SheetPlan {
  /** Names of the knives, at least two, each once. */
  knives: readonly string[];
  /** Sharpenings of each knife, whole, 1 to 1000. */
  runs: number;
  /** Names of the batches of material, at least one, each once: every batch is a block. */
  batches: readonly string[];
  /** Whole, 0 to 4294967295: the same seed gives the same sheet. */
  seed: number;
  /** A knife beside the others, cut first and last in every batch, so that a drift of stock or hand shows. */
  control?: string;
  /** Whether the sheet shows codes in place of names. */
  blind?: boolean;
}

/** One sharpening and its run. */
export interface SheetRow {
  /** From 1, the order of work. */
  order: number;
  batch: string;
  /** The knife's name or, blind, the code of this one run: a judge cannot learn it. The control bears its name. */
  label: string;
}

export interface RunSheet {
  rows: SheetRow[];
  /** Which knife and which of its sharpenings each row is; kept from the judge where the sheet is blind. */
  key: { order: number; label: string; knife: string; sharpening: number }[];
}

/**
 * Randomised balanced blocks: each batch holds every knife equally often (the first batches once more where the runs do not
 * divide by the batches), in rounds in which every knife comes once, in random order.
 *
 * @throws RangeError for fewer than two knives, a name twice, no batch, more batches than runs, or runs or a seed outside their
 * limits
 * @example runSheet({ knives: ['plover', 'dunlin'], runs: 3, batches: ['coil 1'], seed: 1 }).rows.length // → 6
 */
export function runSheet({ knives, runs, batches, seed, control, blind = false }: SheetPlan): RunSheet {
  check(knives, runs, batches, control);
  const next = uniformStream(seed);
  const codes = blind ? codeMaker(next) : null;
  const sharpened = new Map<string, number>();
  const rows: SheetRow[] = [];
  const key: RunSheet['key'] = [];
  const add = (knife: string, batch: string): void => {
    const order = rows.length + 1;
    const sharpening = (sharpened.get(knife) ?? 0) + 1;
    sharpened.set(knife, sharpening);
    const label = codes === null || knife === control ? knife : codes();
    rows.push({ order, batch, label });
    key.push({ order, label, knife, sharpening });
  };
  batches.forEach((batch, i) => {
    if (control !== undefined) add(control, batch);
    const rounds = Math.floor(runs / batches.length) + (i < runs % batches.length ? 1 : 0);
    for (let round = 0; round < rounds; round += 1)
      for (const knife of shuffled(knives, next)) add(knife, batch);
    if (control !== undefined) add(control, batch);
  });
  return { rows, key };
}

/** Fisher and Yates's shuffle. */
function shuffled(names: readonly string[], next: () => number): string[] {
  const result = [...names];
  for (let i = result.length - 1; i > 0; i -= 1) {
    const j = Math.floor(next() * (i + 1));
    const [a, b] = [result[i], result[j]];
    // Unreachable: both places are within the list.
    if (a !== undefined && b !== undefined) [result[i], result[j]] = [b, a];
  }
  return result;
}

/** Codes of two consonants and two digits, none twice, without letters and digits that look alike. */
function codeMaker(next: () => number): () => string {
  const given = new Set<string>();
  const pick = (from: string): string => from[Math.floor(next() * from.length)] ?? '';
  return () => {
    for (;;) {
      const code = [pick(codeLetters), pick(codeLetters), pick(codeDigits), pick(codeDigits)].join('');
      if (given.has(code)) continue;
      given.add(code);
      return code;
    }
  };
}

/** Of 7056 codes so many are given out. */
const mostRows = 5000;

function check(
  knives: readonly string[],
  runs: number,
  batches: readonly string[],
  control: string | undefined,
): void {
  if (knives.length < 2) throw new RangeError(`knives has ${knives.length} names, at least 2 are needed`);
  const names = control === undefined ? knives : [...knives, control];
  const twice = names.find((name, i) => names.indexOf(name) < i);
  if (twice !== undefined) throw new RangeError(`knives and control have “${twice}” twice, each name once`);
  if (batches.length < 1) throw new RangeError('batches has no name, at least 1 is needed');
  const batchTwice = batches.find((name, i) => batches.indexOf(name) < i);
  if (batchTwice !== undefined) throw new RangeError(`batches has “${batchTwice}” twice, each name once`);
  if (!Number.isInteger(runs) || runs < 1 || runs > 1000)
    throw new RangeError(`runs ${runs} is not a whole number from 1 to 1000`);
  if (runs < batches.length)
    throw new RangeError(`runs ${runs} is below the number of batches, ${batches.length}`);
  if (runs * knives.length > mostRows)
    throw new RangeError(
      `runs ${runs} of ${knives.length} knives are ${runs * knives.length} rows, at most ${mostRows}`,
    );
}
