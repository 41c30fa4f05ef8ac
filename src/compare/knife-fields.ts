/**
 * How a page shows and reads every field of a knife: its inputs, its row in a table, its numbers in a correction. What
 * the fields are is the table in `src/comparison/knife-fields.ts`; one that is missing here does not compile.
 */
import { nominal } from '../model/index.ts';
import type { Knife } from '../model/index.ts';
import type { KnifeEntry } from '../comparison/entry.ts';
import type { KnifeFieldName } from '../comparison/knife-fields.ts';
import { factorWords } from '../phrases/factor-words.ts';
import { angleFields, edgeFields, finishFields, microbevelFields } from './edge-fields.ts';
import type { Field } from './field.ts';
import { grindFields } from './grind-fields.ts';
import { nameFields, stateFields } from './name-fields.ts';
import { carbideFields, hardnessFields, toughnessFields } from './steel-fields.ts';

/** One row of the table of a comparison. */
interface Row {
  title: string;
  /** What stands in the column of a knife, with what is made equal. */
  cell(knife: Knife, entry: KnifeEntry): string;
  /** The row is shown where this holds for a knife; always where it is left out. */
  applies?(knife: Knife): boolean;
}

export interface KnifeFieldShown {
  /** Under which heading its inputs stand; null where they stand above all headings. */
  group: 'Edge' | 'Grind' | 'Steel' | null;
  /** Its inputs by name. Together they show the field and write it. */
  inputs: Readonly<Record<string, Field>>;
  /** Null where no table shows it. */
  row: Row | null;
  /** Its numbers a reader may have quoted, each with its name and unit. */
  numbers(knife: Knife, entry: KnifeEntry): readonly (readonly [what: string, value: number])[];
}

const noNumbers = (): [] => [];

/** The fields in the order in which a person measures a knife. */
export const knifeFieldsShown: Readonly<Record<KnifeFieldName, KnifeFieldShown>> = {
  id: { group: null, inputs: {}, row: null, numbers: noNumbers },
  name: { group: null, inputs: nameFields, row: null, numbers: noNumbers },
  state: { group: null, inputs: stateFields, row: null, numbers: noNumbers },
  angle: {
    group: 'Edge',
    inputs: angleFields,
    row: { title: 'Edge angle', cell: factorWords('wedge').measure },
    numbers: ({ angleDeg }) => [['edge angle per side, °', nominal(angleDeg)]],
  },
  edgeMm: {
    group: 'Edge',
    inputs: edgeFields,
    row: { title: factorWords('thickness').title, cell: factorWords('thickness').measure },
    numbers: ({ edgeMm }) => [['thickness behind the edge, mm', nominal(edgeMm)]],
  },
  finish: {
    group: 'Edge',
    inputs: finishFields,
    row: { title: factorWords('finish').title, cell: factorWords('finish').measure },
    numbers: ({ finish }) =>
      'um' in finish ? [['finish, µm', nominal(finish.um)]] : [[`finish, grit ${finish.scale}`, finish.grit]],
  },
  microbevelDeg: {
    group: 'Edge',
    inputs: microbevelFields,
    row: {
      title: 'At the apex',
      cell: factorWords('apex').measure,
      applies: ({ microbevelAngleDeg }) => microbevelAngleDeg !== undefined,
    },
    numbers: ({ microbevelAngleDeg }) =>
      microbevelAngleDeg === undefined ? [] : [['microbevel angle per side, °', nominal(microbevelAngleDeg)]],
  },
  grind: {
    group: 'Grind',
    inputs: grindFields,
    row: { title: factorWords('grind').title, cell: factorWords('grind').measure },
    numbers: ({ grind: { spineMm, heightMm, radiusMm } }) => [
      ['thickness at the spine, mm', nominal(spineMm)],
      ['height of the grind, mm', nominal(heightMm)],
      ...(radiusMm === undefined ? [] : [['radius of the grind, mm', nominal(radiusMm)] as const]),
    ],
  },
  hrc: {
    group: 'Steel',
    inputs: hardnessFields,
    row: { title: factorWords('hardness').title, cell: factorWords('hardness').measure },
    numbers: ({ hrc }) => [['hardness, HRC', nominal(hrc)]],
  },
  carbide: {
    group: 'Steel',
    inputs: carbideFields,
    row: { title: factorWords('carbide').title, cell: factorWords('carbide').measure },
    numbers: ({ carbideVolPercent }) =>
      Object.entries(carbideVolPercent).map(([kind, volume]) => [
        `${kind}, volume per cent`,
        nominal(volume),
      ]),
  },
  toughness: {
    group: 'Steel',
    inputs: toughnessFields,
    row: null,
    numbers: ({ toughness }) => (toughness === undefined ? [] : [['toughness', nominal(toughness)]]),
  },
};
