import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attributesOf, compare, jobProfiles, parameters } from '../../src/model/index.ts';
import { jsonSchema, schemaFiles } from '../../src/comparison/json-schema.ts';
import { angleQuestions } from '../../src/comparison/angle-questions.ts';
import { equalisable } from '../../src/comparison/entry.ts';
import { toModel } from '../../src/comparison/to-model.ts';
import { validate } from '../../src/comparison/validate.ts';
import type { AngleEntry, KnifeEntry, ComparisonEntry } from '../../src/comparison/entry.ts';
import { pair } from '../topics/odd-comparisons.ts';
import { anyEntry, loft, loftDocument, loftWith } from './entries.ts';

const problems = (input: unknown) => {
  const checked = validate(input);
  return checked.ok ? [] : checked.problems;
};
const knife = (entry: ComparisonEntry, id: string) => toModel(entry).knives.find((one) => one.id === id);

describe('the limits of the assumptions are the model’s own', () => {
  const ids = [
    'angleExponent',
    'thicknessExponent',
    'finishExponent',
    'hardnessExponent',
    'residualCv',
  ] as const;
  test.each([...ids, 'friction' as const])('%s', (id) => {
    const { low, high } = parameters[id].accepts;
    const using = (value: number): ComparisonEntry =>
      id === 'friction' ? { ...loft(), friction: value } : { ...loft(), assumptions: { [id]: value } };
    const path = id === 'friction' ? id : `assumptions.${id}`;
    for (const outside of [low - 0.01, high + 0.01])
      expect(problems(using(outside))).toMatchObject([{ path, message: expect.stringContaining(`${high}`) }]);
    // Friction at its end makes a wedge that the model itself refuses, naming the knife.
    for (const end of id === 'friction' ? [low, 1.2] : [low, high]) {
      expect(problems(using(end))).toEqual([]);
      expect(() => compare(toModel(using(end)))).not.toThrow();
    }
  });
});

