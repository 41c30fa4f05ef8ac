import { describe, expect, it, test } from 'vitest';
import { routesNumbers } from '../../../src/topics/two-routes/numbers.ts';
import { exponentsOf, frictionAngleAt, routesAt, routesOf, wedgeSpan } from '../../../src/scene/routes.ts';
import { routesWords } from '../../../src/topics/two-routes/words.ts';
import { routesWorked } from '../../../src/topics/two-routes/worked.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { KnifeEntry, ComparisonEntry } from '../../../src/comparison/entry.ts';
import { loft } from '../../comparison/entries.ts';

const withAngles = (
  subject: number,
  baseline: number,
  more: Partial<ComparisonEntry> = {},
): ComparisonEntry => {
  const entry = { ...loft(), ...more };
  const angle = (deg: number, knife: KnifeEntry): KnifeEntry => ({ ...knife, angle: { deg } });
  return {
    ...entry,
    knives: entry.knives.map((knife) =>
      knife.id === entry.subject
        ? angle(subject, knife)
        : knife.id === entry.baseline
          ? angle(baseline, knife)
          : knife,
    ),
  };
};

const microbevelled = (entry: ComparisonEntry, microbevelDeg: number): ComparisonEntry => ({
  ...entry,
  knives: entry.knives.map((knife) => (knife.id === entry.subject ? { ...knife, microbevelDeg } : knife)),
});

const said = (entry: ComparisonEntry): string => routesWords['two-routes']?.(sceneOf(entry)).join(' ') ?? '';

describe('the routes of an angle', () => {
  // The chain computes both terms by another way through the model.
  it.each([
    ['the loft', loft()],
    ['a plain push', withAngles(10, 20, { slicePush: 0 })],
    ['a stouter edge without friction', withAngles(26, 12, { friction: 0 })],
    ['a microbevel', microbevelled(withAngles(12, 20), 18)],
    ['another exponent', withAngles(12, 20, { assumptions: { angleExponent: 1.8 } })],
  ])('are the wedge and the apex of the careful estimate: %s', (_, entry) => {
    const scene = sceneOf(entry);
    const factor = (id: string) =>
      scene.row.careful.terms.find((term) => term.id === id)?.factor ?? Number.NaN;
    const { wedge, apex, careful } = routesOf(scene);
    expect(wedge).toBeCloseTo(factor('wedge'), 12);
    expect(apex).toBeCloseTo(factor('apex'), 12);
    expect(careful).toBeCloseTo(factor('wedge') * factor('apex'), 12);
  });

  // From the forces on a wedge's two faces, normal N and friction µN, as in any textbook of statics.
  it('go by the balance of forces on the faces of the wedge', () => {
    const push = (degrees: number, friction: number) => {
      const angle = (degrees * Math.PI) / 180;
      return (
        (2 * (Math.sin(angle) + friction * Math.cos(angle))) / (Math.cos(angle) - friction * Math.sin(angle))
      );
    };
    const scene = sceneOf(withAngles(14, 24, { slicePush: 0, friction: 0.25 }));
    expect(routesOf(scene).wedge).toBeCloseTo(push(24, 0.25) / push(14, 0.25), 12);
    expect(frictionAngleAt(scene, 14)).toBeCloseTo((Math.atan2(1, 4) * 180) / Math.PI, 12);
  });

  // sin 30° = ½, sin 45° = √½, tan 45° = 1, tan 30° = √⅓: school tables.
  it('take the apex by sine and by tangent', () => {
    const { tooth, wear } = routesAt(sceneOf(withAngles(30, 45, { friction: 0 })), 30);
    expect(tooth).toBeCloseTo(Math.SQRT2, 12);
    expect(wear).toBeCloseTo(Math.sqrt(3), 12);
  });

  it('add up in the exponent: the careful estimate has the slope E at 15°', () => {
    const scene = sceneOf(withAngles(15, 24, { slicePush: 0, assumptions: { angleExponent: 1.4 } }));
    const { careful: below } = routesAt(scene, 15 * Math.exp(-1e-5));
    const { careful: above } = routesAt(scene, 15 * Math.exp(1e-5));
    expect(Math.log(below / above) / 2e-5).toBeCloseTo(1.4, 6);
    const { wedge, tooth, apex, total } = exponentsOf(scene);
    expect(wedge + tooth * apex).toBeCloseTo(total, 12);
  });

  it('leave the apex to a microbevel until the bevel is as steep', () => {
    const scene = sceneOf(microbevelled(withAngles(12, 20), 18));
    expect(routesAt(scene, 10).tooth).toBe(routesAt(scene, 16).tooth);
    expect(routesAt(scene, 22).tooth).toBeLessThan(routesAt(scene, 16).tooth);
  });

  it('span the assumption of equal spread force by the tangents', () => {
    const scene = sceneOf(withAngles(14, 24));
    const { wedge, wear } = routesOf(scene);
    expect(wedgeSpan(scene).elasticBed).toBeCloseTo(wedge * wear, 12);
    expect(wedgeSpan(scene).buriedBevel).toBeCloseTo(wedge / wear, 12);
  });

  it('are 1 for equal angles', () => {
    const { wedge, tooth, wear, careful } = routesOf(sceneOf(withAngles(17, 17)));
    expect([wedge, tooth, wear, careful]).toEqual([1, 1, 1, 1]);
  });
});

// Thomas 2018 as cited: the angle's exponent over the observed span runs from 0.64 to 2.2.
test('the published exponents are those of the regression over its observed span', () => {
  const scene = sceneOf(loft());
  expect(routesNumbers['exponent.published.low']?.(scene)).toBe('0.64');
  expect(routesNumbers['exponent.published.high']?.(scene)).toBe('2.2');
});

describe('the words of the routes', () => {
  it('differ for a comparison and its opposite', () => {
    expect(said(withAngles(14, 24))).toMatch(/speak for Dunlin, the slimmer edge/);
    expect(said(withAngles(24, 14))).toMatch(/speak against Dunlin, the stouter edge/);
  });

  it('say that equal angles have the factor 1', () => {
    expect(said(withAngles(17, 17))).toMatch(/each route has the factor 1/);
  });

  it('say where a microbevel sends the routes opposite ways', () => {
    expect(said(microbevelled(withAngles(12, 20), 25))).toMatch(/pull opposite ways/);
  });

  it('say where only one route is left', () => {
    expect(said(microbevelled(withAngles(12, 20), 20))).toMatch(/by one route only, the wedge/);
    expect(said(microbevelled(withAngles(20, 20), 25))).toMatch(/by one route only, the apex/);
  });

  it('say that the chain is refused where wear does not end the edge', () => {
    expect(said(withAngles(14, 24, { work: 'prying' }))).toMatch(/slicing chain is refused/);
  });
});

// Worked with the values the page shows: what a reader with a calculator gets.
test('the worked example can be followed with the numbers it shows', () => {
  for (const entry of [loft(), withAngles(11, 19, { slicePush: 0 }), withAngles(27, 9)]) {
    const steps = routesWorked['two-routes']?.(sceneOf(entry)).steps ?? [];
    const last = steps.at(-1)?.values ?? {};
    const [wedge, tooth, e, careful] = ['wedge', 'tooth', 'e', 'careful'].map((name) =>
      Number(last[name]?.replace('−', '-')),
    ) as [number, number, number, number];
    expect(Math.abs((wedge * tooth ** e) / careful - 1)).toBeLessThan(0.006);
  }
});
