import { describe, expect, test } from 'vitest';
import { kindsFor, makeProblem, workedExample } from '../../../src/exercises/index.ts';
import type { Problem } from '../../../src/exercises/index.ts';
import { uniformStream } from '../../../src/model/statistics/random.ts';
import { tallyDots } from '../../../src/teach/tally/tally-dots.ts';
import { tallyProblems } from '../../../src/teach/tally/tally-problems.ts';
import { tallyRows } from '../../../src/teach/tally/tally-table.ts';
import { mostGuesses, tallyInWords, tallyOf } from '../../../src/teach/tally/tally.ts';
import { typed } from '../../exercises/typed.ts';

/** A class in which each idea has a known share; every pupil writes what the idea leads to. */
function classOf(
  problem: Problem,
  shares: readonly number[],
  size: number,
  seed: number,
): { text: string; planted: number[] } {
  const next = uniformStream(seed);
  const answers = [problem.answer, ...problem.missteps.map(({ answer }) => answer)];
  const planted = answers.map(() => 0);
  const lines = Array.from({ length: size }, () => {
    let draw = next();
    const idea = Math.max(
      0,
      shares.findIndex((share) => (draw -= share) < 0),
    );
    planted[idea] = (planted[idea] ?? 0) + 1;
    return typed(answers[idea] ?? NaN, problem.unit);
  });
  return { text: lines.join('\n'), planted };
}

describe('a tally', () => {
  test('counts as many as a class may have, and says so of the others', () => {
    const chain = workedExample('forward-chain');
    const all = tallyOf(chain, '1.96\n'.repeat(mostGuesses));
    expect(all).toMatchObject({ right: mostGuesses, beyond: 0 });
    expect(tallyInWords(all)).not.toContain('Only');
    const more = tallyOf(chain, '1.96\n'.repeat(mostGuesses + 1));
    expect(more).toMatchObject({ right: mostGuesses, beyond: 1 });
    expect(tallyInWords(more)).toContain(`Only the first ${mostGuesses} are counted.`);
  });

  test('names a few of those it cannot read, by their beginnings', () => {
    const said = tallyInWords(
      tallyOf(workedExample('forward-chain'), `${'👾'.repeat(900)}\n${'what\n'.repeat(7)}`),
    );
    expect(said).toBe(
      `0 guesses: 0 multiplied, 0 added, 0 did something else. 0 right. Not to be read: “${'👾'.repeat(24)}…”, “what”, “what”, “what”, “what” and 3 more.`,
    );
  });

  test.each(kindsFor('rigging-loft'))('of %s finds the rates planted in a simulated class', (kind) => {
    for (let seed = 0; seed < 20; seed += 1) {
      const problem = makeProblem(kind, seed, { level: ((seed % 3) + 1) as 1 | 2 | 3 });
      const { text, planted } = classOf(problem, [0.3, 0.4, 0.2, 0.1], 200, seed);
      const tally = tallyOf(problem, text);
      expect([tally.right, ...tally.missteps.map(({ count }) => count)]).toEqual(planted);
      expect(tally.other).toBe(0);
      expect(tally.values).toHaveLength(200);
      // The rates themselves, within four standard errors of a share.
      expect(Math.abs(tally.right / 200 - 0.3)).toBeLessThan(4 * Math.sqrt((0.3 * 0.7) / 200));
    }
  });

  test('says who added and who multiplied, where that is the question', () => {
    const chain = workedExample('forward-chain');
    // By hand: 40% and 40% make 1.4 × 1.4 = 1.96 multiplied, 1.8 added, the percentages themselves multiplied 16% more.
    const tally = tallyOf(chain, '1.96\n1,8; 80% more\t+96%\n+16%\n5\nabout two');
    expect(tally).toMatchObject({
      right: 2,
      other: 1,
      unreadable: ['about two'],
      together: { added: 2, multiplied: 3 },
    });
    expect(tallyInWords(tally)).toBe(
      '6 guesses: 3 multiplied, 2 added, 1 did something else. 2 right. Not to be read: “about two”.',
    );
    const adding = workedExample('multiply-or-add');
    expect(tallyOf(adding, typed(adding.answer, adding.unit)).together).toEqual({ added: 1, multiplied: 0 });
    expect(tallyOf(workedExample('fair-pair'), 'A').together).toBeNull();
  });

  test('of nothing counts nothing', () => {
    expect(tallyOf(workedExample('undo'), ' \n;\n')).toMatchObject({
      values: [],
      unreadable: [],
      right: 0,
      other: 0,
    });
  });
});

describe('the dots', () => {
  const problem = workedExample('forward-chain');
  const circles = (svg: string) =>
    [...svg.matchAll(/cx="([\d.]+)" cy="([\d.-]+)"/g)].map(([, x, y]) => `${x} ${y}`);

  test('are one for each guess, none on another, all inside', () => {
    const { values } = tallyOf(
      problem,
      Array.from({ length: 60 }, (_, index) => String(1 + (index % 9) / 4)).join(';'),
    );
    for (const width of [300, 640]) {
      const svg = tallyDots(problem, values, width);
      const found = circles(svg);
      expect(found).toHaveLength(60);
      expect(new Set(found).size).toBe(60);
      const height = Number(/viewBox="0 0 \d+ ([\d.]+)"/.exec(svg)?.[1]);
      for (const place of found) {
        const [x = NaN, y = NaN] = place.split(' ').map(Number);
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(height);
      }
    }
  });

  test('keep a wild guess at the end of the line, and are nothing for letters or no guess', () => {
    expect(circles(tallyDots(problem, [1e9, 1e-9], 300))).toHaveLength(2);
    expect(tallyDots(problem, [], 300)).toBe('');
    expect(tallyDots(workedExample('fair-pair'), [1, 2], 300)).toBe('');
  });
});

test('the rows for paper hold every answer and leave the counts open', () => {
  const askings = tallyProblems({ kind: 'forward-chain', context: 'tides', level: 1, seed: 3 }).map(
    (problem) => ({ problem, tally: null }),
  );
  const rows = tallyRows(askings);
  expect(askings[0]?.problem.givens).not.toEqual(askings[1]?.problem.givens);
  for (const { id } of askings.flatMap(({ problem }) => problem.missteps)) expect(rows).toContain(`>${id}<`);
  expect(rows).toContain('<td></td>');
});
