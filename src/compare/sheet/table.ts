import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { factorWords } from '../../phrases/factor-words.ts';
import { factorIds } from '../../scene/factors.ts';

/** A whole comparison in one table: a knife a column, its measures, and its ratio to the baseline three ways. */
export function comparisonTable({ knives, comparison, rows }: Scene): {
  columns: string[];
  rows: string[][];
} {
  const others = factorIds.filter((id) => id !== 'wedge' && id !== 'apex').map(factorWords);
  const measures = [
    { title: 'Edge angle', measure: factorWords('wedge').measure },
    ...(comparison.knives.some(({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined)
      ? [{ title: 'At the apex', measure: factorWords('apex').measure }]
      : []),
    ...others,
  ];
  const ratio = (reading: 'careful' | 'quick', of: 'product' | 'rival') =>
    rows[reading].map((row) => times(row[of]));
  return {
    columns: ['', ...knives.map(({ name }) => name)],
    rows: [
      ...measures.map(({ title, measure }) => [title, ...comparison.knives.map(measure)]),
      ['Close reading', ...ratio('careful', 'product')],
      ['Forces added instead', ...ratio('careful', 'rival')],
      ['Pocket reading', ...ratio('quick', 'product')],
    ],
  };
}
