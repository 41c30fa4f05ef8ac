import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { rulerControls } from '../../../src/topics/ruler-of-ratios/controls.ts';
import { rulerNumbers, shareText } from '../../../src/topics/ruler-of-ratios/numbers.ts';
import {
  largest,
  layOut,
  rulerOf,
  rulerOfTerms,
  stepsOf,
} from '../../../src/topics/ruler-of-ratios/values.ts';
import { rulerWords } from '../../../src/topics/ruler-of-ratios/words.ts';
import { rulerWorked } from '../../../src/topics/ruler-of-ratios/worked.ts';
import { sceneOf } from '../../../src/scene/scene.ts';
import type { ComparisonEntry } from '../../../src/comparison/entry.ts';
import { evenTicks } from '../../../src/topics/ruler-of-ratios/even-ticks.ts';
import { loft } from '../../comparison/entries.ts';

const typed = (faceValues: number[] | null): ComparisonEntry => ({ ...loft(), faceValues });
const laid = (...factors: number[]) => layOut(factors.map((factor) => ({ name: `×${factor}`, factor })));
const said = (name: string, entry: ComparisonEntry): string =>
  rulerWords[name]?.(sceneOf(entry)).join(' ') ?? '';

/** Every order of a list. */
function orders<T>(list: readonly T[]): T[][] {
  if (list.length < 2) return [[...list]];
  return list.flatMap((one, index) =>
    orders(list.filter((_, other) => other !== index)).map((rest) => [one, ...rest]),
  );
}

describe('effects end to end', () => {
  // 2, 4 and 8 are the first, second and third power of 2: their shares are 1, 2 and 3 sixths in every order.
  it.each(orders([2, 4, 8]))('have the shares of their powers: %d, %d, %d', (...factors) => {
    for (const { factor, share } of laid(...factors).effects)
      expect(share).toBeCloseTo(Math.log2(factor) / 6, 12);
  });

  // Ang 2005: shared out by logarithms there is no remainder; the parts of the change, weighted by its logarithmic mean
  // L = (V − 1)/ln V, add up to the change itself.
  it('leave no remainder', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1.05, max: 3, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (factors) => {
          const { effects, product } = laid(...factors);
          const mean = (product - 1) / Math.log(product);
          const parts = effects.map(({ factor }) => mean * Math.log(factor));
          expect(parts.reduce((sum, part) => sum + part, 0) / (product - 1)).toBeCloseTo(1, 9);
          for (const [index, { share }] of effects.entries())
            expect(share).toBeCloseTo((parts[index] ?? 0) / (product - 1), 9);
        },
      ),
    );
  });

  // Törnqvist, Vartia & Vartia 1985 (memory): the logarithm of a ratio is symmetric.
  it('keep their shares when the comparison is turned round', () => {
    const there = laid(2, 1.5, 0.9, 1.2);
    const back = laid(1 / 2, 1 / 1.5, 1 / 0.9, 1 / 1.2);
    expect(back.effects.map(({ share }) => share.toFixed(12))).toEqual(
      there.effects.map(({ share }) => share.toFixed(12)),
    );
  });

  it('add what all of it comes to, in any order, and never more or less than any order gives', () => {
    for (const factors of [
      [2, 1.5, 1.2],
      [3, 0.8, 1.4, 0.9],
      [0.5, 0.7, 1.1],
    ]) {
      const seen = new Map<number, number[]>();
      for (const order of orders(factors)) {
        const { effects } = laid(...order);
        expect(effects.reduce((sum, { gain }) => sum + (gain ?? 0), 0)).toBeCloseTo(1, 9);
        for (const { factor, gain } of effects)
          seen.set(factor, [...(seen.get(factor) ?? []), gain ?? Number.NaN]);
      }
      for (const { factor, least, most } of laid(...factors).effects) {
        expect(least).toBeCloseTo(Math.min(...(seen.get(factor) ?? [])), 9);
        expect(most).toBeCloseTo(Math.max(...(seen.get(factor) ?? [])), 9);
      }
    }
  });

  it('are given no share where they cancel, but lengths with their signs', () => {
    const { effects, cancel } = laid(2, 0.5);
    expect(cancel).toBe(true);
    expect(effects.map(({ share, gain, most }) => [share, gain, most])).toEqual([
      [0.5, null, null],
      [-0.5, null, null],
    ]);
  });

  // 1.1 × 1.1 = 1.21; and about seven tenths-again double, as the rule of 72 has it: 72/10 (common practice).
  it('are counted in steps of a tenth', () => {
    expect(stepsOf(1.21)).toBeCloseTo(2, 12);
    expect(stepsOf(2)).toBeCloseTo(7.2, 0);
    expect(stepsOf(1 / 1.1)).toBeCloseTo(-1, 12);
  });

  it('leave out what changes nothing', () => {
    expect(laid(1, 2, 1).effects.map(({ letter, factor }) => [letter, factor])).toEqual([['A', 2]]);
    expect(laid().effects).toEqual([]);
  });

  it('are the terms of the careful estimate where no percentage is typed', () => {
    const scene = sceneOf(typed(null));
    expect(rulerOf(scene)).toEqual(rulerOfTerms(scene.row.careful));
    for (const { name, share } of rulerOf(scene).effects)
      expect(share).toBeCloseTo(scene.row.careful.logShares?.[name] ?? Number.NaN, 12);
  });
});

