import { describe, expect, it, test } from 'vitest';
import { compare } from '../../../src/model/index.ts';
import { controls } from '../../../src/topics/base/controls.ts';
import { baselinePush, pushes, subjectPush } from '../../../src/topics/stack-them/push.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { KnifeEntry, ComparisonEntry } from '../../../src/comparison/entry.ts';
import { ends, endsAdded, nearest, stackOf, ways } from '../../../src/scene/stack.ts';
import { stackWords } from '../../../src/topics/stack-them/words.ts';
import { stackWorked } from '../../../src/topics/stack-them/worked.ts';
import { loft, loftWith } from '../../comparison/entries.ts';

const described = (name: string, entry: ComparisonEntry): string =>
  (stackWords[name]?.(sceneOf(entry)) ?? []).filter((sentence) => sentence !== '').join(' ');

/** Plover against a Dunlin that differs from it in what is named. P1200 is 15.3 µm: ISO 6344-3. */
function against(change: Partial<KnifeEntry>): ComparisonEntry {
  const knives = loft().knives.filter(({ id }) => id === 'plover');
  return {
    ...loft(),
    knives: [...knives, ...knives.map((knife) => ({ ...knife, id: 'dunlin', name: 'Dunlin', ...change }))],
  };
}

describe('the stack', () => {
  it('holds every knife once, longest first, with the baseline at 1 by every way', () => {
    const knives = stackOf(sceneOf(loft()));
    expect(knives.map(({ id }) => id).sort()).toEqual(['avocet', 'curlew', 'dunlin', 'plover']);
    expect([...knives].sort((a, b) => b.multiplied - a.multiplied)).toEqual(knives);
    const baseline = knives.find(({ isBaseline }) => isBaseline);
    for (const way of ways) expect(baseline?.[way]).toBe(1);
  });

  // a/b · b/c = a/c, whichever knife is the baseline.
  it('keeps the distances when the baseline changes', () => {
    const scene = sceneOf(loft());
    const moved = sceneOf({ ...loft(), baseline: 'curlew' });
    for (const way of ways) expect(ends(moved, way).ratio).toBeCloseTo(ends(scene, way).ratio, 9);
  });

  it('finds the two that are nearly alike', () => {
    const { longer, shorter, ratio } = nearest(sceneOf(loft()));
    expect([longer.id, shorter.id].sort()).toEqual(['avocet', 'curlew']);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.2);
  });

  // Own calculation. A quarter as thick to the power ½ is a factor of 2, on the same wedge of the grind; so is a finish
  // 2^(1/0.3) times as coarse to the power 0.3. Two factors of 2 multiply to 4, and their gains of 1 each add up to 3.
  it('adds up the gains of two factors of 2 to 3, where they multiply to 4', () => {
    const scene = sceneOf(
      against({
        edgeMm: 0.15,
        grind: { form: 'flat', spineMm: 2.55, heightMm: 14 },
        finish: { um: 15.3 * 2 ** (1 / 0.3) },
      }),
    );
    expect(ends(scene, 'multiplied').ratio).toBeCloseTo(4, 9);
    expect(endsAdded(scene)).toBeCloseTo(3, 9);
  });
});

describe('the push', () => {
  // Statics of forces along one line: the pushes add, and the rest of the chain multiplies.
  it('adds up to the force part of the total with the forces added', () => {
    const scene = sceneOf(loft());
    const { rows } = compare(scene.comparison);
    const other = baselinePush(scene);
    for (const push of pushes(scene)) {
      const row = rows.find(({ knife }) => knife === push.id);
      const rest = (row?.terms ?? [])
        .filter(({ id }) => !['wedge', 'thickness', 'grind'].includes(id))
        .reduce((product, { factor }) => product * factor, 1);
      expect((rest * other.added) / push.added).toBeCloseTo(row?.added ?? Number.NaN, 12);
      expect((rest * other.multiplied) / push.multiplied).toBeCloseTo(row?.multiplied ?? Number.NaN, 12);
    }
  });

  // An ordinary blade, 20°, 0.4 mm, flat 3 mm over 14 mm, pushes a third for each; a quarter as thick to the power ½ is
  // half the push for thickness, on the same wedge of the grind, so five sixths are left. Arithmetic.
  it('keeps five sixths where one of the ordinary blade’s equal parts is halved', () => {
    const entry = loftWith('dunlin', {
      angle: { deg: 20 },
      edgeMm: 0.1,
      grind: { form: 'flat', spineMm: 2.7, heightMm: 14 },
    });
    const { parts, added } = subjectPush(sceneOf(entry));
    expect(parts.thickness).toBeCloseTo(1 / 6, 12);
    expect(parts.wedge).toBeCloseTo(1 / 3, 12);
    expect(added).toBeCloseTo(5 / 6, 9);
  });
});

