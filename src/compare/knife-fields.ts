/**
 * How a page shows and reads every field of a knife: its inputs, its row in a table, its numbers in a correction. What
 * the fields are is the table in `src/comparison/knife-fields.ts`; one that is missing here does not compile.
 */
import { isUnknown, nominal } from '../model/index.ts';
import type { Knife } from '../model/index.ts';
import type { KnifeEntry } from '../comparison/entry.ts';
import type { KnifeFieldName } from '../comparison/knife-fields.ts';
import { brief, plain } from '../scene/show.ts';
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

/** Where the page asks for it: at once, or in one of the folds below. */
export type Place = 'essentials' | 'more' | 'carbide' | 'caliper';

/** A line of the form: one question, asked of each knife. */
export interface EntryRow {
  place: Place;
  title: string;
  /** A few words below the title. */
  hint?: string;
  /** The inputs of each knife, by their names. */
  inputs: readonly string[];
  /** What is known of a knife's answer besides what is typed, below its inputs. */
  after?(knife: Knife, entry: KnifeEntry): string;
}

export interface KnifeFieldShown {
  /** The lines of the form that ask for it. */
  asked: readonly EntryRow[];
  /** Its inputs by name. Together they show the field and write it. */
  inputs: Readonly<Record<string, Field>>;
  /** Null where no table shows it. */
  row: Row | null;
  /** Its numbers a reader may have quoted, each with its name and unit. */
  numbers(knife: Knife, entry: KnifeEntry): readonly (readonly [what: string, value: number])[];
}

const noNumbers = (): [] => [];

/** The angle that follows from caliper readings: nobody typed it. */
const fromCaliper = ({ angleDeg }: Knife, { angle }: KnifeEntry): string =>
  'deg' in angle ? '' : `${plain(nominal(angleDeg), 3)}° from the caliper`;

/** How much carbide the steel holds, of all kinds. */
function carbideShown({ carbideVolPercent }: Knife, { carbide }: KnifeEntry): string {
  const volumes = Object.values(carbideVolPercent);
  if (volumes.some(isUnknown)) return 'carbide not known: a wide range';
  const all = brief(volumes.reduce<number>((sum, volume) => sum + nominal(volume), 0));
  return 'designation' in carbide ? `about ${all}% carbide` : `${all}% carbide`;
}

/** The fields in the order in which a person measures a knife. */
export const knifeFieldsShown: Readonly<Record<KnifeFieldName, KnifeFieldShown>> = {
  id: { asked: [], inputs: {}, row: null, numbers: noNumbers },
  name: {
    asked: [{ place: 'essentials', title: 'Name', inputs: ['name'] }],
    inputs: nameFields,
    row: null,
    numbers: noNumbers,
  },
  state: {
    asked: [{ place: 'more', title: 'The edge is', inputs: ['state'] }],
    inputs: stateFields,
    row: null,
    numbers: noNumbers,
  },
  angle: {
    asked: [
      {
        place: 'essentials',
        title: 'Angle per side',
        hint: 'half the whole angle',
        inputs: ['angle'],
        after: fromCaliper,
      },
      { place: 'caliper', title: 'Use for the angle', inputs: ['angleWay'] },
      { place: 'caliper', title: 'A', hint: 'across the shoulder', inputs: ['bevelThickness'] },
      {
        place: 'caliper',
        title: 'B or C',
        hint: 'along one bevel, or along the blade',
        inputs: ['bevelSide'],
      },
    ],
    inputs: angleFields,
    row: { title: 'Edge angle', cell: factorWords('wedge').measure },
    numbers: ({ angleDeg }) => [['edge angle per side, °', nominal(angleDeg)]],
  },
  edgeMm: {
    asked: [
      {
        place: 'essentials',
        title: 'Behind the edge',
        hint: 'thickness where the bevel begins',
        inputs: ['edge'],
      },
    ],
    inputs: edgeFields,
    row: { title: factorWords('thickness').title, cell: factorWords('thickness').measure },
    numbers: ({ edgeMm }) => [['thickness behind the edge, mm', nominal(edgeMm)]],
  },
  finish: {
    asked: [
      {
        place: 'essentials',
        title: 'Finish',
        hint: 'last grit, such as P1200',
        inputs: ['finishScale', 'finish'],
      },
    ],
    inputs: finishFields,
    row: { title: factorWords('finish').title, cell: factorWords('finish').measure },
    numbers: ({ finish }) =>
      'um' in finish ? [['finish, µm', nominal(finish.um)]] : [[`finish, grit ${finish.scale}`, finish.grit]],
  },
  microbevelDeg: {
    asked: [{ place: 'more', title: 'Microbevel, per side', hint: 'empty: none', inputs: ['microbevel'] }],
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
    asked: [
      { place: 'more', title: 'Grind', inputs: ['grindForm'] },
      { place: 'more', title: 'Thickness at the spine', hint: 'above the grind', inputs: ['spine'] },
      {
        place: 'more',
        title: 'Height of the grind',
        hint: 'shoulder to full thickness',
        inputs: ['grindHeight'],
      },
      {
        place: 'more',
        title: 'Radius of the face',
        hint: 'of the wheel, or of the bulge',
        inputs: ['radius'],
      },
    ],
    inputs: grindFields,
    row: { title: factorWords('grind').title, cell: factorWords('grind').measure },
    numbers: ({ grind: { spineMm, heightMm, radiusMm } }) => [
      ['thickness at the spine, mm', nominal(spineMm)],
      ['height of the grind, mm', nominal(heightMm)],
      ...(radiusMm === undefined ? [] : [['radius of the grind, mm', nominal(radiusMm)] as const]),
    ],
  },
  hrc: {
    asked: [{ place: 'essentials', title: 'Hardness', inputs: ['hrc'] }],
    inputs: hardnessFields,
    row: { title: factorWords('hardness').title, cell: factorWords('hardness').measure },
    numbers: ({ hrc }) => [['hardness, HRC', nominal(hrc)]],
  },
  carbide: {
    asked: [
      {
        place: 'essentials',
        title: 'Steel',
        hint: 'by its designation',
        inputs: ['steel'],
        after: carbideShown,
      },
      ...Object.entries(carbideFields)
        .filter(([name]) => name !== 'steel')
        .map(([name, { label }]): EntryRow => ({ place: 'carbide', title: label, inputs: [name] })),
    ],
    inputs: carbideFields,
    row: { title: factorWords('carbide').title, cell: factorWords('carbide').measure },
    numbers: ({ carbideVolPercent }) =>
      Object.entries(carbideVolPercent).map(([kind, volume]) => [
        `${kind}, volume per cent`,
        nominal(volume),
      ]),
  },
  toughness: {
    asked: [
      {
        place: 'more',
        title: 'Toughness',
        hint: 'MPa√m, or one index for all',
        inputs: ['toughness'],
      },
    ],
    inputs: toughnessFields,
    row: null,
    numbers: ({ toughness }) => (toughness === undefined ? [] : [['toughness', nominal(toughness)]]),
  },
};