describe('the slider of the order', () => {
  const slider = rulerControls['order'];
  it('moves the largest and keeps the others in their order', () => {
    expect(slider?.read(typed([100, 50, 20]))).toBe(1);
    expect(slider?.write(typed([100, 50, 20]), 2).faceValues).toEqual([50, 100, 20]);
    expect(slider?.write(typed([100, 50, 20]), 3).faceValues).toEqual([50, 20, 100]);
    expect(slider?.write(typed([50, 20, 100]), 1).faceValues).toEqual([100, 50, 20]);
    expect(slider?.write(typed([]), 2).faceValues).toEqual([]);
    expect(slider?.write(typed([7]), 3).faceValues).toEqual([7]);
  });

  // −60% is ×0.4, further from 1 than ×2: it undoes ×2.5.
  it('reads a deep fall as the largest', () => {
    expect(slider?.read(typed([20, 100, -60]))).toBe(3);
  });

  it('types the terms of the knives where nothing is typed', () => {
    const written = slider?.write(typed(null), 1);
    const big = largest(rulerOf(sceneOf(typed(null))));
    expect(written?.faceValues).toHaveLength(rulerOf(sceneOf(typed(null))).effects.length);
    expect(written?.faceValues?.[0]).toBeCloseTo(((big?.factor ?? 1) - 1) * 100, 0);
  });
});

describe('the words of the ruler', () => {
  // Of 2, 1.5 and 1.2, whose product is 3.6: first, the double adds 1 of 2.6; last, half of 3.6, which is 1.8 of 2.6.
  it('say how far the order moves the largest', () => {
    expect(said('ruler-orders', typed([50, 100, 20]))).toMatch(/comes to 58% .* from 38% to 69%/);
    expect(rulerNumbers['ruler.largest.share']?.(sceneOf(typed([50, 100, 20])))).toBe('54%');
  });

  it('refuse a share of next to nothing', () => {
    expect(said('ruler-shares', typed([100, -50]))).toMatch(
      /none is given.*\+100% \(\+50%\) and −50% \(−50%\)/,
    );
    expect(said('ruler-orders', typed([100, -50]))).toMatch(/next to nothing/);
  });

  it('have nothing to share out where nothing differs', () => {
    expect(said('ruler-shares', typed([]))).toMatch(/nothing to share out/);
    const equalised = {
      ...loft(),
      madeEqual: ['angleDeg', 'edgeMm', 'finish', 'grind', 'hrc', 'carbideVolPercent'],
    };
    expect(said('ruler', equalised as ComparisonEntry)).toMatch(/do not differ in any factor/);
  });
});

// Worked with the values the page shows: what a reader with a calculator gets.
test('the worked example can be followed with the numbers it shows', () => {
  for (const faceValues of [[100, 50, 20], [20, 100, 50], [35, -20, 80], null]) {
    const steps = rulerWorked['share-of-each']?.(sceneOf(typed(faceValues))).steps ?? [];
    const value = (name: string) =>
      Number(
        steps
          .map(({ values }) => values[name])
          .find((text) => text !== undefined)
          ?.replace('−', '-'),
      );
    const careful = (shown: number, own: number) => expect(Math.abs(shown / own - 1)).toBeLessThan(0.005);
    careful(value('n'), Math.log10(value('f')) / Math.log10(1.1));
    careful(value('N'), Math.log10(value('F')) / Math.log10(1.1));
    careful(value('share'), value('n') / value('N'));
    careful(value('part'), (value('from') * value('f') - value('from')) / (value('F') - 1));
    careful(value('first'), (value('f') - 1) / value('gain'));
    careful(value('last'), (value('F') - value('F') / value('f')) / value('gain'));
  }
});

test('ticks of a linear ruler are round, even, inside and few', () => {
  expect(evenTicks(1, 3.6, 600)).toEqual([1, 1.5, 2, 2.5, 3, 3.5]);
  expect(evenTicks(0.98, 1.03, 294)).toContain(1);
  for (const [low, high] of [
    [0.001, 4],
    [1, 2.6e10],
    [0.4, 11],
  ] as const) {
    const ticks = evenTicks(low, high, 294);
    expect(ticks.length).toBeGreaterThan(0);
    expect(ticks.length).toBeLessThan(11);
    expect(Math.min(...ticks)).toBeGreaterThanOrEqual(low);
    expect(Math.max(...ticks)).toBeLessThanOrEqual(high);
  }
});

test('effects that undo each other leave the worked example no share to find', () => {
  const work = rulerWorked['share-of-each']?.(sceneOf(typed([25, -20])));
  expect(work?.givens).toBe(
    '+25%, −20%, in this order. The largest is +25%. They nearly cancel, so there is no share to find.',
  );
  // 1.25 · 0.8 = 1, so all that was added is nothing, and no part of it can be named.
  const [, whole, ...shares] = work?.steps ?? [];
  expect(whole?.values).toMatchObject({ F: '1', N: '0' });
  for (const { values } of shares) expect(Object.values(values)).toContain('none');
  const { effects } = rulerOf(sceneOf(typed([25, -20])));
  for (const { gain, least, most } of effects)
    expect([gain, least, most].map(shareText)).toEqual(['no share', 'no share', 'no share']);
});
