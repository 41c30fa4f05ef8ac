import { describe, expect, test } from 'vitest';
import { grindThicknessMm, type ExactGrind } from '../../../src/model/index.ts';
import {
  apexExponents,
  biased,
  grinds,
  grindTangents,
  limited,
  logCards,
  logs,
  logTangents,
  microbevelSines,
  products,
  sines,
  wedges,
} from '../../../src/model/chain/loops.ts';
import type { Values } from '../../../src/model/chain/values.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** What a part gives, sample by sample. */
const all = (values: Values): number[] => (typeof values === 'number' ? [values] : [...values]);
const expectClose = (values: Values, expected: number[]): void =>
  expect(all(values)).toEqual(
    expected.map((value) => (Number.isNaN(value) ? NaN : expect.closeTo(value, 12))),
  );

/** The three ways two inputs may come: both vary, one alone, or neither, which gives a number. */
function everyWay(
  part: (a: Values, b: Values) => Values,
  a: number[],
  b: number[],
  by: (a: number, b: number) => number,
): void {
  const [a0 = NaN] = a;
  const [b0 = NaN] = b;
  expectClose(
    part(Float64Array.from(a), Float64Array.from(b)),
    a.map((value, i) => by(value, b[i] ?? NaN)),
  );
  expectClose(
    part(Float64Array.from(a), b0),
    a.map((value) => by(value, b0)),
  );
  expectClose(
    part(a0, Float64Array.from(b)),
    b.map((value) => by(a0, value)),
  );
  expect(part(a0, b0)).toBeTypeOf('number');
  expectClose(part(a0, b0), [by(a0, b0)]);
}

/** ln tan(θ + φ), the statics of a wedge; where friction turns with the slice it is µ/√(1 + ξ² cos² θ). */
const force = (angleDeg: number, friction: number, slicePush: number): number => {
  const cosine = Math.cos(radians(angleDeg));
  const µ = friction / Math.sqrt(1 + slicePush * slicePush * cosine * cosine);
  const whole = radians(angleDeg) + Math.atan(µ);
  return whole < Math.PI / 2 ? Math.log(Math.tan(whole)) : NaN;
};

