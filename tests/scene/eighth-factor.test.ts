import { describe, expect, it } from 'vitest';
import type { Comparison, Reading, Row, Term, TermId } from '../../src/model/index.ts';
import { compared } from '../../src/comparison/compared.ts';
import { termText } from '../../src/phrases/factor-words.ts';
import { sceneOf } from '../../src/scene/scene.ts';
import { times } from '../../src/scene/show.ts';
import { chain } from '../../src/topics/overview/figure-chain.ts';
import { words } from '../../src/topics/overview/words.ts';
import { stack } from '../../src/topics/stack-them/figure-stack.ts';
import { stackWords } from '../../src/topics/stack-them/words.ts';
import { percentagesWords } from '../../src/topics/forty-and-forty/words.ts';
import { loft } from '../comparison/entries.ts';

const id = 'stropping' as TermId;

/** A row with a made-up factor, of the finish, that the model does not have. */
function withStropping(row: Row, factor: number): Row {
  const term: Term = { id, family: 'finish', factor, low: factor, high: factor, status: 'made up' };
  return {
    ...row,
    terms: [...row.terms, term],
    multiplied: row.multiplied * factor,
    added: row.added * factor,
    toLimit: row.toLimit * factor,
    families: { ...row.families, finish: row.families.finish * factor },
  };
}

const sceneWith = (factor: number) => {
  const rowsOf = (comparison: Comparison): Record<Reading, Row[]> => {
    const rows = compared(comparison);
    const added = (row: Row) => withStropping(row, row.knife === comparison.baseline ? 1 : factor);
    return { quick: rows.quick.map(added), careful: rows.careful.map(added) };
  };
  return sceneOf(loft(), rowsOf);
};

const textOf = (of: string, scene: ReturnType<typeof sceneWith>): string =>
  ({ ...words, ...stackWords, ...percentagesWords })[of]?.(scene).join(' ') ?? '';

describe('a factor the model’s table gains', () => {
  const factor = 1.3749;
  const scene = sceneWith(factor);
  const total = times(sceneOf(loft()).row.careful.multiplied * factor);

  it('stands in the drawn chain and in its table with one number', () => {
    const { rows } = chain.table(scene);
    expect(rows.find(([name]) => name === 'Stropping')?.slice(1, 3)).toEqual(['finish', '×1.37']);
    expect(rows.find(([name]) => name === 'Multiplied')?.[2]).toBe(total);
    expect(chain.caption(scene)).toContain('if all factors multiply, Dunlin cuts 22 times as long as Plover');
  });

  it('has its column beside every knife of the stack', () => {
    const { columns, rows } = stack.table(scene);
    const at = columns.indexOf('Stropping');
    const own = rows.find(([name, reading]) => name === scene.subject.name && reading === 'careful estimate');
    expect(own?.[at]).toBe('×1.37');
    expect(own?.[columns.indexOf('All multiplied')]).toBe(total);
  });

  it.each([
    ['stack', 'stropping ×1.37'],
    ['stack', `If they multiply, they make ${total}`],
    ['percentages', 'stropping +37%'],
    ['percentages', `multiplied it is ${total}`],
  ])('is in the sentences of “%s” as %s', (of, expected) => expect(textOf(of, scene)).toContain(expected));

  it('is named among the biggest reasons where it is one of them', () => {
    expect(textOf('reasons', sceneWith(2))).toContain('Dunlin gains most by its stropping,');
  });

  it('has a text of its own', () => {
    expect(termText(scene, id).filter((sentence) => sentence !== '')).toEqual([
      `For this reason alone ${scene.subject.name} should cut 1.4 times as long as ${scene.baseline.name}.`,
    ]);
  });

  it('is said to be shared by both knives where it reads as one, and changes no total', () => {
    const alike = sceneWith(1.002);
    expect(textOf('stack', alike)).toMatch(/Both have the same .*stropping/);
    expect(textOf('reasons', alike)).toMatch(/Both have the same .*stropping/);
    expect(textOf('stack', alike)).not.toContain('×1.00');
    expect(alike.row.careful.terms).toHaveLength(sceneOf(loft()).row.careful.terms.length + 1);
  });
});

describe('differences that only show together', () => {
  // Own calculation: seven factors and one more, each 0.3% above 1, make 1.003⁸ = 1.0243.
  const each = 1.003;
  const same = {
    ...loft(),
    madeEqual: ['angleDeg', 'edgeMm', 'finish', 'grind', 'hrc', 'carbideVolPercent'],
  } as const;
  const scene = sceneOf({ ...same, madeEqual: [...same.madeEqual] }, (comparison) => {
    const added = (row: Row): Row => ({
      ...row,
      terms: row.terms.map((term) => ({ ...term, factor: each })),
      multiplied: each ** row.terms.length,
      added: each ** row.terms.length,
      toLimit: each ** row.terms.length,
      logShares: null,
    });
    const rows = compared(comparison);
    return { quick: rows.quick.map(added), careful: rows.careful.map(added) };
  });

  it.each(['reasons', 'stack'])('are not called none in “%s”', (of) =>
    expect(textOf(of, scene)).toMatch(/too small to show by itself\. Together they make ×?1\.02/),
  );
});
