import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readCsv } from '../../src/runs/csv.ts';
import { textOf } from '../../src/runs/text.ts';

/** The files of csv-spectrum, an acid test for readers of CSV, with what they say (BSD-2-Clause; a dependency). */
const folder = 'node_modules/csv-spectrum';
const names = readdirSync(`${folder}/csvs`).map((file) => file.replace('.csv', ''));
const parse = (name: string): unknown =>
  JSON.parse(textOf(readFileSync(`${folder}/json/${name}.json`)).text) as unknown;

test('all of them are there', () => {
  expect(names).toHaveLength(12);
});

test.each(names)('%s', (name) => {
  const { text } = textOf(readFileSync(`${folder}/csvs/${name}.csv`));
  const { found, preview } = readCsv(text, { delimiter: ',' });
  const rows = preview.map((row) =>
    Object.fromEntries(found.headers.map(({ header }, i) => [header, row[i] ?? '']).filter(([key]) => key)),
  );
  const described = parse(name);
  // This file and what it is told to say differ in one number.
  if (name === 'location_coordinates')
    Object.assign(described as object, { 'Contact Phone Number': '2095257564' });
  expect(rows).toEqual(Array.isArray(described) ? described : [described]);
});
