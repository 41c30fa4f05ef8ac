import { describe, expect, it, test } from 'vitest';
import { carryRivalShares, compare } from '../../../src/model/index.ts';
import { controls } from '../../../src/topics/base/controls.ts';
import { pushes, pushShares, subjectPush } from '../../../src/topics/stack-them/push.ts';
import { wedgeShare } from '../../../src/topics/stack-them/push-share.ts';
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
    expect([...knives].sort((a, b) => b.careful - a.careful)).toEqual(knives);
    const baseline = knives.find(({ isBaseline }) => isBaseline);
    for (const way of ways) expect(baseline?.[way]).toBe(1);
  });

  // a/b · b/c = a/c: anyone who is the baseline, the distances stay. The rival's shares are carried along.
  it('keeps the distances when the baseline changes', () => {
    const scene = sceneOf(loft());
    const carried = carryRivalShares(scene.comparison, 'curlew');
    const moved = sceneOf({
      ...loft(),
      baseline: 'curlew',
      assumptions: { rivalShares: carried.assumptions?.rivalShares ?? { wedge: 1, thickness: 1, grind: 1 } },
    });
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
    expect(ends(scene, 'careful').ratio).toBeCloseTo(4, 9);
    expect(endsAdded(scene)).toBeCloseTo(3, 9);
  });
});

describe('the push', () => {
  // Resistances side by side, written out: 1/(c_w/f_w + c_t/f_t + c_g/f_g), statics of forces along one line.
  it('adds up to the force part of the model’s rival', () => {
    for (const shares of [undefined, { wedge: 0.8, thickness: 0.15, grind: 0.05 }]) {
      const scene = sceneOf({ ...loft(), assumptions: shares ? { rivalShares: shares } : {} });
      const { rows } = compare(scene.comparison);
      for (const push of pushes(scene)) {
        const row = rows.find(({ knife }) => knife === push.id);
        const rest = (row?.terms ?? [])
          .filter(({ id }) => !['wedge', 'thickness', 'grind'].includes(id))
          .reduce((product, { factor }) => product * (factor ?? 1), 1);
        expect(rest / push.added).toBeCloseTo(row?.rival ?? Number.NaN, 12);
        expect(rest / push.multiplied).toBeCloseTo(row?.product ?? Number.NaN, 12);
      }
    }
  });

  // Three equal forces, one of them halved: 1/3 + 1/3 + 1/6 = 5/6. Arithmetic.
  it('keeps five sixths where one of three equal parts is halved', () => {
    const entry = loftWith('dunlin', {
      angle: { deg: 24 },
      edgeMm: 0.15,
      grind: { form: 'flat', spineMm: 2.55, heightMm: 14 },
    });
    // Thickness by its whole ratio: a quarter as thick to the power ½ is half the push.
    const { parts, added } = subjectPush(sceneOf(entry));
    expect(parts.thickness).toBeCloseTo(1 / 6, 12);
    expect(parts.wedge).toBeCloseTo(1 / 3, 12);
    // The same wedge of the grind: (2.55 − 0.15)/14 = (3 − 0.60)/14.
    expect(added).toBeCloseTo(5 / 6, 9);
  });

  it('takes its shares from the slider, and the model’s own back from a third', () => {
    const moved = wedgeShare.write(loft(), 60);
    expect(pushShares(sceneOf(moved))).toEqual({ wedge: 0.6, thickness: 0.2, grind: 0.2 });
    expect(wedgeShare.read(moved)).toBe(60);
    expect(wedgeShare.write(moved, 33)).toEqual(loft());
    const all = { ...loft(), assumptions: { rivalShares: { wedge: 1, thickness: 0, grind: 0 } } };
    expect(pushShares(sceneOf(wedgeShare.write(all, 50)))).toEqual({
      wedge: 0.5,
      thickness: 0.25,
      grind: 0.25,
    });
  });
});

describe('the words of the stack', () => {
  it('say of two knives from one bench what is alike and so counts as 1', () => {
    const entry = { ...loft(), subject: 'avocet', baseline: 'curlew' };
    expect(described('stack', entry)).toMatch(/Both have .*the same finish.* these factors are 1/);
  });

  it('say where the readings set the knives in another order', () => {
    const entry = against({ angle: { deg: 15 }, finish: { um: 5 } });
    const last = ways.map((way) => ends(sceneOf(entry), way).last.id);
    expect(last.slice(0, 2)).toEqual(['dunlin', 'plover']);
    expect(described('stack-apart', entry)).toMatch(/The order is another by the pocket reading: Plover/);
  });

  it('say what is left out, and that the total is a part', () => {
    const soft = loftWith('dunlin', { hrc: 46 });
    expect(described('stack', soft)).toMatch(/Left out, and not taken as 1: carbide/);
    expect(described('stack-apart', soft)).toMatch(/carbide is left out for/);
  });

  // 20 runs a knife tell 1.2 apart at CV 20 %, power 80 %, both tails 5 %: exact power by the noncentral t.
  it('give the runs that planning gives', () => {
    const um = 15.3 * 1.2 ** (1 / 0.3);
    expect(described('stack-near', against({ finish: { um } }))).toMatch(
      /×1\.20 between them.*about 20 sharpenings/,
    );
    expect(described('stack-near', against({}))).toMatch(/come out alike/);
  });
});

// Worked with the values the page shows: what a reader with a calculator gets.
test('the worked chain and the worked rival can be followed with the numbers they show', () => {
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
    const { pw = NaN, pt = NaN, pg = NaN, added = NaN } = shown('stack-rival', 1);
    expect((pw + pt + pg) / added).toBeCloseTo(1, 2);
    const last = shown('stack-rival', 2);
    const { force = NaN, apex = NaN, rival = NaN } = last;
    expect((force * apex * finish * steel) / rival).toBeCloseTo(1, 2);
  }
});

test('sliders of this lesson write what they read', () => {
  for (const control of [wedgeShare, controls['subject.edge']]) {
    const value = control?.read(loft()) ?? Number.NaN;
    expect(control?.read(control.write(loft(), value))).toBe(value);
  }
});
