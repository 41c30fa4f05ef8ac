import { describe, expect, test } from 'vitest';
import { compare, structures } from '../../src/model/index.ts';
import type { Comparison, Knife, Structure } from '../../src/model/index.ts';
import { middleCalculation, middleShared } from '../../src/model/chain/calculation.ts';
import { lnTotals } from '../../src/model/chain/structures.ts';
import { knifeOf, random, randomKnife, randomWork, workOf } from '../reference/random-knives.ts';
import { middleWork, type PlainKnife, type PlainWork } from '../reference/by-hand.ts';

/** The three lives of a knife at a work, in the logarithm, as `compare` takes them from each other. */
function totalsOf(knife: PlainKnife, work: PlainWork): Record<Structure, number> {
  const comparison: Comparison = { knives: [], baseline: '', ...workOf(work) };
  return lnTotals(middleCalculation(comparison, knifeOf('a', knife), middleShared(comparison)));
}

/*
 * Ten knives at one work have 120 triples: 84 such works make over 10,000, each looked at with all ten as the baseline in
 * turn, by compare itself.
 */
describe('over 10,000 triples, each in every order and with every knife as the baseline', () => {
  const uniform = random(33);
  /** ln of a against b by structure, as compare has it with b the baseline. */
  const groups = Array.from({ length: 84 }, () => {
    const work = workOf(randomWork(uniform));
    const knives: Knife[] = Array.from({ length: 10 }, (_, i) => knifeOf(String(i), randomKnife(uniform)));
    return knives.map((knife) => {
      const { rows } = compare({ knives, baseline: knife.id, ...work });
      return Object.fromEntries(
        structures.map((structure) => [structure, rows.map((row) => Math.log(row[structure]))]),
      ) as Record<Structure, number[]>;
    });
  });

  test.each(structures)('a/b · b/a = 1 and a/b · b/c = a/c: %s', (structure) => {
    let [there, through, triples] = [0, 0, 0];
    for (const group of groups) {
      const ln = (a: number, b: number): number => group[b]?.[structure][a] ?? NaN;
      const worst = (so: number, off: number): number => (off <= so ? so : off);
      for (let a = 0; a < 10; a += 1)
        for (let b = 0; b < 10; b += 1) {
          there = worst(there, Math.abs(ln(a, b) + ln(b, a)));
          for (let c = 0; c < 10; c += 1) {
            if (a < b && b < c) triples += 1;
            through = worst(through, Math.abs(ln(a, b) + ln(b, c) - ln(a, c)));
          }
        }
    }
    expect(triples).toBeGreaterThan(10_000);
    expect(there).toBeLessThan(1e-12);
    expect(through).toBeLessThan(1e-12);
  });
});

/** Every input of a knife and of its work, and how it is moved by a relative step. */
function steps(knife: PlainKnife, work: PlainWork, by: number): [PlainKnife, PlainWork][] {
  const { microbevel, radius, carbide } = knife;
  const of = (name: 'angle' | 'edge' | 'um' | 'spine' | 'height' | 'hrc'): PlainKnife => ({
    ...knife,
    [name]: knife[name] * by,
  });
  const knives = [
    ...(['angle', 'edge', 'um', 'spine', 'height', 'hrc'] as const).map(of),
    ...(microbevel === undefined ? [] : [{ ...knife, microbevel: microbevel * by }]),
    ...(radius === undefined ? [] : [{ ...knife, radius: radius * by }]),
    ...Object.entries(carbide).map(([kind, volume]) => ({
      ...knife,
      carbide: { ...carbide, [kind]: volume * by },
    })),
  ];
  const works = (Object.keys(work) as (keyof PlainWork)[]).map((name) => ({
    ...work,
    [name]: work[name] * by,
  }));
  return [
    ...knives.map((moved): [PlainKnife, PlainWork] => [moved, work]),
    ...works.map((moved): [PlainKnife, PlainWork] => [knife, moved]),
  ];
}

/** Where the laws have their seams: the ends of the line, its bend, both parts of the width, the depth at the height. */
const seams: [string, Partial<PlainKnife>, Partial<PlainWork>][] = [
  ['50 HRC', { hrc: 50 }, {}],
  ['66 HRC', { hrc: 66 }, {}],
  // −157 + 15.8·56 − 534 + 11.2·V = 200.
  ['200 mm of card', { hrc: 56, carbide: { CrC: 6.2 / 11.2 } }, {}],
  ['a share of 0.7', {}, { wedgingShare: 0.7 }],
  ['a depth as the height', {}, { depth: 14 }],
  // tan 0.5° = (T − t)/2H.
  ['a grind of half a degree', { spine: 0.4 + 28 * Math.tan((0.5 * Math.PI) / 180) }, {}],
  ['an edge as thick as the spine', { spine: 0.4 * (1 + 2e-6) }, {}],
  ['a convex face at its fullest', { form: 'convex', radius: 7.07, spine: 0.9 }, {}],
  ['a microbevel of the bevel’s angle', { microbevel: 20 * (1 + 2e-6) }, {}],
  ['no friction', {}, { friction: 0 }],
];

