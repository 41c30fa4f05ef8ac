import { describe, expect, it, test } from 'vitest';
import { compare } from '../../../src/model/index.ts';
import { floorDeg, limitsAt, limitsOf, sharedStretch, stretchOf } from '../../../src/scene/limits.ts';
import { limitsControls } from '../../../src/topics/where-it-stops/controls.ts';
import { halved } from '../../../src/topics/where-it-stops/values.ts';
import { limitsWords } from '../../../src/topics/where-it-stops/words.ts';
import { limitsWorked } from '../../../src/topics/where-it-stops/worked.ts';
import { allLevel, orders } from '../../../src/topics/where-it-stops/orders.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { KnifeEntry, ComparisonEntry } from '../../../src/comparison/entry.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

/** Plover against a Dunlin that differs from it in what is named. */
function against(change: Partial<KnifeEntry>, baseline: Partial<KnifeEntry> = {}): ComparisonEntry {
  const plover = loft().knives.filter(({ id }) => id === 'plover');
  return {
    ...loft(),
    knives: plover.flatMap((knife) => [
      { ...knife, ...baseline },
      { ...knife, ...baseline, id: 'dunlin', name: 'Dunlin', ...change },
    ]),
  };
}

const described = (name: string, entry: ComparisonEntry): string =>
  (limitsWords[name]?.(sceneOf(entry)) ?? []).filter((sentence) => sentence !== '').join(' ');

describe('the three trials', () => {
  // The model computes the same by another way: a comparison in which the angle itself is changed.
  it.each([8, 14, 20, 29])('are those of a knife ground to %i°', (deg) => {
    const tough = (entry: ComparisonEntry): ComparisonEntry => ({
      ...entry,
      knives: entry.knives.map((knife, index) => ({ ...knife, toughness: 10 + 5 * index })),
    });
    const scene = sceneOf(tough(loft()));
    const row = compare(sceneOf(tough(loftWith('dunlin', { angle: { deg } }))).comparison).rows.find(
      ({ knife }) => knife === 'dunlin',
    );
    const { slicing, sideLoad } = limitsAt(scene, deg);
    expect(slicing).toBeCloseTo(row?.multiplied ?? Number.NaN, 9);
    for (const trial of ['rolling', 'chipping'] as const)
      for (const end of ['low', 'high'] as const)
        expect(sideLoad[trial]?.[end]).toBeCloseTo(row?.sideLoad[trial]?.[end] ?? Number.NaN, 9);
  });

  // tan 30° = √⅓ and tan 45° = 1: from a third of the side load to 0.577 of it. School tables; tan 15° = 2 − √3.
  it('go by the square of the tangent, or by the tangent', () => {
    const scene = sceneOf(against({ angle: { deg: 30 } }, { angle: { deg: 45, perSide: true } }));
    const { low, high } = limitsOf(scene).sideLoad.rolling;
    expect(low).toBeCloseTo(1 / 3, 12);
    expect(high).toBeCloseTo(Math.sqrt(1 / 3), 12);
    expect(limitsOf(scene).chipping).toBeNull();
    const half = halved(scene);
    expect(half?.rolling.low).toBeCloseTo(3 * (2 - Math.sqrt(3)) ** 2, 12);
    expect(half?.rolling.high).toBeCloseTo(Math.sqrt(3) * (2 - Math.sqrt(3)), 12);
    expect(half?.slicing).toBeCloseTo(limitsAt(scene, 15).slicing / limitsOf(scene).slicing, 12);
  });

  it('keep the side load of a microbevel when the bevel behind it is halved', () => {
    const scene = sceneOf(against({ angle: { deg: 12 }, microbevelDeg: 20 }));
    expect(halved(scene)?.rolling).toEqual({ low: 1, high: 1 });
    expect(halved(sceneOf(against({ angle: { deg: 7 } })))).toBeNull();
  });

  // ASTM E140 table 1: 57 HRC is 633 HV, 61 HRC is 720 HV.
  it('take hardness as Vickers', () => {
    expect(limitsOf(sceneOf(against({ hrc: 61 }))).rolling).toBeCloseTo(720 / 633, 2);
  });

  it('leave the apex to a microbevel until the bevel is as steep', () => {
    const scene = sceneOf(against({ angle: { deg: 12 }, microbevelDeg: 20 }));
    expect(limitsAt(scene, 8).rolling).toBe(limitsAt(scene, 18).rolling);
    expect(limitsAt(scene, 8).slicing).toBeGreaterThan(limitsAt(scene, 18).slicing);
    expect(limitsAt(scene, 25).rolling).toBeGreaterThan(limitsAt(scene, 18).rolling);
  });
});