describe('the parts of the terms over a run', () => {
  test.each([0, 1, 3.5])('wedge and grind are ln tan(θ + φ), at slice/push %f', (slicePush) => {
    const angles = [10, 15, 22.5, 4];
    const frictions = [0.25, 0.1, 0, 0.4];
    everyWay(
      (a, µ) => wedges(sines(a), µ, slicePush),
      angles,
      frictions,
      (a, µ) => force(a, µ, slicePush),
    );
    everyWay(
      (t, µ) => grinds(t, µ, slicePush),
      angles.map((a) => Math.tan(radians(a))),
      frictions,
      (t, µ) => force((Math.atan(t) * 180) / Math.PI, µ, slicePush),
    );
  });

  test('a wedge that cannot be driven is no number', () => {
    // θ + φ: 45° and arctan 1, and past them.
    expectClose(wedges(sines(Float64Array.of(45, 44, 46)), Float64Array.of(1.001, 1, 1), 0), [
      NaN,
      force(44, 1, 0),
      NaN,
    ]);
    expectClose(grinds(Float64Array.of(1.001, 2), 1, 0), [NaN, NaN]);
  });

  test('sines are those of a table', () => {
    // sin 15°, 20° and 30°, to six figures, as in any table.
    for (const [angleDeg, sine] of [
      [15, 0.258819],
      [20, 0.34202],
      [30, 0.5],
    ] as const) {
      expect(sines(angleDeg)).toBeCloseTo(sine, 6);
      expect(all(sines(Float64Array.of(angleDeg, 90)))[0]).toBeCloseTo(sine, 6);
    }
  });

  test('the sine is that of the apex, and no number where the apex is finer than the bevel', () => {
    everyWay(microbevelSines, [10, 20, 15], [20, 20, 14], (bevel, apex) =>
      apex < bevel ? NaN : Math.sin(radians(apex)),
    );
  });

  test('ln of the tangent from the sine', () => {
    const angles = [4, 15, 30, 45];
    expectClose(
      logTangents(sines(Float64Array.from(angles))),
      angles.map((angle) => Math.log(Math.tan(radians(angle)))),
    );
    expect(logTangents(0.5)).toBeCloseTo(Math.log(1 / Math.sqrt(3)), 12);
  });

  test('the exponent of the apex brings the whole to E at 15°, at friction 0.25 and slice/push 3', () => {
    // E = w + e·θ/tan θ, w the local exponent of tan(θ + φ), friction as it is at 15° held.
    const theta = radians(15);
    const phi = Math.atan(0.25 / Math.sqrt(1 + 9 * Math.cos(theta) ** 2));
    const w = (2 * theta) / Math.sin(2 * (theta + phi));
    const by = (total: number): number => (total - w) * (Math.tan(theta) / theta);
    expectClose(apexExponents(Float64Array.of(1.3, 1, 2.4)), [1.3, 1, 2.4].map(by));
    expect(apexExponents(1.3)).toBeCloseTo(by(1.3), 12);
    // Never below 0: the least E is w to four figures.
    expect(apexExponents(0.8262)).toBe(0);
  });

  test('products and logarithms', () => {
    everyWay(products, [2, -3, 0.5], [5, 7, -1], (a, b) => a * b);
    expectClose(logs(Float64Array.of(1, Math.E, 0.5)), [0, 1, -Math.LN2]);
    expect(logs(Math.E)).toBeCloseTo(1, 12);
  });

  test('a gauge’s bias is added, and what leaves the limits is no number', () => {
    const limits = { low: 4, high: 45 };
    everyWay(
      (reading, bias) => biased(reading, bias, limits),
      [4, 45, 44.5, 20],
      [0, 0, 1, -17],
      (reading, bias) => (reading + bias >= 4 && reading + bias <= 45 ? reading + bias : NaN),
    );
    expectClose(biased(Float64Array.of(4, 45, 3.9, 45.1), 0, limits), [4, 45, NaN, NaN]);
  });

  test.each<[string, ExactGrind, number]>([
    ['flat', { form: 'flat', spineMm: 3, heightMm: 20 }, 8],
    ['flat, cut past its top', { form: 'flat', spineMm: 3, heightMm: 5 }, 8],
    ['hollow', { form: 'hollow', spineMm: 3, heightMm: 20, radiusMm: 150 }, 8],
    ['convex', { form: 'convex', spineMm: 3, heightMm: 20, radiusMm: 150 }, 8],
  ])('the half angle of a %s grind is that of its thickest place', (_what, grind, depthMm) => {
    // (max t − t₀)/2 over the depth, t looked at every hundredth of a millimetre.
    const tangent = (edgeMm: number): number => {
      if (!(edgeMm > 0 && edgeMm <= grind.spineMm)) return NaN;
      const places = Array.from({ length: 100 * depthMm + 1 }, (_, i) => i / 100);
      const thickest = Math.max(
        ...places.map((at) =>
          at > grind.heightMm ? grind.spineMm : grindThicknessMm({ ...grind, edgeMm }, at),
        ),
      );
      // A grind flatter than half a degree counts as half a degree.
      return Math.max(Math.tan(radians(0.5)), (thickest - edgeMm) / (2 * depthMm));
    };
    const edges = [0.5, 0.2, 1, 3, 0, -1, 3.1];
    const { form, spineMm: spine, heightMm: height, radiusMm: radius = null } = grind;
    const over = (edge: Values): Values =>
      grindTangents({ form, edge, spine, height, radius, depth: depthMm });
    const found = all(over(Float64Array.from(edges)));
    found.forEach((value, i) => {
      const expected = tangent(edges[i] ?? NaN);
      if (Number.isNaN(expected)) expect(value).toBeNaN();
      else expect(value).toBeCloseTo(expected, 6);
    });
    expect(over(0.5)).toBeCloseTo(tangent(0.5), 6);
    // Each measure may vary alone, and all of them together.
    const by = (factor: number) => Float64Array.of(1, factor);
    const times = (value: number | null) => (value === null ? null : by(1.1).map((factor) => factor * value));
    const ways = [
      { spine: times(spine) },
      { height: times(height) },
      { depth: times(depthMm) },
      ...(radius === null ? [] : [{ radius: times(radius) }]),
    ];
    for (const way of [...ways, Object.assign({}, ...ways) as object]) {
      const fixed = { form, edge: 0.5, spine, height, radius, depth: depthMm };
      const second = Object.fromEntries(
        Object.entries({ ...fixed, ...way }).map(([name, value]) => [
          name,
          typeof value === 'object' && value !== null ? value[1] : value,
        ]),
      ) as unknown as typeof fixed;
      expect(all(grindTangents({ ...fixed, ...way }))).toEqual([grindTangents(fixed), grindTangents(second)]);
    }
  });

  test('a hollow that grinds the blade through is no section', () => {
    const through = { form: 'hollow', spine: 3, height: 25, radius: 30, depth: 8 } as const;
    expectClose(grindTangents({ ...through, edge: Float64Array.of(0.5, 0.4) }), [NaN, NaN]);
    // Nor is one whose radius is not given.
    expect(grindTangents({ ...through, radius: null, edge: 0.5 })).toBeNaN();
  });

  test('card by the published line at 30° included, bent below 200 mm and continued by Vickers', () => {
    // −157 + 15.8 HRC − 17.8·30 + what the carbide adds (Thomas 2018, restated 2019).
    const straight = (hrc: number, carbide: number): number => -157 + 15.8 * hrc - 17.8 * 30 + carbide;
    everyWay(
      (hrc, carbide) => logCards(hrc, carbide, 1.2),
      [60, 58, 64],
      [56, 0, 120],
      (hrc, carbide) => Math.log(straight(hrc, carbide)),
    );
    // Bent: 200·exp((L − 200)/200) (assumed).
    everyWay(
      (hrc, carbide) => logCards(hrc, carbide, 1.2),
      [50, 52, 55],
      [10, 0, 20],
      (hrc, carbide) => Math.log(200) + (straight(hrc, carbide) - 200) / 200,
    );
    // HV = (223 HRC + 14500)/(100 − HRC), the closed form of ASTM E140 table 1.
    const vickers = (hrc: number): number => (223 * hrc + 14500) / (100 - hrc);
    everyWay(
      (hrc, exponent) => logCards(hrc, 0, exponent),
      [67, 68, 66.5],
      [1.2, 0.6, 2],
      (hrc, exponent) => Math.log(straight(66, 0)) + exponent * Math.log(vickers(hrc) / vickers(66)),
    );
    expectClose(logCards(Float64Array.of(NaN, 20), 0, 1.2), [
      NaN,
      Math.log(200) + (99 - 200) / 200 + 1.2 * Math.log(vickers(20) / vickers(50)),
    ]);
  });

  test('what passes a limit is no number, and what reaches it is', () => {
    everyWay(
      (values, other) => limited(values, other, 60),
      [3, 4, 5],
      [60, 60.001, 0],
      (value, other) => (other <= 60 ? value : NaN),
    );
    expect(limited(3, NaN, 60)).toBeNaN();
  });

  test('room that is done with is used again where it has the size', () => {
    const angles = Float64Array.of(10, 15, 20);
    const fits = Float64Array.of(1, 2, 3);
    const parts: ((old?: Values) => Values)[] = [
      (old) => wedges(Float64Array.of(0.1, 0.2, 0.3), 0.25, 0, old),
      (old) => grinds(angles, 0.01, 0, old),
      (old) => sines(angles, old),
      (old) => microbevelSines(10, angles, old),
      (old) => apexExponents(angles, old),
      (old) => products(angles, 2, old),
      (old) => logs(angles, old),
      (old) => biased(angles, 1, { low: 0, high: 90 }, old),
      (old) =>
        grindTangents({ form: 'flat', edge: angles, spine: 30, height: 25, radius: null, depth: 8 }, old),
      (old) => logCards(Float64Array.of(50, 55, 60), 30, 1.2, old),
      (old) => logTangents(Float64Array.of(0.1, 0.2, 0.3), old),
      (old) => limited(angles, 3, 60, old),
    ];
    for (const part of parts) {
      const plain = all(part());
      const again = part(fits) as Float64Array;
      expect(again.buffer).toBe(fits.buffer);
      expect([...again]).toEqual(plain);
      expect((part(new Float64Array(4)) as Float64Array).length).toBe(3);
    }
  });
});
