import { describe, expect, test } from 'vitest';
import * as model from '../../src/model/index.ts';

const section = { form: 'flat', spineMm: 3, heightMm: 25, edgeMm: 0.5 } as const;
const steel = { hrc: 60, includedAngleDeg: 30, carbideVolPercent: { CrC: 12 } };

/** A function of one value, the name its refusals give that value, its range and its unit. */
const ranges: [name: string, of: (value: number) => unknown, low: number, high: number, unit: string][] = [
  ['hardness', model.vickersFromRockwellC, 20, 68, ' HRC'],
  ['hardness', model.tensileStrengthMpa, 250, 650, ' HV'],
  ['friction', model.frictionAngleDeg, 0, 2, ''],
  ['friction', (friction) => model.effectiveFriction({ friction, slicePush: 1, angleDeg: 15 }), 0, 2, ''],
  [
    'slice/push ratio',
    (slicePush) => model.effectiveFriction({ friction: 0.2, slicePush, angleDeg: 15 }),
    0,
    1e6,
    '',
  ],
  ['angle', (angleDeg) => model.effectiveFriction({ friction: 0.2, slicePush: 1, angleDeg }), 0, 90, '°'],
  ['slice/push ratio', model.pushForceShare, 0, 1e6, ''],
  ['distance above the shoulder', (at) => model.grindThicknessMm(section, at), 0, 10_000, ' mm'],
  ['grain size', model.roughnessRaUm, 1, 250, ' µm'],
  ['hardening temperature', model.austeniteCarbonPercent, 727, 1100, ' °C'],
  [
    'carbon',
    (carbon) => model.carbideVolumePercent({ carbon, austeniteCarbon: 0, carbide: 'Fe3C' }),
    0,
    6,
    '%',
  ],
  [
    'carbon in austenite',
    (austeniteCarbon) => model.carbideVolumePercent({ carbon: 1, austeniteCarbon, carbide: 'Fe3C' }),
    0,
    6,
    '%',
  ],
  ['whole', (whole) => model.leverRule({ whole, poor: 0.25, rich: 6.5 }), 0.25, 6.5, ''],
  ['CrC volume', (CrC) => model.cardCutMm({ ...steel, carbideVolPercent: { CrC } }), 0, 60, '%'],
  ['hardness', (hrc) => model.cardCutMm({ ...steel, hrc }), 50, 66, ' HRC'],
  ['included angle', (includedAngleDeg) => model.cardCutMm({ ...steel, includedAngleDeg }), 20, 40, '°'],
  [
    'included angle',
    (includedAngleDeg) => model.cardAngleExponent({ cardMm: 300, includedAngleDeg }),
    20,
    40,
    '°',
  ],
  ['angle exponent', model.apexExponent, 0.8262, 4, ''],
  ['card', (cardMm) => model.cardAngleExponent({ cardMm, includedAngleDeg: 30 }), 100, 2000, ' mm'],
  ['percentage', (percent) => model.percentReadings(percent, 1), 0, 99.999999, '%'],
  ['exponent', (exponent) => model.percentReadings(40, exponent), 0, 1, ''],
  [
    'card in the first cycle',
    (firstMm) => model.lifeRatioFromCardMm({ mm: 10, baselineMm: 10, firstMm }),
    5,
    1e6,
    ' mm',
  ],
];

describe('a range is taken with its ends, and what is beyond is named', () => {
  test.each(ranges)('%s of %s from %d to %d%s', (name, of, low, high, unit) => {
    for (const value of [low, high]) expect(() => of(value)).not.toThrow();
    const beyond = Math.max(1, high) * 1e-9;
    for (const value of [
      low - beyond,
      high + beyond,
      Number.NaN,
      Infinity,
      -Infinity,
      '30' as unknown as number,
    ])
      expect(() => of(value)).toThrow(
        new RangeError(`${name} ${value}${unit} is not between ${low}${unit} and ${high}${unit}`),
      );
  });
});

