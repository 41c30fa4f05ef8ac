import { describe, expect, it, test } from 'vitest';
import { routesNumbers } from '../../../src/topics/two-routes/numbers.ts';
import { exponentsOf, frictionAngleAt, routesAt, routesOf, wedgeSpan } from '../../../src/scene/routes.ts';
import { sideBySide } from '../../../src/topics/two-routes/values.ts';
import { frictionSideBySide } from '../../../src/topics/two-routes/figure-friction.ts';
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

  // Own calculation: d ln tan(θ + φ)/d ln θ is 2θ/sin 2(θ + φ), d ln sin θ/d ln θ is θ cot θ, at 15° with φ held.
  it('add up in the exponent: wedge and apex have E at 15°, read at one friction and one draw', () => {
    const scene = sceneOf(
      withAngles(15, 24, { friction: 0, slicePush: 0, assumptions: { angleExponent: 1.4 } }),
    );
    const theta = Math.PI / 12;
    const phi = Math.atan(0.25 / Math.sqrt(1 + 9 * Math.cos(theta) ** 2));
    const { wedge, tooth, apex, total } = exponentsOf(scene);
    expect(wedge).toBeCloseTo((2 * theta) / Math.sin(2 * (theta + phi)), 4);
    expect(tooth).toBeCloseTo(theta / Math.tan(theta), 12);
    expect(wedge + tooth * apex).toBeCloseTo(total, 12);
    expect(total).toBe(1.4);
  });

  // Own calculation, made twice: the loft's angle alone, Dunlin against Plover, by friction.
  it.each([
    [0, 2.297],
    [0.1, 2.205],
    [0.25, 2.105],
    [0.4, 2.036],
    [0.8, 1.936],
  ])('are worth another amount at a friction of %d', (friction, angle) => {
    const routes = routesOf(sceneOf({ ...loft(), friction }));
    expect(Math.abs(routes.careful - angle)).toBeLessThan(0.001);
    expect(routes.apex).toBe(routesOf(sceneOf(loft())).apex);
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

describe('friction', () => {
  const said = (entry: ComparisonEntry): string =>
    routesWords['routes-friction']?.(sceneOf(entry)).join(' ') ?? '';

  it('stands side by side with none, and the model itself gives both', () => {
    const both = sideBySide(sceneOf(loft()));
    expect(both?.map(({ friction }) => friction)).toEqual([0, 0.4]);
    for (const at of both ?? []) {
      const { row } = sceneOf({ ...loft(), friction: at.friction });
      expect(at.multiplied).toBe(row.careful.multiplied);
      expect(at.added).toBe(row.careful.added);
      expect(at.toLimit).toBe(row.careful.toLimit);
    }
    expect(said(loft())).toBe(
      'By its angle alone Dunlin should cut 2.3 times as long as Plover without friction, 2.0 times at a friction of 0.4. Friction brings the wedge nearer to 1 and leaves the apex alone.',
    );
  });

  it('says where one of the two could not be driven in', () => {
    // 49.6 mm over 2 · 8 mm is arctan 3.1 = 72.1°, and arctan 0.4 = 21.8° more is past the upright.
    const { knives } = loft();
    const stout = knives.map((knife) =>
      knife.id === 'dunlin'
        ? { ...knife, edgeMm: 0.4, grind: { form: 'flat' as const, spineMm: 50, heightMm: 4 } }
        : knife,
    );
    const entry = { ...loft(), knives: stout, slicePush: 0 };
    expect(said(entry)).toBe('At a friction of 0.4 one of these edges could not be driven in.');
    expect(frictionSideBySide.table(sceneOf(entry)).rows).toHaveLength(1);
    expect(routesWords['two-routes']?.(sceneOf(entry)).join(' ')).toMatch(/could not be driven in\./);
  });

  it('takes two stout edges further apart, and does nothing between equal ones', () => {
    // Own calculation: tan 45°/tan 35° is 1.43; with arctan 0.4 = 21.8° on both, tan 66.8°/tan 56.8° is 1.53.
    expect(said(withAngles(35, 45, { slicePush: 0 }))).toMatch(/brings the wedge further from 1/);
    expect(said(withAngles(17, 17))).toMatch(/whatever the friction: its factor stays at 1\.$/);
    expect(said(microbevelled(withAngles(20, 20), 25))).toMatch(/Friction changes nothing about that\.$/);
  });
});

describe('the words of the routes', () => {
  it('differ for a comparison and its opposite', () => {
    expect(said(withAngles(14, 24))).toMatch(/count for Dunlin, the slimmer edge/);
    expect(said(withAngles(24, 14))).toMatch(/count against Dunlin, the stouter edge/);
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
