import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { told } from '../../phrases/factor-phrases.ts';

/** A whole line-up in one table: a knife a column, its measures, and its ratio to the baseline three ways. */
export function lineUpTable({ knives, lineUp, rows }: Scene): { columns: string[]; rows: string[][] } {
  const { wedge, apex, ...others } = told;
  const measures = [
    { title: 'Edge angle', measure: wedge.measure },
    ...(lineUp.knives.some(({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined)
      ? [{ title: 'At the apex', measure: apex.measure }]
      : []),
    ...Object.values(others),
  ];
  const ratio = (reading: 'close' | 'pocket', of: 'product' | 'rival') =>
    rows[reading].map((row) => times(row[of]));
  return {
    columns: ['', ...knives.map(({ name }) => name)],
    rows: [
      ...measures.map(({ title, measure }) => [title, ...lineUp.knives.map(measure)]),
      ['Close reading', ...ratio('close', 'product')],
      ['Forces added instead', ...ratio('close', 'rival')],
      ['Pocket reading', ...ratio('pocket', 'product')],
    ],
  };
}