describe('what is refused, where and why', () => {
  test.each<[string, unknown, string, string]>([
    [
      'an angle of 95°',
      loftWith('plover', { angle: { deg: 95 } }),
      'knives.0.angle.deg',
      'edge angle 95° is not between 4° and 45° per side',
    ],
    [
      'an angle of 0',
      loftWith('plover', { angle: { deg: 0 } }),
      'knives.0.angle.deg',
      'edge angle 0° is not between',
    ],
    [
      'an angle that is text',
      loftWith('plover', { angle: { deg: '24' } as never }),
      'knives.0.angle',
      'edge angle must be',
    ],
    ['no angle', loftWith('plover', { angle: undefined as never }), 'knives.0.angle', 'edge angle must be'],
    ['NaN', loftWith('plover', { hrc: Number.NaN }), 'knives.0.hrc', 'hardness must be'],
    [
      'infinity',
      loftWith('plover', { edgeMm: Infinity }),
      'knives.0.edgeMm',
      'thickness behind the edge (an endless number) mm is not between',
    ],
    ['1e308', loftWith('plover', { edgeMm: 1e308 }), 'knives.0.edgeMm', '1e+308 mm is not between'],
    [
      'a negative ±',
      loftWith('plover', { hrc: { value: 58, plusMinus: -1 } }),
      'knives.0.hrc.plusMinus',
      'the ± of hardness -1 HRC',
    ],
    [
      'a range that runs backwards',
      loftWith('plover', { hrc: { unknown: true, low: 62, high: 55 } }),
      'knives.0.hrc',
      'runs backwards: 62–55',
    ],
    ['an edge thicker than the spine', loftWith('plover', { edgeMm: 3.2 }), 'knives.0', '3.2'],
    [
      'a hollow ground through',
      loftWith('dunlin', { grind: { form: 'hollow', spineMm: 2.6, heightMm: 18, radiusMm: 20 } }),
      'knives.1',
      'Dunlin',
    ],
    [
      'a bevel no angle makes',
      loftWith('plover', { angle: { bevelMm: 2, slantWidthMm: 0.9 } }),
      'knives.0',
      'bevel',
    ],
    [
      'a grit without a scale',
      loftWith('plover', { finish: { grit: 400 } as never }),
      'knives.0.finish',
      'a grit with its scale',
    ],
    [
      'a grit outside its table',
      loftWith('plover', { finish: { scale: 'FEPA-P', grit: 5000 } }),
      'knives.0',
      '5000',
    ],
    [
      'an unknown designation',
      loftWith('plover', { carbide: { designation: 'AISI 9999' } }),
      'knives.0',
      'AISI 9999',
    ],
    [
      'a designation from Object',
      loftWith('plover', { carbide: { designation: 'constructor' } }),
      'knives.0',
      'constructor',
    ],
    [
      'a long name',
      loftWith('plover', { name: 'x'.repeat(10_000) }),
      'knives.0.name',
      'the name has 10000 characters; at most 80 fit',
    ],
    ['an empty name', loftWith('plover', { name: '' }), 'knives.0.name', 'the name is empty'],
    ['a blank name', loftWith('plover', { name: ' ' }), 'knives.0.name', 'the name is empty'],
    ['half a character', loftWith('plover', { name: '\ud800' }), 'knives.0.name', 'cannot be shown'],
    ['a control character', loftWith('plover', { name: 'Plo\u0000ver' }), 'knives.0.name', 'cannot be shown'],
    ['a field of its own', { ...loft(), prize: 1 }, 'prize', 'prize is not a field of a comparison'],
    [
      'two knives of one id',
      { ...loft(), knives: loft().knives.map((one) => ({ ...one, id: 'plover' })), subject: 'plover' },
      'knives.1.id',
      'two knives have the id “plover”',
    ],
    [
      'a subject that is the baseline',
      { ...loft(), subject: 'plover' },
      'subject',
      'cannot be compared with itself',
    ],
    [
      'a baseline that is not there',
      { ...loft(), baseline: 'heron' },
      'baseline',
      'the baseline “heron” is not among the knives: plover, dunlin, curlew, avocet',
    ],
    ['one knife', { ...loft(), knives: loft().knives.slice(0, 1) }, 'knives', 'two to eight knives, not 1'],
    [
      'nine knives',
      { ...loft(), knives: Array.from({ length: 9 }, (_, n) => ({ ...loft().knives[0], id: `k${n}` })) },
      'knives',
      'two to eight knives, not 9',
    ],
    ['unknown work', { ...loft(), work: 'sawing' }, 'work', 'the work “sawing” is none of: card, rope'],
    [
      'eleven percentages',
      { ...loft(), faceValues: Array.from({ length: 11 }, () => 10) },
      'faceValues',
      'at most ten percentages, not 11',
    ],
    ['−100%', { ...loft(), faceValues: [-100] }, 'faceValues.0', '-100% leaves nothing'],
    ['a list', [], '', 'not a comparison'],
    ['nothing', null, '', 'not a comparison'],
    ['text', 'comparison', '', 'not a comparison'],
  ])('%s', (_, input, path, message) => {
    const found = problems(input);
    expect(found.map((problem) => problem.path)).toContain(path);
    expect(found.find((problem) => problem.path === path)?.message).toContain(message);
  });

  test('a key named __proto__ is refused and changes nothing', () => {
    const text = JSON.stringify(loft()).replace('{', '{"__proto__":{"title":"x"},');
    expect(problems(JSON.parse(text))).not.toEqual([]);
    expect(({} as { title?: string }).title).toBeUndefined();
  });

  test('two knives that stand, and do not stand made equal, are refused as a whole', () => {
    const thin = { edgeMm: 0.3, grind: { form: 'flat', spineMm: 1.5, heightMm: 16 } } as const;
    const entry = pair(thin, { edgeMm: 2 });
    expect(problems(entry)).toEqual([]);
    expect(problems({ ...entry, madeEqual: ['edgeMm'] })).toEqual([
      {
        path: '',
        message: 'Dunlin: thickness behind the edge 2 mm is not at most the spine thickness 1.5 mm',
      },
    ]);
  });

  test('every problem is told, not only the first', () => {
    const entry = loft();
    const broken = {
      ...entry,
      knives: entry.knives.map((one): KnifeEntry => ({ ...one, hrc: 99, name: '' })),
    };
    expect(problems(broken)).toHaveLength(8);
  });

  test('anything at all is answered, never thrown at', () =>
    fc.assert(fc.property(fc.anything(), (input) => validate(input).ok === false)));
});

