import { describe, expect, test } from 'vitest';
import { compare } from '../../../src/model/index.ts';
import type { Knife, Comparison, Quantity, Reading } from '../../../src/model/index.ts';
import { plover as knife } from '../knives.ts';

const plover: Knife = { ...knife, toughness: 20 };
const comparison = (change: Partial<Knife>, more: Partial<Comparison> = {}): Comparison => ({
  knives: [plover, { ...plover, id: 'dunlin', name: 'Dunlin', ...change }],
  baseline: 'plover',
  ...more,
});
const notes = (
  change: Partial<Knife>,
  more: Partial<Comparison> = {},
  reading: Reading = 'careful',
): string[] => compare(comparison(change, more), { reading }).rows[1]?.notes ?? [];
const unknown = (low: number, high: number): Quantity => ({ unknown: true, low, high });

describe('what a reader is told of a knife', () => {
  test('nothing, where there is nothing to tell', () => {
    expect(notes({})).toEqual([]);
    expect(compare(comparison({})).rows[0]?.notes).toEqual([]);
  });

  // The floor: tan θf = tan 5°·(697/HV)^k, k ½ to 1, and 633, 720 HV at 57, 61 HRC by ASTM E140 table 1.
  test.each([
    [57, 6, '5.2° to 5.5°'],
    [61, 4.5, '4.8° to 4.9°'],
  ])('at %d HRC and %d°, that the edge is at the floor of %s', (hrc, angleDeg, floor) => {
    expect(notes({ hrc, angleDeg }, {}, 'quick')).toEqual([
      `Dunlin is at the floor: at ${angleDeg}° per side the bevel itself may break away. In clean slicing of card that happens somewhere between 4° and 6°. For its hardness it would be about ${floor}.`,
    ]);
    expect(notes({ hrc, angleDeg: 6.01 }, {}, 'quick')).toEqual([]);
  });

  test('of a soft one also above 6°, below the floor of its own hardness', () => {
    // 238 HV at 20 HRC: arctan(tan 5°·(697/238)^k) = 8.51° to 14.37°; the closed form of the conversion is 0.4% off there.
    expect(notes({ hrc: 20, angleDeg: 14.2 }, {}, 'quick').join()).toMatch(
      /For its hardness it would be about 8\.5° to 14°\./,
    );
    expect(notes({ hrc: 20, angleDeg: 14.6 }, {}, 'quick')).toEqual([]);
  });

  test('that an angle above 30° looks like an included one', () => {
    expect(notes({ angleDeg: 36 })).toEqual([
      'Dunlin has 36° per side, which looks like an included angle: half of it would be 18°.',
    ]);
    expect(notes({ angleDeg: 30 })).toEqual([]);
  });

  test('that a wedge no wider than the friction angle sticks, in the careful estimate', () => {
    // arctan 0.3 = 16.7°.
    const friction = 0.3;
    expect(notes({ angleDeg: 16.6 }, { friction })).toEqual([
      'At 16.6° per side Dunlin is no wider than the friction angle of 16.7°. So it sticks in the cut when you let go, which changes nothing in the ratio.',
    ]);
    expect(notes({ angleDeg: 16.8 }, { friction })).toEqual([]);
    expect(notes({ angleDeg: 16.6 }, { friction }, 'quick')).toEqual([]);
    // The friction left at twice as fast a slice: 0.3/√(1 + 4 cos² 12°) is an angle of 7.8°.
    expect(notes({ angleDeg: 12 }, { friction, slicePush: 2 })).toEqual([]);
  });

  test('which term takes the angle of a microbevel', () => {
    expect(notes({ microbevelAngleDeg: 24.5 })).toEqual([
      'Dunlin has a microbevel at 24.5°. The apex and the side load take that angle; the wedge takes the bevel’s 20° (assumed).',
    ]);
  });

  test('that a hollow grind has a waist', () => {
    const hollow = (radiusMm: number) => ({ form: 'hollow', spineMm: 3, heightMm: 20, radiusMm }) as const;
    const deep = { contactDepthMm: 20 };
    // Both circles rise from the chord by 2·10/√(R² − 10²) at its foot, the chord itself by 2.5/20: a waist up to R 160.3.
    expect(notes({ grind: hollow(100) }, deep)).toHaveLength(1);
    expect(notes({ grind: hollow(100) }, deep)[0]).toMatch(
      /^Dunlin has a waist: its hollow grind thins to 0\.\d+ mm above a shoulder of 0.5 mm\.$/,
    );
    expect(notes({ grind: hollow(159) }, deep)).toHaveLength(1);
    expect(notes({ grind: hollow(161) }, deep)).toEqual([]);
  });

  test('that the cut reaches past the grind', () => {
    const grind = { form: 'flat', spineMm: 3, heightMm: 6 } as const;
    expect(notes({ grind }, { contactDepthMm: 10 })).toEqual([
      'The cut reaches 10 mm above the shoulder of Dunlin, past the top of its grind at 6 mm. Above that the blade counts as 3 mm thick.',
    ]);
    expect(notes({ grind }, { contactDepthMm: 6 })).toEqual([]);
    // 8 mm where no depth is given.
    expect(notes({ grind })[0]).toContain('reaches 8 mm');
    expect(notes({ grind: { ...grind, heightMm: 8 } })).toEqual([]);
  });

  test.each<[string, Partial<Knife>, string]>([
    ['edge angle', { angleDeg: unknown(15, 20) }, '15–20° per side'],
    ['thickness behind the edge', { edgeMm: unknown(0.3, 0.6) }, '0.3–0.6 mm'],
    ['finish', { finish: { um: unknown(10, 40) } }, '10–40 µm'],
    ['hardness', { hrc: unknown(56, 60) }, '56–60 HRC'],
    ['carbide volume', { carbideVolPercent: { CrC: 6, MC: unknown(1, 3) } }, '1–3%'],
    ['toughness', { toughness: unknown(10, 30) }, '10–30'],
  ])('that its %s is not known', (what, change, range) => {
    expect(notes(change)).toEqual([
      `The ${what} of Dunlin isn’t known. The middle of ${range} stands in, and the true ratio may be well off.`,
    ]);
  });

  test('what is not known, once, where that is more than one measure', () => {
    expect(
      notes({ angleDeg: unknown(15, 20), hrc: unknown(56, 60), finish: { um: unknown(10, 40) } }),
    ).toEqual([
      'Not known of Dunlin: edge angle, finish and hardness. The middles of their ranges stand in, and the true ratio may be well off.',
    ]);
  });

  test('that its microbevel is not known', () => {
    expect(notes({ microbevelAngleDeg: unknown(22, 28) })).toContain(
      'The microbevel angle of Dunlin isn’t known. The middle of 22–28° per side stands in, and the true ratio may be well off.',
    );
  });

  test('that its grind is as good as none, and counts as half a degree', () => {
    // tan 0.5° = (T − t)/2H: 0.2618 mm over 15 mm.
    const slab = (spineMm: number) => ({ grind: { form: 'flat', spineMm, heightMm: 15 } }) as const;
    for (const reading of ['quick', 'careful'] as const) {
      expect(notes(slab(0.76), {}, reading)).toEqual([
        'The primary grind of Dunlin is flatter than 0.5° a side over the depth of the cut, and counts as 0.5°.',
      ]);
      expect(notes(slab(0.77), {}, reading)).toEqual([]);
    }
  });

  test('that it is so thick that the model has more thickness cut longer', () => {
    const said =
      'Dunlin is so thick behind the edge that in the model more thickness cuts longer. The grind above gets flatter as the edge gets thicker. Don’t rely on its thickness there.';
    // At T 3, H 14 and slice/push 3 it turns at 1.72 mm (own calculation, tests/reference/model-three-laws.test.ts).
    const grind = { form: 'flat', spineMm: 3, heightMm: 14 } as const;
    expect(notes({ edgeMm: 1.75, grind }, { slicePush: 3 })).toEqual([said]);
    expect(notes({ edgeMm: 1.7, grind }, { slicePush: 3 })).toEqual([]);
    expect(notes({ edgeMm: 1.75, grind }, { slicePush: 3 }, 'quick')).toEqual([]);
    // Under a short thick grind the forces added may turn where the factors multiplied do not yet.
    const short: Partial<Knife> = {
      edgeMm: 1.08,
      grind: { form: 'hollow', spineMm: 5.35, heightMm: 6.53, radiusMm: 14.67 },
    };
    const little = { slicePush: 3, assumptions: { thicknessExponent: 0.269 } };
    const thicker = { ...short, edgeMm: 1.081 };
    const gained = (structure: 'multiplied' | 'added'): boolean => {
      const of = (change: Partial<Knife>) => compare(comparison(change, little)).rows[1]?.[structure] ?? NaN;
      return of(thicker) > of(short);
    };
    expect([gained('multiplied'), gained('added')]).toEqual([false, true]);
    expect(notes(short, little)).toContain(said);
    // As thick as its spine there is nothing thicker to compare with.
    expect(notes({ edgeMm: 3, grind }, { slicePush: 3 }).join()).not.toContain('more thickness');
  });

  test('that wedging alone is nearly the end point', () => {
    const said =
      'If the force has a limit, wedging alone is nearly the end point for Dunlin. Little is left for its edge to get blunt in.';
    // The ordinary blade itself, R = 1: s is the share.
    const ordinary = { edgeMm: 0.4, grind: { form: 'flat', spineMm: 3, heightMm: 14 } } as const;
    expect(notes(ordinary, { assumptions: { wedgingShare: 0.95 } })).toEqual([said]);
    expect(notes(ordinary, { assumptions: { wedgingShare: 0.949 } })).toEqual([]);
    expect(notes(ordinary, { assumptions: { wedgingShare: 0.95 } }, 'quick')).toEqual([]);
  });

  test('that its toughness is not known, but not of the baseline', () => {
    const { toughness: _known, ...bare } = plover;
    const both = compare({ knives: [bare, { ...bare, id: 'dunlin', name: 'Dunlin' }], baseline: 'plover' });
    expect(both.rows.map((row) => row.notes)).toEqual([
      [],
      ['The toughness of Dunlin isn’t known, so nothing is said about how it resists chipping.'],
    ]);
    expect(both.rows[1]?.sideLoad.chipping).toBeNull();
    // Only one of the two known is not enough for a ratio either.
    for (const knives of [
      [bare, { ...plover, id: 'dunlin' }],
      [plover, { ...bare, id: 'dunlin' }],
    ])
      expect(compare({ knives, baseline: 'plover' }).rows[1]?.sideLoad.chipping).toBeNull();
    // At one angle both ends of the range are the ratio of the toughnesses, 30/20.
    expect(compare(comparison({ toughness: 30 })).rows[1]?.sideLoad.chipping).toEqual({
      low: expect.closeTo(1.5, 12) as number,
      high: expect.closeTo(1.5, 12) as number,
    });
  });
});

