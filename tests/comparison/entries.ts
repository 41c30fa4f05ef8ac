import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { parse } from 'yaml';
import { carbidesByDesignation, disputes, jobProfiles } from '../../src/model/index.ts';
import type { Quantity } from '../../src/model/index.ts';
import { equalisable } from '../../src/comparison/entry.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { KnifeEntry, ComparisonEntry } from '../../src/comparison/entry.ts';
import { notRecorded } from '../../src/runs/log.ts';
import type { Run } from '../../src/runs/log.ts';

/** The committed comparison of the rigging loft, as parsed. */
export function loftDocument(): Record<string, unknown> {
  const { note: _note, ...comparison } = parse(
    readFileSync('content/comparisons/loft.yaml', 'utf8'),
  ) as Record<string, unknown>;
  return comparison;
}

/** The same, checked: a comparison to change in tests. */
export function loft(): ComparisonEntry {
  const checked = validate(loftDocument());
  if (!checked.ok)
    throw new Error(checked.problems.map(({ path, message }) => `${path}: ${message}`).join('; '));
  return checked.entry;
}

/** The loft with one knife changed. */
export function loftWith(id: string, change: Partial<KnifeEntry>): ComparisonEntry {
  const entry = loft();
  return {
    ...entry,
    knives: entry.knives.map((knife) => (knife.id === id ? { ...knife, ...change } : knife)),
  };
}

/** A decimal between two limits, as people type it. */
const decimal = (low: number, high: number, places: number) =>
  fc
    .integer({ min: Math.ceil(low * 10 ** places), max: Math.floor(high * 10 ** places) })
    .map((n) => n / 10 ** places);

const quantity = (low: number, high: number, places: number): fc.Arbitrary<Quantity> => {
  const value = decimal(low, high, places);
  const plusMinus = decimal(0, (high - low) / 4, places);
  return fc.oneof(
    value,
    fc.record({ value, plusMinus }),
    fc.record({
      value,
      plusMinus,
      shape: fc.constantFrom('uniform' as const, 'triangular' as const, 'normal' as const),
    }),
    fc.tuple(value, value).map(([one, other]) => ({
      unknown: true as const,
      low: Math.min(one, other),
      high: Math.max(one, other),
    })),
  );
};

const along = (low: number, high: number, places: number) =>
  fc.record({
    heel: decimal(low, high, places),
    middle: decimal(low, high, places),
    tip: decimal(low, high, places),
  });

const title = (most: number) =>
  fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: most })
    .filter((text) => text.length <= most && text.trim() !== '' && !/\p{Cc}/u.test(text));

const knife: fc.Arbitrary<Omit<KnifeEntry, 'id'>> = fc.record(
  {
    name: title(80),
    state: fc.constantFrom(
      'as bought' as const,
      'resharpened' as const,
      'modified' as const,
      'not recorded' as const,
    ),
    angle: fc.oneof(
      fc.record(
        { deg: fc.oneof(quantity(6, 40, 1), along(6, 40, 1)), perSide: fc.constant(true as const) },
        { requiredKeys: ['deg'] },
      ),
      fc.record(
        {
          bevelMm: quantity(0.3, 0.8, 2),
          slantWidthMm: quantity(1.2, 1.8, 2),
          plusMinus: decimal(0.01, 0.05, 2),
        },
        { requiredKeys: ['bevelMm', 'slantWidthMm'] },
      ),
      fc.record(
        { bevelMm: quantity(0.3, 0.8, 2), heightMm: quantity(1, 1.3, 2), plusMinus: decimal(0.01, 0.05, 2) },
        { requiredKeys: ['bevelMm', 'heightMm'] },
      ),
    ),
    microbevelDeg: quantity(40, 44, 1),
    edgeMm: fc.oneof(quantity(0.1, 1, 2), along(0.1, 1, 2)),
    finish: fc.oneof(
      fc.record({
        scale: fc.constantFrom('FEPA-P' as const, 'FEPA-F' as const, 'JIS' as const, 'CAMI' as const),
        grit: fc.constantFrom(240, 320, 400, 500, 600, 800, 1000),
      }),
      fc.record({ um: quantity(2, 90, 1) }),
    ),
    grind: fc.oneof(
      fc.record({
        form: fc.constant('flat' as const),
        spineMm: quantity(1.5, 4, 1),
        heightMm: quantity(8, 20, 1),
      }),
      fc.record({
        form: fc.constantFrom('hollow' as const, 'convex' as const),
        spineMm: quantity(1.5, 4, 1),
        heightMm: quantity(8, 20, 1),
        // So wide that no hollow of these heights is ground through.
        radiusMm: quantity(600, 2000, 0),
      }),
    ),
    hrc: quantity(51, 65, 1),
    carbide: fc.oneof(
      fc.record({ designation: fc.constantFrom(...Object.keys(carbidesByDesignation)) }),
      fc.record({
        volPercent: fc.record(
          {
            Fe3C: quantity(0, 6, 1),
            CrC: quantity(0, 15, 1),
            CrVC: quantity(0, 9, 1),
            MC: quantity(0, 9, 1),
            M6C: quantity(0, 9, 1),
            MN: quantity(0, 4, 1),
            CrN: quantity(0, 4, 1),
          },
          { requiredKeys: [] },
        ),
      }),
    ),
    toughness: quantity(5, 40, 1),
  },
  { requiredKeys: ['name', 'state', 'angle', 'edgeMm', 'finish', 'grind', 'hrc', 'carbide'] },
);

/** Comparisons of every shape that the model can compute. */
const recorded = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | typeof notRecorded> =>
  fc.oneof(fc.constant(notRecorded), value);
