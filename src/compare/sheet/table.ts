import { knifeFields } from '../../comparison/knife-fields.ts';
import type { KnifeFieldName } from '../../comparison/knife-fields.ts';
import { found } from '../../comparison/found.ts';
import type { Structure } from '../../model/index.ts';
import type { Scene } from '../../scene/scene.ts';
import { times } from '../../scene/show.ts';
import { knifeFieldsShown } from '../knife-fields.ts';

/** A whole comparison in one table: a knife a column, its measures, and its ratio to the baseline three ways. */
export function comparisonTable({ knives, comparison, rows }: Scene): {
  columns: string[];
  rows: string[][];
} {
  const measures = (Object.keys(knifeFields) as KnifeFieldName[]).flatMap((name) => {
    const { row } = knifeFieldsShown[name];
    if (row === null || comparison.knives.every((knife) => row.applies?.(knife) === false)) return [];
    const cells = comparison.knives.map((knife) => row.cell(knife, found(knives, knife.id, 'knife')));
    return [[row.title, ...cells]];
  });
  const ratio = (reading: 'careful' | 'quick', of: Structure) => rows[reading].map((row) => times(row[of]));
  return {
    columns: ['', ...knives.map(({ name }) => name)],
    rows: [
      ...measures,
      ['If all multiply, middle settings', ...ratio('careful', 'multiplied')],
      ['If the forces add', ...ratio('careful', 'added')],
      ['If the force has a limit', ...ratio('careful', 'toLimit')],
      ['Quick sum', ...ratio('quick', 'multiplied')],
    ],
  };
}
