import papaparse from 'papaparse';
import { describe, expect, it } from 'vitest';
import { sceneOf } from '../../src/scene/scene.ts';
import { tableCsv, tableJson } from '../../src/pictures/data.ts';
import { unguarded } from '../../src/runs/spreadsheet.ts';
import { topics } from '../../src/topics/all.ts';
import { inventedRuns, loftTruths } from '../../src/runs/invented.ts';
import { loft } from '../comparison/entries.ts';

const figures = Object.values(topics).flatMap((topic) => topic.figures ?? []);
// Names as people give them, one of which a spreadsheet would take for a formula.
const entry = loft();
const names: Record<string, string> = { plover: '=1+1, "Plover"', dunlin: "'Dunlin;\told" };
const scene = sceneOf({
  ...entry,
  knives: entry.knives.map((knife) => ({ ...knife, name: names[knife.id] ?? knife.name })),
  runs: inventedRuns(loftTruths, 3),
});

describe.each(figures.map((figure) => ({ figure, id: figure.id })))('the numbers of $id', ({ figure }) => {
  const table = figure.table(scene);

  it('come back equal from CSV, and are no formula to a spreadsheet', () => {
    const text = tableCsv(table);
    const read = papaparse.parse<string[]>(text.slice(1), { skipEmptyLines: true });
    expect(read.errors).toEqual([]);
    expect(read.data.flat().filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    expect(read.data.map((row) => row.map(unguarded))).toEqual([table.columns, ...table.rows]);
  });

  it('come back equal from JSON', () => {
    const text = tableJson({
      figure: figure.id,
      title: figure.title(scene),
      about: { Units: figure.units },
      ...table,
    });
    expect(JSON.parse(text)).toEqual({
      keenfold: 'figure',
      figure: figure.id,
      title: figure.title(scene),
      about: { Units: figure.units },
      columns: table.columns,
      rows: table.rows,
    });
  });
});