describe('an input of a comparison is refused by its name, range and unit', () => {
  const beyond: [string, Partial<Comparison>, string][] = [
    ['contact depth', { contactDepthMm: 0.05 }, 'contact depth 0.05 mm is not between 0.1 mm and 200 mm'],
    ['speed ratio', { slicePush: -1 }, 'slice/push speed ratio -1 is not between 0 and 1000000'],
    ['friction', { friction: 2.1 }, 'friction coefficient 2.1 is not between 0 and 2'],
    [
      'exponent of the angle',
      { assumptions: { angleExponent: 4.1 } },
      'local exponent of the angle in all at 15° 4.1 is not between 0.8262 and 4',
    ],
    [
      'exponent of thickness',
      { assumptions: { thicknessExponent: 3.1 } },
      'thickness exponent 3.1 is not between 0 and 3',
    ],
    [
      'exponent of finish',
      { assumptions: { finishExponent: 3.1 } },
      'finish exponent 3.1 is not between 0 and 3',
    ],
    [
      'exponent of hardness',
      { assumptions: { hardnessExponent: 5.1 } },
      'hardness exponent on HV 5.1 is not between 0 and 5',
    ],
    [
      'exponent of a life',
      { assumptions: { lifeExponent: 5.1 } },
      'life exponent 5.1 is not between 0 and 5',
    ],
    [
      'share of the last force',
      { assumptions: { wedgingShare: 1.1 } },
      'wedging’s share of the last force 1.1 is not between 0 and 1',
    ],
    [
      'power of the width',
      { assumptions: { limitPower: -0.1 } },
      'power of the width -0.1 is not between 0 and 5',
    ],
    [
      'weight below 0',
      { assumptions: { structureWeights: [1, -1, 1] } },
      'weight of added -1 is not between 0 and 1000000',
    ],
    [
      'weights that are all 0',
      { assumptions: { structureWeights: [0, 0, 0] } },
      'structure weights 0, 0, 0 add up to 0, not to a number above 0',
    ],
    [
      'residual',
      { assumptions: { residualCv: 1.1 } },
      'residual of the regression 1.1 is not between 0 and 1',
    ],
  ];
  test.each(beyond)('%s', (_what, more, message) => {
    expect(() => compare(comparison({}, more))).toThrow(new RangeError(message));
  });

  const measured: [string, Partial<Knife>, string][] = [
    ['angle', { angleDeg: 3.9 }, 'edge angle 3.9° is not between 4° and 45° per side'],
    ['no angle', { angleDeg: NaN }, 'edge angle NaN is not a finite number'],
    ['microbevel', { microbevelAngleDeg: 46 }, 'microbevel angle 46° is not between 4° and 45° per side'],
    ['no microbevel', { microbevelAngleDeg: NaN }, 'microbevel angle NaN is not a finite number'],
    [
      'microbevel below the bevel',
      { microbevelAngleDeg: 19 },
      "microbevel angle 19° is not between the bevel's 20° and 45° per side",
    ],
    ['edge', { edgeMm: 0 }, 'thickness behind the edge 0 mm is not between 0.001 mm and 20 mm'],
    ['hardness', { hrc: 69 }, 'hardness 69 HRC is not between 20 HRC and 68 HRC'],
    ['finish', { finish: { um: 0 } }, 'grain size 0 µm is not between 0.01 µm and 2000 µm'],
    [
      'spine',
      { grind: { form: 'flat', spineMm: 51, heightMm: 15 } },
      'spine thickness 51 mm is not between 0.01 mm and 50 mm',
    ],
    [
      'height',
      { grind: { form: 'flat', spineMm: 3, heightMm: 501 } },
      'grind height 501 mm is not between 0.1 mm and 500 mm',
    ],
    [
      'radius',
      { grind: { form: 'hollow', spineMm: 3, heightMm: 15, radiusMm: 2e5 } },
      'grind radius 200000 mm is not between 0.05 mm and 100000 mm',
    ],
    ['carbide', { carbideVolPercent: { MC: 61 } }, 'MC volume 61% is not between 0% and 60%'],
    ['toughness', { toughness: 0 }, 'toughness 0 is not between 0.000001 and 1000000'],
  ];
  test.each(measured)('%s, naming the knife', (_what, change, message) => {
    expect(() => compare(comparison(change))).toThrow(new RangeError(`Dunlin: ${message}`));
  });

  test('a flat grind’s radius is not read, and a microbevel may be as wide as its bevel', () => {
    const grind = { form: 'flat', spineMm: 3, heightMm: 15, radiusMm: -1 } as const;
    expect(compare(comparison({ grind })).rows[1]?.multiplied).toBe(1);
    expect(compare(comparison({ microbevelAngleDeg: 20 })).rows[1]?.multiplied).toBe(1);
  });
});