describe('what is accepted', () => {
  test('comes back equal and the model computes it', () =>
    fc.assert(
      fc.property(anyEntry, (entry) => {
        expect(validate(entry)).toEqual({ ok: true, entry });
        for (const reading of ['quick', 'careful'] as const) {
          for (const row of compare(toModel(entry), { reading }).rows)
            expect(row.multiplied).toBeGreaterThan(0);
        }
      }),
    ));

  test.each(['صقر البحر', '刀', '👨‍👩‍👧 family knife', '<b>bold</b>', "Robert'); --", 'ﷺ', 'x'.repeat(80)])(
    'the name %j',
    (name) => expect(problems(loftWith('plover', { name }))).toEqual([]),
  );

  test('the names of the model are the names of the schema', () => {
    expect(new Set(equalisable)).toEqual(
      new Set([...attributesOf.geometry, ...attributesOf.finish, ...attributesOf.steel]),
    );
    for (const { id } of jobProfiles) expect(problems({ ...loft(), work: id })).toEqual([]);
  });
});

describe('to the model', () => {
  const angleOf = (angle: AngleEntry) => knife(loftWith('plover', { angle }), 'plover')?.angleDeg;

  // t = 2 w sin θ = 2 h tan θ: plane trigonometry of the bevel.
  test('an angle from the width of the bevel is per side', () =>
    expect(angleOf({ bevelMm: 0.5, slantWidthMm: 1.2 })).toBeCloseTo(
      (Math.asin(0.5 / 2.4) * 180) / Math.PI,
      10,
    ));
  test('an angle from the height of the bevel is per side', () =>
    expect(angleOf({ bevelMm: 0.5, heightMm: 1.2 })).toBeCloseTo((Math.atan(0.5 / 2.4) * 180) / Math.PI, 10));

  test('the ± of the caliper reaches the angle', () => {
    const found = angleOf({ bevelMm: 0.5, heightMm: 1.2, plusMinus: 0.02 });
    const deg = (t: number, h: number) => (Math.atan(t / (2 * h)) * 180) / Math.PI;
    expect(found).toEqual({
      value: expect.closeTo(deg(0.5, 1.2), 10) as number,
      plusMinus: expect.closeTo((deg(0.52, 1.18) - deg(0.48, 1.22)) / 2, 10) as number,
    });
  });

  test('readings with a ± of their own reach the angle beside that of the caliper', () => {
    const deg = (t: number, h: number) => (Math.atan(t / (2 * h)) * 180) / Math.PI;
    expect(
      angleOf({
        bevelMm: { value: 0.5, plusMinus: 0.03 },
        heightMm: { value: 1.2, plusMinus: 0.1 },
        plusMinus: 0.02,
      }),
    ).toEqual({
      value: expect.closeTo(deg(0.5, 1.2), 10) as number,
      plusMinus: expect.closeTo((deg(0.55, 1.08) - deg(0.45, 1.32)) / 2, 10) as number,
    });
  });

  test('a reading that is not known leaves the angle between all it may have come to', () => {
    const not = (low: number, high: number) => ({ unknown: true as const, low, high });
    const side = (t: number, w: number) => (Math.asin(t / (2 * w)) * 180) / Math.PI;
    expect(angleOf({ bevelMm: not(0.3, 0.9), slantWidthMm: 1.2 })).toEqual({
      unknown: true,
      low: expect.closeTo(side(0.3, 1.2), 10) as number,
      high: expect.closeTo(side(0.9, 1.2), 10) as number,
    });
    // Neither known: from less than the model takes, to wider than any bevel of that width.
    expect(angleOf({ bevelMm: not(0.1, 0.9), slantWidthMm: not(0.4, 2.5) })).toEqual(not(4, 45));
    expect(angleOf({ bevelMm: not(0.1, 0.9), heightMm: not(0.2, 2.5) })).toEqual(not(4, 45));
  });

  test('readings along the edge are their mean ± half their spread', () => {
    expect(angleOf({ deg: { heel: 20, middle: 22, tip: 27 } })).toEqual({ value: 23, plusMinus: 3.5 });
    expect(angleOf({ deg: { heel: 20.1, middle: 20.1, tip: 20.1 } })).toBe(20.1);
  });

  test('made equal in everything, the subject is worth exactly the baseline', () => {
    const comparison = toModel({ ...loft(), madeEqual: [...equalisable] });
    for (const reading of ['quick', 'careful'] as const) {
      const row = compare(comparison, { reading }).rows.find(({ knife: id }) => id === 'dunlin');
      expect(row?.multiplied).toBe(1);
    }
  });

  test('evening up one attribute moves that attribute only', () => {
    const before = knife(loft(), 'dunlin');
    const after = knife({ ...loft(), madeEqual: ['edgeMm'] }, 'dunlin');
    expect(after).toEqual({ ...before, edgeMm: knife(loft(), 'plover')?.edgeMm });
  });
});