// tan θf = tan 5°·(697/HV)^k, k ½ to 1: 5.25–5.50° at 57 HRC and 4.84–4.92° at 61 (the 5° is common practice, no source).
test('the floor moves with the hardness', () => {
  const { subjectKnife, baselineKnife } = sceneOf(loft());
  expect(floorDeg(baselineKnife).low).toBeCloseTo(5.25, 2);
  expect(floorDeg(baselineKnife).high).toBeCloseTo(5.5, 2);
  expect(floorDeg(subjectKnife).low).toBeCloseTo(4.84, 2);
  expect(floorDeg(subjectKnife).high).toBeCloseTo(4.92, 2);
});

describe('the angles at which nothing is lost', () => {
  it('shrink to a point where the angle is all that differs', () => {
    const scene = sceneOf(against({ angle: { deg: 15 } }));
    const shared = sharedStretch(scene);
    expect(shared?.lowDeg).toBeCloseTo(24, 6);
    expect(shared?.highDeg).toBeCloseTo(24, 6);
    expect(described('limits-meeting', against({ angle: { deg: 15 } }))).toMatch(
      /Only at 24° .* gains nothing/,
    );
  });

  it('end where the ratio is 1', () => {
    const scene = sceneOf(against({ angle: { deg: 15 }, edgeMm: 0.3, hrc: 60 }));
    const { highDeg } = stretchOf(scene, 'slicing') ?? { highDeg: Number.NaN };
    const { lowDeg } = stretchOf(scene, 'rolling') ?? { lowDeg: Number.NaN };
    expect(limitsAt(scene, highDeg).slicing).toBeCloseTo(1, 6);
    expect(limitsAt(scene, lowDeg).rolling).toBeCloseTo(1, 6);
    expect(sharedStretch(scene)).toEqual({ lowDeg, highDeg });
  });

  it('are none where the subject starts behind', () => {
    const entry = against({ angle: { deg: 15 }, edgeMm: 1.2 });
    expect(sharedStretch(sceneOf(entry))).toBeNull();
    expect(described('limits-meeting', entry)).toMatch(
      /So Dunlin has no angle at which it is at least as good as Plover in both/,
    );
  });

  it('of chipping are none that could be named while a toughness is missing', () => {
    const tough = { toughness: 20 };
    const slim = { angle: { deg: 15 } };
    expect(stretchOf(sceneOf(against(slim)), 'chipping')).toBeNull();
    expect(stretchOf(sceneOf(against({ ...slim, ...tough })), 'chipping')).toBeNull();
    // Equally tough, from the baseline’s own angle on: the load before chipping grows with the angle.
    const known = stretchOf(sceneOf(against({ ...slim, ...tough }, tough)), 'chipping');
    expect(known?.lowDeg).toBeCloseTo(24, 6);
  });

  it('stop at the steepest edge that can be driven', () => {
    const entry = { ...against({ angle: { deg: 15 }, edgeMm: 0.05 }), friction: 1.2, slicePush: 0 };
    // arctan 1.2 = 50.19°: from 39.81° on, such a wedge is not driven by any push.
    expect(stretchOf(sceneOf(entry), 'slicing')?.highDeg).toBeLessThan(39.81);
  });
});

describe('the orders of a comparison', () => {
  it('turn over between slicing and rolling', () => {
    const { slicing, rolling } = orders(sceneOf(loft()));
    expect(slicing[0]?.knife).toBe('dunlin');
    expect(rolling.at(-1)?.knife).toBe('dunlin');
    expect(described('limits-turning', loft())).toMatch(/Dunlin, first in slicing, is last in bearing/);
  });

  it('do not cross where all stand level', () => {
    const scene = sceneOf(against({ edgeMm: 0.3 }));
    const { slicing, rolling } = orders(scene);
    expect(allLevel(rolling)).toBe(true);
    expect(rolling.map(({ knife }) => knife)).toEqual(slicing.map(({ knife }) => knife));
    expect(described('limits-turning', against({ edgeMm: 0.3 }))).toMatch(/nothing turns over/);
  });
});