describe('shares of the total', () => {
  /** Wedge and apex against thickness: how near the factors come to cancelling. */
  const row = (edgeMm: number) => compare(comparison({ angleDeg: 15, edgeMm })).rows[1];

  test('are the logarithms over their sum, and are withheld where the factors nearly cancel', () => {
    for (let edgeMm = 0.5; edgeMm < 1.5; edgeMm += 0.05) {
      const found = row(edgeMm);
      const logs = (found?.terms ?? []).map(({ factor }) => Math.log(factor));
      const total = logs.reduce((sum, log) => sum + log, 0);
      const size = logs.reduce((sum, log) => sum + Math.abs(log), 0);
      if (Math.abs(total) < 0.1 * size) expect(found?.logShares).toBeNull();
      else
        Object.values(found?.logShares ?? {}).forEach((share, i) =>
          expect(share).toBeCloseTo((logs[i] ?? NaN) / total, 9),
        );
      expect(Object.keys(found?.signedShares ?? {})).toEqual(found?.terms.map(({ id }) => id));
    }
    expect(compare(comparison({})).rows[1]?.logShares).toBeNull();
  });

  test('a family is the product of its factors', () => {
    const found = compare(comparison({ angleDeg: 15, edgeMm: 0.3, finish: { um: 35 }, hrc: 61 })).rows[1];
    const of = (...ids: string[]) =>
      (found?.terms ?? []).filter(({ id }) => ids.includes(id)).reduce((all, { factor }) => all * factor, 1);
    expect(found?.families.geometry).toBeCloseTo(of('wedge', 'apex', 'thickness', 'grind'), 12);
    expect(found?.families.finish).toBeCloseTo(of('finish'), 12);
    expect(found?.families.steel).toBeCloseTo(of('hardness', 'carbide'), 12);
  });
});