describe('a relative step of 1e-6 in any input moves no total by more than 1e-3 in the logarithm', () => {
  const worstStep = (knife: PlainKnife, work: PlainWork): number => {
    const before = totalsOf(knife, work);
    const all = [1 + 1e-6, 1 - 1e-6].flatMap((by) =>
      steps(knife, work, by).flatMap(([moved, at]) => {
        const after = totalsOf(moved, at);
        return structures.map((structure) => Math.abs(after[structure] - before[structure]));
      }),
    );
    return all.reduce((worst, off) => (off <= worst ? worst : off), 0);
  };

  test('of random knives at random works', () => {
    const uniform = random(34);
    let worst = 0;
    for (let i = 0; i < 800; i += 1) {
      const found = worstStep(randomKnife(uniform), randomWork(uniform));
      if (!(found <= worst)) worst = found;
    }
    expect(worst).toBeLessThan(1e-3);
  });

  const ordinary: PlainKnife = {
    angle: 20,
    edge: 0.4,
    um: 15,
    form: 'flat',
    spine: 3,
    height: 14,
    hrc: 58,
    carbide: {},
  };
  test.each(seams)('at %s', (_what, knife, work) => {
    for (const slicePush of [0, 3])
      expect(worstStep({ ...ordinary, ...knife }, { ...middleWork, slicePush, ...work })).toBeLessThan(1e-4);
  });
});

describe('what is better lasts longer in all three totals, over 10,000 knives each', () => {
  const uniform = random(35);
  const cases = Array.from({ length: 10_500 }, () => ({
    knife: randomKnife(uniform),
    work: randomWork(uniform),
    by: uniform(),
  })).filter(({ knife }) => knife.hrc < 67 && (knife.microbevel ?? 45) > knife.angle * 1.0001);

  const ways: [string, (knife: PlainKnife, by: number) => PlainKnife][] = [
    ['a lower angle', (knife, by) => ({ ...knife, angle: 4 + (knife.angle - 4) * by })],
    ['a coarser finish', (knife, by) => ({ ...knife, um: knife.um * (1 + by) })],
    ['more hardness', (knife, by) => ({ ...knife, hrc: knife.hrc + by })],
    [
      'more carbide',
      (knife, by) => ({ ...knife, carbide: { ...knife.carbide, CrC: (knife.carbide['CrC'] ?? 0) + by } }),
    ],
  ];
  /** The least any of them gains in any total by being made better. */
  function leastGained(
    made: (of: (typeof cases)[number]) => { knife: PlainKnife; better: PlainKnife; work: PlainWork }[],
  ): number {
    let least = Infinity;
    for (const { knife, better, work } of cases.flatMap(made)) {
      const [before, after] = [totalsOf(knife, work), totalsOf(better, work)];
      for (const structure of structures) {
        const gained = after[structure] - before[structure];
        if (!(gained >= least)) least = gained;
      }
    }
    return least;
  }

  test('there are enough of them', () => {
    expect(cases.length).toBeGreaterThan(10_000);
  });

  // Nothing is lost but rounding.
  test.each(ways)('%s', (_what, better) => {
    const least = leastGained(({ knife, work, by }) => [{ knife, better: better(knife, by), work }]);
    expect(least).toBeGreaterThan(-1e-12);
  });

  test('a lower microbevel', () => {
    const least = leastGained(({ knife, work, by }) => {
      if (knife.microbevel === undefined) return [];
      const lower = { ...knife, microbevel: knife.angle + (knife.microbevel - knife.angle) * by };
      return [{ knife, better: lower, work }];
    });
    expect(least).toBeGreaterThan(-1e-12);
  });

  test('a thinner edge, up to 1 mm at the middle settings, under blades of usual height', () => {
    const least = leastGained(({ knife, by }) => {
      const edge = 0.05 + 0.95 * by;
      const [height, spine] = [12 + (2 / 3) * knife.height, Math.max(1.5, knife.spine)];
      // No hollow: a thinner edge may be ground through.
      const form = knife.form === 'convex' ? 'convex' : 'flat';
      const blade = { ...knife, height, spine, edge, form, radius: height * (0.51 + 3 * by) } as const;
      const work = { ...middleWork, slicePush: by > 0.5 ? 3 : 0 };
      return [{ knife: blade, better: { ...blade, edge: edge * 0.9 }, work }];
    });
    expect(least).toBeGreaterThan(0);
  });
});