describe('an angle that looks like an included one', () => {
  const ask = (angle: AngleEntry) => angleQuestions(loftWith('plover', { angle }));
  const asked = [{ knife: 'plover', deg: 36, perSideIfIncluded: 18 }];

  test.each<[AngleEntry]>([
    [{ deg: 36 }],
    [{ deg: { value: 36, plusMinus: 1 } }],
    [{ deg: { unknown: true, low: 32, high: 40 } }],
    [{ deg: { heel: 20, middle: 24, tip: 36 } }],
  ])('%j is asked about', (angle) => expect(ask(angle)).toEqual(asked));

  test.each<[AngleEntry]>([[{ deg: 30 }], [{ deg: 36, perSide: true }], [{ bevelMm: 1.3, heightMm: 0.9 }]])(
    '%j is not',
    (angle) => expect(ask(angle)).toEqual([]),
  );

  test('it is a question, not an error', () =>
    expect(problems(loftWith('plover', { angle: { deg: 36 } }))).toEqual([]));
});

describe('what was read once', () => {
  const read = (input: unknown): ComparisonEntry => {
    const checked = validate(input);
    if (!checked.ok) throw new Error('refused');
    return checked.entry;
  };
  const before = read(loftDocument());

  test('is the same the next time, save for what changed', () => {
    const [first, ...others] = before.knives;
    if (!first) throw new Error('no knife');
    const after = read({ ...before, knives: [{ ...first, hrc: 61 }, ...others] });
    expect(after.knives[0]).toEqual({ ...first, hrc: 61 });
    expect(after.knives.slice(1).every((one, index) => one === others[index])).toBe(true);
    expect(toModel(after).knives[0]).not.toBe(toModel(before).knives[0]);
    expect(toModel(after).knives[1]).toBe(toModel(before).knives[1]);
  });

  test('is looked at again where it is a copy', () => {
    const knives = before.knives.map((one) => ({ ...one, hrc: 99 }));
    expect(problems({ ...before, knives })).toHaveLength(knives.length);
    expect(problems({ ...before, assumptions: { angleExponent: 99 } })).toHaveLength(1);
  });

  test('is one comparison to the model where only what it does not see changed', () => {
    const entry = read({ ...before, title: 'One' });
    const model = toModel(entry);
    expect(toModel(read({ ...entry, title: 'Another', faceValues: [5] }))).toBe(model);
    expect(toModel(read({ ...entry, slicePush: entry.slicePush + 1 }))).not.toBe(model);
    expect(toModel(read({ ...entry, madeEqual: ['hrc'] }))).not.toBe(model);
  });
});

describe.each(schemaFiles)('the JSON Schema %s', (file) => {
  const committed = JSON.parse(readFileSync(`public/${file}`, 'utf8')) as object;
  const accepts = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(committed);

  test('in public/ is up to date (npm run schema)', () => expect(committed).toEqual(jsonSchema(file)));
  test('takes the loft', () => expect(accepts(loftDocument())).toBe(true));
  test('takes every comparison the check takes', () =>
    fc.assert(fc.property(anyEntry, (entry) => accepts(entry))));
  test.each<[string, unknown]>([
    ['an angle of 95°', loftWith('plover', { angle: { deg: 95 } })],
    ['a field of its own', { ...loft(), prize: 1 }],
    ['one knife', { ...loft(), knives: loft().knives.slice(0, 1) }],
    ['−100%', { ...loft(), faceValues: [-100] }],
    ['a long name', loftWith('plover', { name: 'x'.repeat(81) })],
  ])('refuses %s', (_, input) => expect(accepts(input)).toBe(false));
});
