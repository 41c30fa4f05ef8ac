import { describe, expect, it, test } from 'vitest';
import type { Grind } from '../../../src/model/index.ts';
import { behindControls } from '../../../src/topics/behind-the-edge/controls.ts';
import { behindWords } from '../../../src/topics/behind-the-edge/words.ts';
import { behindWorked } from '../../../src/topics/behind-the-edge/worked.ts';
import {
  behindAlone,
  behindFactors,
  behindOf,
  formsOf,
  regrindOf,
  removedMm2,
  slippedAngleDeg,
  slipMm,
  thicknessAtMm,
} from '../../../src/topics/behind-the-edge/values.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { KnifeEntry, ComparisonEntry } from '../../../src/comparison/entry.ts';
import { validate } from '../../../src/comparison/validate.ts';
import { loft } from '../../comparison/entries.ts';

const pair = (
  subject: Partial<KnifeEntry>,
  baseline: Partial<KnifeEntry> = {},
  more: Partial<ComparisonEntry> = {},
): ComparisonEntry => {
  const entry = loft();
  return {
    ...entry,
    ...more,
    knives: entry.knives.map((knife) =>
      knife.id === entry.subject
        ? { ...knife, ...subject }
        : knife.id === entry.baseline
          ? { ...knife, ...baseline }
          : knife,
    ),
  };
};
const flat: Grind = { form: 'flat', spineMm: 3, heightMm: 10 };
const alike = { edgeMm: 0.5, grind: flat };
const said = (of: string, entry: ComparisonEntry): string =>
  behindWords[of]?.(sceneOf(entry)).join(' ') ?? '';
const control = (name: string) => {
  const found = behindControls[name];
  if (!found) throw new Error(name);
  return found;
};

describe('what lies behind an edge', () => {
  // t = 2 w sin θ = 2 h tan θ, worked by hand: 0.50 over 1.2 makes 24.05° included by the width, 23.54° by the height.
  it('has the bevel a caliper would find', () => {
    const by = (angle: KnifeEntry['angle']) => behindOf(sceneOf(pair({ edgeMm: 0.5, angle }))).subject;
    expect(by({ deg: 24.0494 / 2 }).bevelWidthMm).toBeCloseTo(1.2, 4);
    expect(by({ deg: 23.5367 / 2 }).bevelHeightMm).toBeCloseTo(1.2, 3);
    expect(by({ bevelMm: 0.5, slantWidthMm: 1.2 }).bevelWidthMm).toBeCloseTo(1.2, 12);
    expect(by({ bevelMm: 0.5, heightMm: 1.2 }).bevelHeightMm).toBeCloseTo(1.2, 12);
  });

  it('tapers evenly through the bevel and swells evenly on a flat grind', () => {
    const { subject } = behindOf(sceneOf(pair(alike)));
    expect(thicknessAtMm(subject, -subject.bevelHeightMm)).toBeCloseTo(0, 12);
    expect(thicknessAtMm(subject, -subject.bevelHeightMm / 2)).toBeCloseTo(0.25, 12);
    // 0.5 mm and a quarter of a millimetre for every millimetre of height.
    expect(thicknessAtMm(subject, 4)).toBeCloseTo(1.5, 12);
    expect(thicknessAtMm(subject, 30)).toBe(3);
  });

  it('is worth the thickness and the grind of the chain', () => {
    const scene = sceneOf(loft());
    const factor = (id: string) =>
      scene.row.careful.terms.find((term) => term.id === id)?.factor ?? Number.NaN;
    expect(behindFactors(scene).careful.both).toBeCloseTo(factor('thickness') * factor('grind'), 12);
  });
});

