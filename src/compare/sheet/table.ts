import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { described } from '../../phrases/factor-phrases.ts';

/** A whole comparison in one table: a knife a column, its measures, and its ratio to the baseline three ways. */
export function comparisonTable({ knives, comparison, rows }: Scene): {
  columns: string[];
  rows: string[][];
} {
  const { wedge, apex, ...others } = described;
  const measures = [
    { title: 'Edge angle', measure: wedge.measure },
    ...(comparison.knives.some(({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined)
      ? [{ title: 'At the apex', measure: apex.measure }]
      : []),
    ...Object.values(others),
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