describe('the words of the limits', () => {
  it('refuse the chain where wear does not end the edge, and say what tells instead', () => {
    const jobs = limitsWords['limits-jobs']?.(sceneOf(loft())) ?? [];
    expect(jobs).toHaveLength(5);
    expect(jobs.filter((sentence) => sentence.includes('slicing chain is refused'))).toHaveLength(3);
    expect(jobs.filter((sentence) => sentence.includes('the work of this comparison'))).toHaveLength(1);
  });

  // tan 14°/tan 24° = 0.5600, 720/633 HV = 1.137 (ASTM E140): 0.357 by the square, 0.637 by the tangents alone.
  it('give a side load as a range of two figures', () => {
    expect(described('limits-now', loft())).toContain(
      'Dunlin bears 0.36 to 0.64 of the side load of Plover before rolling.',
    );
    const opposed = { ...loft(), subject: 'plover', baseline: 'dunlin' };
    expect(described('limits-now', opposed)).toContain(
      'Plover bears 1.6 to 2.8 times the side load of Dunlin before rolling.',
    );
  });

  // 62 against 57 HRC is 746/633 HV = 1.179; tan 22°/tan 24° = 0.9075, its square 0.8235: from 0.97 to 1.07.
  it('leave open which rolls first where the range lies on both sides', () => {
    const entry = against({ angle: { deg: 22 }, hrc: 62, edgeMm: 0.3 }, { hrc: 57 });
    expect(described('limits', entry)).toContain('bears 0.97 to 1.1 times the side load');
    expect(described('limits', entry)).toContain('Which of the two rolls first depends on where');
  });

  it('say that a tough plain blade can win where chipping ends the edge', () => {
    const entry = against({ hrc: 62, toughness: 10 }, { toughness: 30 });
    expect(described('limits', entry)).toMatch(/Dunlin rolls later, Plover chips later/);
  });
});

test('the slider goes below the floor, and the hardness keeps its ±', () => {
  const { 'limits.angle': angle, 'limits.hardness': hardness } = limitsControls;
  expect(angle?.min).toBe(4);
  expect(hardness?.read(loft())).toBe(61);
  expect(hardness?.write(loft(), 58).knives.find(({ id }) => id === 'dunlin')?.hrc).toEqual({
    value: 58,
    plusMinus: 1,
  });
});

// Worked with the values the page shows: what a reader with a calculator gets.
test('the worked side load and floor can be followed with the numbers they show', () => {
  const steps = limitsWorked['limits-side-load']?.(sceneOf(loft())).steps ?? [];
  const shown = (index: number, name: string): number => Number(steps[index]?.values[name]);
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  const deg = (tangent: number) => (Math.atan(tangent) * 180) / Math.PI;
  expect(tan(shown(3, 'a')) / tan(shown(3, 'b')) / shown(3, 'q')).toBeCloseTo(1, 3);
  const [strength, q] = [shown(4, 'va') / shown(4, 'vb'), shown(4, 'q')];
  expect((strength * q ** 2) / shown(4, 'depth')).toBeCloseTo(1, 2);
  expect((strength * q) / shown(4, 'width')).toBeCloseTo(1, 2);
  const weak = shown(6, 'vb') / shown(6, 'va');
  expect(deg(tan(shown(6, 'b')) * Math.sqrt(weak))).toBeCloseTo(shown(6, 'square'), 1);
  expect(deg(tan(shown(6, 'b')) * weak)).toBeCloseTo(shown(6, 'alone'), 1);
  const floor = limitsWorked['limits-floor']?.(sceneOf(loft())).steps ?? [];
  const values = { ...floor[0]?.values, ...floor[1]?.values };
  const ratio = 697 / Number(values['v']);
  expect((tan(5) * Math.sqrt(ratio)) / Number(values['t'])).toBeCloseTo(1, 3);
  expect((tan(5) * ratio) / Number(values['u'])).toBeCloseTo(1, 3);
  expect(deg(Number(values['t']))).toBeCloseTo(Number(values['root']), 2);
  expect(deg(Number(values['u']))).toBeCloseTo(Number(values['alone']), 2);
});

// Statics of a beam that widens from b at its tip: the stress x/(b + 2x tan θ)² has its top where 2x tan θ = b.
test('the stress at equal width of the tip is nowhere above what the working says', () => {
  const [b, t] = [0.001, Math.tan(0.25)];
  const stress = (x: number) => (6 * x) / (b + 2 * x * t) ** 2;
  const top = 0.75 / (b * t);
  expect(stress(b / (2 * t))).toBeCloseTo(top, 6);
  for (const share of [0.1, 0.5, 0.9, 1.1, 2, 10]) expect(stress((share * b) / (2 * t))).toBeLessThan(top);
});