describe('what lies behind an edge, alone', () => {
  it('multiplies to thickness and grind of the chain, and is worth less if the forces add', () => {
    const scene = sceneOf(loft());
    const { multiplied, added } = behindAlone(scene);
    expect(multiplied).toBeCloseTo(behindFactors(scene).careful.both, 12);
    // The wedge of both is Plover’s, which adding goes on paying for (own calculation: a mean with an equal part in it).
    expect(added).toBeGreaterThan(1);
    expect(added).toBeLessThan(multiplied);
    expect(said('behind', loft())).toMatch(/If the forces add, it should cut about [\d.]+ times as long\./);
  });

  // Own calculation: at T 3, H 14, draw 3 and the middle settings a thicker edge comes out better beyond 1.72 mm.
  it('says where the model would have a thicker edge cut longer', () => {
    const grind: Grind = { form: 'flat', spineMm: 3, heightMm: 14 };
    const middle = { friction: 0.25, slicePush: 3, contactDepthMm: 8, assumptions: {} };
    const warned = /would have a thicker edge on Dunlin cut longer/;
    expect(said('behind', pair({ edgeMm: 1.74, grind }, {}, middle))).toMatch(warned);
    expect(said('behind', pair({ edgeMm: 1.7, grind }, {}, middle))).not.toMatch(warned);
  });
});

describe('three grinds of one knife', () => {
  // A circle of radius 127 on a chord of 25: sagitta 127 − √(127² − 12.5²) = 0.6167.
  it('lie a sagitta inside and outside their chord', () => {
    const hollow: Grind = { form: 'hollow', spineMm: 6, heightMm: 25, radiusMm: 127 };
    const [inside, none, outside] = formsOf(sceneOf(pair({ edgeMm: 1, grind: hollow })));
    expect(inside?.sagMm).toBeCloseTo(0.6167, 4);
    expect(none?.sagMm).toBe(0);
    expect(outside?.sagMm).toBeCloseTo(-0.6167, 4);
    expect(inside?.own).toBe(true);
  });

  it('stand between the same two thicknesses, hollow the slimmest and convex the stoutest', () => {
    const [hollow, straight, convex] = formsOf(sceneOf(pair(alike)));
    expect(hollow?.grindAngleDeg).toBeLessThan(straight?.grindAngleDeg ?? 0);
    expect(straight?.grindAngleDeg).toBeLessThan(convex?.grindAngleDeg ?? 0);
    // arctan((0.5 + 8 · 0.25 − 0.5)/(2 · 8))
    expect(straight?.grindAngleDeg).toBeCloseTo((Math.atan(2 / 16) * 180) / Math.PI, 10);
  });

  it('take a wheel wide enough not to go through a thin blade', () => {
    const high: Grind = { form: 'flat', spineMm: 1, heightMm: 60 };
    expect(formsOf(sceneOf(pair({ edgeMm: 0.1, grind: high })))[0]?.radiusMm).toBeGreaterThan(150);
  });
});

describe('a caliper held too high', () => {
  it('makes the angle too large on a blade that swells', () => {
    const { subject } = behindOf(sceneOf(pair(alike)));
    // 0.75 mm where 0.5 is meant: half as much again in the sine.
    const sine = Math.sin(((slippedAngleDeg(subject) ?? 0) * Math.PI) / 180);
    expect(thicknessAtMm(subject, slipMm)).toBeCloseTo(0.75, 12);
    expect(sine / Math.sin((subject.angleDeg * Math.PI) / 180)).toBeCloseTo(1.5, 10);
  });

  it('makes no bevel where the reading is more than two bevels wide', () => {
    const { subject } = behindOf(sceneOf(pair({ edgeMm: 0.05, grind: flat })));
    expect(slippedAngleDeg(subject)).toBeNull();
    expect(said('behind-caliper', pair({ edgeMm: 0.05, grind: flat }))).toMatch(/no bevel at all/);
  });
});

describe('steel to remove', () => {
  // t²/4 (cot 10° − cot 20°) with t 0.50: 0.0625 · (5.67128 − 2.74748) = 0.18274.
  it('goes by the square of the thickness', () => {
    const job = regrindOf(sceneOf(pair({ angle: { deg: 10 } }, { angle: { deg: 20 } })));
    expect(job).toEqual({ fromDeg: 20, toDeg: 10, madeUp: false });
    expect(removedMm2(0.5, job)).toBeCloseTo(0.18274, 5);
    expect(removedMm2(1, job) / removedMm2(0.5, job)).toBeCloseTo(4, 12);
  });

  it('is asked of a made-up angle where both knives have one, and says so', () => {
    const equal = pair({ angle: { deg: 20 } }, { angle: { deg: 20 } });
    expect(regrindOf(sceneOf(equal))).toEqual({ fromDeg: 20, toDeg: 15, madeUp: true });
    expect(said('behind-regrind', equal)).toMatch(/three quarters of it, 15°/);
    const lowest = pair({ angle: { deg: 4 } }, { angle: { deg: 4 } });
    expect(regrindOf(sceneOf(lowest)).toDeg).toBe(4);
  });
});