/** Lengths and the like: anything above 0. */
const positives: [name: string, of: (value: number) => unknown, unit: string][] = [
  ['hardness', model.angleFloorDeg, ' HV'],
  ['bevel thickness', (thicknessMm) => model.edgeAngleDeg({ thicknessMm, heightMm: 1 }), ' mm'],
  ['bevel height', (heightMm) => model.edgeAngleDeg({ thicknessMm: 0.5, heightMm }), ' mm'],
  ['bevel width', (slantWidthMm) => model.edgeAngleDeg({ thicknessMm: 0.5, slantWidthMm }), ' mm'],
  ['flat', (flatUm) => model.wearAreaUm2({ flatUm, angleDeg: 15 }), ' µm'],
  ['scratch depth', (scratchUm) => model.toothDepthUm({ scratchUm, angleDeg: 15, bevels: 1 }), ' µm'],
  ['thickness behind the edge', (edgeMm) => model.checkSection({ ...section, edgeMm }), ' mm'],
  ['thickness behind the edge', (edgeMm) => model.grindThicknessMm({ ...section, edgeMm }, 1), ' mm'],
  ['spine thickness', (spineMm) => model.checkSection({ ...section, spineMm }), ' mm'],
  ['grind height', (heightMm) => model.checkSection({ ...section, heightMm }), ' mm'],
  ['grind radius', (radiusMm) => model.checkSection({ ...section, form: 'convex', radiusMm }), ' mm'],
  ['contact depth', (contactDepthMm) => model.grindHalfAngleDeg({ ...section, contactDepthMm }), ' mm'],
  [
    'thickness behind the edge',
    (edgeMm) => model.steelRemovedMm2({ edgeMm, fromAngleDeg: 20, toAngleDeg: 15 }),
    ' mm',
  ],
  ['grain size', (um) => model.grainSizeUm({ um }), ' µm'],
  ['grain size', (um) => model.nearestGrit('JIS', um), ' µm'],
  ['grain size', model.scratchDepthUm, ' µm'],
  ['card', (mm) => model.lifeRatioFromCardMm({ mm, baselineMm: 10 }), ' mm'],
  ['card of the baseline', (baselineMm) => model.lifeRatioFromCardMm({ mm: 10, baselineMm }), ' mm'],
];

describe('what must be above 0 is taken from there, and 0 is named', () => {
  test.each(positives)('%s of %s%s', (name, of, unit) => {
    for (const value of [0, -1, Number.NaN, Infinity, '1' as unknown as number])
      expect(() => of(value)).toThrow(
        new RangeError(`${name} ${value}${unit} is not a number above 0${unit}`),
      );
  });
});

/** Angles of the edge: 4° to 45° per side, and the refusal says which side is meant. */
const angles: [name: string, of: (angleDeg: number) => unknown][] = [
  ['edge angle', (angleDeg) => model.wedgeFactor({ angleDeg, baselineAngleDeg: 15, friction: 0.25 })],
  [
    'baseline edge angle',
    (baselineAngleDeg) => model.wedgeFactor({ angleDeg: 15, baselineAngleDeg, friction: 0.25 }),
  ],
  ['edge angle', (angleDeg) => model.toothFactor({ angleDeg, baselineAngleDeg: 15 })],
  ['baseline edge angle', (baselineAngleDeg) => model.toothFactor({ angleDeg: 15, baselineAngleDeg })],
  ['edge angle', (angleDeg) => model.wearAreaUm2({ flatUm: 1, angleDeg })],
  ['edge angle', (angleDeg) => model.toothDepthUm({ scratchUm: 1, angleDeg, bevels: 2 })],
  ['angle before', (fromAngleDeg) => model.steelRemovedMm2({ edgeMm: 1, fromAngleDeg, toAngleDeg: 4 })],
  ['angle after', (toAngleDeg) => model.steelRemovedMm2({ edgeMm: 1, fromAngleDeg: 45, toAngleDeg })],
];

describe('an edge angle is from 4° to 45° per side', () => {
  test.each(angles)('%s of %s', (name, of) => {
    for (const angleDeg of [4, 45]) expect(() => of(angleDeg)).not.toThrow();
    for (const angleDeg of [3.999, 45.001, Number.NaN, Infinity, '15' as unknown as number])
      expect(() => of(angleDeg)).toThrow(
        new RangeError(`${name} ${angleDeg}° is not between 4° and 45° per side`),
      );
  });

  test('a wedge that cannot be driven is refused whole', () => {
    expect(() => model.wedgeResistance(45, 1)).toThrow(
      new RangeError(
        'edge angle 45° and friction 1 make a wedge that cannot be driven: angle and friction angle together must stay below 90°',
      ),
    );
    expect(() => model.wedgeResistance(44.999, 1)).not.toThrow();
  });
});

test('a face that is half a circle is taken, being nowhere thinner than its shoulder', () => {
  const half = { ...section, form: 'convex', heightMm: 25, radiusMm: 12.5 } as const;
  expect(model.checkSection(half)).toBe(section.edgeMm);
});

describe('grits', () => {
  test.each(['FEPA-P', 'FEPA-F', 'JIS', 'CAMI'] as const)(
    '%s is taken from its first to its last',
    (scale) => {
      const { rows } = model.gritTable(scale);
      const [first, last] = [rows.at(0)?.[0] ?? NaN, rows.at(-1)?.[0] ?? NaN];
      for (const [grit, um] of rows) expect(model.grainSizeUm({ scale, grit })).toBe(um);
      for (const grit of [first - 1, last + 1, NaN, Infinity, '400' as unknown as number])
        expect(() => model.grainSizeUm({ scale, grit })).toThrow(
          new RangeError(`grit ${grit} is not between ${first} and ${last} on the ${scale} scale`),
        );
    },
  );

  test('every row of a table of strength is what the standard gives', () => {
    // ISO 18265:2013 table A.1, a few rows (memory), and half way between two.
    expect(model.tensileStrengthMpa(250)).toBe(800);
    expect(model.tensileStrengthMpa(275)).toBeCloseTo(882.5, 9);
    expect(model.tensileStrengthMpa(650)).toBe(2180);
  });
});