describe('the words of the stack', () => {
  it('say of two knives from one bench what is alike and so counts as 1', () => {
    const entry = { ...loft(), subject: 'avocet', baseline: 'curlew' };
    expect(described('stack', entry)).toMatch(/Both have the same .*finish.* these factors are 1/);
  });

  it('say where the quick sum sets the knives in another order', () => {
    const entry = against({ angle: { deg: 15 }, finish: { um: 5 } });
    const last = ways.map((way) => ends(sceneOf(entry), way).last.id);
    expect(last.slice(0, 2)).toEqual(['dunlin', 'plover']);
    expect(described('stack-apart', entry)).toMatch(/The order is another by the quick sum: Plover/);
  });

  it('have a factor for every steel, be it too soft for the published line', () => {
    expect(described('stack', loftWith('dunlin', { hrc: 46 }))).toMatch(/hardness ×0\.\d+ and carbide ×/);
  });

  // 20 runs a knife tell 1.2 apart at CV 20%, power 80%, both tails 5%: exact power by the noncentral t.
  it('give the runs that planning gives', () => {
    const um = 15.3 * 1.2 ** (1 / 0.3);
    expect(described('stack-near', against({ finish: { um } }))).toMatch(
      /one cuts 1\.2 times as long as the other.*about 20 sharpenings/,
    );
    expect(described('stack-near', against({}))).toMatch(/come out alike/);
  });
});

// Worked with the values the page shows: what a reader with a calculator gets.
test('the worked chain, the forces added and the limit can be followed with the numbers they show', () => {
  for (const entry of [loft(), { ...loft(), subject: 'avocet', baseline: 'dunlin' }]) {
    const scene = sceneOf(entry);
    const shown = (name: string, step: number) =>
      Object.fromEntries(
        Object.entries(stackWorked[name]?.(scene).steps[step]?.values ?? {}).map(([key, value]) => [
          key,
          Number(value),
        ]),
      ) as Record<string, number>;
    const product = shown('stack-chain', 4);
    const { geometry = NaN, finish = NaN, steel = NaN } = product;
    expect((geometry * finish * steel) / (product['product'] ?? NaN)).toBeCloseTo(1, 2);
    const { tb = NaN, ta = NaN, e = NaN, thickness = NaN } = shown('stack-chain', 1);
    expect((tb / ta) ** e / thickness).toBeCloseTo(1, 2);
    const {
      bw = NaN,
      bt = NaN,
      bg = NaN,
      b = NaN,
      aw = NaN,
      at = NaN,
      ag = NaN,
      a = NaN,
    } = shown('stack-added', 0);
    expect((bw + bt + bg) / b).toBeCloseTo(1, 2);
    expect((aw + at + ag) / a).toBeCloseTo(1, 2);
    const { force = NaN, apex = NaN, total = NaN } = shown('stack-added', 2);
    expect(b / a / force).toBeCloseTo(1, 2);
    expect((force * apex * finish * steel) / total).toBeCloseTo(1, 2);
    const { s = NaN, rb = NaN, xb = NaN, ra = NaN, xa = NaN } = shown('stack-limit', 0);
    expect((s * rb) / xb).toBeCloseTo(1, 2);
    expect((s * ra) / xa).toBeCloseTo(1, 2);
    const limit = shown('stack-limit', 3);
    const { cot = NaN, ua = NaN, ub = NaN, m = NaN } = limit;
    expect((cot * (ua / ub) ** m * finish * steel) / (limit['total'] ?? NaN)).toBeCloseTo(1, 2);
    // The cotangents of the two angles, from the comparison itself.
    const tan = (deg: number): number => Math.tan((deg * Math.PI) / 180);
    const degOf = (id: string): number => ({ dunlin: 14, plover: 24, avocet: 17.5 })[id] ?? NaN;
    expect(tan(degOf(entry.baseline)) / tan(degOf(entry.subject)) / cot).toBeCloseTo(1, 2);
  }
});

test('sliders of this lesson write what they read', () => {
  for (const control of [controls['subject.angle'], controls['subject.edge']]) {
    const value = control?.read(loft()) ?? Number.NaN;
    expect(control?.read(control.write(loft(), value))).toBe(value);
  }
});