const word = fc.constantFrom('one', 'Lot 2', 'erste', 'третий', '4 + 4');

/** Any run of a log. */
const run: fc.Arbitrary<Run> = fc
  .record(
    {
      knife: fc.oneof(
        fc.constantFrom('k-0', 'k-1'),
        word.map((called) => ({ called })),
      ),
      batch: recorded(word),
      sharpening: recorded(word),
      endPoint: recorded(word),
      checkedEvery: recorded(decimal(1, 100, 0)),
      startSharpness: recorded(decimal(1, 500, 1)),
      angleDeg: recorded(decimal(5, 40, 1)),
      burrChecked: recorded(fc.boolean()),
      judge: recorded(word),
      censored: fc.constant(true as const),
      order: fc.integer({ min: 1, max: 500 }),
      date: fc.constantFrom('2026-11-25', '2024-02-29'),
      remarks: word,
      leftOutBecause: word,
      series: fc
        .array(decimal(1, 300, 1), { minLength: 1, maxLength: 4 })
        .map((all) => all.map((sharpness, index) => ({ cut: index * 25, sharpness }))),
    },
    {
      requiredKeys: [
        'knife',
        'batch',
        'sharpening',
        'endPoint',
        'checkedEvery',
        'startSharpness',
        'angleDeg',
        'burrChecked',
        'judge',
      ],
    },
  )
  .chain((rest) =>
    fc
      .oneof(
        fc.record({ cutMm: decimal(1, 90_000, 0) }),
        fc.record({ cuts: decimal(1, 900, 0) }),
        fc.record({ cycles: fc.array(decimal(1, 20, 1), { minLength: 1, maxLength: 6 }) }),
      )
      .map((far) => ({ ...rest, ...far })),
  );

export const anyEntry: fc.Arbitrary<ComparisonEntry> = fc
  .record(
    {
      title: title(120),
      invented: fc.constant(true as const),
      knives: fc
        .array(knife, { minLength: 2, maxLength: 8 })
        .map((knives) => knives.map((one, index) => ({ id: `k-${index}`, ...one }))),
      reading: fc.constantFrom('quick' as const, 'careful' as const),
      work: fc.constantFrom(...jobProfiles.map(({ id }) => id as string)),
      outcome: fc.constantFrom('end-point' as const, 'fixed-strokes' as const),
      slicePush: decimal(0, 10, 1),
      contactDepthMm: quantity(2, 20, 1),
      friction: quantity(0.05, 0.5, 2),
      assumptions: fc.record(
        {
          angleExponent: quantity(1, 1.8, 2),
          thicknessExponent: quantity(0.2, 1, 2),
          finishExponent: quantity(0, 0.7, 2),
          hardnessExponent: quantity(0.6, 2, 2),
          residualCv: quantity(0, 0.25, 2),
          lifeExponent: quantity(0.5, 2.2, 2),
          wedgingShare: quantity(0.1, 0.6, 2),
          limitPower: quantity(1, 2, 2),
          structureWeights: fc.constantFrom<[number, number, number][]>([2, 1, 1], [0, 1, 1], [1, 0, 0]),
        },
        { requiredKeys: [] },
      ),
      gaugeBias: fc.record(
        { angleDeg: decimal(0, 2, 1), edgeMm: decimal(0, 0.05, 2), hrc: decimal(0, 2, 1) },
        { requiredKeys: [] },
      ),
      position: fc.record(
        {
          apex: fc.constantFrom(...disputes.apex),
          push: fc.constantFrom(...disputes.push),
          structure: fc.constantFrom(...disputes.structure),
          floor: fc.constantFrom(...disputes.floor),
        },
        { requiredKeys: [] },
      ),
      runs: fc.array(run, { maxLength: 30 }),
      plan: fc.record(
        {
          cv: decimal(0.01, 2, 2),
          ratio: decimal(1.01, 20, 2),
          runs: fc.integer({ min: 1, max: 200 }),
          batches: fc.integer({ min: 1, max: 20 }),
          control: title(80),
          correlation: decimal(-1, 0.99, 2),
          endPoint: decimal(1, 300, 1),
          start: fc.tuple(decimal(1, 100, 1), decimal(101, 300, 1)).map(([low, high]) => ({ low, high })),
          blind: fc.boolean(),
          seed: fc.nat(999_999),
          closed: fc.constant(true as const),
          reopened: fc.constant(true as const),
          numbersRestart: fc.boolean(),
          endPointLate: fc.constant(true as const),
          looks: fc
            .uniqueArray(fc.integer({ min: 1, max: 40 }), { maxLength: 4 })
            .map((all) => all.sort((a, b) => a - b)),
          lookEvery: decimal(1, 100, 0),
          life: decimal(1, 900, 0),
        },
        { requiredKeys: ['ratio', 'batches', 'blind', 'seed'] },
      ),
      lengthUnit: fc.constantFrom('mm' as const, 'thou' as const),
      madeEqual: fc.subarray([...equalisable]),
      faceValues: fc.option(fc.array(decimal(-90, 200, 1), { maxLength: 10 })),
    },
    {
      requiredKeys: [
        'title',
        'knives',
        'reading',
        'work',
        'slicePush',
        'contactDepthMm',
        'friction',
        'assumptions',
        'lengthUnit',
        'madeEqual',
        'faceValues',
      ],
    },
  )
  .chain((rest) =>
    fc
      .shuffledSubarray(
        rest.knives.map(({ id }) => id),
        { minLength: 2, maxLength: 2 },
      )
      .map(([baseline, subject]) => ({
        ...rest,
        baseline: baseline as string,
        subject: subject as string,
      })),
  );