describe('the words of what lies behind', () => {
  it('say what does not apply', () => {
    expect(said('behind', pair(alike, alike))).toMatch(
      /factor of the thickness is 1\..*factor of the grind is 1\..*Together the two come to 1/,
    );
    const unweighed = pair({ edgeMm: 0.2, grind: flat }, alike, { assumptions: { thicknessExponent: 0 } });
    expect(said('behind', unweighed)).toMatch(/gives that no weight/);
  });

  it('say for whom a factor speaks, both ways round', () => {
    const thin = { edgeMm: 0.2, grind: flat };
    expect(said('behind', pair(thin, alike))).toMatch(/a factor of ×1\.58, in favour of Dunlin/);
    expect(said('behind', pair(alike, thin))).toMatch(/a factor of ×0\.632, in favour of Plover/);
  });

  it('name a waist', () => {
    const waist: Grind = { form: 'hollow', spineMm: 3, heightMm: 22, radiusMm: 80 };
    expect(said('behind-opened', pair({ edgeMm: 0.8, grind: waist }, alike))).toMatch(/Dunlin has a waist/);
    expect(said('behind-opened', pair(alike, alike))).not.toMatch(/waist/);
  });

  it('own up to a thickness that is not known, and to refused work', () => {
    expect(said('behind', pair({ edgeMm: { unknown: true, low: 0.2, high: 0.8 } }))).toMatch(
      /Not known: the thickness behind the edge of Dunlin\. The middle/,
    );
    expect(said('behind', pair({}, {}, { work: 'prying' }))).toMatch(/no slicing estimate for prying/);
  });
});

test('the height of a grind stops where a hollow one would go through the blade', () => {
  const height = control('subject.grindHeight');
  const thin = pair({ edgeMm: 0.1 });
  const last = height.last?.(thin) ?? 0;
  expect(last).toBeLessThan(height.max);
  expect(validate(height.write(thin, height.max)).ok).toBe(true);
  expect(height.read(height.write(thin, height.max))).toBe(last);
  // One step further the model would refuse it.
  const [subject] = thin.knives.filter(({ id }) => id === thin.subject);
  if (!subject) throw new Error('no subject');
  const further = { ...subject.grind, heightMm: last + height.step };
  expect(validate(pair({ edgeMm: 0.1, grind: further })).ok).toBe(false);
  expect(control('baseline.grindHeight').last?.(thin)).toBe(height.max);
});

test('the worked examples can be followed with the numbers they show', () => {
  const sin = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  for (const entry of [loft(), pair({ edgeMm: 0.9, grind: flat }, { edgeMm: 0.15, angle: { deg: 9 } })]) {
    const shown = (of: string) =>
      (behindWorked[of]?.(sceneOf(entry)).steps ?? []).map(
        ({ values }) =>
          (name: string) =>
            Number(values[name]),
      );
    const [caliper, thickness, a, b, grind, both] = shown('behind');
    if (!caliper || !thickness || !a || !b || !grind || !both) throw new Error('a step is missing');
    expect(caliper('t') / (2 * caliper('w')) / sin(caliper('angle'))).toBeCloseTo(1, 2);
    expect((thickness('b') / thickness('a')) ** thickness('e') / thickness('factor')).toBeCloseTo(1, 3);
    for (const step of [a, b])
      expect((step('top') - step('t')) / (2 * step('d')) / tan(step('angle'))).toBeCloseTo(1, 2);
    expect(tan(grind('b') + grind('pb')) / tan(grind('a') + grind('pa')) / grind('factor')).toBeCloseTo(1, 3);
    expect((both('thickness') * both('grind')) / both('both')).toBeCloseTo(1, 2);
    const [growth, subject, baseline] = shown('behind-regrind');
    if (!growth || !subject || !baseline) throw new Error('a step is missing');
    expect((1 / tan(growth('to')) - 1 / tan(growth('from'))) / growth('growth')).toBeCloseTo(1, 3);
    for (const step of [subject, baseline])
      expect(((step('t') ** 2 / 4) * step('growth')) / step('area')).toBeCloseTo(1, 2);
  }
});
